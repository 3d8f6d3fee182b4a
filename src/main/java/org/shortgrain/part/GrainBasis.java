package org.shortgrain.part;

/** How the grain directions are known. */
public enum GrainBasis implements Word {
    /** Arrow on the drawing. */
    DRAWING_ARROW,
    /** Forging drawing with parting line. */
    FORGING_DRAWING,
    /** Grain flow seen on an etched section. */
    MACRO_ETCH,
    /** Taken from the product form. */
    PRODUCT_FORM_DEFAULT,
    /** A guess. */
    GUESS
}
