package org.shortgrain.rulebook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The files of a rulebook that judge: rules, tables, sources and the edition. Examples and change log do not judge and
 * are not among them, but {@link #example} finds an example.
 */
public abstract sealed class RulebookFiles {

    /** Edition of the rulebook and, in a rulebook beside the shipped one, what it changes. */
    static final String ABOUT = "rulebook.yaml";
    /** The documents that rules and tables cite. */
    static final String SOURCES = "sources.yaml";
    /** No file of a rulebook is larger than this (bytes); what is, is no rulebook. */
    private static final long LARGEST = 20_000_000;

    private RulebookFiles() {
    }

    /**
     * {@return the files of a folder, read once}
     *
     * @param folder the folder
     * @throws RulebookException if it cannot be read or holds no rulebook
     */
    public static RulebookFiles in(Path folder) throws RulebookException {
        if (!Files.isDirectory(folder)) {
            throw new RulebookException(RulebookProblem.in(folder.toString(), "is not a folder; expected the folder of"
                    + " a rulebook, with *.drl files"));
        }
        SortedMap<String, byte[]> contents = new TreeMap<>();
        try (Stream<Path> found = Files.walk(folder)) {
            for (Path path : found.filter(Files::isRegularFile).toList()) {
                String name = folder.relativize(path).toString().replace('\\', '/');
                if (judges(name)) {
                    contents.put(name, read(path, name));
                }
            }
        } catch (IOException | UncheckedIOException unreadable) {
            throw new RulebookException(RulebookProblem.in(folder.toString(), "cannot be read: "
                    + unreadable.getMessage()));
        }
        return new InMemory(folder, contents);
    }

    private static byte[] read(Path path, String name) throws RulebookException, IOException {
        if (Files.size(path) > LARGEST) {
            throw new RulebookException(RulebookProblem.in(name, "is larger than " + LARGEST / 1_000_000 + " MB"));
        }
        return Files.readAllBytes(path);
    }

    private static boolean judges(String name) {
        boolean hidden = name.startsWith(".") || name.contains("/.");
        boolean top = !name.contains("/");
        return !hidden && (top ? name.endsWith(".drl") || name.equals(ABOUT) || name.equals(SOURCES)
                : name.startsWith("data/"));
    }

    /** {@return the files of the shipped rulebook} */
    static RulebookFiles shipped() {
        return new Shipped();
    }

    /**
     * {@return files beside the shipped rulebook: a file of the same name replaces the shipped one, sources are added}
     *
     * @param added files that say {@code extends: shipped}
     */
    static RulebookFiles besideShipped(RulebookFiles added) {
        return new Beside(new Shipped(), added);
    }

    /** {@return the names of the files, sorted, with {@code /} between folder and file} */
    public abstract List<String> names();

    /**
     * {@return the bytes of a file}
     *
     * @param name one of {@link #names()}
     * @throws IllegalArgumentException if there is no such file
     */
    public abstract byte[] bytes(String name);

    /**
     * {@return one line for each file: SHA-256, two spaces, name; the form of {@code sha256sum}}
     */
    public String manifest() {
        return names().stream().map(name -> Sha256.of(bytes(name)) + "  " + name + "\n").collect(Collectors.joining());
    }

    /**
     * {@return the text of an example}
     *
     * @param rule id of the rule
     * @param kind {@code trigger} or {@code quiet}; with rule {@code base} and an empty kind, the part that both change
     */
    public abstract Optional<String> example(String rule, String kind);

    /**
     * {@return the text of a file}
     *
     * @param name one of {@link #names()}
     */
    public final String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    /** {@return SHA-256 over the manifest, in hexadecimal} */
    public final String sha256() {
        return Sha256.of(manifest());
    }

    /** {@return the rule files, name to text, sorted} */
    final SortedMap<String, String> rules() {
        SortedMap<String, String> texts = new TreeMap<>();
        names().stream().filter(name -> name.endsWith(".drl")).forEach(name -> texts.put(name, text(name)));
        return texts;
    }

    private static String exampleName(String rule, String kind) {
        return "examples/" + rule + (kind.isEmpty() ? "" : "." + kind) + ".yaml";
    }

    /** Files read from a folder. */
    private static final class InMemory extends RulebookFiles {
        private final Path folder;
        private final SortedMap<String, byte[]> contents;

        InMemory(Path folder, SortedMap<String, byte[]> contents) {
            this.folder = folder;
            this.contents = Collections.unmodifiableSortedMap(contents);
        }

        @Override
        public List<String> names() {
            return List.copyOf(contents.keySet());
        }

        @Override
        public byte[] bytes(String name) {
            byte[] bytes = contents.get(name);
            if (bytes == null) {
                throw new IllegalArgumentException("no file " + name + " in the rulebook " + folder);
            }
            return bytes.clone();
        }

        @Override
        public Optional<String> example(String rule, String kind) {
            try {
                return Optional.of(Files.readString(folder.resolve(exampleName(rule, kind))));
            } catch (NoSuchFileException none) {
                return Optional.empty();
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
    }

    /** Files of one rulebook beside those of another. */
    private static final class Beside extends RulebookFiles {
        private final RulebookFiles below;
        private final RulebookFiles above;

        Beside(RulebookFiles below, RulebookFiles above) {
            this.below = below;
            this.above = above;
        }

        @Override
        public List<String> names() {
            return Stream.concat(below.names().stream(), above.names().stream()).distinct().sorted().toList();
        }

        @Override
        public byte[] bytes(String name) {
            if (name.equals(SOURCES) && below.names().contains(name) && above.names().contains(name)) {
                return (below.text(name) + "\n" + above.text(name)).getBytes(StandardCharsets.UTF_8);
            }
            return (above.names().contains(name) ? above : below).bytes(name);
        }

        @Override
        public Optional<String> example(String rule, String kind) {
            return above.example(rule, kind).or(() -> below.example(rule, kind));
        }
    }

    /** Files inside the tool; the build has written their manifest. */
    private static final class Shipped extends RulebookFiles {
        private static final String ROOT = "/rulebook/";
        static final String MANIFEST = "manifest.sha256";
        private static final int HASH_AND_GAP = 64 + 2;

        @Override
        public List<String> names() {
            return manifest().lines().map(line -> line.substring(HASH_AND_GAP)).toList();
        }

        @Override
        public byte[] bytes(String name) {
            return resource(name).orElseThrow(
                    () -> new IllegalArgumentException("no file " + name + " in the shipped rulebook"));
        }

        @Override
        public String manifest() {
            return text(MANIFEST);
        }

        @Override
        public Optional<String> example(String rule, String kind) {
            return resource(exampleName(rule, kind)).map(bytes -> new String(bytes, StandardCharsets.UTF_8));
        }

        private static Optional<byte[]> resource(String name) {
            try (InputStream in = RulebookFiles.class.getResourceAsStream(ROOT + name)) {
                return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
            } catch (IOException unreadable) {
                throw new UncheckedIOException("the shipped rulebook cannot be read", unreadable);
            }
        }
    }
}
