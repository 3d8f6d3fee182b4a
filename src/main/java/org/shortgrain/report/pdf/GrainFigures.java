package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shortgrain.report.pdf.ReviewFigures.Drawn;
import org.shortgrain.report.pdf.figure.GrainSketch;
import org.shortgrain.review.Amount;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.terms.GrainDirection;

/** The directions of the grain and the direction that is pulled most at the place where the threshold is used most. */
final class GrainFigures {

    private static final List<String> AXES = List.of("/grain/L", "/grain/LT", "/grain/ST");
    private static final String BASIS = "/grain/basis";
    private static final String PARTING = "/grain/parting_line";

    private GrainFigures() {
    }

    static List<Drawn> of(Report report) {
        boolean declared = report.stated().isValue(BASIS);
        List<String> axes = new ArrayList<>();
        for (String axis : AXES) {
            boolean known = report.stated().isValue(axis);
            declared |= known;
            axes.add(known ? report.declared(axis) : "?");
        }
        if (!declared) {
            return List.of();
        }
        Optional<FeatureReview> worst = worst(report);
        Optional<GrainDirection> pulled = worst.isPresent() && worst.get().governing().isPresent()
                ? Optional.of(worst.get().governing().get().sustained().direction()) : Optional.empty();
        String title = title(report, worst, pulled);
        String alternative = report.words(FigureWords.FIGURE_GRAIN_ALTERNATIVE, axes.get(0), axes.get(1), axes.get(2),
                title);
        String note = report.words(FigureWords.FIGURE_GRAIN_NOTE, FrontPage.spoken(report.declared(BASIS)));
        Optional<String> parting = report.stated().isValue(PARTING)
                ? Optional.of(report.words(FigureWords.FIGURE_GRAIN_PARTING)) : Optional.empty();
        GrainSketch sketch = new GrainSketch(title, alternative, note, axes, pulled.isPresent()
                ? Optional.of(GrainSketch.Direction.valueOf(pulled.get().name())) : Optional.empty(), parting);
        return List.of(new Drawn(sketch, Section.PART,
                worst.isPresent() ? Optional.of(worst.get().id()) : Optional.empty(), Optional.empty()));
    }

    /** The first of those whose threshold is used most. */
    private static Optional<FeatureReview> worst(Report report) {
        Optional<FeatureReview> worst = Optional.empty();
        for (FeatureReview feature : report.review().features()) {
            if (feature.governing().isPresent() && (worst.isEmpty() || use(feature) > use(worst.get()))) {
                worst = Optional.of(feature);
            }
        }
        return worst;
    }

    private static double use(FeatureReview feature) {
        Optional<Amount> share = feature.governing().orElseThrow().utilisation();
        return share.isPresent() ? share.get().high() : 0;
    }

    private static String title(Report report, Optional<FeatureReview> worst, Optional<GrainDirection> pulled) {
        if (worst.isEmpty() || pulled.isEmpty()) {
            return report.words(FigureWords.FIGURE_GRAIN_UNKNOWN);
        }
        return pulled.get() == GrainDirection.ST
                ? report.words(FigureWords.FIGURE_GRAIN_ST, worst.get().id())
                : report.words(FigureWords.FIGURE_GRAIN_OTHER, worst.get().id(), pulled.get().name());
    }
}
