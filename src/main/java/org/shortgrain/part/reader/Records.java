package org.shortgrain.part.reader;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.List;

/** Records made and asked by reflection. */
final class Records {

    private Records() {
    }

    static Constructor<? extends Record> canonical(Class<? extends Record> type, RecordComponent[] components) {
        Class<?>[] types = new Class<?>[components.length];
        for (int i = 0; i < types.length; i++) {
            types[i] = components[i].getType();
        }
        try {
            return type.getDeclaredConstructor(types);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("every record has a canonical constructor: " + type, e);
        }
    }

    static Record construct(Constructor<? extends Record> canonical, List<Object> arguments) {
        try {
            return canonical.newInstance(arguments.toArray());
        } catch (InstantiationException | IllegalAccessException e) {
            throw new IllegalStateException("a public record has a public canonical constructor: " + canonical, e);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("the records of a description refuse no stated value: " + canonical, e);
        }
    }

    static Object value(Record record, Method accessor) {
        try {
            return accessor.invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("a public record has public accessors: " + accessor, e);
        }
    }
}
