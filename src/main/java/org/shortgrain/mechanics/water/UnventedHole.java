package org.shortgrain.mechanics.water;

import java.util.List;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Step;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/**
 * The only opening of a closed hollow: water leaves it only as fast as air comes in through the same hole.
 *
 * <p>Water stayed in upright tubes, open below and closed above, up to 10 to 15 mm in diameter (Extrand, Langmuir 33,
 * 2017, 12903, abstract, read). The lower end is near the diameter below which a flat inverted surface of water is stable
 * against tipping, 2 x 1.8412 capillary lengths (theory after Maxwell and Duprez, from memory). A hole wider than the upper
 * end lets air in beside the water.
 *
 * @param diameter diameter of the opening (m), above 0
 */
public record UnventedHole(Given diameter) {

    /** Widest tube in which water was seen to stay (m), least and most of the trials: Extrand. */
    private static final Band WATER_STAYED = new Band(15e-3, 10e-3, 15e-3);
    /** First zero of the derivative of the Bessel function J1: exact mathematics. */
    private static final double TIPPING_MODE = 1.8411837813406593;

    /** {@return whether water can stay in it for want of air} */
    public boolean mayHold() {
        return diameter.value().low() <= WATER_STAYED.high();
    }

    /** {@return the width up to which a single opening can keep its water, {@code water.unvented-limit} (m)} */
    public Computed limit() {
        Capillarity water = new Capillarity(Liquid.WATER.tension().value().value(),
                Liquid.WATER.density().value().value(), Liquid.GRAVITY);
        return new Computed("water.unvented-limit", "Width up to which the only opening of a closed hollow can keep its"
                + " water", SiUnit.METRE, WATER_STAYED, "measured on upright tubes closed above",
                List.of(diameter.as("d", "diameter of the opening", SiUnit.METRE)),
                List.of(new Step("d_tip", "theory: 2 x 1.8412 capillary lengths", SiUnit.METRE,
                        Band.exact(2 * TIPPING_MODE * water.length()))),
                "least and most of the measured widths", new Validity(true, "Clean water, at rest, no shaking."),
                List.of(Sources.COLUMN, Sources.COLUMN_THEORY, Sources.VENTED),
                List.of(mayHold() ? "The opening is not wider: air may not come in, and the water may stay."
                        : "The opening is wider: air comes in beside the water."), List.of());
    }
}
