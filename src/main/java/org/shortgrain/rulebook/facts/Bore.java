package org.shortgrain.rulebook.facts;

import java.util.Optional;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.part.Axis;
import org.shortgrain.part.Fit;
import org.shortgrain.part.FitKind;
import org.shortgrain.part.FitRole;
import org.shortgrain.part.Grain;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;

/**
 * A hole with what sits in it: how tight, how near to the edge, and how it lies in the grain.
 *
 * @param place the place
 */
public record Bore(Place place) {

    /** Hole axis farther than this from the short grain: the hoop has the short grain in its circle (degrees). Own
     * convention: at 20 degrees, 12 % of the hoop (sine squared) acts across the short grain. */
    private static final double ACROSS = 20;

    /**
     * {@return whether the part certainly is the outer member of a fit of one of some kinds, so that the fit pulls it}
     *
     * @param kinds the kinds
     */
    public boolean isHeldOpenBy(FitKind... kinds) {
        return place.isFit(kinds) && !isInner();
    }

    /** {@return whether a bush or pin is pressed, shrunk or driven in for certain} */
    public boolean isPressed() {
        return isHeldOpenBy(FitKind.PRESS_BUSHING, FitKind.SHRINK_BUSHING, FitKind.PRESS_PIN);
    }

    /** {@return whether anything holds the hole open by interference for certain} */
    public boolean isHeldOpen() {
        return place.isPressed() && !isInner();
    }

    private boolean isInner() {
        return fit(Fit::role).is(FitRole.INNER);
    }

    /** {@return least distance from the centre to an edge over the hole diameter; NaN if not stated, which no comparison
     * holds for} */
    public double edge() {
        return least(fit(Fit::edgeDistance)) / diameter();
    }

    /** {@return least width of the metal round the hole over the hole diameter; NaN if not stated} */
    public double wall() {
        Stated<Range> width = fit(Fit::outerWidth);
        return width.isKnown() ? least(width) / diameter() : 2 * edge();
    }

    /** {@return greatest length of the fit over the hole diameter; NaN if not stated} */
    public double slenderness() {
        return greatest(fit(Fit::length)) / diameter();
    }

    /** {@return share of the stated push-out load that friction holds for certain when loosest; NaN if not computed} */
    public double shareHeld() {
        Optional<Computed> held = place.computed("fit.push-out-force");
        return held.isEmpty() ? Double.NaN : held.get().value().low() / greatest(fit(Fit::pushOutLoad));
    }

    /** {@return angle between the axis of the hole and the short grain (degrees, 0 to 90); NaN if not stated} */
    public double tilt() {
        return angle(place.feature().axis(), place.part().grain().field(Grain::st));
    }

    /** {@return whether the hoop certainly has the short grain in its circle} */
    public boolean circlesShortGrain() {
        return tilt() > ACROSS;
    }

    /**
     * {@return whether its axis certainly points another way than that of another hole}
     *
     * @param other the other hole
     */
    public boolean crosses(Bore other) {
        return angle(place.feature().axis(), other.place().feature().axis()) > ACROSS;
    }

    /** {@return axis and fit as stated, for texts} */
    public String say() {
        String axis = place.feature().axis().single().map(one -> "axis " + one.entered()).orElse("axis not stated");
        String kind = place.fit().field(Fit::kind).single().map(one -> ", " + one.word().replace('_', ' ')).orElse("");
        return axis + kind;
    }

    private double diameter() {
        Stated<Range> hole = fit(Fit::hole);
        return hole.isKnown() ? greatest(hole) : greatest(fit(Fit::bush));
    }

    private <T> Stated<T> fit(java.util.function.Function<Fit, Stated<T>> field) {
        return place.fit().field(field);
    }

    private static double least(Stated<Range> stated) {
        return Range.least(stated).orElse(Double.NaN);
    }

    private static double greatest(Stated<Range> stated) {
        return Range.greatest(stated).orElse(Double.NaN);
    }

    private static double angle(Stated<Axis> one, Stated<Axis> other) {
        Optional<Axis> first = one.single();
        Optional<Axis> second = other.single();
        if (first.isEmpty() || second.isEmpty()) {
            return Double.NaN;
        }
        double cosine = first.get().x() * second.get().x() + first.get().y() * second.get().y()
                + first.get().z() * second.get().z();
        return Math.toDegrees(Math.acos(Math.min(1, Math.abs(cosine))));
    }
}
