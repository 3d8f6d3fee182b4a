package org.shortgrain.part;

/** Which member of the fit the part is. */
public enum FitRole implements Word {
    /** The part has the hole. */
    OUTER,
    /** The part sits in the hole. */
    INNER
}
