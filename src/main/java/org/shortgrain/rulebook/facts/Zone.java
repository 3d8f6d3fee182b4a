package org.shortgrain.rulebook.facts;

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
        return names.stream().anyMatch(List.of(zones)::contains);
    }
}
