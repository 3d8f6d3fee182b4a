package org.shortgrain.mechanics.quench;

import java.util.Objects;

/**
 * The quench of a section: all that its result depends on.
 *
 * @param material            the metal
 * @param film                the bath
 * @param thickness           thickness of a plate or diameter of a bar at quench, m
 * @param solutionTemperature temperature at immersion, degC
 */
public record SectionQuench(QuenchMaterial material, FilmCoefficient film, double thickness,
        double solutionTemperature) {

    /** Refuses missing parts and a thickness that is not positive. */
    public SectionQuench {
        Objects.requireNonNull(material, "material");
        Objects.requireNonNull(film, "film");
        if (!(thickness > 0)) {
            throw new IllegalArgumentException("thickness " + thickness);
        }
    }

    /** Whether another section goes through the same temperatures, however strong its metal. */
    boolean coolsAs(SectionQuench other) {
        return thickness == other.thickness && solutionTemperature == other.solutionTemperature
                && film.bathTemperature() == other.film.bathTemperature()
                && film.coefficient().equals(other.film.coefficient())
                && material.density() == other.material.density()
                && material.conductivity().equals(other.material.conductivity())
                && material.heatCapacity().equals(other.material.heatCapacity());
    }

    /**
     * As a record's own, but quick to the same metal and bath, and hashed by what tells quenches apart: the key under which one is
     * found again.
     */
    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof SectionQuench that && thickness == that.thickness
                && solutionTemperature == that.solutionTemperature
                && (material == that.material || material.equals(that.material))
                && (film == that.film || film.equals(that.film));
    }

    @Override
    public int hashCode() {
        int metalAndBath = 31 * material.wYield().hashCode() + film.coefficient().hashCode();
        return 31 * (31 * metalAndBath + Double.hashCode(thickness)) + Double.hashCode(solutionTemperature);
    }
}
