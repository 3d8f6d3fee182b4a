package org.shortgrain.review;

/**
 * A document that the review cites.
 *
 * @param id    key in the list of sources
 * @param title title, number, edition and year
 * @param seen  how it was seen
 */
public record SourceLine(String id, String title, String seen) {
}
