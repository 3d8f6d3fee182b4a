package org.shortgrain.mechanics.sustained;

import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/** Documents behind the method of this package. */
final class Sources {

    static final Citation WHAT_COUNTS = new Citation("mil-hdbk-5j", "3.1.3.1", SourceStatus.SECONDARY);
    static final Citation SUM_OF_ALL = new Citation("def-stan-00-970-leaflet-7", "2.1", SourceStatus.READ);
    static final Citation TENSORS = new Citation("own-derivation",
            "linear superposition and normal stress on the plane across a direction", SourceStatus.DERIVED);
    static final Citation CONE = new Citation("own-derivation",
            "largest normal stress over a cone of directions", SourceStatus.DERIVED);
    static final Citation MONTE_CARLO = new Citation("jcgm-101", "6.4, 7", SourceStatus.MEMORY);
    static final Citation PROPAGATION = new Citation("jcgm-100", "5.1.2, 5.1.3", SourceStatus.READ);
    static final Citation WILSON =
            new Citation("newcombe-1998", "score interval of a proportion", SourceStatus.SECONDARY);
    static final Citation PEENING_LAYER = new Citation("general-handbooks",
            "depth of the peened layer over the arc height of the strip", SourceStatus.MEMORY);
    static final Citation PEENING_BALANCE = new Citation("own-derivation",
            "balance of forces over the section peened on both faces", SourceStatus.DERIVED);
    static final Citation PEENING_RULES = new Citation("mil-std-1568c", "5.2.3.1.4", SourceStatus.READ);

    private Sources() {
    }
}
