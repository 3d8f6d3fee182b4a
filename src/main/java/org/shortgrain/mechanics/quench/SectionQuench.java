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
}
