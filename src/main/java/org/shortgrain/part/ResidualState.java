package org.shortgrain.part;

/** Residual stress in words. */
public enum ResidualState implements Word {
    /** Relieved. */
    RELIEVED,
    /** As usual for the temper. */
    USUAL_FOR_TEMPER,
    /** Compressive at the surface. */
    COMPRESSIVE,
    /** Tensile at the surface. */
    TENSILE
}
