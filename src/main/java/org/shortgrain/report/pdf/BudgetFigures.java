package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shortgrain.report.pdf.ReviewFigures.Drawn;
import org.shortgrain.report.pdf.figure.StressBudget;
import org.shortgrain.review.Amount;
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
            return bar.threshold().filter(threshold -> bar.high() >= bar.limit().orElse(threshold)).isPresent();
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
            figures.add(new Drawn(budget(report, some), Section.STRESS,
                    some.stream().map(Entry::feature).distinct().count() == 1 ? Optional.of(some.get(0).feature())
                            : Optional.empty(), Optional.empty()));
        }
        return figures;
    }

    private static StressBudget.Bar bar(Report report, String feature, DirectionReview direction) {
        Amount total = direction.sustained().total();
        List<StressBudget.Part> parts = direction.sustained().parts().stream()
                .map(part -> new StressBudget.Part(part.source(), stress(report, part.amount().value()))).toList();
        Optional<Double> threshold = direction.threshold().map(limit -> stress(report, limit.amount().low()));
        Optional<Double> limit = direction.threshold().filter(known -> known.factor() != 1)
                .map(known -> stress(report, limit(known)));
        return new StressBudget.Bar(feature + ", " + direction.sustained().direction(), parts,
                stress(report, total.low()), stress(report, total.high()), threshold, limit);
    }

    private static double limit(Threshold threshold) {
        return threshold.amount().low() * threshold.factor();
    }

    private static double stress(Report report, double megapascals) {
        return report.numbers().ofMegapascals(megapascals);
    }

    private static StressBudget budget(Report report, List<Entry> entries) {
        String unit = report.numbers().stressUnit();
        String alternative = entries.stream().map(entry -> words(report, entry.bar(), unit))
                .collect(Collectors.joining(" "));
        return new StressBudget(title(report, entries), alternative, report.words(FigureWords.FIGURE_BUDGET_NOTE),
                unit, entries.stream().map(Entry::bar).toList());
    }

    private static String title(Report report, List<Entry> entries) {
        Optional<Entry> worst = entries.stream().filter(Entry::reaches)
                .max(Comparator.comparingDouble(entry -> entry.bar().high() / entry.bar().threshold().orElse(1.0)));
        if (worst.isPresent()) {
            String most = worst.get().bar().parts().stream()
                    .max(Comparator.comparingDouble(StressBudget.Part::value))
                    .map(part -> report.words(FigureWords.FIGURE_BUDGET_MOST, part.source())).orElse("");
            return report.words(FigureWords.FIGURE_BUDGET_OVER, worst.get().bar().place(), most);
        }
        boolean judged = entries.stream().anyMatch(entry -> entry.bar().threshold().isPresent());
        return report.words(judged ? FigureWords.FIGURE_BUDGET_UNDER : FigureWords.FIGURE_BUDGET_UNKNOWN);
    }

    private static String words(Report report, StressBudget.Bar bar, String unit) {
        double sum = bar.parts().stream().mapToDouble(StressBudget.Part::value).sum();
        String parts = bar.parts().stream()
                .map(part -> report.words(FigureWords.FIGURE_BUDGET_PART, part.source(), digits(part.value())))
                .collect(Collectors.joining(", "));
        return report.words(FigureWords.FIGURE_BUDGET_BAR, bar.place(), parts, digits(sum), unit, digits(bar.low()),
                digits(bar.high()),
                bar.threshold().map(BudgetFigures::digits).orElseGet(() -> report.words(Label.NOT_PUBLISHED)));
    }

    private static String digits(double value) {
        return Digits.print(value, 3);
    }
}
