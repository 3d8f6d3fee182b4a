package org.shortgrain.rulebook.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.shortgrain.part.Attitude;
import org.shortgrain.part.Attitudes;
import org.shortgrain.part.DrainHole;
import org.shortgrain.part.Drainage;
import org.shortgrain.part.Filling;
import org.shortgrain.part.Opening;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;

/**
 * A hollow at a place as it stands to water: where it opens, how it drains, what fills it.
 *
 * <p>Says what is stated. Nothing stated never means that water runs off.
 *
 * @param stated what is stated of the drainage here
 */
public record Cavity(Stated<Drainage> stated) {

    /** Slope below which water films stay on a floor (rad): 1 degree, a habit of the trade without a standard. */
    private static final double FLAT = Math.toRadians(1);

    /** {@return whether a hollow is described} */
    public boolean isDescribed() {
        return stated.isKnown();
    }

    /**
     * {@return whether it certainly opens in one of some directions when installed}
     *
     * @param openings the directions
     */
    public boolean faces(Opening... openings) {
        return opening().isOneOf(openings);
    }

    /** {@return whether it opens up or sideways, or may do so} */
    public boolean mayFaceUp() {
        return opening().isKnown() && !faces(Opening.DOWN, Opening.CLOSED);
    }

    /** {@return whether it is described, but neither where it opens nor whether it holds water} */
    public boolean isOpeningOpen() {
        return isDescribed() && opening().isMissing() && holdsWater().isMissing();
    }

    /** {@return where it opens} */
    public Stated<Opening> opening() {
        return stated.field(Drainage::opening);
    }

    /** {@return whether it certainly has no drain hole} */
    public boolean isUndrained() {
        return drainHoles().isNone() || drainHoles().surely(List::isEmpty);
    }

    /** {@return the drain holes; empty if there are none or nothing is stated} */
    public List<Drain> drains() {
        List<Drain> drains = new ArrayList<>();
        for (DrainHole hole : Stated.items(drainHoles())) {
            drains.add(new Drain(hole));
        }
        return drains;
    }

    /** {@return whether it has a drain hole for certain} */
    public boolean isDrilled() {
        return !drains().isEmpty();
    }

    /** {@return whether it has one drain hole and no other for certain} */
    public boolean hasOneDrain() {
        return drains().size() == 1;
    }

    /**
     * {@return whether it certainly is filled with one of some fillings}
     *
     * @param fillings the fillings
     */
    public boolean isFilledWith(Filling... fillings) {
        return filling().isOneOf(fillings);
    }

    /** {@return whether something fills it for certain} */
    public boolean isFilled() {
        return filling().isKnown();
    }

    /** {@return what fills it} */
    public Stated<Filling> filling() {
        return stated.field(Drainage::filledWith);
    }

    /** {@return whether the filling is bonded to a primed wall} */
    public Stated<Boolean> fillingBonded() {
        return stated.field(Drainage::fillingBonded);
    }

    /** {@return whether air can come in} */
    public Stated<Boolean> vented() {
        return stated.field(Drainage::vented);
    }

    /** {@return whether water is stated to stand in it} */
    public boolean isStatedToHoldWater() {
        return holdsWater().is(true);
    }

    /** {@return whether water is stated not to stand in it} */
    public boolean isStatedToStayEmpty() {
        return holdsWater().is(false);
    }

    private Stated<Boolean> holdsWater() {
        return stated.field(Drainage::holdsWater);
    }

    /** {@return whether it opens upwards, nothing fills it and nothing drains it: a cup} */
    public boolean isCup() {
        return faces(Opening.UP) && isUndrained() && !isFilled();
    }

    /** {@return whether the attitude on the ground or in flight is not stated} */
    public boolean isAttitudeOpen() {
        return attitude(Attitudes::ground).isMissing() || attitude(Attitudes::flight).isMissing();
    }

    /** {@return whether some attitude that is stated has no roll, so that one was taken for it} */
    public boolean isRollOpen() {
        return Stream.<Stated<Attitude>>of(attitude(Attitudes::ground), attitude(Attitudes::flight),
                attitude(Attitudes::parked), attitude(Attitudes::transport))
                .anyMatch(one -> one.isKnown() && one.field(Attitude::roll).isMissing());
    }

    /** {@return whether its floor certainly lies flat on the ground: tilted by less than 1 degree either way} */
    public boolean liesFlat() {
        Stated<Attitude> ground = attitude(Attitudes::ground);
        return isFlat(pitch(ground)) && isFlat(ground.field(Attitude::roll));
    }

    /** {@return whether its low end on the ground certainly is its high end in flight} */
    public boolean tipsOver() {
        Stated<Range> ground = pitch(attitude(Attitudes::ground));
        Stated<Range> flight = pitch(attitude(Attitudes::flight));
        return isNoseUp(ground) && isNoseDown(flight) || isNoseDown(ground) && isNoseUp(flight);
    }

    /** {@return its greatest volume as stated (litre); NaN if not stated, which no comparison holds for} */
    public double litres() {
        return Range.greatest(stated.field(Drainage::volume)).orElse(Double.NaN) * 1000;
    }

    /** {@return where it opens and how deep it is, as stated, for texts} */
    public String say() {
        String opens = opening().single().map(one -> "opening " + one.word()).orElse("opening not stated");
        return stated.field(Drainage::depth).single().map(depth -> opens + ", depth " + depth.entered()).orElse(opens);
    }

    private Stated<List<DrainHole>> drainHoles() {
        return stated.field(Drainage::drainHoles);
    }

    private Stated<Attitude> attitude(java.util.function.Function<Attitudes, Stated<Attitude>> which) {
        return stated.field(Drainage::attitude).field(which);
    }

    private static Stated<Range> pitch(Stated<Attitude> attitude) {
        return attitude.field(Attitude::pitch);
    }

    private static boolean isFlat(Stated<Range> angle) {
        return Range.least(angle).orElse(Double.NaN) > -FLAT && Range.greatest(angle).orElse(Double.NaN) < FLAT;
    }

    private static boolean isNoseUp(Stated<Range> angle) {
        return Range.least(angle).orElse(Double.NaN) > 0;
    }

    private static boolean isNoseDown(Stated<Range> angle) {
        return Range.greatest(angle).orElse(Double.NaN) < 0;
    }
}
