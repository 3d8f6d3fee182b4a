package org.shortgrain.mechanics.quench;

import java.util.Objects;
import org.shortgrain.terms.Citation;

/**
 * How fast a quench bath takes heat from a metal surface, for free immersion with every face wet. Spray takes heat
 * three to five times as fast and must not be computed with it.
 *
 * @param name              name of the bath, such as {@code water60}
 * @param bathTemperature   temperature of the bath, degC
 * @param coefficient       film coefficient against the temperature of the surface, W/(m2 K)
 * @param shareOfColdWater  core stress that published measurements found, as a share of the core stress after a
 *                          cold-water quench of the same section; the model is given no credit below it
 * @param source            where the film coefficient comes from
 * @param sourceOfShare     where the share comes from
 */
public record FilmCoefficient(String name, double bathTemperature, PropertyCurve coefficient, double shareOfColdWater,
        Citation source, Citation sourceOfShare) {

    /** Refuses missing parts and a share outside 0 to 1. */
    public FilmCoefficient {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(coefficient, "coefficient");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(sourceOfShare, "sourceOfShare");
        if (!(shareOfColdWater >= 0 && shareOfColdWater <= 1)) {
            throw new IllegalArgumentException("share of the cold-water stress " + shareOfColdWater);
        }
    }

    /**
     * {@return the film of a bath between this one and a hotter or stronger one, weighted linearly at equal surface
     * temperature}
     *
     * @param other  the other bath
     * @param weight weight of the other, 0 to 1
     * @param name   name of the bath between them
     */
    public FilmCoefficient towards(FilmCoefficient other, double weight, String name) {
        if (!(weight >= 0 && weight <= 1)) {
            throw new IllegalArgumentException("weight " + weight);
        }
        return new FilmCoefficient(name, (1 - weight) * bathTemperature + weight * other.bathTemperature,
                coefficient.blend(other.coefficient, weight),
                (1 - weight) * shareOfColdWater + weight * other.shareOfColdWater, source, sourceOfShare);
    }
}
