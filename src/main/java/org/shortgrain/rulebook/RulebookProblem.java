package org.shortgrain.rulebook;

import java.util.Comparator;
import java.util.Optional;

/**
 * Something wrong in a rulebook.
 *
 * @param file    name of the file inside the rulebook, such as {@code stress.drl}
 * @param line    line in it, from 1; 0 if it cannot be told
 * @param rule    the rule; empty if it is not about one rule
 * @param message what is wrong and what is expected
 */
public record RulebookProblem(String file, int line, Optional<String> rule, String message)
        implements Comparable<RulebookProblem> {

    private static final Comparator<RulebookProblem> ORDER = Comparator.comparing(RulebookProblem::file)
            .thenComparingInt(RulebookProblem::line).thenComparing(RulebookProblem::message);

    static RulebookProblem in(String file, String message) {
        return new RulebookProblem(file, 0, Optional.empty(), message);
    }

    @Override
    public int compareTo(RulebookProblem other) {
        return ORDER.compare(this, other);
    }

    /** {@return one line: file, line, rule, what} */
    @Override
    public String toString() {
        return file + (line > 0 ? ":" + line : "") + ": " + rule.map(id -> id + ": ").orElse("") + message;
    }
}
