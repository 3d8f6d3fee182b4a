package org.shortgrain.rulebook;

/** A rule that compiles but fails on the facts of a part: a fault of the rulebook, not of the part. */
public final class RuleFailedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    RuleFailedException(String message, Throwable cause) {
        super(message, cause);
    }
}
