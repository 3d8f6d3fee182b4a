package org.shortgrain.mechanics.fit;

import java.util.List;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/**
 * Stress left in a swaged, staked or crimped lip: taken as yielded, sigma = Fty, until measured. Common practice.
 */
public final class StakedLip {

    private StakedLip() {
    }

    /**
     * {@return the stress in the lip, {@code fit.staked-lip} (Pa): the yield strength, with anything down to none as
     * the range}
     *
     * @param yieldStrength yield strength of the metal of the lip (Pa)
     */
    public static Computed stress(Given yieldStrength) {
        Band yield = yieldStrength.value();
        return new Computed("fit.staked-lip", "Residual stress in a staked lip", SiUnit.PASCAL,
                new Band(yield.value(), 0, yield.high()), "sigma = Fty",
                List.of(yieldStrength.as("Fty", "yield strength of the lip", SiUnit.PASCAL)), List.of(),
                "a lip shaped past yield keeps anything from none to its yield strength",
                new Validity(true, "A lip formed cold past yield; a measured stress replaces this."),
                List.of(Sources.STAKED_LIP),
                List.of("A specified minimum yield understates a lip of stronger metal, and forming hardens it."), List.of());
    }
}
