package org.shortgrain.assessment;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Given;
import org.shortgrain.part.Material;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Stated;
import org.shortgrain.part.UserThreshold;
import org.shortgrain.reference.MaterialAnswer;
import org.shortgrain.reference.SccStress;
import org.shortgrain.reference.StressAnswer;
import org.shortgrain.review.Amount;
import org.shortgrain.review.Threshold;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.GrainDirection;
import org.shortgrain.terms.SourceStatus;

/**
 * What the sustained tension in one direction is compared with.
 *
 * @param stress the threshold and its range (Pa); empty if nothing is published
 * @param kind   what kind of number it is; empty text if there is none
 * @param source where it comes from; empty if there is none
 * @param clears whether staying below it clears the stress: nothing that it depends on is open, and somebody has seen it
 */
record Limit(Optional<Given> stress, String kind, Optional<Citation> source, boolean clears) {

    /** Kind of a threshold that the description states. */
    static final String OWN_STATED = "own threshold as stated";
    private static final double MEGA = 1e6;

    /**
     * {@return the limits by direction: the user's own where they are stated, else the lowest published}
     *
     * @param description the part
     * @param answer      what the tables say
     */
    static Map<GrainDirection, Limit> of(PartDescription description, MaterialAnswer answer) {
        Map<GrainDirection, Limit> limits = new EnumMap<>(GrainDirection.class);
        List<UserThreshold> own = Stated.items(description.material().field(Material::userThreshold));
        for (GrainDirection direction : GrainDirection.values()) {
            limits.put(direction, own.stream().filter(one -> one.direction().is(direction)).findFirst()
                    .flatMap(Limit::stated).orElseGet(() -> published(answer.in(direction).stress())));
        }
        return limits;
    }

    private static Optional<Limit> stated(UserThreshold own) {
        return Declared.of(own.stress()).map(given -> new Limit(Optional.of(given), OWN_STATED,
                Optional.of(new Citation("user-statement", own.origin().ref().orElse(""), SourceStatus.SECONDARY)), true));
    }

    private static Limit published(StressAnswer answer) {
        Optional<SccStress> governing = answer.governing();
        OptionalDouble low = answer.low();
        if (governing.isEmpty() || low.isEmpty()) {
            return new Limit(Optional.empty(), "", Optional.empty(), false);
        }
        double high = Math.max(low.getAsDouble(), governing.get().high().orElse(low.getAsDouble()));
        Given given = new Given(new Band(low.getAsDouble(), low.getAsDouble(), high),
                governing.get().kind().word() + ", " + governing.get().row(), Optional.of(governing.get().citation()));
        return new Limit(Optional.of(given), governing.get().kind().word(), Optional.of(governing.get().citation()),
                answer.open().isEmpty() && !answer.restsOnMemory());
    }

    /**
     * {@return the limit for the report}
     *
     * @param factor the project's factor on it
     */
    Optional<Threshold> shown(double factor) {
        return stress.map(given -> new Threshold(new Amount("MPa", given.value().value() / MEGA,
                given.value().low() / MEGA, given.value().high() / MEGA), factor, kind, source.orElseThrow()));
    }
}
