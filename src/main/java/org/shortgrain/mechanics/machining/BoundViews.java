package org.shortgrain.mechanics.machining;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.mechanics.quench.QuenchBound;
import org.shortgrain.mechanics.quench.QuenchedSection;
import org.shortgrain.terms.GrainDirection;

/**
 * The core stress that an unknown quench may have left, for each shape that the section may have.
 *
 * <p>A surface that is still the quenched one shows no tension after any quench; it is given no compression either.
 */
final class BoundViews {

    private final ResidualStressCase c;
    private final QuenchBound bound;
    private final double thickness;

    BoundViews(ResidualStressCase c) {
        this.c = c;
        this.bound = QuenchBound.of(c.material());
        this.thickness = c.section().rulingThickness().orElse(1);
    }

    List<ResidualField> nominal() {
        QuenchedSection section = c.section();
        List<ResidualField> fields = new ArrayList<>();
        if (section.mayBeCompact()) {
            fields.add(view("bound for a compact bar", bound.barCoreAlong(), bound.barCoreAcross(),
                    bound.barCoreAcross()));
        }
        if (c.direction() == GrainDirection.LT ? section.mayBePlateAcross() : section.mayBePlate()) {
            boolean edge = c.direction() == GrainDirection.ST && mayFeelEdge();
            fields.add(view("bound for a plate", bound.plateCore(), bound.plateCore(),
                    edge ? EdgeBand.THROUGH * bound.yield() : 0));
        }
        return fields;
    }

    /** The band inside an edge adds to the upper end along L, since the distance from an edge is seldom stated. */
    List<ResidualField> upper() {
        List<ResidualField> fields = new ArrayList<>(nominal());
        if (c.section().mayBePlate() && c.direction() == GrainDirection.L && mayFeelEdge()) {
            fields.add(view("bound inside the edge of a plate", EdgeBand.ALONG * bound.yield(), bound.plateCore(), 0));
        }
        return fields;
    }

    private boolean mayFeelEdge() {
        return EdgeBand.mayReach(c.section(), c.surface().edgeDistance());
    }

    private ResidualField view(String basis, double along, double across, double through) {
        double share = c.surface().isAsQuenched(c.section().rulingThickness()) ? 0 : 1;
        return new ResidualField.Bound(basis, thickness, share * along, share * across, share * through);
    }
}
