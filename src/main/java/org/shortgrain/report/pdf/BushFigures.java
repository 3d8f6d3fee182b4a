package org.shortgrain.report.pdf;

import java.util.List;
import java.util.Optional;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.report.pdf.ReviewFigures.Drawn;
import org.shortgrain.report.pdf.figure.BushSection;
import org.shortgrain.review.Calculation;

/** A bush in its lug, for calculations of the hoop stress at a bore. */
final class BushFigures {

    private static final String BORE_HOOP = "fit.bore-hoop";

    private BushFigures() {
    }

    static List<Drawn> of(Report report, Calculation calculation) {
        Computed computed = calculation.computed();
        if (!computed.id().equals(BORE_HOOP)) {
            return List.of();
        }
        Optional<Double> hole = input(computed, "D_hole");
        if (hole.isEmpty()) {
            hole = input(computed, "d");
        }
        Optional<Double> outer = input(computed, "do");
        Optional<Double> bore = input(computed, "di");
        Optional<Computed.Step> interference = step(computed, "delta0");
        if (hole.isEmpty() || outer.isEmpty() || bore.isEmpty() || interference.isEmpty()
                || bore.get() >= hole.get() || hole.get() >= outer.get()) {
            return List.of();
        }
        return List.of(new Drawn(figure(report, calculation, bore.get(), hole.get(), outer.get(), interference.get()),
                Section.FIGURES, calculation.feature(), Optional.of(calculation.id())));
    }

    private static Optional<Double> input(Computed computed, String symbol) {
        for (Computed.Input input : computed.inputs()) {
            if (input.symbol().equals(symbol) && Double.isFinite(input.value().value())) {
                return Optional.of(input.value().value());
            }
        }
        return Optional.empty();
    }

    private static Optional<Computed.Step> step(Computed computed, String symbol) {
        for (Computed.Step step : computed.steps()) {
            if (step.symbol().equals(symbol)) {
                return Optional.of(step);
            }
        }
        return Optional.empty();
    }

    private static BushSection figure(Report report, Calculation calculation, double bore, double hole, double outer,
            Computed.Step interference) {
        Numbers numbers = report.numbers();
        String range = numbers.range(interference.value(), interference.unit());
        String words = report.words(FigureWords.FIGURE_BUSH_INTERFERENCE,
                range.isEmpty() ? numbers.value(interference.value().value(), interference.unit()) : range);
        String place = report.place(calculation.feature());
        String title = report.words(FigureWords.FIGURE_BUSH, place,
                numbers.rounded(calculation.computed().value().value(), SiUnit.PASCAL));
        String alternative = report.words(FigureWords.FIGURE_BUSH_ALTERNATIVE, numbers.value(bore, SiUnit.METRE),
                numbers.value(hole, SiUnit.METRE), numbers.value(outer, SiUnit.METRE), words);
        return new BushSection(title, alternative, report.words(FigureWords.FIGURE_BUSH_NOTE, calculation.id()),
                numbers.lengthUnit(), numbers.stressUnit(), numbers.length(bore), numbers.length(hole),
                numbers.length(outer), words, List.of(), Optional.empty());
    }
}
