package org.shortgrain.rulebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Rulebooks for tests: the small ones among the test resources, and copies of them that a test may spoil. */
final class RulebookFixture {

    private RulebookFixture() {
    }

    static Path folder(String name) {
        try {
            return Path.of(RulebookFixture.class.getResource("/rulebooks/" + name).toURI());
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    static Path copy(String name, Path to) {
        Path from = folder(name);
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
            return to;
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    /** Replaces a text in a file of a rulebook; the text must be there. */
    static void edit(Path folder, String file, String what, String by) {
        try {
            String text = Files.readString(folder.resolve(file));
            if (!text.contains(what)) {
                throw new IllegalArgumentException("'" + what + "' is not in " + file);
            }
            Files.writeString(folder.resolve(file), text.replace(what, by));
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    static List<String> lines(RulebookException exception) {
        return exception.problems().stream().map(RulebookProblem::toString).toList();
    }
}
