package org.shortgrain.mechanics.water;

import java.util.List;
import java.util.OptionalDouble;
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
     * A hole at a distance from one end. Where it lies across the width is not known; the high side is taken.
     *
     * @param end      the end
     * @param near     distance from that end to the near edge of the hole (m)
     * @param diameter diameter (m); its best value says where the far edge lies
     */
    record FromEnd(End end, Given near, Given diameter) implements Hole {

        /** Ends of a floor. */
        public enum End {
            /** The rear end. */
            REAR,
            /** The forward end. */
            FRONT
        }

        @Override
        public List<Given> sizes() {
            return List.of(near);
        }

        @Override
        public List<Input> inputs() {
            return List.of(near.as("a", "distance of the near edge of the drain hole from the "
                    + (end == End.REAR ? "rear" : "forward") + " end", SiUnit.METRE),
                    diameter.as("d", "diameter of the drain hole", SiUnit.METRE));
        }

        @Override
        public Outlet outlet(Floor floor, double width, double... sizes) {
            double wide = diameter.value().value();
            double fromEnd = sizes[0] + wide / 2;
            return new Outlet(end == End.REAR ? floor.rear() + fromEnd : floor.front() - fromEnd, OptionalDouble.empty(),
                    wide, 0);
        }

        @Override
        public String statement() {
            return "Where the drain hole lies across the width is not stated: the high side is taken.";
        }
    }
}
