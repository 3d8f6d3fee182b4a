package org.shortgrain.assessment;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.clampup.ClosedGap;
import org.shortgrain.mechanics.fit.InterferenceFit;
import org.shortgrain.rulebook.facts.Tension;

/**
 * What pulls at one place, summed and held against the threshold as a review does it, without asking the rules: for whoever
 * seeks how much of one contribution the place has room for.
 *
 * @param place    its name
 * @param tensions sustained tension in each direction that may be pulled
 * @param fit      the rings of the fit as computed; empty where nothing is pressed in or it cannot be computed
 * @param gaps     the gaps that assembly closes as computed, in the order of the description; empty ones cannot be
 * @param computed all that was computed on the way
 */
public record PlaceStress(String place, List<Tension> tensions, Optional<InterferenceFit> fit, List<Optional<ClosedGap>> gaps,
        List<Computed> computed) {

    /** Copies the lists. */
    public PlaceStress {
        tensions = List.copyOf(tensions);
        gaps = List.copyOf(gaps);
        computed = List.copyOf(computed);
    }

    /** {@return whether every direction that is pulled has a threshold to be held against} */
    public boolean compared() {
        return tensions.stream().allMatch(one -> one.threshold().isPresent() || one.high() <= 0);
    }

    /** {@return the direction that is used most; empty without any threshold} */
    public Optional<Tension> governing() {
        return tensions.stream().filter(one -> one.utilisation().isPresent())
                .max(java.util.Comparator.comparingDouble(one -> one.utilisation().getAsDouble()));
    }

    /** {@return the greatest upper end of tension over threshold times factor; empty without any threshold} */
    public OptionalDouble utilisation() {
        return governing().map(Tension::utilisation).orElse(OptionalDouble.empty());
    }

    /**
     * {@return a number computed here}
     *
     * @param id its identity, such as {@code fit.bore-hoop}
     */
    public Optional<Computed> number(String id) {
        return computed.stream().filter(one -> one.id().equals(id)).findFirst();
    }
}
