package org.shortgrain.mechanics.quench;

import java.util.Objects;
import org.shortgrain.terms.Citation;

/**
 * What the quench of an aluminium alloy needs to know of the metal, from the solution temperature down to the bath.
 *
 * <p>The flow stress is that of the as-quenched (W) temper, not of the aged part: the metal yields while it is soft.
 *
 * @param name                name of the table, such as {@code 7050}
 * @param density             kg/m3
 * @param poissonRatio        ratio, taken as constant
 * @param conductivity        heat conductivity, W/(m K)
 * @param heatCapacity        specific heat capacity, J/(kg K)
 * @param youngsModulus       Pa
 * @param expansion           tangent coefficient of thermal expansion, 1/K
 * @param wYield              0.2 % proof stress of the W temper, Pa
 * @param hardening           slope of stress against equivalent plastic strain, Pa
 * @param hardeningKept       share of new plastic strain that still hardens: 1 when cold, 0 when it recovers at once
 * @param solutionTemperature usual temperature of the solution heat treatment, degC
 * @param source              where the values come from
 */
public record QuenchMaterial(String name, double density, double poissonRatio, PropertyCurve conductivity,
        PropertyCurve heatCapacity, PropertyCurve youngsModulus, PropertyCurve expansion, PropertyCurve wYield,
        PropertyCurve hardening, PropertyCurve hardeningKept, double solutionTemperature, Citation source) {

    /** Room temperature, at which residual stress is stated, degC. */
    public static final double ROOM_TEMPERATURE = 20;

    /** Refuses missing parts and values that no metal has. */
    public QuenchMaterial {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(conductivity, "conductivity");
        Objects.requireNonNull(heatCapacity, "heatCapacity");
        Objects.requireNonNull(youngsModulus, "youngsModulus");
        Objects.requireNonNull(expansion, "expansion");
        Objects.requireNonNull(wYield, "wYield");
        Objects.requireNonNull(hardening, "hardening");
        Objects.requireNonNull(hardeningKept, "hardeningKept");
        Objects.requireNonNull(source, "source");
        if (!(density > 0) || !(poissonRatio >= 0 && poissonRatio < 0.5)) {
            throw new IllegalArgumentException(name + ": density " + density + ", Poisson's ratio " + poissonRatio);
        }
    }

    /** {@return the W-temper proof stress at room temperature, Pa: the one number that rules a cold-water quench} */
    public double wYieldAtRoomTemperature() {
        return wYield.at(ROOM_TEMPERATURE);
    }

    /** {@return Young's modulus at room temperature, Pa} */
    public double modulusAtRoomTemperature() {
        return youngsModulus.at(ROOM_TEMPERATURE);
    }

    /**
     * {@return the free thermal strain counted from room temperature}
     *
     * @param celsius temperature, degC
     */
    public double thermalStrain(double celsius) {
        return expansion.integral(ROOM_TEMPERATURE, celsius);
    }

    /**
     * {@return the same metal with a flow stress changed at every temperature}
     *
     * @param factor factor on the W-temper proof stress
     */
    public QuenchMaterial withYieldTimes(double factor) {
        return new QuenchMaterial(name, density, poissonRatio, conductivity, heatCapacity, youngsModulus, expansion,
                wYield.times(factor), hardening, hardeningKept, solutionTemperature, source);
    }

    // written out: what the compiler leaves to the runtime costs a cold start several milliseconds
    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof QuenchMaterial that && name.equals(that.name)
                && Double.compare(density, that.density) == 0 && Double.compare(poissonRatio, that.poissonRatio) == 0
                && Double.compare(solutionTemperature, that.solutionTemperature) == 0
                && conductivity.equals(that.conductivity) && heatCapacity.equals(that.heatCapacity)
                && youngsModulus.equals(that.youngsModulus) && expansion.equals(that.expansion)
                && wYield.equals(that.wYield) && hardening.equals(that.hardening)
                && hardeningKept.equals(that.hardeningKept) && source.equals(that.source);
    }

    @Override
    public int hashCode() {
        return 31 * name.hashCode() + wYield.hashCode();
    }
}
