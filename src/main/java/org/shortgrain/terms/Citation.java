package org.shortgrain.terms;

import java.util.Objects;

/**
 * Where a fact, a rule or an equation comes from.
 *
 * @param id     key of the document in {@code rules/sources.yaml}
 * @param clause clause, table or page in it; empty where the whole document is meant
 * @param status how this clause was seen
 */
public record Citation(String id, String clause, SourceStatus status) {

    /** Refuses missing parts. */
    public Citation {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(clause, "clause");
        Objects.requireNonNull(status, "status");
    }

    // written out: what the compiler leaves to the runtime costs a cold start several milliseconds
    @Override
    public boolean equals(Object other) {
        return other instanceof Citation that && id.equals(that.id) && clause.equals(that.clause) && status == that.status;
    }

    @Override
    public int hashCode() {
        return 31 * id.hashCode() + clause.hashCode();
    }
}
