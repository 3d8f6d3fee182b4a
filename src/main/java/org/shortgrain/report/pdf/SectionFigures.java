package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.report.pdf.ReviewFigures.Drawn;
import org.shortgrain.report.pdf.figure.Point;
import org.shortgrain.report.pdf.figure.StressThroughSection;
import org.shortgrain.review.Calculation;
import org.shortgrain.review.Contribution;
import org.shortgrain.review.DirectionReview;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.terms.GrainDirection;

/** Residual stress through the section before and after machining, for calculations that carry the curves. */
final class SectionFigures {

    private static final String BEFORE = "before machining";
    private static final String AFTER = "after machining";

    /** Less than this is not seen in the figure. */
    private static final double VISIBLE_SHARE = 0.05;

    private SectionFigures() {
    }

    static List<Drawn> of(Report report, Calculation calculation) {
        Computed computed = calculation.computed();
        if (!governs(report, calculation)) {
            return List.of();
        }
        Optional<Computed.Profile> before = before(computed);
        Optional<Computed.Profile> after = governing(computed);
        if (before.isEmpty() || after.isEmpty()) {
            return List.of();
        }
        return List.of(new Drawn(figure(report, calculation, before.get(), after.get()), Section.FIGURES,
                calculation.feature(), Optional.of(calculation.id())));
    }

    /** Drawn is what counts in the governing direction of its feature: more figures would hide it. */
    private static boolean governs(Report report, Calculation calculation) {
        for (FeatureReview feature : report.review().features()) {
            Optional<DirectionReview> governing = feature.governing();
            if (governing.isEmpty()) {
                continue;
            }
            for (Contribution part : governing.get().sustained().parts()) {
                if (part.calculation().isPresent() && part.calculation().get().equals(calculation.id())) {
                    return true;
                }
            }
        }
        return false;
    }

    private static Optional<Computed.Profile> before(Computed computed) {
        for (Computed.Profile profile : computed.profiles()) {
            if (profile.name().startsWith(BEFORE)) {
                return Optional.of(profile);
            }
        }
        return Optional.empty();
    }

    /** Of the ways in which the part may give, the one whose stress at the new surface is the result. */
    private static Optional<Computed.Profile> governing(Computed computed) {
        Optional<Computed.Profile> nearest = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (Computed.Profile profile : computed.profiles()) {
            if (!profile.name().startsWith(AFTER) || profile.y().isEmpty()) {
                continue;
            }
            double off = Math.abs(profile.y().get(0) - computed.value().value());
            if (nearest.isEmpty() || off < least) {
                nearest = Optional.of(profile);
                least = off;
            }
        }
        return nearest;
    }

    private static StressThroughSection figure(Report report, Calculation calculation, Computed.Profile before,
            Computed.Profile after) {
        Computed computed = calculation.computed();
        Numbers numbers = report.numbers();
        double depth = after.x().get(0);
        double thickness = before.x().get(before.x().size() - 1);
        String place = report.place(calculation.feature());
        String stress = numbers.rounded(Math.abs(computed.value().value()), SiUnit.PASCAL);
        String title = report.words(title(computed, after), place + direction(computed), stress);
        double lowest = Collections.min(before.y());
        double highest = Collections.max(before.y());
        String alternative = report.words(FigureWords.FIGURE_SECTION_ALTERNATIVE,
                numbers.rounded(thickness, SiUnit.METRE), computed.title(), numbers.rounded(lowest, SiUnit.PASCAL),
                numbers.rounded(highest, SiUnit.PASCAL), numbers.rounded(depth, SiUnit.METRE), stress);
        return new StressThroughSection(title, alternative,
                report.words(FigureWords.FIGURE_SECTION_NOTE, calculation.id()), numbers.lengthUnit(),
                numbers.stressUnit(), numbers.length(thickness), points(numbers, before), points(numbers, after),
                List.of(), List.of(), surfaces(numbers, after, thickness), List.of(new StressThroughSection.Whisker(
                        numbers.length(depth), numbers.stress(computed.value().value()),
                        numbers.stress(computed.value().low()), numbers.stress(computed.value().high()))), Optional.empty());
    }

    /** At a hole the result is higher than the curve; the title must not let the curve speak for it. */
    private static FigureWords title(Computed computed, Computed.Profile after) {
        double value = computed.value().value();
        if (Math.abs(after.y().get(0) - value) > VISIBLE_SHARE * Math.abs(value)) {
            return FigureWords.FIGURE_SECTION_LOCAL;
        }
        return value >= 0 ? FigureWords.FIGURE_SECTION_TENSION : FigureWords.FIGURE_SECTION_COMPRESSION;
    }

    /** The title of the calculation ends with the direction that it is for. */
    private static String direction(Computed computed) {
        for (GrainDirection direction : GrainDirection.values()) {
            if (computed.title().endsWith(", " + direction)) {
                return ", " + direction;
            }
        }
        return "";
    }

    private static List<Point> points(Numbers numbers, Computed.Profile profile) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < profile.x().size(); i++) {
            points.add(new Point(numbers.length(profile.x().get(i)), numbers.stress(profile.y().get(i))));
        }
        return points;
    }

    /** The surface that is judged, and the opposite one where it was cut as well. */
    private static List<Double> surfaces(Numbers numbers, Computed.Profile after, double thickness) {
        List<Double> surfaces = new ArrayList<>();
        surfaces.add(numbers.length(after.x().get(0)));
        double opposite = after.x().get(after.x().size() - 1);
        if (opposite < thickness) {
            surfaces.add(numbers.length(opposite));
        }
        return surfaces;
    }
}
