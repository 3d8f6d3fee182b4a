package org.shortgrain.mechanics.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.shortgrain.mechanics.quench.QuenchBound;
import org.shortgrain.mechanics.quench.QuenchedSection;
import org.shortgrain.mechanics.quench.StressProfile;
import org.shortgrain.terms.GrainDirection;

/**
 * The core stress that an unknown quench may have left, for each shape that the section may have.
 *
 * <p>Uniform through the thickness, since without the bath nobody can say where the core begins; so it says nothing of
 * what cutting releases.
 */
final class BoundFields {

    private BoundFields() {
    }

    static List<ResidualField> of(QuenchBound bound, QuenchedSection section, GrainDirection direction,
            OptionalDouble edgeDistance) {
        double thickness = section.rulingThickness().orElse(1);
        List<ResidualField> fields = new ArrayList<>();
        if (section.mayBeCompact()) {
            fields.add(uniform("bound for a compact bar", thickness, bound.barCoreAlong(), bound.barCoreAcross(),
                    bound.barCoreAcross()));
        }
        boolean plate = direction == GrainDirection.LT ? section.mayBePlateAcross() : section.mayBePlate();
        if (plate) {
            double through = direction == GrainDirection.ST
                    ? EdgeBand.shortTransverse(bound.yield(), section, edgeDistance) : 0;
            fields.add(uniform("bound for a plate", thickness, bound.plateCore(), bound.plateCore(), through));
        }
        return fields;
    }

    private static ResidualField uniform(String basis, double thickness, double along, double across, double through) {
        return new ResidualField(basis, StressProfile.uniform(thickness, along),
                StressProfile.uniform(thickness, across), StressProfile.uniform(thickness, through), false);
    }
}
