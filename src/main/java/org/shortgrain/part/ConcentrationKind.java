package org.shortgrain.part;

/** What concentrates the stress. */
public enum ConcentrationKind implements Word {
    /** Hole. */
    HOLE,
    /** Fillet. */
    FILLET,
    /** Notch. */
    NOTCH
}
