package org.shortgrain.terms;

/**
 * The three principal directions of the grain of a wrought product.
 *
 * <p>L follows the main metal flow, LT lies across it along the larger grain dimension, ST lies across it along the
 * smaller one. Wrought aluminium is weakest against stress corrosion along ST. Source: ASTM G64, footnote c (seen).
 */
public enum GrainDirection {
    /** Longitudinal: along the main metal flow. */
    L,
    /** Long transverse: across the flow, along the larger grain dimension. */
    LT,
    /** Short transverse: across the flow, along the smaller grain dimension. */
    ST
}
