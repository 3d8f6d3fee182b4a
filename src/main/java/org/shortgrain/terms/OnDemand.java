package org.shortgrain.terms;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * A thing that is made, or waited for, when it is first asked for, and once, whichever threads ask.
 *
 * @param <T> the thing
 */
public final class OnDemand<T> implements Supplier<T> {
    private final Supplier<T> maker;
    private Optional<T> made = Optional.empty();

    /**
     * Nothing as yet.
     *
     * @param maker makes it
     */
    public OnDemand(Supplier<T> maker) {
        this.maker = maker;
    }

    /** {@return the thing} */
    @Override
    public synchronized T get() {
        if (made.isEmpty()) {
            made = Optional.of(maker.get());
        }
        return made.get();
    }

    /** {@return the thing, if it has been asked for} */
    public synchronized Optional<T> made() {
        return made;
    }
}
