package org.shortgrain.mechanics.quench;

import java.util.Objects;
import org.shortgrain.terms.Citation;

/**
 * Published experience that bounds what the models may claim.
 *
 * @param stretched            plate or extrusion stretched 1.5 to 3 % (Tx51)
 * @param compressedHand       hand forging compressed (Tx52)
 * @param compressedDie        die forging compressed or restruck (Tx52, Tx54)
 * @param compressedLightly    compressed by less than 0.5 %
 * @param uphillBoilingWater   uphill quench from the cold into boiling water
 * @param uphillStrong         uphill quench into a stronger medium such as a steam jet
 * @param uphillReach          depth that an uphill quench reaches; beyond it nothing is relieved
 * @param aged                 aged after the quench; used for the lower end of the range only
 * @param model                scatter of measured stress about the models, as shares of the model's value
 * @param upperYield           how far the flow stress may exceed the table's, as a share; used for the upper case
 */
public record PublishedRelief(RetainedShare stretched, RetainedShare compressedHand, RetainedShare compressedDie,
        RetainedShare compressedLightly, RetainedShare uphillBoilingWater, RetainedShare uphillStrong,
        UphillReach uphillReach, RetainedShare aged, RetainedShare model, RetainedShare upperYield) {

    /** Refuses missing parts. */
    public PublishedRelief {
        Objects.requireNonNull(stretched, "stretched");
        Objects.requireNonNull(compressedHand, "compressedHand");
        Objects.requireNonNull(compressedDie, "compressedDie");
        Objects.requireNonNull(compressedLightly, "compressedLightly");
        Objects.requireNonNull(uphillBoilingWater, "uphillBoilingWater");
        Objects.requireNonNull(uphillStrong, "uphillStrong");
        Objects.requireNonNull(uphillReach, "uphillReach");
        Objects.requireNonNull(aged, "aged");
        Objects.requireNonNull(model, "model");
        Objects.requireNonNull(upperYield, "upperYield");
    }

    /**
     * How deep an uphill quench works.
     *
     * @param depth  depth, m
     * @param source where the figure comes from
     */
    public record UphillReach(double depth, Citation source) {
    }
}
