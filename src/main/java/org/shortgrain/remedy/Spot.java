package org.shortgrain.remedy;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.shortgrain.assessment.PlaceStress;
import org.shortgrain.part.Feature;
import org.shortgrain.part.reader.JsonPatch;

/**
 * A place whose stress is weighed while a change is sought for it: whatever is tried is written as a patch, read, and summed
 * and held against the threshold as a review does it.
 *
 * @param subject the part
 * @param number  number of the place in the description, from 0
 * @param feature the place
 */
record Spot(Subject subject, int number, Feature feature) {

    /** The limit counts as reached at 1; what is sought stays below it by more than round-off. */
    private static final double BELOW = 1 - 1e-9;
    private static final int MOST_TRIALS = 60;
    private static final int ORDER = 2;

    /** {@return its place in the description} */
    String path() {
        return "/features/" + number;
    }

    /** {@return its name} */
    String id() {
        return Subject.id(path(), feature);
    }

    /** {@return what pulls there as described} */
    PlaceStress asIs() {
        return after(JsonPatch.NOTHING).orElseThrow();
    }

    /** {@return what pulls there after a change; empty if the reader refuses it} */
    Optional<PlaceStress> after(JsonPatch change) {
        return subject.trials().stressAt(subject.trial().part().with(change), number);
    }

    /** Whether the sum stays below the limit in every direction that may be pulled. */
    static boolean within(PlaceStress stress) {
        return stress.compared() && used(stress) < 1;
    }

    /** Whether the limit is reached in a direction that may be pulled. */
    static boolean reached(PlaceStress stress) {
        return used(stress) >= 1;
    }

    static double used(PlaceStress stress) {
        return stress.utilisation().orElse(0);
    }

    /** {@return the utilisation after a change; beyond all bounds if the reader refuses it} */
    double used(JsonPatch change) {
        return after(change).map(Spot::used).orElse(Double.POSITIVE_INFINITY);
    }

    /**
     * {@return the greatest value at which the place stays below the limit, sought between one at which it does and one at
     * which it does not}
     *
     * @param used     the utilisation, which does not fall with the value
     * @param within   a value at which the place stays below
     * @param beyond   a greater one, at which it does not
     * @param accuracy how far below the answer may lie
     */
    static double greatest(DoubleUnaryOperator used, double within, double beyond, double accuracy) {
        if (used.applyAsDouble(within) >= BELOW) {
            return within;
        }
        return new BracketingNthOrderBrentSolver(0, accuracy, ORDER).solve(MOST_TRIALS,
                value -> used.applyAsDouble(value) - BELOW, within, beyond, AllowedSolution.LEFT_SIDE);
    }
}
