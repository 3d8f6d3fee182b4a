package org.shortgrain.cli;

import org.shortgrain.report.pdf.tagged.Fonts;
import org.shortgrain.review.Review;

/**
 * A review with what travels in its report.
 *
 * @param review   the review, sealed
 * @param input    bytes of the description
 * @param manifest names and hashes of the rulebook's files
 * @param fonts    parsed fonts, for this thread alone
 */
record Report(Review review, byte[] input, String manifest, Fonts fonts) {
}
