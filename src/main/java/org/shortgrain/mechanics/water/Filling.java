package org.shortgrain.mechanics.water;

import java.util.List;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/**
 * What fills a hollow, as it stands to water. The fill is taken to reach the rim; the room that it takes up holds no water
 * while it keeps to the wall.
 *
 * <p>Adhesion, water pick-up and water retention decide whether a filling foam protects (CORROSION 99, paper 510, abstract,
 * read).
 */
public enum Filling {
    /** Tight fill that keeps to a primed wall: it takes the room of the water. */
    TIGHT_AND_BONDED("Tight and bonded: no room for water while the bond holds."),
    /** Tight fill that does not keep to the wall, or is not known to: water gets behind it and stays. */
    TIGHT_AND_LOOSE("Tight but not bonded for certain: water behind it has no way out and is not seen."),
    /** Open cells: it soaks up water and keeps it on the wall. */
    SPONGE("Open cells: it soaks itself full and keeps the wall wet.");

    private final String statement;

    Filling(String statement) {
        this.statement = statement;
    }

    /**
     * {@return the water that the hollow may hold with its filling, {@code water.beside-filling} (m3)}
     *
     * @param trapped what it would hold without (m3)
     */
    public Computed left(Given trapped) {
        double high = this == TIGHT_AND_BONDED ? 0 : trapped.value().high();
        double low = this == SPONGE ? trapped.value().low() : 0;
        return new Computed("water.beside-filling", "Water that the filled hollow may hold", SiUnit.CUBIC_METRE,
                new Band(this == TIGHT_AND_BONDED ? 0 : trapped.value().value(), low, high),
                "0 for a tight and bonded fill; 0 to V for a tight one that may be loose; V for open cells",
                List.of(trapped.as("V", "what the hollow would hold without the filling", SiUnit.CUBIC_METRE)), List.of(),
                "none to all of the hollow where the bond is not certain",
                new Validity(true, "Fill up to the rim; the solid part of open cells is left out."),
                List.of(Sources.FILLING, Sources.TRAPPED), List.of(statement), List.of());
    }

    /** {@return what the filling does, in words} */
    public String statement() {
        return statement;
    }
}
