package org.shortgrain.report.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;
import org.shortgrain.review.Review;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A review as JSON and back.
 *
 * <p>The same review gives the same bytes. Numbers are written with six significant digits; a review whose numbers have
 * no more is read back equal to what was written.
 */
public final class ReviewJson {

    /** The value of the key {@code format}. */
    public static final String FORMAT = "shortgrain-review";
    /** The value of the key {@code version}: raised when a reader of the old form could misread the new one. */
    public static final int VERSION = 1;
    /** Where the JSON Schema of the form lies in the class path. */
    public static final String SCHEMA = "/schema/review.schema.json";

    private ReviewJson() {
    }

    /**
     * {@return the bytes of a review, UTF-8}
     *
     * @param review the review
     * @throws IllegalArgumentException if a number in it is not finite
     */
    public static byte[] bytes(Review review) {
        JsonOut out = new JsonOut();
        ReviewWriter writer = new ReviewWriter(out);
        writer.writeHead(review);
        writer.writeRulebookAndInput(review);
        out.text("contentHash", review.contentHash());
        writer.writeContent(review);
        return out.bytes();
    }

    /**
     * {@return a review with its content hash set}
     *
     * <p>The hash covers rulebook, input and all that the review says, in the bytes in which they are written here. It
     * does not cover the tool's version, so that a newer tool that comes to the same review proves it.
     *
     * @param review a review, with or without a hash
     */
    public static Review sealed(Review review) {
        return review.withContentHash(contentHash(review));
    }

    /**
     * {@return the content hash of a review, in hexadecimal}
     *
     * @param review a review; the hash that stands in it does not count
     */
    public static String contentHash(Review review) {
        JsonOut out = new JsonOut();
        ReviewWriter writer = new ReviewWriter(out);
        writer.writeRulebookAndInput(review);
        writer.writeContent(review);
        return sha256(out.bytes());
    }

    static String sha256(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java runtime has SHA-256", impossible);
        }
    }

    /**
     * {@return the review that some bytes hold}
     *
     * @param bytes JSON, UTF-8
     * @throws UnreadableReviewException if they hold none, or one of a later version
     */
    public static Review read(byte[] bytes) throws UnreadableReviewException {
        JsonNode json = parsed(bytes);
        String format = json.path("format").asString("");
        if (!format.equals(FORMAT)) {
            throw new UnreadableReviewException("this is no " + FORMAT + (format.isEmpty() ? "" : " but " + format));
        }
        if (json.path("version").asInt(0) != VERSION) {
            throw new UnreadableReviewException("the review is of version " + json.path("version")
                    + " of its form; this tool reads version " + VERSION);
        }
        List<String> faults = ReviewSchema.faults(json);
        if (!faults.isEmpty()) {
            throw new UnreadableReviewException("the review is not of its form: "
                    + faults.stream().limit(3).collect(Collectors.joining("; ")));
        }
        try {
            return new ReviewReader().review(json);
        } catch (IllegalArgumentException contradictory) {
            throw new UnreadableReviewException("the review contradicts itself: " + contradictory.getMessage());
        }
    }

    private static JsonNode parsed(byte[] bytes) throws UnreadableReviewException {
        try {
            return JsonMapper.shared().readTree(bytes);
        } catch (JacksonException malformed) {
            throw new UnreadableReviewException("this is no JSON: " + malformed.getOriginalMessage() + ", line "
                    + malformed.getLocation().getLineNr());
        }
    }

    /** {@return the JSON Schema of the form} */
    public static String schema() {
        try (InputStream in = ReviewJson.class.getResourceAsStream(SCHEMA)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}
