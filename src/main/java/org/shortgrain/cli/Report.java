package org.shortgrain.cli;

import java.util.Optional;
import java.util.function.Supplier;
import org.shortgrain.report.change.Comparison;
import org.shortgrain.report.json.SealedReview;
import org.shortgrain.report.pdf.ReviewPdf;
import org.shortgrain.report.pdf.Wording;
import org.shortgrain.report.pdf.tagged.Fonts;
import org.shortgrain.review.Remedies;
import org.shortgrain.review.Review;

/**
 * A review with what travels in its report.
 *
 * @param sealed   the review
 * @param input    bytes of the description
 * @param manifest names and hashes of the rulebook's files
 * @param change   the review against an earlier one; empty if it is not compared
 * @param remedies what would clear the part; empty unless asked for
 * @param printed  how the PDF is printed
 * @param wording  words of the PDF
 * @param fonts    parsed fonts, for this thread alone, as far as a format needs them
 */
record Report(SealedReview sealed, byte[] input, String manifest, Optional<Comparison> change,
        Optional<Remedies> remedies, ReviewPdf.Options printed, Wording wording, Supplier<Fonts> fonts) {

    Review review() {
        return sealed.review();
    }
}
