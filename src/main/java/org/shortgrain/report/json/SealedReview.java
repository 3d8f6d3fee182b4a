package org.shortgrain.report.json;

import java.io.ByteArrayOutputStream;
import org.shortgrain.review.Review;

/**
 * A review with its content hash set, and the bytes in which it is written. They are made together, once: what the hash
 * covers is most of what is written.
 *
 * @param review the review
 * @param json   its bytes, as {@link ReviewJson#bytes(Review)} gives them; not copied
 */
public record SealedReview(Review review, byte[] json) {

    /**
     * {@return a review sealed}
     *
     * @param review a review, with or without a hash
     * @throws IllegalArgumentException if a number in it is not finite
     */
    public static SealedReview of(Review review) {
        JsonOut out = new JsonOut();
        ReviewWriter writer = new ReviewWriter(out);
        writer.writeRulebookAndInput(review);
        int afterInput = out.length();
        writer.writeContent(review);
        byte[] covered = out.bytes();
        Review sealed = review.withContentHash(ReviewJson.sha256(covered));
        return new SealedReview(sealed, written(sealed, covered, afterInput));
    }

    /** The head goes before what the hash covers, and the hash between the input and the rest. */
    private static byte[] written(Review sealed, byte[] covered, int afterInput) {
        JsonOut head = new JsonOut();
        new ReviewWriter(head).writeHead(sealed);
        int headEnd = head.length();
        JsonOut hash = new JsonOut().text("contentHash", sealed.contentHash());
        int hashEnd = hash.length();
        ByteArrayOutputStream all = new ByteArrayOutputStream(headEnd + hashEnd + covered.length);
        all.write(head.bytes(), 0, headEnd);
        all.write(',');
        all.write(covered, 1, afterInput - 1);
        all.write(',');
        all.write(hash.bytes(), 1, hashEnd - 1);
        all.write(covered, afterInput, covered.length - afterInput);
        return all.toByteArray();
    }
}
