package org.shortgrain.assessment;

import java.util.Map;
import java.util.Optional;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.fit.FitMaterial;
import org.shortgrain.terms.GrainDirection;

/**
 * What the tables hold of a material's elastic behaviour and yield, with where each number came from.
 *
 * @param name      alloy and temper as the description has them
 * @param modulus   Young's modulus (Pa)
 * @param poisson   Poisson's ratio
 * @param expansion mean thermal expansion (1/K)
 * @param yield     minimum yield strength by grain direction (Pa); no entry if none is published
 */
record Elastic(String name, Given modulus, Given poisson, Given expansion, Map<GrainDirection, Given> yield) {

    /** Copies the map. */
    Elastic {
        yield = Map.copyOf(yield);
    }

    /** {@return the lowest published yield strength of any direction} */
    Optional<Given> lowestYield() {
        return yield.values().stream()
                .min((a, b) -> Double.compare(a.value().low(), b.value().low()));
    }

    /** {@return the material as a fit needs it} */
    FitMaterial forFit() {
        return new FitMaterial(name, modulus, poisson, expansion, lowestYield());
    }
}
