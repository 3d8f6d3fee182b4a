package org.shortgrain.mechanics.concentration;

import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/** Documents behind the equations of this package. */
final class Sources {

    static final Citation KIRSCH = new Citation("kirsch-1898", "hole in an infinite plate", SourceStatus.MEMORY);
    static final Citation INGLIS = new Citation("inglis-1913", "elliptic hole in an infinite plate", SourceStatus.MEMORY);
    static final Citation HOWLAND = new Citation("howland-1930", "hole in a strip in tension", SourceStatus.MEMORY);
    static final Citation PETERSON = new Citation("pilkey-petersons-stress-concentration-factors",
            "3rd ed., fitted charts, quoted on an engineering-formula site", SourceStatus.SECONDARY);
    static final Citation ROARK =
            new Citation("roark-formulas-stress-strain", "7th ed., Table 17.1", SourceStatus.MEMORY);
    static final Citation LOCAL_STRESS = new Citation("own-derivation",
            "thresholds from smooth specimens compare with local stress", SourceStatus.DERIVED);
    static final Citation SURFACE_TENSION = new Citation("mil-hdbk-5j", "3.1.3.1", SourceStatus.SECONDARY);
    static final Citation YIELD_CAP =
            new Citation("common-practice", "yielding redistributes a local peak", SourceStatus.COMMON_PRACTICE);

    private Sources() {
    }
}
