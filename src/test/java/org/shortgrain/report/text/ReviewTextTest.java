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
                Q-02             Which revision of the card?
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
