package org.shortgrain.cli;

import org.shortgrain.review.Verdict;

/** What the process says to its caller, the least grave first. */
enum ExitCode {
    /** Sign-off possible, with or without conditions. */
    OK(0),
    /** A datum that can change the verdict is missing. */
    CANNOT_BE_JUDGED(3),
    /** Sign-off stops. */
    OBJECTION(1),
    /** A report does not verify. */
    VERIFICATION_FAILED(4),
    /** The description is not valid. */
    INPUT_INVALID(65),
    /** The description cannot be read. */
    INPUT_MISSING(66),
    /** A file cannot be written. */
    CANNOT_WRITE(74),
    /** The arguments make no sense. */
    USAGE(2),
    /** A fault of the tool. */
    INTERNAL(70);

    private final int code;

    ExitCode(int code) {
        this.code = code;
    }

    /** {@return the number that the process ends with} */
    int code() {
        return code;
    }

    /**
     * {@return the graver of two}
     *
     * @param other the other
     */
    ExitCode worse(ExitCode other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /**
     * {@return what a verdict means to a caller}
     *
     * @param verdict the verdict
     */
    static ExitCode of(Verdict verdict) {
        return switch (verdict) {
            case OBJECTION -> OBJECTION;
            case CANNOT_BE_JUDGED -> CANNOT_BE_JUDGED;
            case NO_OBJECTION, NO_OBJECTION_SUBJECT_TO_CONDITIONS -> OK;
        };
    }
}
