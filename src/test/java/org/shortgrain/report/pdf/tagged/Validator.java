package org.shortgrain.report.pdf.tagged;

import java.io.ByteArrayInputStream;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** Asks the independent validator veraPDF what a file fails of what it claims. */
public final class Validator {

    private Validator() {
    }

    /**
     * {@return what fails, one line each; none for a file that keeps its claim}
     *
     * @param pdf     the file
     * @param flavour {@code 3a} for PDF/A-3a, {@code ua1} for PDF/UA-1
     * @throws Exception if the file cannot be read at all
     */
    public static List<String> failures(byte[] pdf, String flavour) throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        PDFAFlavour wanted = PDFAFlavour.fromString(flavour);
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), wanted);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(wanted, false)) {
            return validator.validate(parser).getTestAssertions().stream()
                    .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                    .map(assertion -> assertion.getRuleId().getClause() + "-" + assertion.getRuleId().getTestNumber()
                            + " " + assertion.getMessage() + " at " + assertion.getLocation().getContext())
                    .distinct().toList();
        }
    }
}
