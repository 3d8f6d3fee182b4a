package org.shortgrain.part.reader;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The file that a description was read from, byte for byte: it is attached to the report and named by its hash. */
public final class SourceFile {
    private final String name;
    private final byte[] bytes;

    SourceFile(String name, byte[] bytes) {
        this.name = name;
        this.bytes = bytes.clone();
    }

    /** {@return the file as the user named it} */
    public String name() {
        return name;
    }

    /** {@return a copy of its bytes} */
    public byte[] bytes() {
        return bytes.clone();
    }

    /** {@return the SHA-256 of its bytes, in lower-case hexadecimal digits} */
    public String sha256() {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
