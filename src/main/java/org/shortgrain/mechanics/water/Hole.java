package org.shortgrain.mechanics.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/** Where a drain hole stands in the floor of a hollow. */
public sealed interface Hole {

    /** {@return its dimensions whose limits are carried, in the order in which {@link #outlet} takes them (m)} */
    List<Given> sizes();

    /** {@return its dimensions as inputs} */
    List<Input> inputs();

    /**
     * {@return the hole in a floor}
     *
     * @param floor the floor
     * @param width its width (m)
     * @param sizes the dimensions (m)
     */
    Outlet outlet(Floor floor, double width, double... sizes);

    /** {@return what is taken for granted of its place} */
    String statement();

    /**
     * A hole at the lowest point that the floor has at one tilt.
     *
     * @param along  the tilt that says where along the length
     * @param across the tilt that says on which side of the width
     */
    record Lowest(Tilt along, Tilt across) implements Hole {

        @Override
        public List<Given> sizes() {
            return List.of();
        }

        @Override
        public List<Input> inputs() {
            return List.of();
        }

        @Override
        public Outlet outlet(Floor floor, double width, double... sizes) {
            return Outlet.point(floor.lowestAt(along.along()), across.across() >= 0 ? 0 : width);
        }

        @Override
        public String statement() {
            return "Drain hole at the lowest point, as stated.";
        }
    }

    /**
     * A hole at a distance from one end, and from one side where that is stated; else the high side is taken.
     *
     * @param end      the end
     * @param near     distance from that end to the near edge of the hole (m)
     * @param side     where it lies across the width; empty if not known
     * @param diameter diameter (m); its best value says where the far edge lies
     */
    record FromEnd(End end, Given near, Optional<FromSide> side, Given diameter) implements Hole {

        /** Ends of a floor. */
        public enum End {
            /** The rear end. */
            REAR,
            /** The forward end. */
            FRONT
        }

        /**
         * A distance from one side of the floor.
         *
         * @param first whether it is the side from which the width is counted
         * @param near  distance from that side to the near edge of the hole (m)
         */
        public record FromSide(boolean first, Given near) {
        }

        /**
         * Makes a hole whose place across the width is not known.
         *
         * @param end      the end
         * @param near     distance from that end to the near edge of the hole (m)
         * @param diameter diameter (m)
         */
        public FromEnd(End end, Given near, Given diameter) {
            this(end, near, Optional.empty(), diameter);
        }

        @Override
        public List<Given> sizes() {
            return Stream.concat(Stream.of(near), side.stream().map(FromSide::near)).toList();
        }

        @Override
        public List<Input> inputs() {
            List<Input> inputs = new ArrayList<>(List.of(near.as("a", "distance of the near edge of the drain hole from the "
                    + (end == End.REAR ? "rear" : "forward") + " end", SiUnit.METRE)));
            side.ifPresent(one -> inputs.add(one.near().as("b", "distance of the near edge of the drain hole from the side "
                    + (one.first() ? "that a positive roll lowers" : "that a negative roll lowers"), SiUnit.METRE)));
            inputs.add(diameter.as("d", "diameter of the drain hole", SiUnit.METRE));
            return inputs;
        }

        @Override
        public Outlet outlet(Floor floor, double width, double... sizes) {
            double wide = diameter.value().value();
            double fromEnd = sizes[0] + wide / 2;
            OptionalDouble across = side.map(one -> sizes[1] + wide / 2).map(from -> side.get().first() ? from : width - from)
                    .map(OptionalDouble::of).orElse(OptionalDouble.empty());
            return new Outlet(end == End.REAR ? floor.rear() + fromEnd : floor.front() - fromEnd, across, wide, 0);
        }

        @Override
        public String statement() {
            return side.isPresent() ? "Drain hole where it is stated, along and across."
                    : "Where the drain hole lies across the width is not stated: the high side is taken.";
        }
    }
}
