package org.shortgrain.reference;

import java.util.List;

/** A table of the rulebook that cannot be used: every fault found, with file and line. */
public final class RulebookTableException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<String> faults;

    RulebookTableException(List<String> faults) {
        super(faults.size() + " fault(s) in the tables of the rulebook:\n  " + String.join("\n  ", faults));
        this.faults = List.copyOf(faults);
    }

    /** {@return the faults, each as {@code file:line: what is wrong and what is expected}} */
    public List<String> faults() {
        return faults;
    }
}
