package org.shortgrain.report.sarif;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

/** Names of results that stay the same from run to run: rule, part and place; where these repeat, a count. */
final class Fingerprints {

    /** Key of the fingerprint; the number is raised when it is made of something else. */
    static final String NAME = "shortgrainFinding/v1";
    private static final String BETWEEN = "\u001f";

    private final String part;
    private final Map<String, Integer> seen = new HashMap<>();

    Fingerprints(String part) {
        this.part = part;
    }

    String next(List<String> identity) {
        String text = part + BETWEEN + String.join(BETWEEN, identity);
        int before = seen.getOrDefault(text, 0);
        seen.put(text, before + 1);
        return sha256(before == 0 ? text : text + BETWEEN + before);
    }

    private static String sha256(String text) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256")
                    .digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java runtime has SHA-256", impossible);
        }
    }
}
