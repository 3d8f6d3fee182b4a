package org.shortgrain.mechanics.condensation;

import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/** Documents behind the equations of this package. */
final class Sources {

    static final Citation MAGNUS_WATER = new Citation("wmo-no-8", "annex 4.B, over water", SourceStatus.SECONDARY);
    static final Citation MAGNUS_ICE = new Citation("wmo-no-8", "annex 4.B, over ice", SourceStatus.MEMORY);
    static final Citation SONNTAG = new Citation("sonntag-1990", "over water", SourceStatus.MEMORY);
    static final Citation CAVITY = new Citation("own-derivation",
            "vapour in a closed volume before and after cooling", SourceStatus.DERIVED);
    static final Citation BREATHING = new Citation("own-derivation",
            "one change of air in every cycle", SourceStatus.DERIVED);

    private Sources() {
    }
}
