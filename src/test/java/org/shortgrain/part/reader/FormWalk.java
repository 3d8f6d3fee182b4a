package org.shortgrain.part.reader;

import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;
import org.shortgrain.part.PartDescription;

/** Visits every key of the form once for each group it stands in. */
final class FormWalk {
    private final Forms forms = new Forms();
    private final Set<Class<?>> seen = new HashSet<>();

    static void keys(Consumer<String> visitor) {
        new FormWalk().visit(PartDescription.class, visitor);
    }

    private void visit(Class<? extends Record> type, Consumer<String> visitor) {
        if (!seen.add(type)) {
            return;
        }
        for (Expected.Field field : forms.of(type).all()) {
            visitor.accept(field.key());
            Expected item = field.expected() instanceof Expected.ListOf list ? list.item() : field.expected();
            if (item instanceof Expected.Group group) {
                visit(group.type(), visitor);
            }
        }
    }
}
