package org.shortgrain.mechanics.water;

import java.util.List;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/** Documents behind the equations of this package. */
final class Sources {

    static final Citation ATTITUDE = new Citation("mil-std-1568c", "5.2.2.3, attitude of the aircraft as well as the"
            + " part", SourceStatus.READ);
    static final Citation TRAPPED = new Citation("own-derivation",
            "level of water: the lowest way out over the highest point on it", SourceStatus.DERIVED);
    static final List<Citation> STANDING = List.of(TRAPPED, ATTITUDE);
    static final Citation LEAST_DRAIN = new Citation("mil-std-1568c", "5.2.2.3, least drain hole", SourceStatus.READ);
    static final Citation VENTED = new Citation("mil-std-1568c", "5.2.2.2", SourceStatus.READ);
    static final Citation HOLD_UP = new Citation("own-derivation",
            "pressure of a pendant drop as wide as the hole", SourceStatus.DERIVED);
    static final Citation WATER = new Citation("general-handbooks", "water at 20 degC", SourceStatus.MEMORY);
    static final Citation TORRICELLI = new Citation("own-derivation",
            "outflow under the falling head of a vessel with upright walls", SourceStatus.DERIVED);
    static final Citation DISCHARGE = new Citation("discharge-page", "sharp-edged hole", SourceStatus.SECONDARY);
    static final Citation COLUMN = new Citation("extrand-2017", "abstract", SourceStatus.READ);
    static final Citation COLUMN_THEORY = new Citation("inverted-surface-theory", "first two modes",
            SourceStatus.MEMORY);
    static final Citation CAPILLARY_ENTRY = new Citation("to-1-1-700", "10.5", SourceStatus.READ);
    static final Citation JURIN = new Citation("general-handbooks", "height of capillary rise", SourceStatus.MEMORY);
    static final Citation OFFSET_HOLES = new Citation("own-derivation", "common width of two round holes",
            SourceStatus.DERIVED);
    static final Citation FILLING = new Citation("corrosion-99-510", "abstract", SourceStatus.READ);

    private Sources() {
    }
}
