package org.shortgrain.rulebook;

import java.util.List;
import java.util.stream.Collectors;

/** A rulebook that cannot be used. The message has one line for each problem; the stack trace tells a user nothing. */
public final class RulebookException extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient List<RulebookProblem> problems;

    /**
     * Makes an exception of problems.
     *
     * @param problems at least one
     */
    public RulebookException(List<RulebookProblem> problems) {
        super(problems.stream().map(RulebookProblem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    RulebookException(RulebookProblem problem) {
        this(List.of(problem));
    }

    /** {@return the problems, in the order of files and lines} */
    public List<RulebookProblem> problems() {
        return problems;
    }
}
