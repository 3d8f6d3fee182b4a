package org.shortgrain.report.pdf.tagged;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.ExternalSigningSupport;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.form.PDField;
import org.apache.pdfbox.pdmodel.interactive.form.PDSignatureField;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.shortgrain.report.pdf.figure.SampleFigures;

class PdfWriterTest {

    private static Fonts fonts;
    private static PdfWriter.Written written;
    private static List<String> pages;
    private static String text;

    @BeforeAll
    static void write() throws IOException {
        fonts = Fonts.load();
        written = PdfWriter.write(StressDocument.manuscript(Paper.A4), fonts);
        pages = pages(written.bytes());
        text = String.join("\n", pages);
    }

    @AfterAll
    static void close() {
        fonts.close();
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void a_document_that_asks_everything_keeps_its_claims(Paper paper) throws Exception {
        byte[] bytes = PdfWriter.write(StressDocument.manuscript(paper), fonts).bytes();
        assertEquals(List.of(), Validator.failures(bytes, "3a"));
        assertEquals(List.of(), Validator.failures(bytes, "ua1"));
    }

    @Test
    void the_validator_sees_a_claim_that_is_not_kept() throws Exception {
        byte[] spoilt;
        try (PDDocument document = Loader.loadPDF(written.bytes());
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            document.getDocumentCatalog().getCOSObject().removeItem(COSName.MARK_INFO);
            document.save(out);
            spoilt = out.toByteArray();
        }
        assertFalse(Validator.failures(spoilt, "3a").isEmpty());
        assertFalse(Validator.failures(spoilt, "ua1").isEmpty());
    }

    @Test
    void the_same_manuscript_gives_the_same_bytes_wherever_it_is_set() {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try (Fonts others = Fonts.load()) {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
            assertArrayEquals(written.bytes(), PdfWriter.write(StressDocument.manuscript(Paper.A4), others).bytes());
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void other_content_gives_another_file_identifier() throws IOException {
        Metadata known = StressDocument.metadata();
        Metadata other = new Metadata(known.title(), known.author(), known.subject(), known.keywords(),
                known.language(), known.tool(), known.date(), "0123456789abcdef");
        Manuscript manuscript = StressDocument.manuscript(Paper.A4);
        byte[] bytes = PdfWriter.write(new Manuscript(other, manuscript.running(), manuscript.paper(),
                manuscript.blocks(), manuscript.attachments()), fonts).bytes();
        assertFalse(identifier(written.bytes()).equals(identifier(bytes)));
    }

    private static String identifier(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getDocument().getDocumentID().toString();
        }
    }

    @Test
    void text_is_read_in_the_order_of_the_document() throws IOException {
        int from = 0;
        List<String> order = new ArrayList<>(List.of("Stress-corrosion review", "part number", "OBJECTION",
                "A lead paragraph", "CAUTION"));
        for (int i = 1; i <= StressDocument.FINDINGS; i++) {
            order.add(String.format(Locale.ROOT, "F-%03d", i));
            order.add("/features/" + i + "/fit/hole");
            order.add("Over-age to T73");
        }
        order.addAll(List.of("C-01 Hoop stress of the fit", "A row higher than a page", "Lam\u00e9, derived",
                "Figure 1.", "Figure 10.", "I ran the tool", "solution_heat_treat"));
        for (String words : order) {
            int at = text.indexOf(words, from);
            assertTrue(at >= 0, "'" + words + "' does not follow what stands before it");
            from = at + 1;
        }
    }

    @Test
    void letters_of_other_alphabets_and_the_signs_of_the_trade_can_be_found() throws IOException {
        for (String words : List.of("Beschlag, Scharnier \u00e4u\u00dferes", "charni\u00e8re \u03b1\u03b2\u03b3",
                "\u03c3 \u2264 0.5", "\u00b15 \u00b0C", "25 \u00b5m", "\u2300 9.5 mm", "fi and fl, in a fit")) {
            assertTrue(text.contains(words), words);
        }
    }

    @Test
    void what_cannot_be_printed_is_replaced_and_reported() throws IOException {
        // a direction mark that would turn a part number round, a bell, and a letter that the fonts lack
        assertEquals(List.of("U+0007 cannot be printed and stands as \ufffd", "U+202E cannot be printed and stands as"
                + " \ufffd", "U+4E2D cannot be printed and stands as \ufffd"), written.warnings());
        assertTrue(text.contains("hidden \ufffd turned"));
    }

    @Test
    void every_page_bears_its_number_the_number_of_pages_the_content_hash_and_the_banner() throws IOException {
        for (int page = 1; page <= written.pages(); page++) {
            String sheet = pages.get(page - 1);
            assertTrue(sheet.contains("page " + page + " of " + written.pages()), sheet);
            assertTrue(sheet.contains("content 3f2a91bc77d01e45"), sheet);
            assertTrue(sheet.contains("SUPPLIER PRE-CHECK"), sheet);
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void no_letter_leaves_the_margins(Paper paper) throws IOException {
        byte[] bytes = PdfWriter.write(StressDocument.manuscript(paper), fonts).bytes();
        double left = paper.textLeft() - 0.1;
        double right = paper.textLeft() + paper.textWidth() + 0.1;
        // head and foot stand outside of the text, but on the sheet
        double highest = paper.textTop() - 24;
        double lowest = paper.textTop() + paper.textHeight() + 24;
        for (TextPosition letter : letters(bytes)) {
            if (letter.getUnicode().isBlank()) {
                continue;
            }
            double x = letter.getXDirAdj();
            if (letter.getDir() == 0) {
                assertTrue(x >= left && x + letter.getWidthDirAdj() <= right,
                        "'" + letter.getUnicode() + "' stands at " + x);
                double y = letter.getYDirAdj();
                assertTrue(y >= highest && y <= lowest, "'" + letter.getUnicode() + "' stands at height " + y);
            }
        }
    }

    @Test
    void long_words_lose_no_letter() throws IOException {
        String squeezed = pages.get(0).replaceAll("\\s", "");
        assertTrue(squeezed.contains(StressDocument.LONG_NAME));
        assertTrue(squeezed.contains(StressDocument.HASH));
    }

    @Test
    void headings_of_a_table_stand_on_each_of_its_pages_but_are_read_once() throws IOException {
        int headed = 0;
        for (int page = 1; page <= written.pages(); page++) {
            String sheet = pages.get(page - 1);
            if (sheet.contains("The quick brown fox")) {
                assertTrue(sheet.contains("item"), "page " + page);
                headed++;
            }
        }
        assertTrue(headed >= 2, "the high row was to fill more than a page");
        assertEquals(1, tagged("item"), "a repeated heading is an artifact");
    }

    /** How many stretches of the structure tree hold these words and no others. */
    private static long tagged(String words) throws IOException {
        try (PDDocument document = Loader.loadPDF(written.bytes())) {
            long found = 0;
            for (PDPage page : document.getPages()) {
                found += MarkedText.of(page).stream().filter(words::equals).count();
            }
            return found;
        }
    }

    @Test
    void links_lead_to_what_they_name() throws IOException {
        try (PDDocument document = Loader.loadPDF(written.bytes())) {
            int links = 0;
            for (PDPage page : document.getPages()) {
                for (PDAnnotation annotation : page.getAnnotations()) {
                    if (annotation instanceof PDAnnotationLink link && "F-002".equals(link.getContents())) {
                        PDPageXYZDestination to = (PDPageXYZDestination) link.getDestination();
                        int target = document.getPages().indexOf(to.getPage());
                        assertTrue(pages.get(target).contains("GROOVE-2"));
                        links++;
                    }
                }
            }
            assertEquals(1, links);
        }
    }

    @Test
    void the_outline_holds_every_heading_at_its_depth() throws IOException {
        try (PDDocument document = Loader.loadPDF(written.bytes())) {
            List<String> top = new ArrayList<>();
            List<String> findings = new ArrayList<>();
            for (PDOutlineItem item : document.getDocumentCatalog().getDocumentOutline().children()) {
                top.add(item.getTitle());
                if (item.getTitle().equals("Findings")) {
                    item.children().forEach(child -> findings.add(child.getTitle()));
                }
            }
            assertEquals(List.of("Stress-corrosion review", "Findings", "Calculations", "Sources", "Figures",
                    "Signatures", "Annex: input"), top);
            assertEquals(StressDocument.FINDINGS, findings.size());
        }
    }

    @Test
    void every_figure_has_an_alternative_and_a_box() throws IOException {
        try (PDDocument document = Loader.loadPDF(written.bytes())) {
            List<COSDictionary> figures = new ArrayList<>();
            collect(document.getDocumentCatalog().getStructureTreeRoot().getCOSObject(), "Figure", figures);
            assertEquals(SampleFigures.all().size(), figures.size());
            for (COSDictionary figure : figures) {
                assertFalse(figure.getString("Alt").isBlank());
                COSArray box = figure.getCOSDictionary(COSName.A).getCOSArray(COSName.BBOX);
                float[] edges = box.toFloatArray();
                assertTrue(edges[0] < edges[2] && edges[1] < edges[3]);
            }
        }
    }

    private static void collect(COSDictionary element, String type, List<COSDictionary> found) {
        if (type.equals(element.getNameAsString(COSName.S))) {
            found.add(element);
        }
        if (element.getDictionaryObject(COSName.K) instanceof COSDictionary kid) {
            collect(kid, type, found);
        } else if (element.getDictionaryObject(COSName.K) instanceof COSArray kids) {
            for (int i = 0; i < kids.size(); i++) {
                if (kids.getObject(i) instanceof COSDictionary kid && kid.containsKey(COSName.P)) {
                    collect(kid, type, found);
                }
            }
        }
    }

    @Test
    void signature_fields_are_ready_empty_and_on_one_page() throws IOException {
        try (PDDocument document = Loader.loadPDF(written.bytes())) {
            List<String> names = new ArrayList<>();
            List<Integer> pages = new ArrayList<>();
            for (PDField field : document.getDocumentCatalog().getAcroForm().getFields()) {
                PDSignatureField signature = (PDSignatureField) field;
                assertEquals(null, signature.getSignature());
                assertTrue(signature.getWidgets().get(0).getRectangle().getWidth() > 100);
                names.add(field.getPartialName());
                pages.add(document.getPages().indexOf(signature.getWidgets().get(0).getPage()));
            }
            assertEquals(List.of("sigPrepared", "sigChecked", "sigMpReview", "sigStressReview", "sigQuality",
                    "sigApproved"), names);
            assertEquals(1, pages.stream().distinct().count());
        }
    }

    /** Signing appends to the file; the bytes that the earlier signer saw stay what they were. */
    @Test
    void a_field_can_be_signed_without_a_change_of_the_document() throws Exception {
        byte[] signed;
        try (PDDocument document = Loader.loadPDF(written.bytes());
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            PDSignatureField field = (PDSignatureField) document.getDocumentCatalog().getAcroForm()
                    .getField("sigPrepared");
            PDSignature signature = new PDSignature();
            signature.setFilter(PDSignature.FILTER_ADOBE_PPKLITE);
            signature.setSubFilter(PDSignature.SUBFILTER_ETSI_CADES_DETACHED);
            field.setValue(signature);
            document.addSignature(signature);
            ExternalSigningSupport signing = document.saveIncrementalForExternalSigning(out);
            signing.setSignature(new byte[] {1, 2, 3});
            signed = out.toByteArray();
        }
        assertArrayEquals(written.bytes(), Arrays.copyOf(signed, written.bytes().length));
        assertEquals(pages, pages(signed));
        try (PDDocument document = Loader.loadPDF(signed)) {
            assertEquals(1, document.getSignatureDictionaries().size());
        }
    }

    @Test
    void attachments_say_what_they_are_to_the_document() throws IOException {
        try (PDDocument document = Loader.loadPDF(written.bytes())) {
            COSArray associated = document.getDocumentCatalog().getCOSObject().getCOSArray(COSName.AF);
            COSDictionary yaml = (COSDictionary) associated.getObject(0);
            assertEquals("part.yaml", yaml.getString(COSName.UF));
            assertEquals("Source", yaml.getNameAsString(COSName.AF_RELATIONSHIP));
            COSDictionary json = (COSDictionary) associated.getObject(1);
            assertEquals("Data", json.getNameAsString(COSName.AF_RELATIONSHIP));
        }
    }

    @Test
    void every_font_is_embedded_as_a_subset() throws IOException {
        try (PDDocument document = Loader.loadPDF(written.bytes())) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded(), font.getName());
                    assertTrue(font.getName().matches("[A-Z]{6}\\+DejaVu.*"), font.getName());
                }
            }
        }
    }

