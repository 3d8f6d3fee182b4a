package org.shortgrain.remedy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Step;
import org.shortgrain.mechanics.water.DrainHole;
import org.shortgrain.review.Calculation;
import org.shortgrain.review.Review;

/**
 * What a review computed of the water at one place, in words: the numbers of a change are those of the review of the part so
 * changed, and no others.
 *
 * @param found the numbers of the place
 */
record WaterNumbers(List<Computed> found) {

    private static final double MM = 1e3;
    private static final double ML = 1e6;
    private static final double GRAMS = 1e3;
    /** Least number worth printing in mm, mL, s or g, and what is no more than rounding of the computation. */
    private static final double LEAST_SHOWN = 0.001;
    private static final double ROUNDING = 1e-9;

    static WaterNumbers of(Review review, String id) {
        return new WaterNumbers(review.computations().stream().filter(one -> one.feature().filter(id::equals).isPresent())
                .map(Calculation::computed).toList());
    }

    private Optional<Computed> number(String key) {
        return found.stream().filter(one -> one.id().equals(key)).findFirst();
    }

    /** Depth that stays: with the holes that count, or what is caught where none does. */
    private Optional<Computed> depth() {
        return number("water.standing-depth").or(() -> number("water.trapped-depth"));
    }

    private Optional<Computed> volume() {
        return number("water.standing-volume").or(() -> number("water.trapped-volume"));
    }

    /** Whether holes are counted on for certain, so that what stays behind them is computed. */
    boolean drained() {
        return number("water.standing-depth").isPresent();
    }

    /** Whether no more than a film stays in any attitude. */
    boolean isFilm() {
        return depth().filter(one -> one.value().high() <= DrainHole.film()).isPresent();
    }

    /** The worst that stays, such as "0.6 mm, 0.1 mL at most"; empty where it was not computed. */
    Optional<String> worst() {
        return depth().map(one -> text(one.value().high() * MM, "mm") + volume().map(volume -> ", "
                + text(volume.value().high() * ML, "mL")).orElse("") + " at most");
    }

    /** What stays in each attitude; empty where it was not computed. */
    Optional<String> left() {
        if (depth().isEmpty() || volume().isEmpty()) {
            return Optional.empty();
        }
        List<Step> depths = depth().get().steps();
        List<Step> volumes = volume().get().steps();
        List<String> each = new ArrayList<>();
        for (int i = 0; i < depths.size() && i < volumes.size(); i++) {
            each.add(depths.get(i).meaning().replaceFirst("^depth ", "") + " " + text(depths.get(i).value().high() * MM, "mm")
                    + ", " + text(volumes.get(i).value().high() * ML, "mL"));
        }
        return Optional.of("What stays in each attitude: " + String.join("; ", each) + String.format(Locale.ROOT,
                ". Up to %.1f mm counts as a film.", DrainHole.film() * MM));
    }

    /** How fast it empties and what surface tension holds; one sentence each, none where not computed. */
    List<String> outflow() {
        Stream<String> held = number("water.residue").stream().map(one -> "Surface tension holds up to " + text(
                number("water.hold-up").map(head -> head.value().high() * MM).orElse(DrainHole.film() * MM), "mm")
                + " over the hole, up to " + text(one.value().high() * ML, "mL") + " on a level floor.");
        Stream<String> time = number("water.drain-time").stream().map(one -> "It empties in about " + text(one.value().high(),
                "s") + (one.validity().inside() ? "." : ", and slower than that near the end, since the water is shallow.")
                + " No rule sets a limit to that time.");
        return Stream.concat(held, time).toList();
    }

    /** What condenses inside, a sentence; empty where it was not computed. */
    Optional<String> dew() {
        return number("condensation.per-cycle").map(one -> "Water still condenses inside: up to "
                + text(one.value().high() * GRAMS, "g") + " in one cooling" + number("condensation.per-year").map(year -> ", "
                + text(year.value().high() * GRAMS, "g") + " in a year of daily ones").orElse("") + ".");
    }

    /** Water beside a filling, a sentence; empty where it was not computed. */
    Optional<String> besideFilling() {
        return number("water.beside-filling").map(one -> "Water left beside the filling: " + text(one.value().high() * ML, "mL")
                + " while the bond holds.");
    }

    /** A number to three figures, without an exponent; what is rounding of the computation is 0. */
    static String text(double value, String unit) {
        if (value < LEAST_SHOWN) {
            return (value < ROUNDING ? "0 " : "less than " + LEAST_SHOWN + " ") + unit;
        }
        BigDecimal number = new BigDecimal(value).round(new MathContext(3));
        return (number.scale() > 0 ? number.stripTrailingZeros() : number).toPlainString() + " " + unit;
    }
}
