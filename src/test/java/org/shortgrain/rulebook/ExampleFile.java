package org.shortgrain.rulebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One example of a rule: {@code ID.trigger.yaml}, {@code ID.quiet.yaml}, and where one near miss does not show every
 * condition, {@code ID.quiet-2.yaml} and so on; further triggers likewise.
 *
 * <p>An example changes the base part. One that says {@code # from: trigger} changes what the rule's trigger made of it,
 * so that it differs from the trigger in exactly what it names.
 *
 * @param name    file name
 * @param rule    id of the rule
 * @param trigger whether the rule speaks of it; otherwise it is quiet
 */
public record ExampleFile(String name, String rule, boolean trigger) {

    /** File of the part that all examples change. */
    public static final String BASE = "base.yaml";

    private static final Pattern NAME = Pattern.compile("([A-Z][A-Z0-9]*-\\d+)\\.(trigger|quiet)(-[2-9]|-1[0-9])?\\.yaml");

    private static final Pattern FROM_TRIGGER = Pattern.compile("(?m)^#\\s*from:\\s*trigger\\s*$");

    /** {@return the example with a file name; empty if the name is none of an example} */
    static Optional<ExampleFile> named(String name) {
        Matcher match = NAME.matcher(name);
        return match.matches() ? Optional.of(new ExampleFile(name, match.group(1), match.group(2).equals("trigger")))
                : Optional.empty();
    }

    /**
     * {@return the description that the example stands for}
     *
     * @param texts file name to text
     * @throws IllegalArgumentException if the example changes nothing
     */
    public String description(Function<String, String> texts) {
        String patch = texts.apply(name);
        String start = FROM_TRIGGER.matcher(patch).find()
                ? ExamplePatch.merged(texts.apply(BASE), texts.apply(rule + ".trigger.yaml"))
                : ExamplePatch.merged(texts.apply(BASE), "{}");
        String made = ExamplePatch.merged(start, patch);
        if (made.equals(start)) {
            throw new IllegalArgumentException(name + " changes nothing");
        }
        return made;
    }

    /** {@return the examples in a folder, by name} */
    public static List<ExampleFile> in(Path folder) throws IOException {
        List<ExampleFile> examples = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            files.forEach(file -> named(file.getFileName().toString()).ifPresent(examples::add));
        }
        examples.sort(Comparator.comparing(ExampleFile::name));
        return examples;
    }
}
