package org.shortgrain.mechanics.crack;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.shortgrain.mechanics.Given;

/**
 * A crack at a place, what pulls it open, and how its metal answers.
 *
 * @param crack     the crack and the section it grows through
 * @param stress    sustained stress at the surface (Pa)
 * @param rise      by how much the stress differs from that at the surface, at rising depths from 0; empty where it is
 *                  taken as even
 * @param kIscc     K_ISCC (Pa sqrt(m))
 * @param rate      velocity of the plateau (m/s)
 * @param toughness fracture toughness in plane strain (Pa sqrt(m))
 * @param found     depth of the crack that is found or assumed (m)
 * @param smooth    threshold stress of smooth specimens (Pa); empty if none is known
 */
public record GrowthCase(GrowingCrack crack, Given stress, List<Rise> rise, Given kIscc, Given rate, Given toughness,
        Given found, Optional<Given> smooth) {

    /**
     * Stress below the surface.
     *
     * @param depth depth (m)
     * @param more  what the stress there is more than that at the surface (Pa)
     */
    public record Rise(double depth, double more) {
    }

    /** Copies the list and refuses missing parts. */
    public GrowthCase {
        Objects.requireNonNull(crack, "crack");
        Objects.requireNonNull(stress, "stress");
        Objects.requireNonNull(kIscc, "kIscc");
        Objects.requireNonNull(rate, "rate");
        Objects.requireNonNull(toughness, "toughness");
        Objects.requireNonNull(found, "found");
        Objects.requireNonNull(smooth, "smooth");
        rise = List.copyOf(rise);
    }

    /**
     * {@return whether cracks start at a smooth surface here: the upper end of the stress reaches the lower end of the
     * threshold of smooth specimens, or none is known}
     *
     * <p>K_ISCC then holds no crack back: below the crossover depth it does not speak, above it it is exceeded.
     */
    public boolean isStartedWithoutFlaw() {
        return smooth.isEmpty() || stress.value().high() >= smooth.get().value().low();
    }

    /** {@return what follows} */
    public GrowthResult result() {
        return new GrowthResult(this);
    }

    /** Stress against depth when that at the surface has a value (Pa). */
    StressAlongDepth along(double surface) {
        if (rise.isEmpty()) {
            return StressAlongDepth.uniform(surface);
        }
        return new StressAlongDepth(rise.stream().map(Rise::depth).toList(),
                rise.stream().map(one -> surface + one.more()).toList());
    }
}
