package org.shortgrain.rulebook.facts;

import java.util.Locale;
import org.shortgrain.part.Form;
import org.shortgrain.part.Range;
import org.shortgrain.part.ResidualState;
import org.shortgrain.part.ResidualStress;
import org.shortgrain.part.Stated;

/**
 * How a finished surface lies in the section that was quenched: what was thick, how deep the cut goes, what relieved it.
 *
 * @param place the place
 */
public record Quenched(Place place) {

    /** Depth, as a share of the section, where a parabola of quench stress with no net force turns from compression to
     * tension: exact, (1 - 1/sqrt 3)/2. */
    private static final double TURNS_TO_TENSION = (1 - 1 / Math.sqrt(3)) / 2;
    private static final double MILLIMETRES = 1000;

    /** {@return the section when quenched (mm); NaN if not stated, which no comparison holds for} */
    public double section() {
        Stated<Range> own = place.feature().sectionAsQuenched();
        return greatest(own.isKnown() ? own : place.part().form().field(Form::heatTreatThickness)) * MILLIMETRES;
    }

    /** {@return how deep the finished surface lies below the quenched one (mm): as stated, from the cuts on the card, or
     * half of what is missing from the section; NaN if none of them is stated} */
    public double depth() {
        Stated<Range> stated = place.feature().asQuenchedDepth();
        if (stated.isKnown()) {
            return greatest(stated) * MILLIMETRES;
        }
        double cut = place.cutDepth() * MILLIMETRES;
        return cut > 0 ? cut : (section() - finished()) / 2;
    }

    /** {@return whether the metal is aluminium that was quenched, and nothing that relieves it is stated} */
    public boolean isUnrelieved() {
        Stated<ResidualStress> residual = place.feature().residualStress();
        return place.part().isUnrelieved() && !residual.field(ResidualStress::value).isKnown()
                && !residual.field(ResidualStress::state).is(ResidualState.RELIEVED);
    }

    /** {@return whether the finished surface lies where the quench left tension, and nothing relieved it} */
    public boolean opensCore() {
        return isUnrelieved() && depth() > TURNS_TO_TENSION * section();
    }

    /** {@return depth and section, for texts} */
    public String say() {
        return String.format(Locale.ROOT, "%.1f mm below the surface of a section of %.0f mm", depth(), section());
    }

    private double finished() {
        return greatest(place.feature().sectionFinished()) * MILLIMETRES;
    }

    private static double greatest(Stated<Range> stated) {
        return Range.greatest(stated).orElse(Double.NaN);
    }
}
