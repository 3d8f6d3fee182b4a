package org.shortgrain.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.fit.LamePair;
import org.shortgrain.mechanics.section.Resizing;
import org.shortgrain.mechanics.section.SizingMode;
import org.shortgrain.mechanics.section.StrengthChange;
import org.shortgrain.reference.MaterialQuery;
import org.shortgrain.terms.GrainDirection;

/**
 * One chain from the fit to the remedy: a steel bush in a lug of 7075 plate, T651, then T7351. Own arithmetic, to seven
 * digits, from: fit 14 mm, bush bore 10 mm, lug 28 mm, steel 200 GPa and 0.29, aluminium 71.7 GPa and 0.33, interference
 * 25 micrometres; threshold of T651 in ST 7 ksi (Corrosion 23(11), 335, 1967, abstract, read), test stress of T7351 plate
 * in ST 42 ksi (MIL-HDBK-5J, secondary); least Ftu in LT 77 and 69 ksi, 1 to 2 in (from memory of the handbook; the tables of
 * this rulebook, which were read, have 77 and 67 to 68 ksi at that thickness).
 */
class WorkedChainTest {

    private static final double KSI = 6.894757293168361e6;
    private static final double LUG_HOOP =
            new LamePair(14e-3, 28e-3, 10e-3, 71.7e9, 0.33, 200e9, 0.29).boreHoop(0.025e-3);

    private static double threshold(String temper) {
        return Knowledge.shipped().tables().materials()
                .lookUp(MaterialQuery.ofAlloy("7075").temper(temper).form("plate").thickness(0.0381))
                .in(GrainDirection.ST).stress().low().orElseThrow();
    }

    /** The table holds the threshold as printed in whole MPa, 48 for 7 ksi: half an MPa in 48 is 1.05 %. */
    @Test
    void theLugIsUsedOneAndAHalfTimesInT651AndHalfInT7351WithAFactorOfAHalf() {
        assertEquals(71.17658e6, LUG_HOOP, 10);
        assertEquals(1.475, LUG_HOOP / (1.0 * threshold("T651")), 0.0105 * 1.475);
        assertEquals(0.492, LUG_HOOP / (0.5 * threshold("T7351")), 0.0105 * 0.492);
    }

    @Test
    void theLugIsHeavierByTheTensileStrengthThatItLost() {
        Resizing lug = new Resizing(SizingMode.THICKNESS, List.of(new StrengthChange("Ftu LT",
                Given.exact(77 * KSI, "7075-T651"), Given.exact(69 * KSI, "7075-T7351"))), Given.exact(2800, "7075"),
                Given.exact(2800, "7075"));
        assertEquals(1.115942, lug.massRatio().value().value(), 1e-6);
    }
}
