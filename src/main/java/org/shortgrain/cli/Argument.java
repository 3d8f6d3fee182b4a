package org.shortgrain.cli;

import java.util.Optional;
import picocli.CommandLine.Model.ArgSpec;

/**
 * What a user may state on the command line: an option, or an argument that is known by its place.
 *
 * @param spec the argument as the library knows it
 * @param <T>  type of its value
 */
record Argument<T>(ArgSpec spec) {

    /** {@return whether the user stated it} */
    boolean isStated() {
        return spec.getValue() != null;
    }

    /** {@return its value; empty if it was not stated} */
    Optional<T> value() {
        return Optional.ofNullable(spec.getValue());
    }

    /**
     * {@return its value, or what holds where it was not stated}
     *
     * @param otherwise what holds then
     */
    T or(T otherwise) {
        return value().orElse(otherwise);
    }

    /** {@return the value of an argument that has to be stated} */
    T get() {
        return value().orElseThrow();
    }
}
