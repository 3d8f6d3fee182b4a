package org.shortgrain.part.reader;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;

/** Records made and asked by reflection. */
final class Records {
    /** Looked up once for the whole process. */
    private static final ClassValue<Members> MEMBERS = new ClassValue<>() {
        @Override
        protected Members computeValue(Class<?> type) {
            return members(type);
        }
    };

    private Records() {
    }

    /**
     * What a record is made and asked with.
     *
     * @param canonical canonical constructor
     * @param accessors accessors in the order of the components
     */
    private record Members(Constructor<?> canonical, Method[] accessors) {
    }

    private static Members members(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        Class<?>[] types = new Class<?>[components.length];
        Method[] accessors = new Method[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            accessors[i] = components[i].getAccessor();
        }
        try {
            return new Members(type.getDeclaredConstructor(types), accessors);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("every record has a canonical constructor: " + type, e);
        }
    }

    static Record construct(Class<? extends Record> type, Object[] arguments) {
        Constructor<?> canonical = MEMBERS.get(type).canonical();
        try {
            return (Record) canonical.newInstance(arguments);
        } catch (InstantiationException | IllegalAccessException e) {
            throw new IllegalStateException("a public record has a public canonical constructor: " + canonical, e);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("the records of a description refuse no stated value: " + canonical, e);
        }
    }

    /** The value of a component, counted from 0. */
    static Object value(Record record, int component) {
        Method accessor = MEMBERS.get(record.getClass()).accessors()[component];
        try {
            return accessor.invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("a public record has public accessors: " + accessor, e);
        }
    }
}
