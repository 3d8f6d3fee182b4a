package org.shortgrain.assessment;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Direction;
import org.shortgrain.mechanics.GrainAxes;
import org.shortgrain.mechanics.water.StandingWater;
import org.shortgrain.part.Axis;
import org.shortgrain.part.Environment;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Form;
import org.shortgrain.part.Grain;
import org.shortgrain.part.Location;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;
import org.shortgrain.review.Assumption;
import org.shortgrain.review.Factor;
import org.shortgrain.review.Question;
import org.shortgrain.rulebook.facts.Metal;
import org.shortgrain.rulebook.facts.Route;
import org.shortgrain.rulebook.facts.Step;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.GrainDirection;

/**
 * A place while it is computed: all that bears on it, and the ledger to write into.
 *
 * @param description the part
 * @param feature     the place
 * @param id          its name
 * @param directions  grain directions in which lasting tension may act, in the order L, LT, ST
 * @param metal       the material as the tables know it
 * @param elastic     its elastic behaviour; empty if the tables do not hold it
 * @param route       the card as understood
 * @param ledger      what is asked, assumed and computed
 * @param waters      what stands in a hollow, computed once for equal hollows
 */
record Site(PartDescription description, Feature feature, String id, Set<GrainDirection> directions, Metal metal,
        Optional<Elastic> elastic, Route route, Ledger ledger,
        Remembered<StandingWater, Caught.Pooled> waters) {

    /** {@return the form of the part} */
    Stated<Form> form() {
        return description.form();
    }

    /** {@return the least and greatest lasting temperature stated for the part; empty if none is} */
    Optional<Range> temperature() {
        List<Range> stated = description.environment().field(Environment::temperature).candidates();
        return stated.isEmpty() ? Optional.empty() : Optional.of(stated.get(0));
    }

    /** {@return the grain axes in part axes; empty if they are not all stated or not at right angles} */
    Optional<GrainAxes> grainAxes() {
        Optional<Direction> l = axis(description.grain().field(Grain::l));
        Optional<Direction> lt = axis(description.grain().field(Grain::lt));
        Optional<Direction> st = axis(description.grain().field(Grain::st));
        if (l.isEmpty() || lt.isEmpty() || st.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new GrainAxes(l.get(), lt.get(), st.get()));
        } catch (IllegalArgumentException notAtRightAngles) {
            ask(Factor.STRESS, "Which part axes do L, LT and ST follow?",
                    "the three directions stated are not at right angles to one another",
                    Optional.of("every direction at the place is taken to bear the full stress"),
                    description.grain().at());
            return Optional.empty();
        }
    }

    /** {@return the axis of the bore or hole in part axes; empty if not stated} */
    Optional<Direction> boreAxis() {
        return axis(feature.axis());
    }

    /** {@return the grain direction that the axis of the bore follows within 15 degrees; empty if none does} */
    Optional<GrainDirection> boreAlong() {
        Optional<GrainAxes> grain = grainAxes();
        Optional<Direction> bore = boreAxis();
        if (grain.isEmpty() || bore.isEmpty()) {
            return Optional.empty();
        }
        for (GrainDirection one : GrainDirection.values()) {
            if (bore.get().angleTo(grain.get().of(one)) < ALONG) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }

    /** Within this angle (rad) a bore counts as lying along a grain direction: 15 degrees, as MIL-HDBK-5J (read) has
     * it for the second direction of die forgings. */
    private static final double ALONG = Math.toRadians(15);

    private static Optional<Direction> axis(Stated<Axis> stated) {
        return stated.single().map(axis -> new Direction(axis.x(), axis.y(), axis.z()));
    }

    /** {@return cuts at this place after the last quench; all cuts where the card has no quench} */
    List<Step> cutsAfterQuench() {
        return route.cutAfterQuench(id);
    }

    /**
     * Asks for something that a computation at this place lacks.
     *
     * @param factor  the factor it bears on
     * @param text    the question
     * @param why     why it is needed
     * @param standIn what the review goes on with
     * @param at      place in the description
     */
    void ask(Factor factor, String text, String why, Optional<String> standIn, Location at) {
        ledger.ask(new Ledger.Asked(Optional.empty(), Question.Role.JUDGING, factor, Optional.of(id), text, why,
                standIn, at));
    }

    /**
     * Writes down a number computed at this place.
     *
     * @param computed the number
     * @return its number in the report
     */
    String write(Computed computed) {
        return ledger.computed(Optional.of(id), computed);
    }

    /**
     * Writes down something taken for granted at this place, against the part.
     *
     * @param text    what
     * @param sources where the value comes from
     */
    void assume(String text, Citation... sources) {
        ledger.assume(id + ": " + text, Assumption.Effect.CONSERVATIVE, sources);
    }
}
