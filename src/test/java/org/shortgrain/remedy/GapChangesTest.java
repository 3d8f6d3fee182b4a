package org.shortgrain.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shortgrain.assessment.PlaceStress;

/**
 * Own arithmetic, strip bent shut as a cantilever, 1.5 E t g/L^2 (beam of Brown, Marks' Calculations for Machine Design, eq. 2.62):
 * E 71 GPa, t 12, L 70 mm: 260.8163 MPa per millimetre; t 6, L 140 mm: 32.60204. 20 MPa of residual stress are there beside
 * the bending; the limit is half of the threshold.
 */
class GapChangesTest {

    private static String gap(String gap, String more) {
        return "      - {gap: {max: " + gap + "}, span: 70 mm, thickness: 12 mm, width: 40 mm, held: cantilever, shim: none" + more
                + "}\n";
    }

    private static Candidate shim(Proposals found) {
        return found.candidates().get(0);
    }

    /** (145 - 20)/260.8163 = 0.479 mm; nine layers are 0.45 mm, 117.4 MPa, (117.4 + 20)/145. */
    @Test
    void thePermissibleGapIsThatOfTheBeamRoundedDownToLayers() {
        Fitting fitting = Fitting.withGaps(290, gap("1.2 mm", ""));
        Proposals found = fitting.gaps();
        Candidate shim = shim(found);
        assertTrue(found.missing().isEmpty());
        assertEquals("gaps at SEAT above 0.45 mm shimmed before torque", shim.words());
        assertTrue(shim.notes().get(0).startsWith("At SEAT 0.479 mm may be pulled shut; rounded down"), shim.notes().get(0));
        assertTrue(shim.notes().get(1).startsWith("Bending of the gap pulled shut 117 MPa; with all else at SEAT 137 MPa along ST,"
                + " utilisation 0.947"), shim.notes().get(1));
        assertEquals((260.8163 * 0.45 + 20) / 145, fitting.reviewed(fitting.after(shim), Fitting.SEAT), 1e-5);
    }

    /** (30 - 20)/260.8163 = 0.038 mm. */
    @Test
    void lessThanALayerIsFilledWithLiquidShim() {
        Fitting fitting = Fitting.withGaps(60, gap("0.2 mm", ""));
        Candidate shim = shim(fitting.gaps());
        assertEquals("every gap at SEAT filled with liquid shim, cured before torque", shim.words());
        assertTrue(shim.notes().get(0).startsWith("At SEAT 0.038 mm may be pulled shut, less than a layer"), shim.notes().get(0));
        assertEquals(20.0 / 30, fitting.reviewed(fitting.after(shim), Fitting.SEAT), 1e-9);
    }

    /** 20 MPa of 15 MPa. */
    @Test
    void whereTheRestAloneReachesTheLimitNoGapIsPermissible() {
        Proposals found = Fitting.withGaps(30, gap("0.2 mm", "")).gaps();
        assertEquals(List.of("a gap at SEAT that may be pulled shut: without any the utilisation is 1.33 already."), found.missing());
        assertTrue(shim(found).notes().contains("The limit at SEAT is not met by that alone."));
    }

    /** The long thin strip takes 0.5 x 32.60204 = 16.3 MPa of 125; the other is left 108.7 MPa: 0.4168 mm. */
    @Test
    void aGapThatNeedsLessThanItsShareLeavesTheRestToTheOther() {
        Fitting fitting = Fitting.withGaps(290, gap("1.2 mm", "") + "      - {gap: {max: 0.5 mm}, span: 140 mm, thickness: 6 mm,"
                + " width: 25 mm, held: cantilever, shim: none}\n");
        Candidate shim = shim(fitting.gaps());
        assertEquals("gaps at SEAT above 0.40 mm, 0.50 mm, in the order of the description, shimmed before torque", shim.words());
        assertTrue(shim.notes().get(0).startsWith("Gap 1 at SEAT 0.417 mm"), shim.notes().get(0));
        assertEquals("Gap 2 at SEAT the gap as stated may be pulled shut.", shim.notes().get(1));
        assertEquals((260.8163 * 0.4 + 32.60204 * 0.5 + 20) / 145, fitting.reviewed(fitting.after(shim), Fitting.SEAT), 1e-5);
    }

    /** Two equal strips take half of the gap each: 2 x 0.479 mm. */
    @Test
    void aGapThatTwoPartsShareMayBeLarger() {
        Fitting fitting = Fitting.withGaps(290, gap("1.2 mm", ", other_span: 70 mm, other_thickness: 12 mm, other_width: 40 mm"));
        Candidate shim = shim(fitting.gaps());
        assertEquals("gaps at SEAT above 0.95 mm shimmed before torque", shim.words());
        assertEquals((260.8163 * 0.475 + 20) / 145, fitting.reviewed(fitting.after(shim), Fitting.SEAT), 1e-5);
    }

    /** Three times the bending: (145 - 20)/(3 x 260.8163) = 0.1598 mm. */
    @Test
    void aNotchAtThePlaceShrinksTheGap() {
        Fitting plain = Fitting.withGaps(290, gap("1.2 mm", ""));
        var notched = plain.trial().part().with(new Edits(plain.trial().part())
                .set("/features/1/stress_concentration", "3").patch());
        Fitting fitting = new Fitting(plain.trials(), plain.trials().of(notched).orElseThrow());
        assertEquals("gaps at SEAT above 0.15 mm shimmed before torque", shim(fitting.gaps()).words());
    }

    @Test
    void aSolidShimThatIsCalledOutStaysSolid() {
        Fitting fitting = Fitting.withGaps(290, gap("1.2 mm", "").replace("shim: none", "shim: solid"));
        assertEquals("[{\"op\": \"add\", \"path\": \"/features/1/clamp_up/0/max_gap_without_shim\", \"value\": \"0.45 mm\"}]",
                shim(fitting.gaps()).write().apply(fitting.trial().part()).json());
    }

    @Test
    void withoutAThicknessTheHabitOfTheTradeIsTakenAndCalledAnAssumption() {
        Candidate shim = shim(Fitting.withGaps(290, gap("1.2 mm", "").replace("thickness: 12 mm, ", "")).gaps());
        assertEquals("gaps at SEAT above 0.05 mm shimmed before torque", shim.words());
        assertTrue(shim.notes().get(0).startsWith("Assumption: 0.05 mm without shim by habit of the trade"), shim.notes().get(0));
    }

    @Test
    void aGapForWhichThereIsRoomKeepsItsSize() {
        Fitting fitting = Fitting.withGaps(290, gap("0.13 mm", ""));
        Candidate shim = shim(fitting.gaps());
        assertEquals("gaps at SEAT above 0.13 mm shimmed before torque", shim.words());
        PlaceStress before = fitting.stress(fitting.trial().part(), Fitting.SEAT);
        assertEquals(before.utilisation(), fitting.stress(fitting.after(shim), Fitting.SEAT).utilisation());
    }
}
