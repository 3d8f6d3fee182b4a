package org.shortgrain.rulebook.facts;

/**
 * Thickness when quenched, against what is published. NaN where nothing is stated or published.
 *
 * @param atQuench     greatest section at quench as stated (m)
 * @param published    greatest thickness for which minimum properties of the material in its form are published (m)
 * @param fullStrength thickness up to which the alloy quenches to full strength (m)
 */
public record Thickness(double atQuench, double published, double fullStrength) {

    private static final double MILLIMETRES = 1000;

    /** {@return whether it certainly is thicker than any published minimum} */
    public boolean isBeyondPublished() {
        return atQuench > published;
    }

    /** {@return whether it certainly is thicker than the alloy quenches through} */
    public boolean isBeyondFullStrength() {
        return atQuench > fullStrength;
    }

    /** {@return the greatest published thickness (mm), for texts} */
    public long publishedMillimetres() {
        return Math.round(published * MILLIMETRES);
    }

    /** {@return the thickness to which the alloy quenches through (mm), for texts} */
    public long fullStrengthMillimetres() {
        return Math.round(fullStrength * MILLIMETRES);
    }
}
