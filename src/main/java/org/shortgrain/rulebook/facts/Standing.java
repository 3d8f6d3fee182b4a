package org.shortgrain.rulebook.facts;

import java.util.Locale;
import java.util.Optional;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.water.DrainHole;

/**
 * Water that was computed to stay with the drain holes of a place as they lie, at the worst attitude.
 *
 * @param depth  its depth (m); empty where it could not be computed, or no hole counts for certain
 * @param volume its volume (m3)
 */
public record Standing(Optional<Computed> depth, Optional<Computed> volume) {

    private static final double MM = 1e3;
    private static final double ML = 1e6;

    /** {@return whether more than a film stays for certain} */
    public boolean isPool() {
        return depth.filter(one -> one.value().low() > DrainHole.film()).isPresent();
    }

    /** {@return whether no more than a film stays for certain} */
    public boolean isFilm() {
        return depth.filter(one -> one.value().high() <= DrainHole.film()).isPresent();
    }

    /** {@return depth and volume, for texts} */
    public String say() {
        return String.format(Locale.ROOT, "%.1f mm of water, %.3g mL", high(depth) * MM, high(volume) * ML);
    }

    /** {@return the attitude in which most stays, for texts} */
    public String worst() {
        return depth.flatMap(one -> one.notes().stream().findFirst()).orElse("");
    }

    private static double high(Optional<Computed> computed) {
        return computed.map(one -> one.value().high()).orElse(0.0);
    }
}
