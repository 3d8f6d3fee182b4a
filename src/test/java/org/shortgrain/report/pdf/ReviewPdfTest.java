package org.shortgrain.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shortgrain.report.pdf.tagged.Fonts;
import org.shortgrain.report.pdf.tagged.PdfWriter;
import org.shortgrain.report.pdf.tagged.Validator;

class ReviewPdfTest {

    @Test
    void the_report_keeps_its_claims() throws Exception {
        try (Fonts fonts = Fonts.load()) {
            PdfWriter.Written written = ReviewPdf.write(SampleReview.usual(), SampleReview.attachments(),
                    SampleReview.options(), Wording.shipped(), fonts);
            Files.write(Path.of("target/review.pdf"), written.bytes());
            Files.write(Path.of("target/large.pdf"), ReviewPdf.write(SampleReview.large(), SampleReview.attachments(),
                    SampleReview.options(), Wording.shipped(), fonts).bytes());
            assertEquals(List.of(), Validator.failures(written.bytes(), "3a"));
            assertEquals(List.of(), Validator.failures(written.bytes(), "ua1"));
        }
    }
}
