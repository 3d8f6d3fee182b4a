package org.shortgrain.part.reader;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The commented blank descriptions that ship with the tool, one for each kind of part. */
public final class BlankDescription {
    private static final String FOLDER = "/templates/";
    private static final String INDEX = "blank-descriptions.txt";

    private BlankDescription() {
    }

    /** {@return the kinds of part that have a blank, each with what it is for, in the order of the index} */
    public static Map<String, String> kinds() {
        Map<String, String> kinds = new LinkedHashMap<>();
        resource(INDEX).lines().map(line -> line.split(": ", 2)).forEach(entry -> kinds.put(entry[0], entry[1]));
        return kinds;
    }

    /**
     * {@return the blank description of a kind of part; empty if there is none}
     *
     * @param kind a kind, such as {@code die-forging}
     */
    public static Optional<String> text(String kind) {
        return kinds().containsKey(kind) ? Optional.of(resource(kind + ".yaml")) : Optional.empty();
    }

    private static String resource(String name) {
        try (InputStream in = BlankDescription.class.getResourceAsStream(FOLDER + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
