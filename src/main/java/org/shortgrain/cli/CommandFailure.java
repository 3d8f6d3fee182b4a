package org.shortgrain.cli;

/** A command cannot go on, for a reason that its user can mend. */
final class CommandFailure extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final ExitCode code;

    /**
     * A failure.
     *
     * @param code    what the process ends with
     * @param message what is wrong and what to do
     */
    CommandFailure(ExitCode code, String message) {
        super(message);
        this.code = code;
    }

    /** {@return what the process ends with} */
    ExitCode code() {
        return code;
    }
}
