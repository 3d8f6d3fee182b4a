package org.shortgrain.bench;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.io.FileUtils;
import org.hipparchus.stat.descriptive.rank.Median;

/**
 * How long a cold review takes through the launcher, PDF and JSON written, against a bare program that writes the same pages
 * ({@link PdfFloor}), in turn. The bare program is given the launcher's flags, its class path and an archive of classes, and no
 * shell before it. Run by hand on a quiet machine, after {@code mvn package}:
 * <pre>
 * java -cp "target/test-classes:target/classes:target/lib/*" org.shortgrain.bench.ColdReviewBenchmark [PART.yaml [PAIRS]]
 * </pre>
 */
public final class ColdReviewBenchmark {

    /** From this version on the runtime keeps classes linked, in an archive of another kind. */
    private static final int LINKED = 25;
    private static final int PAIRS = 15;
    private static final String PART = "sample-reviews/strut-end-fitting.yaml";
    private static final String JAVA_HOME = System.getProperty("java.home");
    private static final Path LAUNCHER = Path.of("target/shortgrain");
    /** The most time that the launcher may take to make its archive beside a review (ms). */
    private static final long PATIENCE = 60_000;

    private final Path folder;
    private final Path part;

    private ColdReviewBenchmark(Path folder, Path part) {
        this.folder = folder;
        this.part = part;
    }

    /**
     * Measures.
     *
     * @param arguments a part and the number of pairs; by default the strut sample and 15
     * @throws Exception if a program cannot be run
     */
    public static void main(String[] arguments) throws Exception {
        Path part = Path.of(arguments.length > 0 ? arguments[0] : PART);
        int pairs = arguments.length > 1 ? Integer.parseInt(arguments[1]) : PAIRS;
        Path folder = Files.createTempDirectory("cold-review");
        try {
            new ColdReviewBenchmark(folder, part).measure(pairs);
        } finally {
            FileUtils.deleteDirectory(folder.toFile());
        }
    }

    private void measure(int pairs) throws Exception {
        ProcessBuilder review = review();
        run(review);
        awaitArchive();
        ProcessBuilder floor = floor();
        run(review);
        run(floor);
        double[] reviews = new double[pairs];
        double[] floors = new double[pairs];
        double[] ratios = new double[pairs];
        for (int i = 0; i < pairs; i++) {
            reviews[i] = run(review);
            floors[i] = run(floor);
            ratios[i] = reviews[i] / floors[i];
        }
        System.out.println("Java " + Runtime.version() + ", " + part + ", " + pairs + " pairs in turn: median (least to most)");
        print("review through the launcher, ms", "%.0f", reviews);
        print("bare program of the same pages, ms", "%.0f", floors);
        print("ratio", "%.2f", ratios);
    }

    private static void print(String what, String format, double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        System.out.printf("  %-36s" + format + " (" + format + " to " + format + ")%n", what, new Median().evaluate(sorted),
                sorted[0], sorted[sorted.length - 1]);
    }

    private ProcessBuilder review() {
        ProcessBuilder review = quiet(List.of("sh", LAUNCHER.toString(), "review", part.toString(), "--date", "2026-01-01",
                "--out", folder.toString()));
        review.environment().put("XDG_CACHE_HOME", folder.resolve("cache").toString());
        return review;
    }

    private static ProcessBuilder quiet(List<String> command) {
        ProcessBuilder process = new ProcessBuilder(command).redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD);
        process.environment().put("JAVA_HOME", JAVA_HOME);
        return process;
    }

    /** Wall time (ms). */
    private static double run(ProcessBuilder program) throws IOException, InterruptedException {
        long start = System.nanoTime();
        int code = program.start().waitFor();
        double taken = (System.nanoTime() - start) / 1e6;
        // 0, 1 and 3 are verdicts
        if (code != 0 && code != 1 && code != 3) {
            throw new IllegalStateException(program.command() + " ended with " + code);
        }
        return taken;
    }

    /** The launcher makes its archive in the background on some runtimes. */
    private void awaitArchive() throws IOException, InterruptedException {
        long start = System.nanoTime();
        while (!isArchived()) {
            if ((System.nanoTime() - start) / 1_000_000 > PATIENCE) {
                throw new IllegalStateException("the launcher has made no archive of classes");
            }
            Thread.sleep(200);
        }
    }

    private boolean isArchived() throws IOException {
        try (Stream<Path> files = Files.walk(folder.resolve("cache"))) {
            return files.anyMatch(file -> file.toString().matches(".*\\.(jsa|aot)"));
        }
    }

    private ProcessBuilder floor() throws Exception {
        String name = part.getFileName().toString().replaceFirst("\\.ya?ml$", "");
        Path list = folder.resolve("floor.list");
        PdfFloorRecorder.main(new String[] {folder.resolve(name + ".review.pdf").toString(), list.toString()});
        List<String> program = List.of("-cp", classPath(), PdfFloor.class.getName(), list.toString(),
                folder.resolve("floor.pdf").toString());
        Path archive = folder.resolve("floor.archive");
        boolean linked = Runtime.version().feature() >= LINKED;
        run(java((linked ? "-XX:AOTCacheOutput=" : "-XX:ArchiveClassesAtExit=") + archive, program));
        return java((linked ? "-XX:AOTCache=" : "-XX:SharedArchiveFile=") + archive, program);
    }

    private ProcessBuilder java(String archive, List<String> program) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(Path.of(JAVA_HOME, "bin", "java").toString()));
        command.addAll(flags());
        command.add(archive);
        command.addAll(program);
        return quiet(command);
    }

    /** The launcher's flags, as it tells a runtime that only repeats them. */
    private List<String> flags() throws IOException, InterruptedException {
        Path java = Files.createDirectories(folder.resolve("told/bin")).resolve("java");
        Files.writeString(java, "#!/bin/sh\nprintf '%s\\n' \"$@\"\n");
        if (!java.toFile().setExecutable(true)) {
            throw new IOException("cannot make " + java + " a program");
        }
        ProcessBuilder launcher = new ProcessBuilder("sh", LAUNCHER.toString(), "review", part.toString());
        launcher.environment().put("JAVA_HOME", folder.resolve("told").toString());
        launcher.environment().put("SHORTGRAIN_ARCHIVE", "off");
        Process told = launcher.start();
        List<String> arguments = told.inputReader().lines().toList();
        told.waitFor();
        return arguments.subList(0, arguments.indexOf("-jar"));
    }

    /** The benchmark's classes in a jar, since an archive takes no classes from a folder, and all that the tool has. */
    private String classPath() throws IOException {
        Path jar = folder.resolve("bench.jar");
        Path classes = Path.of("target/test-classes");
        try (OutputStream out = Files.newOutputStream(jar); JarOutputStream entries = new JarOutputStream(out);
                Stream<Path> files = Files.list(classes.resolve("org/shortgrain/bench"))) {
            for (Path file : files.sorted().toList()) {
                entries.putNextEntry(new JarEntry(classes.relativize(file).toString().replace('\\', '/')));
                Files.copy(file, entries);
            }
        }
        try (Stream<Path> tool = Files.list(Path.of("target")); Stream<Path> libraries = Files.list(Path.of("target/lib"))) {
            return Stream.of(Stream.of(jar), tool.filter(file -> file.toString().endsWith(".jar")), libraries.sorted())
                    .flatMap(paths -> paths).map(path -> path.toAbsolutePath().toString())
                    .collect(Collectors.joining(System.getProperty("path.separator")));
        }
    }
}
