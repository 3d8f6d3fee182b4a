package org.shortgrain.mechanics.sustained;

/** Whether a contribution counts towards the sustained stress, and if not, why. */
public enum Standing {
    /** Lasts, and counts. */
    SUSTAINED("lasts"),
    /** Manoeuvre, gust, landing and the like: too short for stress corrosion. */
    SHORT_LIVED("short-lived"),
    /** Computed residual stress where a measured one is at hand. */
    REPLACED_BY_MEASUREMENT("replaced by the measured stress"),
    /** Compression from peening: shown, never the ground of a judgement. */
    NOT_CREDITED("compression from peening is not credited");

    private final String reason;

    Standing(String reason) {
        this.reason = reason;
    }

    /** {@return why it counts or does not} */
    public String reason() {
        return reason;
    }
}
