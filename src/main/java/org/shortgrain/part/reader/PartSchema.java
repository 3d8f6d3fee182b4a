package org.shortgrain.part.reader;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The published JSON Schema of a part description, for editors and for other tools that write descriptions. */
public final class PartSchema {
    /** File name that the first line of a description refers to. */
    public static final String FILE_NAME = "part-description.schema.json";

    private PartSchema() {
    }

    /** {@return the schema, draft 2020-12 in keywords that draft-07 has as well} */
    public static String text() {
        try (InputStream in = PartSchema.class.getResourceAsStream("/schema/" + FILE_NAME)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
