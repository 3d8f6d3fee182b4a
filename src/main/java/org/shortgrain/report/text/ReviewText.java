package org.shortgrain.report.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shortgrain.review.Amount;
import org.shortgrain.review.Answer;
import org.shortgrain.review.CrackFound;
import org.shortgrain.review.DirectionReview;
import org.shortgrain.review.FactorJudgement;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Grade;
import org.shortgrain.review.InService;
import org.shortgrain.review.InspectionSchedule;
import org.shortgrain.review.OwnTests;
import org.shortgrain.review.Question;
import org.shortgrain.review.Review;
import org.shortgrain.review.Threshold;
import org.shortgrain.terms.PlainText;

/**
 * The summary of a review for a terminal: verdict and why, the three factors of each place, findings and questions in one
 * line each. At most {@value #WIDTH} columns where no single word is longer; no colour, nothing that a terminal obeys.
 */
public final class ReviewText {

    private static final int WIDTH = 96;
    private static final MathContext THREE_DIGITS = new MathContext(3);
    private static final String GAP = "  ";

    private final Review review;
    private final List<String> lines = new ArrayList<>();

    private ReviewText(Review review) {
        this.review = review;
    }

    /**
     * {@return the summary, each line ended by a line feed}
     *
     * @param review the review
     */
    public static String of(Review review) {
        ReviewText text = new ReviewText(review);
        text.head();
        text.features();
        text.findings();
        text.questions();
        text.inService();
        return String.join("\n", text.lines) + "\n";
    }

    private void head() {
        Review.PartId part = review.part();
        String revision = part.revision().isEmpty() ? "revision not stated" : "revision " + part.revision();
        add("", GAP, String.join(", ", List.of(part.number(), revision, part.name())).replaceFirst(", $", ""));
        lines.add(review.verdict().words());
        for (String reason : review.because()) {
            add(GAP, GAP, reason);
        }
    }

    private void features() {
        if (review.features().isEmpty()) {
            return;
        }
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Place", "Material", "Stress", "Environment", "Sustained tension", "Against", "Ratio"));
        for (FeatureReview feature : review.features()) {
            List<String> row = new ArrayList<>(List.of(PlainText.clean(feature.id())));
            for (FactorJudgement factor : feature.factors()) {
                row.add(factor.state().word());
            }
            Optional<DirectionReview> governing = feature.governing();
            row.addAll(governing.isPresent() ? stress(governing.get()) : List.of("not computed", "", ""));
            rows.add(row);
        }
        table(rows);
    }

    private void table(List<List<String>> rows) {
        int[] widths = new int[rows.get(0).size()];
        for (List<String> row : rows) {
            for (int column = 0; column < widths.length; column++) {
                widths[column] = Math.max(widths[column], row.get(column).length());
            }
        }
        lines.add("");
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < widths.length; column++) {
                line.append(PlainText.padded(row.get(column), widths[column])).append(GAP);
            }
            lines.add(line.toString().stripTrailing());
        }
    }

    private static List<String> stress(DirectionReview direction) {
        return List.of(direction.sustained().direction() + " " + range(direction.sustained().total()),
                direction.threshold().isPresent() ? threshold(direction.threshold().get()) : "no threshold",
                direction.utilisation().isPresent() ? range(direction.utilisation().get()) : "");
    }

    private static String threshold(Threshold threshold) {
        String factor = threshold.factor() == 1 ? "" : " x " + number(threshold.factor());
        return number(threshold.amount().low()) + unit(threshold.amount()) + factor;
    }

    private static String range(Amount amount) {
        String range = amount.low() == amount.high() ? ""
                : " (" + number(amount.low()) + " to " + number(amount.high()) + ")";
        return number(amount.value()) + unit(amount) + range;
    }

    private static String unit(Amount amount) {
        return amount.unit().equals("1") ? "" : " " + amount.unit();
    }

    private static String number(double value) {
        BigDecimal rounded = new BigDecimal(value).round(THREE_DIGITS).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    private void findings() {
        lines.add("");
        lines.add(counts());
        for (Finding finding : review.findings()) {
            add(PlainText.padded(finding.id(), 4) + GAP + PlainText.padded(finding.grade().word(), 9) + GAP,
                    " ".repeat(17), place(finding.feature()) + finding.title() + " (" + finding.rule()
                            + (finding.needsConfirmation() ? ", confirm against the source" : "") + ")");
        }
    }

    private String counts() {
        List<String> counted = new ArrayList<>();
        for (Grade grade : Grade.values()) {
            if (review.count(grade) > 0) {
                counted.add(counted(review.count(grade), grade));
            }
        }
        return "Findings: " + (counted.isEmpty() ? "none of the " + review.rulesApplied().size()
                + " rules that were asked" : String.join(", ", counted));
    }

    private static String counted(long count, Grade grade) {
        boolean plural = count > 1 && grade != Grade.ADVICE;
        return count + " " + grade.word() + (plural ? "s" : "");
    }

    private void questions() {
        int decisive = 0;
        for (Question question : review.questions()) {
            decisive += question.decisive() ? 1 : 0;
        }
        if (!review.questions().isEmpty()) {
            lines.add("");
            lines.add("Open questions: " + review.questions().size() + ", " + (decisive == 0 ? "none" : decisive)
                    + " of them decisive");
        }
        for (Question question : review.questions()) {
            add(PlainText.padded(question.id(), 4) + GAP
                    + PlainText.padded(question.decisive() ? "decisive" : "", 9) + GAP, " ".repeat(17),
                    place(question.feature()) + question.text());
            for (Answer answer : question.answers()) {
                add(" ".repeat(17), " ".repeat(19), answer.says());
            }
            if (question.answers().isEmpty()) {
                add(" ".repeat(17), " ".repeat(19), question.outlook());
            }
            if (question.decisive() && !question.findOut().isEmpty()) {
                add(" ".repeat(17), " ".repeat(19), "To find out: " + question.findOut() + ".");
            }
        }
    }

    private void inService() {
        InService service = review.inService();
        if (service.isEmpty()) {
            return;
        }
        lines.add("");
        lines.add("In service");
        for (CrackFound crack : service.cracks()) {
            add(PlainText.padded(crack.id(), 4) + GAP, " ".repeat(6), crack.feature() + ": " + crack.what());
        }
        for (OwnTests tests : service.tests()) {
            String threshold = tests.threshold().isPresent() ? "threshold " + range(tests.threshold().get())
                    : "too few for a threshold";
            add(GAP, GAP + GAP, "Own tests, " + tests.scope() + ": " + threshold + "; "
                    + (tests.counted() ? "counted" : "not counted"));
        }
        for (InspectionSchedule schedule : service.schedules()) {
            String first = schedule.first().isPresent() ? ", first after " + range(schedule.first().get()) : "";
            String repeat = schedule.repeat().isPresent() ? ", then every " + range(schedule.repeat().get()) : "";
            add(GAP, GAP + GAP, schedule.feature() + ", " + schedule.lookedFor() + ": " + schedule.outcome().words()
                    + first + repeat);
        }
    }

    private static String place(Optional<String> feature) {
        return feature.isPresent() ? feature.get() + ": " : "";
    }

    private void add(String first, String indent, String text) {
        lines.addAll(PlainText.lines(first, indent, text, WIDTH));
    }
}
