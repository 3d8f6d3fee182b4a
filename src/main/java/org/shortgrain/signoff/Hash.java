package org.shortgrain.signoff;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256, as the reports print it. */
final class Hash {

    private Hash() {
    }

    static String sha256(byte[] bytes) {
        return HexFormat.of().formatHex(digest(bytes));
    }

    static byte[] digest(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java runtime has SHA-256", impossible);
        }
    }
}
