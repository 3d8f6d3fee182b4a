package org.shortgrain.mechanics.fit;

import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/** Documents behind the equations of this package. */
final class Sources {

    static final Citation LAME_SHIGLEY =
            new Citation("shigley-mechanical-engineering-design", "9th ed., 3-16, eqs 3-56 and 3-57", SourceStatus.READ);
    static final Citation LAME_BROWN =
            new Citation("brown-marks-calculations", "3.2, eqs 3.11 to 3.18 and p. 137", SourceStatus.READ);
    static final Citation FITS_IN_PRONE_ALLOYS = new Citation("mil-hdbk-5j", "3.1.3.1", SourceStatus.SECONDARY);
    static final Citation THERMAL_GROWTH =
            new Citation("own-derivation", "free expansion of both rings changes the interference", SourceStatus.DERIVED);
    static final Citation HOOP_DIRECTION =
            new Citation("own-derivation", "hoop stress acts along the tangent of the bore", SourceStatus.DERIVED);

    static final Citation STAKED_LIP =
            new Citation("common-practice", "a lip formed past yield is taken at yield", SourceStatus.COMMON_PRACTICE);

    private Sources() {
    }
}
