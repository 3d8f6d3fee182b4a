package org.shortgrain.rulebook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What the build wrote down of the shipped rulebook, so that a review need not read it all.
 *
 * @param builtFrom hash over all that the compiled rules depend on
 * @param api       hash over the classes that rules are compiled against
 * @param edition   the edition
 * @param sha256    hash over the manifest
 * @param models    names of the classes that describe the rules
 */
record ShippedIndex(String builtFrom, String api, String edition, String sha256, List<String> models) {

    /** Where it lies among the classes. */
    static final String PLACE = "rulebook/index";

    ShippedIndex {
        models = List.copyOf(models);
    }

    static ShippedIndex read() {
        try (InputStream in = ShippedIndex.class.getResourceAsStream("/" + PLACE)) {
            if (in == null) {
                throw new IllegalStateException("the shipped rulebook is missing: build the tool with Maven");
            }
            return parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static ShippedIndex parse(String text) {
        List<String> lines = text.lines().toList();
        return new ShippedIndex(value(lines, "built-from"), value(lines, "api"), value(lines, "edition"),
                value(lines, "sha256"), values(lines, "model"));
    }

    /**
     * {@return the models but those of some rule files}
     *
     * @param files names of rule files
     */
    List<String> modelsWithout(Collection<String> files) {
        return models.stream().filter(model -> !files.contains(
                DrlFile.fileOf(model.substring(0, model.lastIndexOf('.'))))).toList();
    }

    String text() {
        return "built-from " + builtFrom + "\napi " + api + "\nedition " + edition + "\nsha256 " + sha256 + "\n"
                + models.stream().map(model -> "model " + model + "\n").collect(Collectors.joining());
    }

    private static String value(List<String> lines, String key) {
        return values(lines, key).stream().findFirst()
                .orElseThrow(() -> new IllegalStateException("the index of the shipped rulebook names no " + key));
    }

    private static List<String> values(List<String> lines, String key) {
        return lines.stream().filter(line -> line.startsWith(key + " ")).map(line -> line.substring(key.length() + 1))
                .toList();
    }
}
