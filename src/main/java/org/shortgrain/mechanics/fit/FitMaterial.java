package org.shortgrain.mechanics.fit;

import java.util.Optional;
import org.shortgrain.mechanics.Given;

/**
 * What a fit needs to know of one of its two materials.
 *
 * @param name         alloy and temper as the description has them
 * @param modulus      Young's modulus (Pa)
 * @param poisson      Poisson's ratio
 * @param expansion    mean coefficient of thermal expansion over the temperatures of the fit (1/K)
 * @param yieldStrength yield strength (Pa); empty when not known, and then the elastic range is not claimed
 */
public record FitMaterial(String name, Given modulus, Given poisson, Given expansion, Optional<Given> yieldStrength) {
}
