package org.shortgrain.remedy;

import java.util.Optional;
import java.util.OptionalDouble;
import org.shortgrain.assessment.CardQuench;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.machining.RoughPartBow;
import org.shortgrain.mechanics.quench.FilmCoefficient;
import org.shortgrain.mechanics.quench.QuenchMaterial;
import org.shortgrain.mechanics.quench.QuenchRange;
import org.shortgrain.mechanics.quench.QuenchSolver;
import org.shortgrain.mechanics.quench.SectionQuench;
import org.shortgrain.part.Form;
import org.shortgrain.part.Range;
import org.shortgrain.part.RouteStep;
import org.shortgrain.part.Shape;
import org.shortgrain.reference.QuenchTables;

/**
 * How far a part bows that is rough machined before its quench, by the quench on its card. No stress relief is counted; a bath
 * that is not stated or not in the tables counts as cold water, which leaves most.
 */
final class RoughBow {

    /** What can be said of a section. */
    sealed interface Answer {

        /**
         * Bow of a section.
         *
         * @param section   thickness at quench (m)
         * @param quench    bow in the quench (m)
         * @param firstFace bow with one face finished (m)
         */
        record Estimated(double section, Computed quench, Computed firstFace) implements Answer {

            /**
             * {@return stock that each face needs (m): the second face is cut on a part that keeps the bow of the quench and
             * takes that of the first cut, each at its upper end}
             */
            double needed() {
                return quench.value().high() + firstFace.value().high();
            }
        }

        /**
         * No estimate.
         *
         * @param why which datum is missing, as the end of a sentence
         */
        record NotEstimated(String why) implements Answer {
        }
    }

    private final Subject subject;
    private final QuenchTables tables;
    private final RouteStep quench;
    private final QuenchSolver solver = QuenchSolver.usual();

    /**
     * Prepares estimates.
     *
     * @param subject the part
     * @param quench  the last quench of its card
     */
    RoughBow(Subject subject, RouteStep quench) {
        this.subject = subject;
        this.tables = subject.tables().quench();
        this.quench = quench;
    }

    /**
     * {@return the bow of a section}
     *
     * @param finished  finished thickness (m)
     * @param allowance stock left on each face (m)
     */
    Answer of(double finished, double allowance) {
        OptionalDouble length = Range.greatest(subject.part().form().field(Form::length));
        Optional<QuenchMaterial> metal = subject.metal().alloy().flatMap(alloy -> tables.material(alloy.name()))
                .or(() -> subject.metal().family().flatMap(tables::standInFor));
        double section = finished + 2 * allowance;
        if (length.isEmpty()) {
            return new Answer.NotEstimated("the length of the part is not stated (form/length)");
        }
        if (metal.isEmpty()) {
            return new Answer.NotEstimated("the quench of this material is not in the tables");
        }
        if (subject.part().form().field(Form::heatTreatShape).any(shape -> shape != Shape.PLATE)) {
            return new Answer.NotEstimated("the estimate holds for flat sections and this one is round (form/heat_treat_shape)");
        }
        Computed.Validity range = QuenchRange.of(section, solution(metal.get()));
        return range.inside() ? estimated(metal.get(), section, allowance, length.getAsDouble())
                : new Answer.NotEstimated("the quench model does not hold there (" + range.statement() + ")");
    }

    private Answer estimated(QuenchMaterial metal, double section, double allowance, double length) {
        FilmCoefficient film = CardQuench.of(tables.baths(), quench).film().orElseGet(tables.baths()::coldWater);
        RoughPartBow bow = new RoughPartBow(solver.plate(new SectionQuench(metal, film, section, solution(metal))).profile(), metal,
                tables.published().model());
        return new Answer.Estimated(section, bow.afterQuench(length), bow.afterFirstFace(allowance, length));
    }

    private double solution(QuenchMaterial metal) {
        return subject.route().stream().filter(step -> step.operation().is("solution_heat_treat"))
                .flatMap(step -> step.temperature().single().stream()).map(Range::middle).reduce((a, b) -> b)
                .orElse(metal.solutionTemperature());
    }
}
