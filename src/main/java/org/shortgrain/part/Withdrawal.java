package org.shortgrain.part;

import java.util.Optional;

/**
 * An issue of a report that no longer stands.
 *
 * @param contentHash  content hash of the issue in hexadecimal, or its first digits as they stand at the foot of each page
 * @param reason       why it was withdrawn
 * @param by           who withdrew it
 * @param date         when, ISO 8601
 * @param supersededBy what stands in its place; empty if nothing does
 * @param at           place in the file that says so
 */
public record Withdrawal(String contentHash, String reason, String by, String date, Optional<String> supersededBy,
        Location at) {

    /**
     * {@return whether an issue is the one withdrawn}
     *
     * @param hash its whole content hash
     */
    public boolean isOf(String hash) {
        return hash.startsWith(contentHash);
    }
}
