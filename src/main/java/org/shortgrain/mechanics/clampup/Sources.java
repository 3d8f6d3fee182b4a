package org.shortgrain.mechanics.clampup;

import java.util.List;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/** Documents behind the equations of this package. */
final class Sources {

    static final List<Citation> BEAMS = List.of(
            new Citation("own-derivation", "gap pulled shut, from standard beam cases", SourceStatus.DERIVED),
            new Citation("brown-marks-calculations", "eq. 2.62, p. 102", SourceStatus.READ),
            new Citation("mil-hdbk-5j", "3.1.2.3.1", SourceStatus.SECONDARY),
            new Citation("def-stan-00-970-leaflet-7", "2.1", SourceStatus.READ));
    static final Citation PRELOAD_SPREAD = new Citation("jfap-2019-bolt-preload",
            "torque control, quoting NASA practice", SourceStatus.SECONDARY);

    private Sources() {
    }
}
