package org.shortgrain.remedy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.part.Fit;
import org.shortgrain.part.Range;
import org.shortgrain.part.reader.JsonPatch;
import org.shortgrain.part.reader.EditableDescription;

/**
 * The limits of a press fit as drawn: how far its interference spreads, and how another interference is written with the same
 * tolerances.
 *
 * @param path   place of the fit in the description
 * @param key    what is written: the limits of the bush, or of the interference
 * @param base   the hole that the tightest pair is measured from (m); 0 where the interference itself is stated
 * @param own    tolerance of what is written (m)
 * @param spread difference between greatest and smallest interference (m): the tolerances of hole and bush together
 */
record PressFit(String path, String key, double base, double own, double spread) {

    private static final double MILLI = 1e-3;
    /** Limits are drawn to the micrometre. */
    private static final double STEP = 1e-6;
    /** Share of a step within which a length counts as a whole number of steps: round-off of millimetres. */
    private static final double WHOLE = 1e-6;
    /** Digits after the point of a millimetre while an interference is sought (1e-9 mm). */
    private static final int FINE = 9;

    /** {@return the limits as drawn; empty where neither both diameters nor the interference is stated, or a taper is} */
    static Optional<PressFit> of(String path, Fit fit) {
        Optional<Range> hole = fit.hole().single();
        Optional<Range> bush = fit.bush().single();
        if (fit.taper().isKnown() && fit.advance().isKnown()) {
            return Optional.empty();
        }
        if (hole.isPresent() && bush.isPresent()) {
            double own = width(bush.get());
            return Optional.of(new PressFit(path, "bush", hole.get().lowest(), own, own + width(hole.get())));
        }
        return fit.interference().single()
                .map(stated -> new PressFit(path, "interference", 0, width(stated), width(stated)));
    }

    private static double width(Range range) {
        return range.highest() - range.lowest();
    }

    /**
     * {@return the greatest interference of the lightest fit whose loosest pair has at least an interference, its limits to the
     * micrometre}
     *
     * @param least the least interference (m)
     */
    double lightest(double least) {
        double lower = base + least + spread - own;
        return Math.ceil(lower / STEP - WHOLE) * STEP + own - base;
    }

    /** {@return limits with which the tightest pair has an interference (m), written with that many digits of a millimetre} */
    private String limits(double most, int digits) {
        return "{min: " + millimetres(base + most - own, digits) + " mm, max: " + millimetres(base + most, digits) + " mm}";
    }

    /** {@return the change that gives the tightest pair an interference (m), as it would be drawn} */
    JsonPatch change(EditableDescription now, double most) {
        return new Edits(now).set(path + "/" + key, limits(most, 4)).patch();
    }

    /** {@return the same, finer than it would be drawn, for a search} */
    JsonPatch search(EditableDescription now, double most) {
        return new Edits(now).set(path + "/" + key, limits(most, FINE)).patch();
    }

    /** {@return the limits of such a fit, for a text} */
    String say(double most) {
        return String.format(Locale.ROOT, "%s %s to %s mm", key, millimetres(base + most - own, 4),
                millimetres(base + most, 4));
    }

    private static String millimetres(double metres, int digits) {
        BigDecimal value = BigDecimal.valueOf(metres / MILLI).setScale(digits, RoundingMode.HALF_UP).stripTrailingZeros();
        return (value.scale() < 3 ? value.setScale(3) : value).toPlainString();
    }
}
