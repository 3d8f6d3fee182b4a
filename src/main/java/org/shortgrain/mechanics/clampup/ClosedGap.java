package org.shortgrain.mechanics.clampup;

import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Given;

/** A gap that assembly closes by bending the part: alone, or together with the part that it is bolted to. */
public sealed interface ClosedGap permits PulledShut, SharedGap {

    /** {@return the gap that is pulled shut (m), without what a shim fills} */
    Band left();

    /** {@return the peak surface stress in the part (Pa)} */
    Computed stress();

    /**
     * {@return the largest gap that may be pulled shut at a permitted stress, {@code clampup.largest-gap} (m): its low end is
     * the one to put on a drawing}
     *
     * @param permitted permitted sustained stress (Pa)
     */
    Computed largestGap(Given permitted);
}
