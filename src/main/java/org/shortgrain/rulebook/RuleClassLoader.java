package org.shortgrain.rulebook;

import java.util.Map;

/** Loads the classes of an edited rulebook; for these it does not ask its parent, which may hold the shipped ones. */
final class RuleClassLoader extends ClassLoader {

    static {
        registerAsParallelCapable();
    }

    private final Map<String, byte[]> classes;

    RuleClassLoader(Map<String, byte[]> classes, ClassLoader parent) {
        super("rulebook", parent);
        this.classes = classes;
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
        byte[] bytes = classes.get(name.replace('.', '/') + ".class");
        if (bytes == null) {
            return super.loadClass(name, resolve);
        }
        synchronized (getClassLoadingLock(name)) {
            Class<?> loaded = findLoadedClass(name);
            return loaded != null ? loaded : defineClass(name, bytes, 0, bytes.length);
        }
    }
}
