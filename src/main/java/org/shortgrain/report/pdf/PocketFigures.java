package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.report.pdf.ReviewFigures.Drawn;
import org.shortgrain.report.pdf.figure.PocketAttitudes;
import org.shortgrain.review.Calculation;
import org.shortgrain.review.FeatureReview;

/** A pocket in the attitudes declared, for features whose drainage is declared with its dimensions. */
final class PocketFigures {

    private static final List<String> ATTITUDES = List.of("ground", "flight");
    private static final String WATER = "water.";
    private static final String DEPTH = "-depth";
    private static final String VOLUME = "-volume";
    private static final Optional<String> YES = Optional.of("true");

    private PocketFigures() {
    }

    static List<Drawn> of(Report report, FeatureReview feature) {
        StatedValues stated = report.stated();
        Optional<String> place = stated.feature(feature.id());
        if (place.isEmpty()) {
            return List.of();
        }
        String drainage = place.get() + "/drainage";
        Optional<Double> length = stated.quantity(drainage + "/length");
        Optional<Double> depth = stated.quantity(drainage + "/depth");
        Optional<PocketAttitudes.Opening> opening = opening(stated, drainage);
        if (length.isEmpty() || depth.isEmpty() || opening.isEmpty() || length.get() <= 0 || depth.get() <= 0) {
            return List.of();
        }
        List<Held> held = held(stated, drainage);
        if (held.isEmpty()) {
            return List.of();
        }
        PocketAttitudes figure = figure(report, feature.id(), new Pocket(length.get(), depth.get(), opening.get(),
                drain(stated, drainage, length.get(), held.get(0))), held);
        Optional<Calculation> water = computed(report, feature.id(), DEPTH);
        return List.of(new Drawn(figure, Section.FIGURES, Optional.of(feature.id()),
                water.isPresent() ? Optional.of(water.get().id()) : Optional.empty()));
    }

    /** An attitude as declared, under the key of the description. */
    private record Held(String name, double pitch) {

        /** The name that the calculation of the water gives it. */
        String computedAs() {
            return name.equals(ATTITUDES.get(0)) ? "on the ground" : "in flight";
        }
    }

    /** The last calculation of that kind at a place: after the drains, where there are any. */
    private static Optional<Calculation> computed(Report report, String feature, String quantity) {
        Optional<Calculation> last = Optional.empty();
        for (Calculation one : report.review().computations()) {
            if (one.isOf(feature) && one.computed().id().startsWith(WATER) && one.computed().id().endsWith(quantity)) {
                last = Optional.of(one);
            }
        }
        return last;
    }

    /** What a calculation of the water found for one attitude, at the most. */
    private static Optional<Double> most(Report report, String feature, String quantity, Held held) {
        Optional<Calculation> computed = computed(report, feature, quantity);
        if (computed.isPresent()) {
            for (Computed.Step step : computed.get().computed().steps()) {
                if (step.meaning().endsWith(" " + held.computedAs())) {
                    return Optional.of(step.value().high());
                }
            }
        }
        return Optional.empty();
    }

    /** A pocket as declared, lengths in m. */
    private record Pocket(double length, double depth, PocketAttitudes.Opening opening,
            Optional<PocketAttitudes.Drain> drain) {
    }

    private static Optional<PocketAttitudes.Opening> opening(StatedValues stated, String drainage) {
        String word = stated.entered(drainage + "/opening").orElse("").toUpperCase(Locale.ROOT);
        for (PocketAttitudes.Opening opening : PocketAttitudes.Opening.values()) {
            if (opening.name().equals(word)) {
                return Optional.of(opening);
            }
        }
        return Optional.empty();
    }

    private static List<Held> held(StatedValues stated, String drainage) {
        List<Held> held = new ArrayList<>();
        for (String name : ATTITUDES) {
            Optional<Double> pitch = stated.quantity(drainage + "/attitude/" + name + "/pitch");
            if (pitch.isPresent()) {
                held.add(new Held(name, Math.toDegrees(pitch.get())));
            }
        }
        return held;
    }

