package org.shortgrain.part;

/** Kind of fit. */
public enum FitKind implements Word {
    /** Bush pressed in. */
    PRESS_BUSHING,
    /** Bush shrunk in cold. */
    SHRINK_BUSHING,
    /** Bush expanded in place. */
    EXPANDED_BUSHING,
    /** Pin pressed in. */
    PRESS_PIN,
    /** Taper pin. */
    TAPER_PIN,
    /** Threaded insert. */
    INSERT,
    /** Interference-fit fastener. */
    INTERFERENCE_FASTENER,
    /** Close-fit bolt. */
    CLOSE_FIT_BOLT,
    /** Taper pipe thread: sealed by more torque. */
    TAPER_THREAD,
    /** Plug driven or expanded into a drilled passage. */
    DRIVEN_PLUG,
    /** Clearance. */
    CLEARANCE,
    /** Staked bearing. */
    BEARING_STAKED,
    /** Within the usual limits, no pull-up. */
    ORDINARY
}
