package org.shortgrain.rulebook.facts;

import java.util.Collections;
import java.util.List;

/**
 * The zones a part or place lives in, as the tables know them; of several, the wettest counts.
 *
 * @param names   the zones as stated; empty if none is stated
 * @param wetness wetness class of the wettest, 0 to 5; -1 if no zone is stated
 */
public record Zone(List<String> names, int wetness) {

    /** Copies the list. */
    public Zone {
        names = List.copyOf(names);
    }

    /** {@return whether a zone is stated} */
    public boolean isStated() {
        return wetness >= 0;
    }

    /** {@return whether it is wetted regularly or worse} */
    public boolean isWet() {
        return wetness >= 3;
    }

    /** {@return whether it is moist for certain: condensation, or humidity above 60 %, some of the time} */
    public boolean isMoist() {
        return wetness >= 2;
    }

    /** {@return whether water pools there, laden with salt or fed by a fluid} */
    public boolean isPooled() {
        return wetness >= 4;
    }

    /** {@return whether it is controlled for certain: humidity below 40 %, so that it may count as dry} */
    public boolean isControlled() {
        return wetness == 0;
    }

    /** {@return whether it is rated dry for certain: no condensation} */
    public boolean isRatedDry() {
        return wetness >= 0 && wetness <= 1;
    }

    /** {@return whether it can be moist: condensation or worse, or not stated} */
    public boolean mayBeMoist() {
        return wetness >= 2 || wetness < 0;
    }

    /**
     * {@return whether the part lives in one of some zones}
     *
     * @param zones words of the zone list
     */
    public boolean isOneOf(String... zones) {
        return !Collections.disjoint(names, List.of(zones));
    }

    /** {@return the zone with its wetness class, for texts} */
    public String say() {
        return isStated() ? "zone " + String.join(", ", names).replace('_', ' ') + ", wetness class W" + wetness
                : "zone not stated, taken as wet";
    }
}
