package org.shortgrain.part.reader;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import org.shortgrain.part.Origin;
import org.shortgrain.part.Stated;

/** The groups of keys of a description, whichever records they are: made and asked by reflection. */
public final class Groups {
    /** Looked up once for the whole process: the runtime makes a record's components anew each time that it is asked. */
    private static final ClassValue<Members> MEMBERS = new ClassValue<>() {
        @Override
        protected Members computeValue(Class<?> type) {
            return members(type);
        }
    };

    private Groups() {
    }

    /**
     * What a record is made and asked with.
     *
     * @param canonical canonical constructor
     * @param keys      accessors of what is stated, in the order of the components
     * @param hasOrigin whether it says where it stands
     */
    private record Members(Constructor<?> canonical, List<Method> keys, boolean hasOrigin) {
    }

    private static Members members(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        Class<?>[] types = new Class<?>[components.length];
        List<Method> keys = new ArrayList<>();
        boolean hasOrigin = false;
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            hasOrigin |= types[i] == Origin.class;
            if (types[i] == Stated.class) {
                keys.add(components[i].getAccessor());
            }
        }
        try {
            return new Members(type.getDeclaredConstructor(types), keys, hasOrigin);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("every record has a canonical constructor: " + type, e);
        }
    }

    static Record of(Class<? extends Record> type, Object[] arguments) {
        Constructor<?> canonical = MEMBERS.get(type).canonical();
        try {
            return (Record) canonical.newInstance(arguments);
        } catch (InstantiationException | IllegalAccessException e) {
            throw new IllegalStateException("a public record has a public canonical constructor: " + canonical, e);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("the records of a description refuse no stated value: " + canonical, e);
        }
    }

    /**
     * {@return whether a value is a group of keys: a record that says where it stands; everything else is a value}
     *
     * @param value something that is stated at a key
     */
    public static boolean isGroup(Object value) {
        return value instanceof Record && MEMBERS.get(value.getClass()).hasOrigin();
    }

    /**
     * {@return what is stated at each key of a group, in the order of the form}
     *
     * @param group a group, or the whole description
     */
    public static List<Stated<?>> stated(Record group) {
        List<Stated<?>> stated = new ArrayList<>();
        for (Method key : MEMBERS.get(group.getClass()).keys()) {
            try {
                stated.add((Stated<?>) key.invoke(group));
            } catch (IllegalAccessException | InvocationTargetException e) {
                throw new IllegalStateException("a public record has public accessors: " + key, e);
            }
        }
        return stated;
    }
}
