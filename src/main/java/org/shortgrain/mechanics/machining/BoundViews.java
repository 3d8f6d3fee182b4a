package org.shortgrain.mechanics.machining;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.mechanics.quench.QuenchBound;
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
        List<ResidualField> fields = middle();
        if (mayBePlate() && EdgeBand.reaches(c.section(), c.surface().edgeDistance())) {
            fields.add(insideEdge());
        }
        return fields;
    }

    /** The band inside an edge counts at the upper end already where the distance from an edge is not stated. */
    List<ResidualField> upper() {
        List<ResidualField> fields = middle();
        if (mayBePlate() && mayFeelEdge()) {
            fields.add(insideEdge());
        }
        return fields;
    }

    /**
     * What is taken to remain after relief whatever a share of little stress comes to; in a plate along the thickness
     * in the proportion of its edge band.
     *
     * @param stress stress in the plane or along a bar, Pa; nothing is added for zero
     */
    List<ResidualField> remaining(double stress) {
        if (stress == 0) {
            return List.of();
        }
        double through = c.section().mayBeCompact() ? stress : mayFeelEdge() ? EdgeBand.THROUGH * stress : 0;
        return List.of(new ResidualField.Bound("least stress taken to remain after relief", thickness, stress, stress,
                through));
    }

    private List<ResidualField> middle() {
        List<ResidualField> fields = new ArrayList<>();
        if (c.section().mayBeCompact()) {
            fields.add(field("bound for a compact bar", bound.barCoreAlong(), bound.barCoreAcross(),
                    bound.barCoreAcross()));
        }
        if (mayBePlate()) {
            boolean edge = c.direction() == GrainDirection.ST && mayFeelEdge();
            fields.add(field("bound for a plate", bound.plateCore(), bound.plateCore(),
                    edge ? EdgeBand.THROUGH * bound.yield() : 0));
        }
        return fields;
    }

    private ResidualField insideEdge() {
        return field("bound inside the edge of a plate", EdgeBand.ALONG * bound.yield(), bound.plateCore(),
                EdgeBand.THROUGH * bound.yield());
    }

    private boolean mayBePlate() {
        return c.direction() == GrainDirection.LT ? c.section().mayBePlateAcross() : c.section().mayBePlate();
    }

    private boolean mayFeelEdge() {
        return EdgeBand.mayReach(c.section(), c.surface().edgeDistance());
    }

    private ResidualField field(String basis, double along, double across, double through) {
        double share = c.surface().isAsQuenched(c.section().rulingThickness()) ? 0 : 1;
        return new ResidualField.Bound(basis, thickness, share * along, share * across, share * through);
    }
}
