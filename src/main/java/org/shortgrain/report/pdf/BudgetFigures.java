package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shortgrain.report.pdf.ReviewFigures.Drawn;
import org.shortgrain.report.pdf.figure.StressBudget;
import org.shortgrain.review.Amount;
import org.shortgrain.review.Contribution;
import org.shortgrain.review.DirectionReview;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.Threshold;

/** What adds up to the sustained tension, against the threshold: one bar for each place and direction that is pulled. */
final class BudgetFigures {

    /** More bars do not fit on a page beside their title and legend. */
    private static final int BARS = 10;

    private BudgetFigures() {
    }

    /** A bar with what the title needs of it. */
    private record Entry(String feature, DirectionReview direction, StressBudget.Bar bar) {

        boolean reaches() {
            return bar.threshold().isPresent() && bar.high() >= bar.limit().orElse(bar.threshold().get());
        }

        double share() {
            return bar.high() / bar.threshold().orElse(1.0);
        }
    }

    static List<Drawn> of(Report report) {
        List<Entry> entries = new ArrayList<>();
        for (FeatureReview feature : report.review().features()) {
            for (DirectionReview direction : feature.directions()) {
                if (direction.sustained().total().high() > 0) {
                    entries.add(new Entry(feature.id(), direction, bar(report, feature.id(), direction)));
                }
            }
        }
        List<Drawn> figures = new ArrayList<>();
        for (int from = 0; from < entries.size(); from += BARS) {
            List<Entry> some = entries.subList(from, Math.min(entries.size(), from + BARS));
            figures.add(new Drawn(budget(report, some), Section.STRESS, feature(some), Optional.empty()));
        }
        return figures;
    }

    /** The feature of all the bars, if it is one. */
    private static Optional<String> feature(List<Entry> entries) {
        String first = entries.get(0).feature();
        for (Entry entry : entries) {
            if (!entry.feature().equals(first)) {
                return Optional.empty();
            }
        }
        return Optional.of(first);
    }

    private static StressBudget.Bar bar(Report report, String feature, DirectionReview direction) {
        Amount total = direction.sustained().total();
        List<StressBudget.Part> parts = new ArrayList<>();
        for (Contribution part : direction.sustained().parts()) {
            parts.add(new StressBudget.Part(part.source(), stress(report, part.amount().value())));
        }
        Optional<Double> threshold = Optional.empty();
        Optional<Double> limit = Optional.empty();
        if (direction.threshold().isPresent()) {
            Threshold known = direction.threshold().get();
            threshold = Optional.of(stress(report, known.amount().low()));
            limit = known.factor() == 1 ? Optional.empty()
                    : Optional.of(stress(report, known.amount().low() * known.factor()));
        }
        return new StressBudget.Bar(feature + ", " + direction.sustained().direction(), parts,
                stress(report, total.low()), stress(report, total.high()), threshold, limit);
    }

    private static double stress(Report report, double megapascals) {
        return report.numbers().ofMegapascals(megapascals);
    }

    private static StressBudget budget(Report report, List<Entry> entries) {
        String unit = report.numbers().stressUnit();
        List<String> sentences = new ArrayList<>();
        List<StressBudget.Bar> bars = new ArrayList<>();
        for (Entry entry : entries) {
            sentences.add(words(report, entry.bar(), unit));
            bars.add(entry.bar());
        }
        return new StressBudget(title(report, entries), String.join(" ", sentences),
                report.words(FigureWords.FIGURE_BUDGET_NOTE), unit, bars);
    }

    private static String title(Report report, List<Entry> entries) {
        Optional<Entry> worst = Optional.empty();
        boolean judged = false;
        for (Entry entry : entries) {
            judged |= entry.bar().threshold().isPresent();
            if (entry.reaches() && (worst.isEmpty() || entry.share() >= worst.get().share())) {
                worst = Optional.of(entry);
            }
        }
        if (worst.isPresent()) {
            return report.words(FigureWords.FIGURE_BUDGET_OVER, worst.get().bar().place(),
                    most(report, worst.get().bar().parts()));
        }
        return report.words(judged ? FigureWords.FIGURE_BUDGET_UNDER : FigureWords.FIGURE_BUDGET_UNKNOWN);
    }

    /** What pulls most. */
    private static String most(Report report, List<StressBudget.Part> parts) {
        if (parts.isEmpty()) {
            return "";
        }
        StressBudget.Part most = parts.get(0);
        for (StressBudget.Part part : parts) {
            most = part.value() >= most.value() ? part : most;
        }
        return report.words(FigureWords.FIGURE_BUDGET_MOST, most.source());
    }

    private static String words(Report report, StressBudget.Bar bar, String unit) {
        double sum = 0;
        List<String> parts = new ArrayList<>();
        for (StressBudget.Part part : bar.parts()) {
            sum += part.value();
            parts.add(report.words(FigureWords.FIGURE_BUDGET_PART, part.source(), digits(part.value())));
        }
        return report.words(FigureWords.FIGURE_BUDGET_BAR, bar.place(), String.join(", ", parts), digits(sum), unit,
                digits(bar.low()), digits(bar.high()), bar.threshold().isPresent() ? digits(bar.threshold().get())
                        : report.words(Label.NOT_PUBLISHED));
    }

    private static String digits(double value) {
        return Digits.print(value, 3);
    }
}
