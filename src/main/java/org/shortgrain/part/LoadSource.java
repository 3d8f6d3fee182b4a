package org.shortgrain.part;

import java.util.List;

/** Where a lasting load comes from. */
public enum LoadSource implements Word {
    /** Standing weight. */
    ONE_G_GROUND,
    /** Level flight. */
    ONE_G_FLIGHT,
    /** Cabin or vessel pressure. */
    PRESSURISATION,
    /** Preload of a fastener. */
    BOLT_PRELOAD,
    /** Assembly. */
    ASSEMBLY,
    /** Rigging or control preload. */
    RIGGING,
    /** Spring. */
    SPRING,
    /** Lasting temperature difference. */
    THERMAL,
    /** Rotation. */
    CENTRIFUGAL,
    /** Shrinkage of a weld. */
    WELD_SHRINKAGE,
    /** Stowed position. */
    STOWED,
    /** On jacks or stands. */
    JACKED,
    /** Lasting, source not said. */
    STANDING_UNSPECIFIED;

    /** {@return the American spelling as well} */
    @Override
    public List<String> otherSpellings() {
        return this == PRESSURISATION ? List.of("pressurization") : List.of();
    }
}
