package org.shortgrain.reference;

/**
 * A material near the one asked about that the tables do cover.
 *
 * @param alloy  its name
 * @param row    what of it is covered
 * @param reason in what it differs
 */
public record Neighbour(String alloy, String row, String reason) {
}
