package org.shortgrain.rulebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Rules as classes of the engine's executable model.
 *
 * @param classes file name ({@code rules/stress/....class}) to bytes
 * @param models  names of the classes that describe the rules, one for each rule file
 */
record CompiledRules(SortedMap<String, byte[]> classes, List<String> models) {

    private static final String MODELS = "models";

    CompiledRules {
        classes = Collections.unmodifiableSortedMap(new TreeMap<>(classes));
        models = models.stream().sorted().toList();
    }

    /** Writes the classes and the list of models; the list last, so that its presence says that all is there. */
    void writeTo(Path folder) throws IOException {
        writeClasses(folder);
        Files.write(folder.resolve(MODELS), models);
    }

    void writeClasses(Path folder) throws IOException {
        for (var file : classes.entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.write(path, file.getValue());
        }
    }

    /** {@return whether a folder holds what {@link #writeTo} wrote, whole} */
    static boolean isIn(Path folder) {
        return Files.isRegularFile(folder.resolve(MODELS));
    }

    static CompiledRules readFrom(Path folder) throws IOException {
        SortedMap<String, byte[]> classes = new TreeMap<>();
        try (Stream<Path> found = Files.walk(folder)) {
            for (Path path : found.filter(file -> file.toString().endsWith(".class")).toList()) {
                classes.put(folder.relativize(path).toString().replace('\\', '/'), Files.readAllBytes(path));
            }
        }
        return new CompiledRules(classes, Files.readAllLines(folder.resolve(MODELS)));
    }

    /** {@return a loader of these classes; they win over classes of the same name elsewhere} */
    ClassLoader loader() {
        return new RuleClassLoader(classes, CompiledRules.class.getClassLoader());
    }
}
