package org.shortgrain.reference;

import java.util.Optional;
import org.shortgrain.terms.Citation;

/**
 * Physical data at room temperature; thermal expansion is the mean from 20 to 100 degrees Celsius.
 *
 * @param modulus      Young's modulus (Pa)
 * @param poisson      Poisson's ratio
 * @param density      density (kg/m3)
 * @param expansion    thermal expansion (1/K)
 * @param conductivity thermal conductivity (W/(m K))
 * @param specificHeat specific heat (J/(kg K))
 */
public record PhysicalData(Optional<Value> modulus, Optional<Value> poisson, Optional<Value> density,
        Optional<Value> expansion, Optional<Value> conductivity, Optional<Value> specificHeat) {

    /**
     * One datum.
     *
     * @param value    the number, in the unit of its component
     * @param row      the row's key in words; it may be of another temper or form of the alloy
     * @param citation source
     */
    public record Value(double value, String row, Citation citation) {
    }

    static final PhysicalData NONE = new PhysicalData(Optional.empty(), Optional.empty(), Optional.empty(),
            Optional.empty(), Optional.empty(), Optional.empty());
}
