package org.shortgrain.signoff;

/** A report is not signed, for a reason that its signer can mend. The message says why and what to do, in one line. */
public final class SigningRefusedException extends Exception {

    private static final long serialVersionUID = 1L;

    private final Reason reason;

    /** What stands against signing. */
    public enum Reason {
        /** The key cannot be opened or is not fit for signing. */
        KEY,
        /** The role cannot be signed now, or not by this person. */
        ROLE,
        /** The file is none of our reports. */
        NOT_A_REPORT,
        /** The file is not as it was made or last signed. */
        CHANGED,
        /** The issue was withdrawn. */
        WITHDRAWN,
        /** A finding stops sign-off. */
        OPEN_FINDINGS,
        /** The time-stamp server does not answer as it should. */
        TIME_STAMP
    }

    SigningRefusedException(Reason reason, String message) {
        super(message);
        this.reason = reason;
    }

    /** {@return what stands against signing} */
    public Reason reason() {
        return reason;
    }
}
