package org.shortgrain.mechanics.water;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/** A hollow by its dimensions as drawn and by where it opens. */
public sealed interface Hollow {

    /** {@return its dimensions, in the order in which {@link #basin} takes them (m)} */
    List<Given> sizes();

    /** {@return its dimensions as inputs} */
    List<Input> inputs();

    /**
     * {@return what keeps the water}
     *
     * @param sizes the dimensions (m)
     */
    Basin basin(double... sizes);

    /**
     * {@return how the basin is tilted when the part is}
     *
     * @param part tilt of the part
     */
    Tilt seen(Tilt part);

    /**
     * {@return the most that it can hold (m3)}
     *
     * @param sizes the dimensions (m)
     */
    double capacity(double... sizes);

    /** {@return area of its floor as drawn (m2); empty where the floor is not the lower side} */
    Optional<Band> plan();

    /** {@return what is taken for granted of its shape} */
    String statement();

    private static Optional<Band> area(Band length, Band width) {
        return Optional.of(new Band(length.value() * width.value(), length.low() * width.low(),
                length.high() * width.high()));
    }

    private static List<Input> box(Given length, Given width, Given depth) {
        return List.of(length.as("L", "length of the hollow, fore and aft", SiUnit.METRE),
                width.as("W", "width of the hollow", SiUnit.METRE), depth.as("h", "depth of the hollow", SiUnit.METRE));
    }

    /**
     * A box with a level rim, open at the top as drawn.
     *
     * @param length length, fore and aft (m)
     * @param width  width (m)
     * @param depth  depth (m)
     * @param down   whether the part is built in with the opening down
     */
    record Box(Given length, Given width, Given depth, boolean down) implements Hollow {

        @Override
        public List<Given> sizes() {
            return List.of(length, width, depth);
        }

        @Override
        public List<Input> inputs() {
            return box(length, width, depth);
        }

        @Override
        public Basin basin(double... sizes) {
            return new Basin(Floor.box(sizes[0], sizes[2]), sizes[1], OptionalDouble.of(sizes[2]), true);
        }

        @Override
        public Tilt seen(Tilt part) {
            return down ? part.inverted() : part;
        }

        @Override
        public double capacity(double... sizes) {
            return sizes[0] * sizes[1] * sizes[2];
        }

        @Override
        public Optional<Band> plan() {
            return area(length.value(), width.value());
        }

        @Override
        public String statement() {
            return "Box with a level rim" + (down ? ", opening down." : ".");
        }
    }

    /**
     * A hollow whose floor is a line of points along its length, end walls among them; water runs off over both ends.
     *
     * @param floor the line
     * @param width width (m)
     * @param depth height of the side walls over the lowest point of the floor (m); empty or below a point of the floor:
     *              they reach above all water
     * @param down  whether the part is built in with the opening down
     */
    record Profiled(Floor floor, Given width, Optional<Given> depth, boolean down) implements Hollow {

        @Override
        public List<Given> sizes() {
            return Stream.concat(Stream.of(width), depth.stream()).toList();
        }

        @Override
        public List<Input> inputs() {
            return Stream.concat(Stream.of(width.as("W", "width of the hollow", SiUnit.METRE)),
                    depth.stream().map(one -> one.as("h", "height of the side walls over the lowest point of the floor",
                            SiUnit.METRE))).toList();
        }

        @Override
        public Basin basin(double... sizes) {
            OptionalDouble rim = sizes.length > 1 && floor.lowest() + sizes[1] >= floor.highest()
                    ? OptionalDouble.of(floor.lowest() + sizes[1]) : OptionalDouble.empty();
            return new Basin(floor, sizes[0], rim, true);
        }

        @Override
        public Tilt seen(Tilt part) {
            return down ? part.inverted() : part;
        }

        @Override
        public double capacity(double... sizes) {
            return Double.POSITIVE_INFINITY;
        }

        @Override
        public Optional<Band> plan() {
            return area(Band.exact(floor.front() - floor.rear()), width.value());
        }

        @Override
        public String statement() {
            return "Floor as drawn along the length, straight across the width; water runs off over both ends of the line;"
                    + " side walls " + (depth.isPresent() ? "as deep as stated." : "above all water.")
                    + " Tolerances of the points are left out.";
        }
    }

    /**
     * A box that opens sideways when built in. Which way is not known, so that every tilt is taken towards its back.
     *
     * @param length length (m)
     * @param width  width (m)
     * @param depth  depth from the opening to the back (m)
     */
    record OnItsSide(Given length, Given width, Given depth) implements Hollow {

        @Override
        public List<Given> sizes() {
            return List.of(length, width, depth);
        }

        @Override
        public List<Input> inputs() {
            return box(length, width, depth);
        }

        @Override
        public Basin basin(double... sizes) {
            double longer = Math.max(sizes[0], sizes[1]);
            Floor side = new Floor(List.of(new Floor.Point(0, longer), new Floor.Point(0, 0),
                    new Floor.Point(sizes[2], 0)));
            return new Basin(side, longer, OptionalDouble.empty(), true);
        }

        @Override
        public Tilt seen(Tilt part) {
            return new Tilt(part.steepness(), 0);
        }

        @Override
        public double capacity(double... sizes) {
            return sizes[0] * sizes[1] * sizes[2];
        }

        @Override
        public Optional<Band> plan() {
            return Optional.empty();
        }

        @Override
        public String statement() {
            return "Box that opens sideways; which way is not stated, so that the tilt is taken towards its back and the"
                    + " longer side as the lower.";
        }
    }

    /**
     * A closed box, which only holes let out of.
     *
     * @param length length, fore and aft (m)
     * @param width  width (m)
     * @param depth  depth (m)
     */
    record Closed(Given length, Given width, Given depth) implements Hollow {

        @Override
        public List<Given> sizes() {
            return List.of(length, width, depth);
        }

        @Override
        public List<Input> inputs() {
            return box(length, width, depth);
        }

        @Override
        public Basin basin(double... sizes) {
            return new Basin(Floor.box(sizes[0], sizes[2]), sizes[1], OptionalDouble.empty(), false);
        }

        @Override
        public Tilt seen(Tilt part) {
            return part;
        }

        @Override
        public double capacity(double... sizes) {
            return sizes[0] * sizes[1] * sizes[2];
        }

        @Override
        public Optional<Band> plan() {
            return area(length.value(), width.value());
        }

        @Override
        public String statement() {
            return "Closed box: water leaves through holes only.";
        }
    }
}
