package org.shortgrain.rulebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One example of a rule: {@code ID.trigger.yaml}, {@code ID.quiet.yaml}, and where one near miss does not show every
 * condition, {@code ID.quiet-2.yaml} and so on; further triggers likewise.
 *
 * @param name    file name
 * @param rule    id of the rule
 * @param trigger whether the rule speaks of it; otherwise it is quiet
 */
record ExampleFile(String name, String rule, boolean trigger) {

    private static final Pattern NAME = Pattern.compile("([A-Z][A-Z0-9]*-\\d+)\\.(trigger|quiet)(-[2-9])?\\.yaml");

    /** {@return the example with a file name; empty if the name is none of an example} */
    static Optional<ExampleFile> named(String name) {
        Matcher match = NAME.matcher(name);
        return match.matches() ? Optional.of(new ExampleFile(name, match.group(1), match.group(2).equals("trigger")))
                : Optional.empty();
    }

    /** {@return the examples in a folder, by name} */
    static List<ExampleFile> in(Path folder) throws IOException {
        List<ExampleFile> examples = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            files.forEach(file -> named(file.getFileName().toString()).ifPresent(examples::add));
        }
        examples.sort(Comparator.comparing(ExampleFile::name));
        return examples;
    }
}
