package org.shortgrain.mechanics.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
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
            if (greatest(rest, Pool::depth, best()) > greatest(worst, Pool::depth, best())) {
                worst = rest;
            }
        }
        return worst;
    }

    private Computed computed(String what, String title, SiUnit unit, ToDoubleFunction<Pool> quantity) {
        List<Step> steps = rests.stream().map(rest -> new Step(what, what + " " + rest.name(), unit,
                over(List.of(rest), quantity))).toList();
        return new Computed("water." + (holes.isEmpty() ? "trapped-" : "standing-") + what, title + ", worst attitude",
                unit, over(rests, quantity), EQUATION, inputs(), steps, "limits of every dimension and attitude",
                new Validity(true, hollow.statement()), Sources.STANDING, notes(), List.of());
    }

    private Band over(List<Rest> some, ToDoubleFunction<Pool> quantity) {
        Band[] bands = Stream.concat(hollow.sizes().stream().map(Given::value), holeBands()).toArray(Band[]::new);
        return Extremes.of(v -> some.stream().mapToDouble(rest -> greatest(rest, quantity, v)).max().orElseThrow(), bands);
    }

    private Stream<Band> holeBands() {
        Stream<Band> bands = holes.stream().flatMap(hole -> hole.sizes().stream()).map(Given::value);
        return hasManyRanges() ? bands.map(band -> Band.exact(band.value())) : bands;
    }

    private boolean hasManyRanges() {
        return sizes().filter(given -> !given.value().isExact()).count() > MOST_RANGES;
    }

    private Stream<Given> sizes() {
        return Stream.concat(hollow.sizes().stream(), holes.stream().flatMap(hole -> hole.sizes().stream()));
    }

    private double[] best() {
        return sizes().mapToDouble(given -> given.value().value()).toArray();
    }

    private double greatest(Rest rest, ToDoubleFunction<Pool> quantity, double... sizes) {
        return rest.tilts().stream().map(tilt -> pool(tilt, sizes)).mapToDouble(quantity).max().orElseThrow();
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
        holes.forEach(hole -> inputs.addAll(hole.inputs()));
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
        holes.stream().map(Hole::statement).distinct().forEach(notes::add);
        if (hasManyRanges()) {
            notes.add("Too many dimensions have limits: the places of the holes are taken at their best values.");
        }
        return notes;
    }
}