    /** A hole whose distance from the low end is stated is drawn there, one said to lie at the lowest point at the low end of
     * the first attitude, any other in the middle. */
    private static Optional<PocketAttitudes.Drain> drain(StatedValues stated, String drainage, double length,
            Held first) {
        String hole = drainage + "/drain_holes/0";
        if (stated.under(hole).isEmpty()) {
            return Optional.empty();
        }
        boolean lowest = stated.entered(hole + "/at_lowest_point").equals(YES);
        boolean open = stated.entered(hole + "/path_continues").equals(YES);
        double low = first.pitch() >= 0 ? 0 : length;
        Optional<Double> near = stated.quantity(hole + "/from_low_end");
        double radius = stated.quantity(hole + "/diameter").orElse(0.0) / 2;
        double fromLow = near.isPresent() ? near.get() + radius : lowest ? 0 : length / 2;
        return Optional.of(new PocketAttitudes.Drain(Math.abs(low - fromLow), open));
    }

    private static PocketAttitudes figure(Report report, String place, Pocket pocket, List<Held> held) {
        Numbers numbers = report.numbers();
        List<PocketAttitudes.Attitude> bare = new ArrayList<>();
        for (Held one : held) {
            bare.add(new PocketAttitudes.Attitude(report.words(FigureWords.FIGURE_POCKET_ATTITUDE, one.name(),
                    Digits.print(one.pitch(), 3) + "\u00b0"), one.pitch(), "", most(report, place, DEPTH, one)));
        }
        PocketAttitudes drawn = pocket(pocket, "", "", "", bare);
        List<PocketAttitudes.Attitude> said = new ArrayList<>();
        List<String> told = new ArrayList<>();
        boolean holds = false;
        for (int i = 0; i < bare.size(); i++) {
            PocketAttitudes.Attitude attitude = bare.get(i);
            Held one = held.get(i);
            boolean wet = attitude.depth().isPresent() ? attitude.depth().get() > 0 : !drawn.water(attitude).isEmpty();
            holds |= wet;
            Optional<Double> volume = most(report, place, VOLUME, one);
            String words = attitude.depth().isPresent() && wet && volume.isPresent()
                    ? report.words(FigureWords.FIGURE_POCKET_ATTITUDE_COMPUTED,
                            numbers.rounded(attitude.depth().get(), SiUnit.METRE),
                            numbers.rounded(volume.get(), SiUnit.CUBIC_METRE))
                    : words(report, pocket, wet);
            said.add(new PocketAttitudes.Attitude(attitude.name(), attitude.pitch(), words, attitude.depth()));
            told.add(attitude.name() + ": " + words);
        }
        String title = report.words(holds ? FigureWords.FIGURE_POCKET_HOLDS : FigureWords.FIGURE_POCKET_DRAINS, place);
        String alternative = report.words(FigureWords.FIGURE_POCKET_ALTERNATIVE,
                numbers.value(pocket.length(), SiUnit.METRE), numbers.value(pocket.depth(), SiUnit.METRE),
                String.join("; ", told));
        return pocket(pocket, title, alternative, report.words(FigureWords.FIGURE_POCKET_NOTE), said);
    }

    private static String words(Report report, Pocket pocket, boolean wet) {
        if (wet) {
            return report.words(FigureWords.FIGURE_POCKET_ATTITUDE_HOLDS);
        }
        return report.words(pocket.opening() == PocketAttitudes.Opening.CLOSED
                ? FigureWords.FIGURE_POCKET_ATTITUDE_CLOSED : FigureWords.FIGURE_POCKET_ATTITUDE_DRAINS);
    }

    private static PocketAttitudes pocket(Pocket pocket, String title, String alternative, String note,
            List<PocketAttitudes.Attitude> attitudes) {
        return new PocketAttitudes(title, alternative, note, pocket.length(), pocket.depth(), pocket.opening(),
                pocket.drain(), attitudes);
    }
}
