package org.shortgrain.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class PdfWriterTest {

    @Test
    void the_stress_document_keeps_its_claims() throws Exception {
        try (Fonts fonts = Fonts.load()) {
            PdfWriter.Written written = PdfWriter.write(StressDocument.manuscript(Paper.A4), fonts);
            Files.write(Path.of("target/stress.pdf"), written.bytes());
            assertEquals(List.of(), Validator.failures(written.bytes(), "3a"));
            assertEquals(List.of(), Validator.failures(written.bytes(), "ua1"));
        }
    }
}
