package org.shortgrain.part.reader;

import java.util.HashSet;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.shortgrain.part.PartDescription;

/** Visits every key of every group of the form. */
final class FormWalk {
    private final Forms forms = new Forms();
    private final Set<Class<?>> seen = new HashSet<>();

    static void keys(Consumer<String> visitor) {
        fields((group, field) -> visitor.accept(field.key()));
    }

    static void fields(BiConsumer<Class<? extends Record>, Expected.Field> visitor) {
        new FormWalk().visit(PartDescription.class, visitor);
    }

    private void visit(Class<? extends Record> type, BiConsumer<Class<? extends Record>, Expected.Field> visitor) {
        if (seen.add(type)) {
            for (Expected.Field field : forms.of(type).all()) {
                visitor.accept(type, field);
                Forms.inside(field).ifPresent(inner -> visit(inner, visitor));
            }
        }
    }
}
