package org.shortgrain.review;

/**
 * One value of the description, as entered.
 *
 * @param path  JSON pointer
 * @param value the text as entered, or none or unknown
 * @param si    the value in SI where a unit was entered; empty text otherwise
 * @param note  how it is known and what it refers to; empty text if not said
 */
public record StatedLine(String path, String value, String si, String note) {
}
