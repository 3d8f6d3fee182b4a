package org.shortgrain.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.shortgrain.report.pdf.PdfText;
import org.shortgrain.report.pdf.tagged.Validator;
import org.shortgrain.review.Finding;

/** What the reports claim of themselves: PDF/A-3a, PDF/UA-1, read in order, and every figure told in words. */
class ReportClaimsTest {

    /** Findings and questions that the part asking everything must have for the layout to be tried. */
    private static final int MANY = 60;

    @TempDir
    Path folder;

    static List<Path> samples() {
        return Printed.samples();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void theReportOfASampleKeepsItsClaims(Path sample) throws Exception {
        assertClaims(Printed.of(sample, folder));
    }

    @ParameterizedTest
    @CsvSource({"a4, si", "letter, us", "a4, both"})
    void aReportThatAsksEverythingKeepsItsClaims(String paper, String units) throws Exception {
        Printed printed = Printed.stress(folder, "--paper", paper, "--units", units);
        assertEquals(StressPart.PLACES, printed.review().features().size());
        assertTrue(printed.review().findings().size() + printed.review().questions().size() >= MANY);
        assertClaims(printed);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void theAnnexOfRemediesKeepsThemToo(Path sample) throws Exception {
        Printed printed = Printed.of(sample, folder, "--with-remedies");
        assertClaims(printed);
        List<String> pages = PdfText.pages(printed.pdf());
        assertTrue(pages.stream().anyMatch(page -> page.contains("Contents") && page.contains("Annex D")), "contents");
        assertOrder(String.join(" ", pages), 0, List.of("Annex D", "Annex C", "Annex D", "were tried"));
    }

    private static void assertClaims(Printed printed) throws Exception {
        assertEquals(List.of(), Validator.failures(printed.pdf(), "3a"));
        assertEquals(List.of(), Validator.failures(printed.pdf(), "ua1"));
    }

    @Test
    void longNamesAndLettersOfOtherAlphabetsAreFoundWhole() throws Exception {
        Printed printed = Printed.stress(folder);
        String text = String.join(" ", PdfText.pages(printed.pdf()));
        for (int place = 1; place <= StressPart.PLACES; place++) {
            assertTrue(text.contains(StressPart.id(place)), StressPart.id(place));
        }
        assertTrue(text.contains("Zo\u00eb \u0141ukasiewicz-\u00d8stergaard"));
        // broken over lines, the name is whole but for spaces
        assertTrue(text.replace(" ", "").contains(StressPart.NAME.replace(" ", "")), StressPart.NAME);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void theTextIsReadInTheOrderOfTheReport(Path sample) throws Exception {
        Printed printed = Printed.of(sample, folder);
        String text = String.join(" ", PdfText.pages(printed.pdf()));
        List<String> order = new ArrayList<>(List.of("Stress-corrosion review", "part number",
                printed.review().verdict().words(), "Can the part be released as described?", "Contents",
                "Cautions, and who decides", "Scope", "The part", "Route as understood", "Findings"));
        int from = assertOrder(text, 0, order);
        int findings = from;
        for (Finding finding : printed.review().findings()) {
            int at = text.indexOf(finding.id(), findings);
            assertTrue(at >= findings, finding.id() + " is not printed among the findings");
        }
        assertOrder(text, from, List.of("Rules asked without a finding", "Open questions", "Stress against threshold",
                "Calculations", "Figures", "Actions and dispositions", "Sources", "Signatures", "Annex A", "Annex B"));
    }

    private static int assertOrder(String text, int start, List<String> order) {
        int from = start;
        for (String words : order) {
            int at = text.indexOf(words, from);
            assertTrue(at >= 0, "'" + words + "' does not follow what stands before it");
            // the table of contents names the sections once before they come
            from = words.equals("Contents") ? text.indexOf("Annex B", at) + 1 : at + 1;
        }
        return from;
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everyFigureIsToldInWords(Path sample) throws Exception {
        Printed printed = Printed.of(sample, folder);
        try (PDDocument document = Loader.loadPDF(printed.pdf())) {
            List<String> told = new ArrayList<>();
            figures(document.getDocumentCatalog().getStructureTreeRoot(), told);
            assertFalse(told.isEmpty());
            for (String words : told) {
                assertTrue(words != null && words.length() > 20, "a figure is told as '" + words + "'");
            }
        }
    }

    private static void figures(PDStructureNode node, List<String> told) throws IOException {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                if (element.getStructureType().equals("Figure")) {
                    told.add(element.getAlternateDescription());
                }
                figures(element, told);
            }
        }
    }
}
