package org.shortgrain.part;

/**
 * A number with its unit, as entered and in SI.
 *
 * @param si      value in the SI unit of its dimension
 * @param entered the text in the description, such as {@code 0.1 in}
 */
public record Quantity(double si, String entered) {
    // written out: what the compiler leaves to the runtime costs a cold start several milliseconds
    @Override
    public boolean equals(Object other) {
        return other instanceof Quantity that && Double.compare(si, that.si) == 0 && entered.equals(that.entered);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(si) + entered.hashCode();
    }
}
