package org.shortgrain.mechanics.fit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.shortgrain.mechanics.Given;

/** The bush in a lug that the tests of this package share: 15-5PH-like steel in 7075-like aluminium. */
final class Fits {

    static final double MM = 1e-3;
    static final double MPA = 1e6;
    static final double GPA = 1e9;

    static final FitMaterial ALUMINIUM = material("7075", 71.7 * GPA, 0.33, 23.4e-6, Optional.of(460 * MPA));
    static final FitMaterial STEEL = material("steel", 200 * GPA, 0.29, 10.8e-6, Optional.of(1000 * MPA));

    private Fits() {
    }

    static FitMaterial material(String name, double modulus, double poisson, double expansion, Optional<Double> yield) {
        return new FitMaterial(name, Given.exact(modulus, "test"), Given.exact(poisson, "test"),
                Given.exact(expansion, "test"), yield.map(y -> Given.exact(y, "test")));
    }

    /**
     * A lug of outside diameter 28 mm round a 14 mm hole with a bush of 10 mm bore, at 20 degC and the given others.
     */
    static InterferenceFit bushInLug(Interference interference, double... lasting) {
        return new InterferenceFit(interference, Optional.of(Given.exact(28 * MM, "test")), Given.exact(10 * MM, "test"),
                ALUMINIUM, STEEL, Given.exact(20, "test"),
                Arrays.stream(lasting).mapToObj(t -> Given.exact(t, "test")).toList());
    }

    static Interference interference(double min, double max) {
        return new Interference.Stated(Given.exact(14 * MM, "test"), Given.limits(min, max, "test"));
    }

    static InterferenceFit solidPinInWidePlate(double interference) {
        return new InterferenceFit(interference(interference, interference), Optional.empty(), Given.exact(0, "test"),
                ALUMINIUM, STEEL, Given.exact(20, "test"), List.of());
    }
}
