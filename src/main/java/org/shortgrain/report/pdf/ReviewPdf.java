package org.shortgrain.report.pdf;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.shortgrain.report.change.Comparison;
import org.shortgrain.report.pdf.tagged.Attachment;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Fonts;
import org.shortgrain.report.pdf.tagged.Manuscript;
import org.shortgrain.report.pdf.tagged.Metadata;
import org.shortgrain.report.pdf.tagged.Paper;
import org.shortgrain.report.pdf.tagged.PdfWriter;
import org.shortgrain.report.pdf.tagged.Running;
import org.shortgrain.review.Remedies;
import org.shortgrain.review.Review;

/**
 * The findings report: a review set as a PDF that can be read on paper, traced number by number, archived, and signed
 * later without a change.
 */
public final class ReviewPdf {

    private static final String LANGUAGE = "en-GB";
    private static final String TOOL = "Shortgrain ";
    private static final String PRECHECK = "supplier_precheck";
    private static final int SHORT_HASH = 16;

    private ReviewPdf() {
    }

    /** What the report is for; printed on every page. */
    public enum Status {
        /** For discussion. */
        DRAFT,
        /** Valid once it bears the signatures. */
        FOR_SIGNATURE
    }

    /**
     * How a report is printed.
     *
     * @param paper  size of the sheets
     * @param units  units of numbers
     * @param status what it is for
     * @param number number of the report; empty text for none
     * @param issue  issue of the report; empty text for none
     * @param made   date of making, also of the file; from the caller, so that a report can be made again
     */
    public record Options(Paper paper, Units units, Status status, String number, String issue, OffsetDateTime made) {
        /** Refuses missing parts. */
        public Options {
            Objects.requireNonNull(paper, "paper");
            Objects.requireNonNull(units, "units");
            Objects.requireNonNull(status, "status");
            Objects.requireNonNull(number, "number");
            Objects.requireNonNull(issue, "issue");
            Objects.requireNonNull(made, "made");
        }
    }

    /**
     * {@return the report as a file; the same arguments give the same bytes}
     *
     * @param review      the review
     * @param attachments files that the report carries, the description among them
     * @param options     how it is printed
     * @param wording     its words
     * @param fonts       parsed fonts, used by this thread alone
     */
    public static PdfWriter.Written write(Review review, List<Attachment> attachments, Options options,
            Wording wording, Fonts fonts) {
        return write(review, attachments, options, wording, fonts, Optional.empty());
    }

    /**
     * {@return the report with what changed against an earlier issue; the same arguments give the same bytes}
     *
     * @param review      the review
     * @param attachments files that the report carries, the description among them
     * @param options     how it is printed
     * @param wording     its words
     * @param fonts       parsed fonts, used by this thread alone
     * @param change      this review against an earlier one; empty if it is not compared
     */
    public static PdfWriter.Written write(Review review, List<Attachment> attachments, Options options,
            Wording wording, Fonts fonts, Optional<Comparison> change) {
        return PdfWriter.write(manuscript(review, attachments, options, wording, change), fonts);
    }

    /**
     * {@return the report with a study of remedies as an annex; the same arguments give the same bytes}
     *
     * @param review      the review
     * @param attachments files that the report carries, the description among them
     * @param options     how it is printed
     * @param wording     its words
     * @param fonts       parsed fonts, used by this thread alone
     * @param change      this review against an earlier one; empty if it is not compared
     * @param study       what would clear the part
     */
    public static PdfWriter.Written write(Review review, List<Attachment> attachments, Options options,
            Wording wording, Fonts fonts, Optional<Comparison> change, Remedies study) {
        Manuscript whole = manuscript(review, attachments, options, wording, change);
        Report report = Report.of(review, attachments, options, wording);
        List<Block> blocks = new ArrayList<>(whole.blocks());
        blocks.replaceAll(block -> block instanceof Block.Contents contents
                ? contents.and(RemedyPages.entry(report)) : block);
        blocks.addAll(RemedyPages.blocks(report, study));
        return PdfWriter.write(new Manuscript(whole.metadata(), whole.running(), options.paper(), blocks, attachments), fonts);
    }

    static Manuscript manuscript(Review review, List<Attachment> attachments, Options options, Wording wording) {
        return manuscript(review, attachments, options, wording, Optional.empty());
    }

    private static Manuscript manuscript(Review review, List<Attachment> attachments, Options options, Wording wording,
            Optional<Comparison> change) {
        Report report = Report.of(review, attachments, options, wording);
        List<Block> blocks = new ArrayList<>(blocks(report));
        blocks.addAll(ChangePages.blocks(report, change));
        return new Manuscript(metadata(report), running(report), options.paper(), blocks, attachments);
    }

    private static List<Block> blocks(Report report) {
        ReviewFigures figures = ReviewFigures.of(report);
        List<Block> blocks = new ArrayList<>();
        blocks.addAll(FrontPage.blocks(report));
        blocks.addAll(Preliminaries.blocks(report));
        blocks.addAll(PartPages.blocks(report, figures));
        blocks.addAll(RoutePages.blocks(report, figures));
        blocks.addAll(FindingPages.blocks(report));
        blocks.addAll(QuestionPages.blocks(report));
        blocks.addAll(StressPages.blocks(report, figures));
        blocks.addAll(ServicePages.blocks(report, figures));
        blocks.addAll(CalculationPages.blocks(report, figures));
        blocks.addAll(figures.section(report));
        blocks.addAll(ClosingPages.blocks(report));
        blocks.addAll(AnnexPages.blocks(report));
        return blocks;
    }

    private static Metadata metadata(Report report) {
        Review review = report.review();
        String title = report.words(Label.RUNNING_HEAD, review.part().number(), review.part().revision());
        String author = review.preparedBy().isEmpty() ? TOOL.strip() : review.preparedBy();
        return new Metadata(title, author,
                report.words(Label.REPORT_SUBJECT, review.part().number(), review.part().revision()),
                review.verdict().words(), LANGUAGE, TOOL + review.tool().version(), report.options().made(),
                review.contentHash());
    }

    private static Running running(Report report) {
        Review review = report.review();
        return new Running(report.words(Label.RUNNING_HEAD, review.part().number(), review.part().revision()),
                banner(report), report.words(Label.RUNNING_FOOT, review.contentHash().substring(0, SHORT_HASH)),
                report.words(Label.RUNNING_MIDDLE, report.options().number(), review.date()).strip(),
                report.words(Label.RUNNING_PAGES, "{page}", "{pages}"));
    }

    static String banner(Report report) {
        if (report.review().purpose().equals(PRECHECK)) {
            return report.words(Label.BANNER_PRECHECK);
        }
        return report.words(report.options().status() == Status.DRAFT ? Label.BANNER_DRAFT
                : Label.BANNER_FOR_SIGNATURE);
    }

    static boolean isPrecheck(Report report) {
        return report.review().purpose().equals(PRECHECK);
    }
}
