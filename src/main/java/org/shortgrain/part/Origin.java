package org.shortgrain.part;

import java.util.Optional;

/**
 * Where a group or list item stands, and what it refers to.
 *
 * @param at  place in the description
 * @param ref drawing note, card operation or report that the group was taken from; empty if none is given
 */
public record Origin(Location at, Optional<String> ref) {
}
