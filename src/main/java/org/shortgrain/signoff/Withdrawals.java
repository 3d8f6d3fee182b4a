package org.shortgrain.signoff;

import java.util.List;
import java.util.Optional;
import org.shortgrain.part.Withdrawal;

/**
 * The issues that were withdrawn. A signed file is never changed, so that an issue no longer stands is said beside it.
 *
 * @param all each withdrawal
 */
public record Withdrawals(List<Withdrawal> all) {

    /** Nothing was withdrawn. */
    public static final Withdrawals NONE = new Withdrawals(List.of());

    /** Copies the list. */
    public Withdrawals {
        all = List.copyOf(all);
    }

    /**
     * {@return the withdrawal of an issue}
     *
     * @param contentHash content hash of the issue
     */
    public Optional<Withdrawal> of(String contentHash) {
        return all.stream().filter(one -> one.isOf(contentHash)).findFirst();
    }

    /**
     * {@return a withdrawal in one sentence}
     *
     * @param one the withdrawal
     */
    public static String text(Withdrawal one) {
        return "withdrawn on " + one.date() + " by " + one.by() + ": " + one.reason()
                + one.supersededBy().map(next -> "; superseded by " + next).orElse("");
    }
}
