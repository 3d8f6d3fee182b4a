package org.shortgrain.review;

import java.util.Optional;

/**
 * One source of sustained stress at a feature.
 *
 * @param source      what causes it, in the words of the trade
 * @param amount      the stress
 * @param calculation number of the calculation behind it; empty for a declared value
 */
public record Contribution(String source, Amount amount, Optional<String> calculation) {
}
