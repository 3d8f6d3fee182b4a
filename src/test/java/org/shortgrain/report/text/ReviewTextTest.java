package org.shortgrain.report.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shortgrain.report.SampleReview;

class ReviewTextTest {

    @Test
    void aSummaryShowsVerdictFactorsFindingsAndQuestions() {
        assertEquals("""
                EX-1001-1, revision C, Hinge "fitting"
                OBJECTION
                  At GROOVE the three factors meet: σ over threshold is 2.0.

                Place   Material  Stress   Environment  Sustained tension      Against       Ratio
                GROOVE  present   present  unknown      ST 96 MPa (60 to 130)  48 MPa x 0.5  2 (1.25 to 2.71)
                LUG-A   absent    unknown  present      not computed

                Findings: 1 objection, 1 condition, 1 advice
                F-01  objection  GROOVE: Three factors meet (STRESS-03)
                F-02  condition  GROOVE: Cut after the quench (ORDER-04)
                F-03  advice     Card without revision (DOC-01, confirm against the source)

                Open questions: 2, 1 of them decisive
                Q-01  decisive   GROOVE: Can water stand in the groove?
                                 If water cannot stand there: NO OBJECTION SUBJECT TO CONDITIONS.
                                 If water stands there: OBJECTION; adds WATER-05 at GROOVE.
                                 To find out: look at the installation drawing.
                Q-02             Which revision of the card?
                                 It does not bear on the verdict; the report cannot be signed while it is open.

                In service
                K-01  GROOVE: found 2009-03; length 40 mm
                  Own tests, 7075-T651, plate, ST, ASTM G44: threshold 70 MPa (40 to 100); counted
                  GROOVE, eddy current: crack of 1.3 mm depth: by growth, first after 50 days, then every 50
                    days
                  LUG, eddy current: not inspectable
                """, ReviewText.of(SampleReview.full()));
    }

    @Test
    void aSummaryOfAGoodPartIsShort() {
        assertEquals("""
                EX-2, revision not stated
                NO OBJECTION

                Findings: none of the 0 rules that were asked
                """, ReviewText.of(SampleReview.bare()));
    }

    @Test
    void noLineIsWiderThanATerminal() {
        assertTrue(ReviewText.of(SampleReview.full()).lines().allMatch(line -> line.length() <= 96));
    }
}
