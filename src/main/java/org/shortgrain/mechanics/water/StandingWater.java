package org.shortgrain.mechanics.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Computed.Step;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Extremes;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/**
 * Water that stays in a hollow, at the worst of the attitudes in which the part rests.
 *
 * <p>Without holes that count: what the hollow catches. With holes: what stays below their edges. Surface tension over the
 * holes is not in it; see {@link DrainHole}. The greatest values lie at corners of the tolerances: at each attitude depth
 * and volume rise or fall throughout with each dimension, and the worst of several such is greatest at a corner too.
 *
 * @param hollow the hollow
 * @param rests  the attitudes, at least one
 * @param holes  the holes that count
 */
public record StandingWater(Hollow hollow, List<Rest> rests, List<Hole> holes) {

    /** Most dimensions with limits whose every combination is looked at; with more, the holes are taken at their best
     * values. */
    private static final int MOST_RANGES = 10;
    private static final String EQUATION = "level at a point = min over the ways out of the highest point on the way;"
            + " depth = max(level - floor), volume = integral of (level - floor)";

    /** Copies the lists and refuses a part that rests nowhere. */
    public StandingWater {
        rests = List.copyOf(rests);
        holes = List.copyOf(holes);
        if (rests.isEmpty()) {
            throw new IllegalArgumentException("no attitude");
        }
    }

    // written out: what the compiler leaves to the runtime costs a cold start several milliseconds
    @Override
    public int hashCode() {
        return 31 * (31 * hollow.sizes().hashCode() + rests.hashCode()) + holes.size();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof StandingWater that && hollow.equals(that.hollow) && rests.equals(that.rests)
                && holes.equals(that.holes);
    }

    /** {@return greatest depth, {@code water.trapped-depth} or, with holes, {@code water.standing-depth} (m)} */
    public Computed depth() {
        return computed("depth", holes.isEmpty() ? "Depth of water that the hollow catches" : "Depth of water that stays"
                + " with the drain holes as they lie", SiUnit.METRE, Pool::depth);
    }

    /** {@return greatest volume, {@code water.trapped-volume} or, with holes, {@code water.standing-volume} (m3)} */
    public Computed volume() {
        return computed("volume", holes.isEmpty() ? "Volume of water that the hollow catches" : "Volume of water that stays"
                + " with the drain holes as they lie", SiUnit.CUBIC_METRE, Pool::volume);
    }

    /** {@return the greatest depth over all attitudes and limits (m), the upper end of {@link #depth} without its statement} */
    public double greatestDepth() {
        return over(rests, Pool::depth).high();
    }

    /** {@return the attitude in which most water stays by depth, at the best estimates} */
    public Rest worst() {
        Rest worst = rests.get(0);
        for (Rest rest : rests) {
            if (greatestAtBest(rest) > greatestAtBest(worst)) {
                worst = rest;
            }
        }
        return worst;
    }

    private double greatestAtBest(Rest rest) {
        return greatest(List.of(rest), Pool::depth, best());
    }

    private Computed computed(String what, String title, SiUnit unit, ToDoubleFunction<Pool> quantity) {
        List<Step> steps = new ArrayList<>();
        for (Rest rest : rests) {
            steps.add(new Step(what, what + " " + rest.name(), unit, over(List.of(rest), quantity)));
        }
        return new Computed("water." + (holes.isEmpty() ? "trapped-" : "standing-") + what, title + ", worst attitude",
                unit, over(rests, quantity), EQUATION, inputs(), steps, "limits of every dimension and attitude",
                new Validity(true, hollow.statement()), Sources.STANDING, notes(), List.of());
    }

    private Band over(List<Rest> some, ToDoubleFunction<Pool> quantity) {
        return Extremes.of(v -> greatest(some, quantity, v), bands());
    }

    private Band[] bands() {
        List<Given> sizes = sizes();
        boolean holesAtBest = hasManyRanges();
        Band[] bands = new Band[sizes.size()];
        for (int i = 0; i < bands.length; i++) {
            Band band = sizes.get(i).value();
            bands[i] = holesAtBest && i >= hollow.sizes().size() ? Band.exact(band.value()) : band;
        }
        return bands;
    }

    private boolean hasManyRanges() {
        int ranges = 0;
        for (Given given : sizes()) {
            ranges += given.value().isExact() ? 0 : 1;
        }
        return ranges > MOST_RANGES;
    }

    private List<Given> sizes() {
        List<Given> sizes = new ArrayList<>(hollow.sizes());
        for (Hole hole : holes) {
            sizes.addAll(hole.sizes());
        }
        return sizes;
    }

    private double[] best() {
        List<Given> sizes = sizes();
        double[] best = new double[sizes.size()];
        for (int i = 0; i < best.length; i++) {
            best[i] = sizes.get(i).value().value();
        }
        return best;
    }

    private double greatest(List<Rest> some, ToDoubleFunction<Pool> quantity, double... sizes) {
        double greatest = Double.NEGATIVE_INFINITY;
        for (Rest rest : some) {
            for (Tilt tilt : rest.tilts()) {
                greatest = Math.max(greatest, quantity.applyAsDouble(pool(tilt, sizes)));
            }
        }
        return greatest;
    }

    private Pool pool(Tilt tilt, double... sizes) {
        int next = hollow.sizes().size();
        double[] own = Arrays.copyOf(sizes, next);
        if (hollow instanceof Hollow.Closed && holes.isEmpty()) {
            return new Pool(own[2], hollow.capacity(own), 0);
        }
        Basin basin = hollow.basin(own);
        List<Outlet> outlets = new ArrayList<>();
        for (Hole hole : holes) {
            int count = hole.sizes().size();
            outlets.add(hole.outlet(basin.floor(), basin.width(), Arrays.copyOfRange(sizes, next, next + count)));
            next += count;
        }
        Pool pool = basin.pool(hollow.seen(tilt), outlets);
        return new Pool(pool.depth(), Math.min(pool.volume(), hollow.capacity(own)), pool.deepest());
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>(hollow.inputs());
        for (Hole hole : holes) {
            inputs.addAll(hole.inputs());
        }
        for (Rest rest : rests) {
            inputs.add(new Input("theta", "pitch " + rest.name(), SiUnit.RADIAN, rest.pitch(), rest.name(),
                    Optional.empty()));
            inputs.add(new Input("phi", "roll " + rest.name(), SiUnit.RADIAN, rest.roll(), rest.name(),
                    Optional.empty()));
        }
        return inputs;
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add("Worst " + worst().name() + ".");
        notes.add("Length taken fore and aft: pitch tilts it lengthwise, roll sideways. Depth square to the floor as drawn.");
        for (Hole hole : holes) {
            if (!notes.contains(hole.statement())) {
                notes.add(hole.statement());
            }
        }
        if (hasManyRanges()) {
            notes.add("Too many dimensions have limits: the places of the holes are taken at their best values.");
        }
        return notes;
    }
}
