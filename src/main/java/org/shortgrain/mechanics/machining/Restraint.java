package org.shortgrain.mechanics.machining;

import java.util.EnumSet;
import java.util.Set;

/** Whether the machined part can bow. */
public enum Restraint {
    /** The rest of the part, ribs or clamps hold it straight, or it is pulled straight at assembly. */
    HELD(EnumSet.of(Release.AS_IS, Release.HELD_FLAT)),
    /** It can bow and is never pulled straight again. */
    FREE(EnumSet.of(Release.FREE_TO_BOW)),
    /** Not known: the worst counts. */
    UNKNOWN(EnumSet.allOf(Release.class));

    private final Set<Release> releases;

    Restraint(Set<Release> releases) {
        this.releases = releases;
    }

    /** {@return the ways of release that can hold under this restraint} */
    Set<Release> releases() {
        return EnumSet.copyOf(releases);
    }
}
