package org.shortgrain.report.pdf;

import java.util.List;
import java.util.Optional;
import org.shortgrain.report.pdf.ReviewFigures.Drawn;
import org.shortgrain.report.pdf.figure.GrainSketch;
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
        if (!report.stated().isValue(BASIS) && AXES.stream().noneMatch(report.stated()::isValue)) {
            return List.of();
        }
        Optional<FeatureReview> worst = report.review().features().stream()
                .filter(feature -> feature.governing().isPresent())
                .reduce((one, other) -> use(other) > use(one) ? other : one);
        Optional<GrainDirection> pulled = worst.flatMap(FeatureReview::governing)
                .map(direction -> direction.sustained().direction());
        List<String> axes = AXES.stream().map(path -> report.stated().isValue(path) ? report.declared(path) : "?")
                .toList();
        String title = title(report, worst, pulled);
        String alternative = report.words(FigureWords.FIGURE_GRAIN_ALTERNATIVE, axes.get(0), axes.get(1), axes.get(2),
                title);
        String note = report.words(FigureWords.FIGURE_GRAIN_NOTE, FrontPage.spoken(report.declared(BASIS)));
        Optional<String> parting = report.stated().isValue(PARTING)
                ? Optional.of(report.words(FigureWords.FIGURE_GRAIN_PARTING)) : Optional.empty();
        GrainSketch sketch = new GrainSketch(title, alternative, note, axes,
                pulled.map(direction -> GrainSketch.Direction.valueOf(direction.name())), parting);
        return List.of(new Drawn(sketch, Section.PART, worst.map(FeatureReview::id), Optional.empty()));
    }

    private static double use(FeatureReview feature) {
        return feature.governing().flatMap(direction -> direction.utilisation()).map(share -> share.high())
                .orElse(0.0);
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
