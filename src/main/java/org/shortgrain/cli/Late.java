package org.shortgrain.cli;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * A thing that is made, or waited for, when it is first asked for. For one thread.
 *
 * @param <T> the thing
 */
final class Late<T> implements Supplier<T> {
    private final Supplier<T> maker;
    private Optional<T> made = Optional.empty();

    Late(Supplier<T> maker) {
        this.maker = maker;
    }

    @Override
    public T get() {
        if (made.isEmpty()) {
            made = Optional.of(maker.get());
        }
        return made.get();
    }

    /** {@return the thing, if it has been asked for} */
    Optional<T> made() {
        return made;
    }
}