    @Test
    void a_link_to_nowhere_is_refused() {
        Manuscript manuscript = StressDocument.manuscript(Paper.A4);
        List<Block> blocks = List.of(new Block.Paragraph(Text.EMPTY.link("nowhere", "nowhere"), Block.Tone.BODY));
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class,
                () -> PdfWriter.write(new Manuscript(manuscript.metadata(), manuscript.running(), Paper.A4, blocks,
                        List.of()), fonts));
        assertTrue(refused.getMessage().contains("nowhere"));
    }

    @Test
    void two_places_of_one_name_are_refused() {
        Manuscript manuscript = StressDocument.manuscript(Paper.A4);
        Block heading = new Block.Heading(1, Text.of("Twice"), "twice");
        assertThrows(IllegalArgumentException.class, () -> PdfWriter.write(new Manuscript(manuscript.metadata(),
                manuscript.running(), Paper.A4, List.of(heading, heading), List.of()), fonts));
    }

    private static List<String> pages(byte[] pdf) throws IOException {
        List<String> texts = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                texts.add(stripper.getText(document));
            }
        }
        return texts;
    }

    private static List<TextPosition> letters(byte[] pdf) throws IOException {
        List<TextPosition> letters = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> positions) {
                    letters.addAll(positions);
                }
            }.getText(document);
        }
        return letters;
    }
}
