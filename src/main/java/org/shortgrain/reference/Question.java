package org.shortgrain.reference;

import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.shortgrain.terms.GrainDirection;

/**
 * A question to the tables with alloy and temper resolved.
 *
 * @param temper   temper taken apart
 * @param form     product form, if it is a word of the tables
 * @param forms    which rows speak for a form
 * @param thickness thickness when heat treated (m)
 * @param area     section area (m2)
 * @param minUts   least tensile strength (Pa)
 * @param maxUts   greatest tensile strength (Pa)
 * @param transverseIsSt whether LT counts as ST: bar up to twice as wide as thick or of unknown width, or form unknown
 * @param widthOpen whether LT counts as ST only because the width is not stated
 * @param alloyOpen whether the alloy is one of several that it may be
 */
record Question(Temper temper, Optional<String> form, ProductForms forms, OptionalDouble thickness, OptionalDouble area,
        OptionalDouble minUts, OptionalDouble maxUts, boolean transverseIsSt, boolean widthOpen,
        boolean alloyOpen) {

    /** The same question of a bar that is known to be wide. */
    Question ofWideBar() {
        return new Question(temper, form, forms, thickness, area, minUts, maxUts, false, false, alloyOpen);
    }

    Question withTemper(Temper other) {
        return new Question(other, form, forms, thickness, area, minUts, maxUts, transverseIsSt, widthOpen, alloyOpen);
    }

    /** Whether a row for one direction bears on another: it does on its own, and ST on LT of a squarish bar. */
    boolean concerns(GrainDirection row, GrainDirection asked) {
        return row == asked || (transverseIsSt && asked == GrainDirection.LT && row == GrainDirection.ST);
    }

    /** Rows for steel go by the greatest strength that the drawing allows. */
    Match matchStrength(ThicknessBand uts) {
        if (uts.isAll()) {
            return Match.YES;
        }
        if (maxUts.isPresent()) {
            return uts.match(maxUts);
        }
        double least = minUts.orElse(Double.NEGATIVE_INFINITY);
        if (uts.to() <= least) {
            return Match.NO;
        }
        return uts.from() <= least && uts.to() == Double.POSITIVE_INFINITY ? Match.YES : Match.MAYBE;
    }

    Set<OpenDatum> openTemper() {
        if (temper instanceof Temper.HeatTreated t) {
            EnumSet<OpenDatum> open = EnumSet.noneOf(OpenDatum.class);
            if (t.open() != Temper.OpenDigits.NONE) {
                open.add(OpenDatum.TEMPER_DIGITS);
            }
            if (t.userTreated()) {
                open.add(OpenDatum.TEMPER_PROOF);
            }
            return open;
        }
        return EnumSet.of(OpenDatum.TEMPER);
    }

    /** A form that is stated and listed is read by rows for a near relative without being open. */
    Set<OpenDatum> openForm() {
        return form.isEmpty() ? Set.of(OpenDatum.PRODUCT_FORM) : Set.of();
    }
}
