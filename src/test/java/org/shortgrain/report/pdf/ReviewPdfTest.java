package org.shortgrain.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.report.pdf.tagged.Fonts;
import org.shortgrain.report.pdf.tagged.Paper;
import org.shortgrain.report.pdf.tagged.Validator;
import org.shortgrain.review.Amount;
import org.shortgrain.review.Calculation;
import org.shortgrain.review.Contribution;
import org.shortgrain.review.DirectionReview;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Review;
import org.shortgrain.review.SustainedStress;
import org.shortgrain.review.Verdict;
import org.shortgrain.terms.GrainDirection;

class ReviewPdfTest {

    private static Fonts fonts;
    private static Wording wording;
    private static byte[] usual;
    private static List<String> pages;
    private static String text;

    @BeforeAll
    static void write() throws IOException {
        fonts = Fonts.load();
        wording = Wording.shipped();
        usual = pdf(SampleReview.usual(), SampleReview.options());
        pages = PdfText.pages(usual);
        text = String.join("\n", pages);
    }

    @AfterAll
    static void close() {
        fonts.close();
    }

    private static byte[] pdf(Review review, ReviewPdf.Options options) {
        return ReviewPdf.write(review, SampleReview.attachments(), options, wording, fonts).bytes();
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void a_report_keeps_its_claims_on_either_paper(Paper paper) throws Exception {
        assertClaims(pdf(SampleReview.usual(), SampleReview.options(paper, Units.BOTH)));
    }

    @Test
    void a_report_of_twelve_places_sixty_findings_and_long_names_keeps_its_claims() throws Exception {
        assertClaims(pdf(SampleReview.large(), SampleReview.options()));
    }

    @ParameterizedTest
    @EnumSource(Verdict.class)
    void a_report_with_nothing_but_a_verdict_keeps_its_claims(Verdict verdict) throws Exception {
        byte[] bytes = ReviewPdf.write(SampleReview.empty(verdict), List.of(), SampleReview.options(), wording, fonts)
                .bytes();
        assertClaims(bytes);
        assertTrue(PdfText.pages(bytes).get(0).contains(verdict.words()));
    }

    private static void assertClaims(byte[] bytes) throws Exception {
        assertEquals(List.of(), Validator.failures(bytes, "3a"));
        assertEquals(List.of(), Validator.failures(bytes, "ua1"));
    }

    @Test
    void the_same_review_gives_the_same_bytes_under_another_locale() {
        Locale locale = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("de-DE"));
            assertArrayEquals(usual, pdf(SampleReview.usual(), SampleReview.options()));
        } finally {
            Locale.setDefault(locale);
        }
    }

    @Test
    void the_sections_follow_one_another() {
        int from = text.indexOf("Annex B: files carried by this document") + 1;
        for (Section section : Section.values()) {
            String heading = section.heading(wording).replace('\u2002', ' ');
            int at = text.indexOf(heading, from);
            assertTrue(at > 0, heading + " does not follow the section before it");
            from = at + 1;
        }
    }

    @Test
    void page_one_says_what_part_what_verdict_where_the_factors_meet_and_what_to_do_first() {
        String first = pages.get(0);
        for (String words : List.of("EX-7001-1", "OBJECTION", "Material, stress and environment meet at GROOVE-1.",
                "GROOVE-1", "LUG-2", "\u25a0 present", "\u25a1 absent", "\u25c7 unknown", "F-01", "F-02", "F-03",
                "Over-age the forging to T73", "Q-01", "WARNING", SampleReview.HASH, "DRAFT")) {
            assertTrue(first.contains(words), "'" + words + "' is not on page one:\n" + first);
        }
    }

    @Test
    void the_number_on_page_one_leads_to_its_sum_its_calculation_its_input_and_its_source() throws IOException {
        try (PDDocument document = Loader.loadPDF(usual)) {
            Link sum = link(document, 0, "ST 96\u00a0MPa");
            assertTrue(pages.get(sum.to()).contains("quench residual after machining"));
            Link calculation = link(document, sum.to(), "C-01");
            assertTrue(pages.get(calculation.to()).contains("Residual stress at the finished surface, ST"));
            Link input = link(document, calculation.to(), "/form/heat_treat_thickness");
            assertTrue(pages.get(input.to()).contains("3 in (76.2 mm)"));
            Link source = link(document, calculation.to(), "handbook-1");
            assertTrue(pages.get(source.to()).contains("An invented handbook of thresholds, edition 3, 2001"));
        }
    }

    private record Link(String words, int to) {
    }

    private static Link link(PDDocument document, int page, String words) throws IOException {
        for (Link link : links(document, document.getPage(page))) {
            if (link.words().equals(words)) {
                return link;
            }
        }
        throw new AssertionError("page " + (page + 1) + " has no link '" + words + "'");
    }

    private static List<Link> links(PDDocument document, PDPage page) throws IOException {
        List<Link> links = new ArrayList<>();
        for (PDAnnotation annotation : page.getAnnotations()) {
            if (annotation instanceof PDAnnotationLink link) {
                PDPageXYZDestination to = (PDPageXYZDestination) link.getDestination();
                links.add(new Link(link.getContents(), document.getPages().indexOf(to.getPage())));
            }
        }
        return links;
    }

    @Test
    void a_finding_stands_with_evidence_reason_remedies_place_and_sources() {
        Finding finding = SampleReview.usual().findings().get(0);
        List<String> parts = new ArrayList<>(List.of(finding.statement(), finding.why(), "rule " + finding.rule(),
                "/features/0/fit line 31", "handbook-1, table 5 (read)", "lecture-2 (memory)"));
        parts.addAll(finding.evidence());
        parts.addAll(finding.remedies());
        for (String part : parts) {
            assertTrue(text.contains(part), part);
        }
        assertTrue(text.contains("FIT-02, FIT-04"), "rules that a finding stands for");
        assertTrue(text.contains("rests only on sources that the authors of the rulebook have not seen"));
    }

    @Test
    void figures_state_what_they_show() {
        for (String title : List.of("GROOVE-1 is pulled across its short grain", "Operations that findings name: 60, 90; this order would break no rule of order: 60, 20, 21, 30, 70, 90",
                "GROOVE-1, ST: the tension reaches the threshold; the largest part is quench residual after machining",
                "GROOVE-1, ST: machining leaves tension of 70 MPa at the new surface",
                "LUG-2: the fit leaves 18 MPa of hoop tension at the bore", "GROOVE-1: water can stand in the pocket")) {
            assertTrue(text.contains(title), title);
        }
    }

    @Test
    void a_curve_does_not_speak_for_a_result_that_is_higher_than_it() {
        Review review = SampleReview.usual();
        Calculation known = review.computations().get(0);
        Computed curve = known.computed();
        Computed higher = new Computed(curve.id(), curve.title(), curve.unit(), Band.exact(150e6), curve.equation(),
                curve.inputs(), curve.steps(), curve.rangeBasis(), curve.validity(), curve.sources(), curve.notes(),
                curve.profiles());
        Report report = Report.of(review, List.of(), SampleReview.options(), wording);
        assertEquals("GROOVE-1, ST: residual stress of 150\u00a0MPa counts at the new surface; the curve is nominal",
                SectionFigures.of(report, new Calculation(known.id(), known.feature(), higher)).get(0).figure()
                        .title());
    }

    @Test
    void numbers_can_be_printed_in_customary_units_or_in_both() throws IOException {
        // 96 MPa / 6.894757 MPa per ksi = 13.92
        String customary = PdfText.pages(pdf(SampleReview.usual(), SampleReview.options(Paper.LETTER, Units.US))).get(0);
        assertTrue(customary.contains("13.9 ksi"), customary);
        String both = PdfText.pages(pdf(SampleReview.usual(), SampleReview.options(Paper.A4, Units.BOTH))).get(0);
        assertTrue(both.contains("[13.9 ksi]"), both);
    }

    @Test
    void what_a_user_writes_is_never_taken_for_a_mark_of_the_wording() throws IOException {
        Review known = SampleReview.usual();
        Review review = named(known, new Review.PartId("**EX** ${part} `7`", "C", "[counts]"), known.features());
        String first = PdfText.pages(pdf(review, SampleReview.options())).get(0);
        assertTrue(first.contains("**EX** ${part} `7`"), first);
        assertTrue(first.contains("[counts]"), first);
    }

    @Test
    void a_name_that_the_review_does_not_list_is_printed_without_a_link() throws IOException {
        Review known = SampleReview.usual();
        FeatureReview feature = known.features().get(0);
        Amount amount = new Amount("MPa", 5, 5, 5);
        SustainedStress stress = new SustainedStress(GrainDirection.L, amount,
                List.of(new Contribution("clamp-up", amount, Optional.of("C-99"))));
        Review review = named(known, known.part(), List.of(new FeatureReview(feature.id(), feature.what(),
                feature.material(), feature.stress(), feature.environment(),
                List.of(new DirectionReview(stress, Optional.empty(), Optional.empty())))));
        assertTrue(String.join("\n", PdfText.pages(pdf(review, SampleReview.options()))).contains("C-99"));
    }

    private static Review named(Review known, Review.PartId part, List<FeatureReview> features) {
        return new Review(known.tool(), known.rulebook(), known.input(), known.contentHash(), part, known.purpose(),
                known.preparedBy(), known.date(), known.verdict(), known.because(), features, known.findings(),
                known.questions(), known.assumptions(), known.computations(), known.material(), known.route(),
                known.stated(), known.rulesApplied(), known.rulesNotApplicable(), known.readNotJudged(),
                known.sources(), known.cautions());
    }

    @Test
    void a_supplier_pre_check_says_so_on_every_page_and_that_it_is_not_valid_for_release() throws IOException {
        List<String> sheets = PdfText.pages(pdf(SampleReview.large(), SampleReview.options()));
        assertTrue(sheets.stream().allMatch(sheet -> sheet.contains("SUPPLIER PRE-CHECK")));
        assertTrue(String.join("\n", sheets).contains(SampleReview.PRECHECK));
    }

    @Test
    void a_report_for_signature_is_banded_as_valid_only_when_signed() throws IOException {
        ReviewPdf.Options draft = SampleReview.options();
        List<String> sheets = PdfText.pages(pdf(SampleReview.usual(), new ReviewPdf.Options(draft.paper(), draft.units(),
                ReviewPdf.Status.FOR_SIGNATURE, draft.number(), draft.issue(), draft.made())));
        assertTrue(sheets.stream().allMatch(sheet -> sheet.contains("VALID ONLY WHEN SIGNED")));
        assertFalse(String.join("\n", sheets).contains("DRAFT"));
    }

    @Test
    void the_cautions_stand_before_the_findings_and_the_warning_on_page_one() {
        assertTrue(pages.get(0).contains("Cracks of this kind can grow unseen."));
        int findings = text.indexOf("The gravest first.");
        for (String caution : List.of("Cracks of this kind can grow unseen.", "This report is advice.",
                SampleReview.PRECHECK)) {
            int at = text.indexOf(caution);
            assertTrue(at > 0 && at < findings, caution);
        }
    }
}
