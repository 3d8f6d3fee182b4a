package org.shortgrain.part;

import java.util.Optional;

/**
 * Who says so, and where it stands.
 *
 * @param kind  how the value is known
 * @param ref   drawing note, card operation, report number; empty if none is given
 * @param scope what a piece of evidence covers; empty if not said
 * @param at    place in the description
 */
public record Provenance(Kind kind, Optional<String> ref, Optional<Scope> scope, Location at) {

    /** How a value is known. */
    public enum Kind implements Word {
        /** Written in the description without more; counts as specified. */
        STATED,
        /** On the drawing, card or specification. */
        SPECIFIED,
        /** Concluded from something else. */
        INFERRED,
        /** Measured on this part or lot. */
        MEASURED,
        /** Typical of its kind. */
        TYPICAL,
        /** Taken for granted. */
        ASSUMED
    }

    /** What a piece of evidence covers. */
    public enum Scope implements Word {
        /** This very part. */
        PART,
        /** The lot it was made in. */
        LOT,
        /** All parts of its type. */
        TYPE
    }
}
