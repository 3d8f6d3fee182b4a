package org.shortgrain.report;

import java.util.List;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.part.Location;
import org.shortgrain.part.reader.JsonPatch;
import org.shortgrain.review.Amount;
import org.shortgrain.review.Answer;
import org.shortgrain.review.Assumption;
import org.shortgrain.review.Calculation;
import org.shortgrain.review.Contribution;
import org.shortgrain.review.CrackFound;
import org.shortgrain.review.DirectionReview;
import org.shortgrain.review.Factor;
import org.shortgrain.review.FactorJudgement;
import org.shortgrain.review.FactorState;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Grade;
import org.shortgrain.review.InService;
import org.shortgrain.review.InspectionSchedule;
import org.shortgrain.review.MaterialLine;
import org.shortgrain.review.OwnTests;
import org.shortgrain.review.Question;
import org.shortgrain.review.Review;
import org.shortgrain.review.RouteLine;
import org.shortgrain.review.RuleUse;
import org.shortgrain.review.SourceLine;
import org.shortgrain.review.StatedLine;
import org.shortgrain.review.SustainedStress;
import org.shortgrain.review.Threshold;
import org.shortgrain.review.Verdict;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.GrainDirection;
import org.shortgrain.terms.SourceStatus;

/** Reviews for tests of the outputs: one with something in every field, one with nothing that can be left out. */
public final class SampleReview {

    private static final String HASH = "0123456789abcdef".repeat(4);
    private static final Citation READ = new Citation("handbook", "3.1.2, table 4", SourceStatus.READ);
    private static final Citation TOLD = new Citation("habit", "", SourceStatus.COMMON_PRACTICE);
    private static final Location GROOVE = new Location("/features/0", 31, 5);

    private SampleReview() {
    }

    /** {@return a review with something in every field; all of it invented for the tests} */
    public static Review full() {
        return new Review(new Review.Tool("0.1.0"), new Review.RulebookId("2026.1", HASH),
                new Review.InputId("hinge.yaml", HASH), "", new Review.PartId("EX-1001-1", "C", "Hinge \"fitting\""),
                "design", "M&P checker", "2026-01-15", Verdict.OBJECTION,
                List.of("At GROOVE the three factors meet: σ over threshold is 2.0."),
                List.of(groove(), lug()), findings(), questions(), assumptions(), List.of(calculation()),
                List.of(new MaterialLine("scheme A, ST", "low", "susceptible in this direction", true, READ)),
                List.of(new RouteLine("20", "solution heat treat", "solution_heat_treat", List.of(), "", List.of(), 0),
                        new RouteLine("60", "machining", "", List.of("GROOVE"), "opens the core", List.of("F-02"), 1)),
                List.of(new StatedLine("/form/heat_treat_thickness", "3 in", "0.0762 m", "specified, drawing note 2")),
                List.of(new RuleUse("MAT-07", "Clad surface cut through", "Asked; nothing meets its conditions.")),
                List.of(new RuleUse("TI-01", "Methanol on titanium", "Not asked: the material is not titanium.")),
                List.of("/part/function"), List.of(new SourceLine("handbook", "A handbook, edition 3, 1998", "read")),
                List.of("The tool never approves.", "Ratings rest on salt water.")).withInService(inService());
    }

    private static InService inService() {
        Amount stress = new Amount("MPa", 70, 40, 100);
        CrackFound crack = new CrackFound("K-01", "GROOVE", "found 2009-03; length 40 mm",
                List.of(new CrackFound.Evidence(Factor.STRESS, List.of("Core tension is exposed."), List.of())),
                List.of(new CrackFound.Share("quench residual after machining", stress, 0.7)),
                List.of(new CrackFound.Alternative("fatigue", List.of(), List.of("No marks of cycles."),
                        "striations under the microscope", READ)),
                List.of(new CrackFound.Check("Keep the crack faces", TOLD)), List.of(new CrackFound.Check("Same lot", TOLD)));
        Amount days = new Amount("days", 50, 50, 50);
        return new InService(List.of(crack),
                List.of(new InspectionSchedule("GROOVE", "eddy current: crack of 1.3 mm depth",
                        InspectionSchedule.Outcome.BY_GROWTH, Optional.of(days), Optional.of(days), List.of("Half of the time."),
                        List.of(new InspectionSchedule.Due("2026-02-01", "look again")), List.of("Declared: visual."),
                        List.of("The last line."), List.of("C-01")),
                        new InspectionSchedule("LUG", "eddy current", InspectionSchedule.Outcome.NOT_INSPECTABLE,
                                Optional.empty(), Optional.empty(), List.of("Too fast."), List.of(), List.of(), List.of(),
                                List.of())),
                List.of(new OwnTests("GROOVE", "7075-T651, plate, ST, ASTM G44",
                        List.of(new OwnTests.Point(100, 64, true), new OwnTests.Point(50, 84, false)), Optional.of(stress), true,
                        true, List.of("In scope."), Optional.of("C-01"))));
    }

    /** {@return a review of a part of which little is said} */
    public static Review bare() {
        return new Review(new Review.Tool("0.1.0"), new Review.RulebookId("2026.1", HASH),
                new Review.InputId("bare.yaml", HASH), HASH, new Review.PartId("EX-2", "", ""), "audit", "", "",
                Verdict.NO_OBJECTION, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    private static FeatureReview groove() {
        Amount total = new Amount("MPa", 96, 60, 130);
        Threshold threshold = new Threshold(new Amount("MPa", 48, 48, 60.5), 0.5, "qualification stress level", READ);
        return new FeatureReview("GROOVE", "groove", judgement(Factor.MATERIAL, FactorState.PRESENT),
                judgement(Factor.STRESS, FactorState.PRESENT), judgement(Factor.ENVIRONMENT, FactorState.UNKNOWN),
                List.of(new DirectionReview(new SustainedStress(GrainDirection.ST, total,
                        List.of(new Contribution("quench residual after machining", new Amount("MPa", 70, 40, 100),
                                Optional.of("C-01")),
                                new Contribution("one g on the ground", new Amount("ksi", 3.77, 3.77, 3.77),
                                        Optional.empty()))),
                        Optional.of(threshold), Optional.of(new Amount("1", 2, 1.25, 2.70833))),
                        new DirectionReview(new SustainedStress(GrainDirection.L, new Amount("MPa", 12, 0, 20),
                                List.of()), Optional.empty(), Optional.empty())));
    }

    private static FeatureReview lug() {
        return new FeatureReview("LUG-A", "lug_bore", judgement(Factor.MATERIAL, FactorState.ABSENT),
                judgement(Factor.STRESS, FactorState.UNKNOWN), judgement(Factor.ENVIRONMENT, FactorState.PRESENT),
                List.of());
    }

    private static FactorJudgement judgement(Factor factor, FactorState state) {
        return new FactorJudgement(factor, state, List.of("reason for " + state.word(), "second reason"));
    }

    private static List<Finding> findings() {
        return List.of(
                new Finding("F-01", "STRESS-03", Grade.OBJECTION, Factor.COMBINED, Optional.of("GROOVE"),
                        "Three factors meet", "The groove carries 96 MPa across the short grain in standing water.",
                        List.of("sustained tension 96 MPa (C-01)", "drainage: none stated"), "A crack opens.",
                        List.of("Change the temper", "Relieve the stress"), List.of(READ, TOLD), List.of(GROOVE),
                        List.of("MAT-01", "WATER-02"), false),
                new Finding("F-02", "ORDER-04", Grade.CONDITION, Factor.STRESS, Optional.of("GROOVE"),
                        "Cut after the quench", "The core is laid open at op 60.", List.of(), "Tension in the core.",
                        List.of("Rough machine before the quench"), List.of(READ),
                        List.of(new Location("/route/3", 40, 5)), List.of(), false),
                new Finding("F-03", "DOC-01", Grade.ADVICE, Factor.RECORD, Optional.empty(), "Card without revision",
                        "The card names no drawing revision.", List.of("drawing_revision_on_card: absent"),
                        "The card may be of an older drawing.", List.of("State it"), List.of(TOLD), List.of(),
                        List.of(), true));
    }

    private static List<Question> questions() {
        return List.of(
                new Question("Q-01", Optional.of("WATER-05"), Question.Role.JUDGING, Factor.ENVIRONMENT,
                        Optional.of("GROOVE"), "Can water stand in the groove?", "It decides the environment factor.",
                        Optional.of("water stands"), true, List.of(
                                new Answer("water cannot stand there", Verdict.NO_OBJECTION_SUBJECT_TO_CONDITIONS, "",
                                        JsonPatch.parse("[{\"op\": \"replace\", \"path\": \"/features/0/drainage\", \"value\": \"none\"}]")),
                                new Answer("water stands there", Verdict.OBJECTION, "adds WATER-05 at GROOVE",
                                        JsonPatch.parse("[{\"op\": \"add\", \"path\": \"/features/0/drainage/holds_water\", \"value\": true}]"))),
                        "look at the installation drawing", GROOVE),
                new Question("Q-02", Optional.empty(), Question.Role.IDENTITY, Factor.RECORD, Optional.empty(),
                        "Which revision of the card?", "It ties the report to a card.", Optional.empty(), false,
                        List.of(), "", new Location("/planning", 0, 0)));
    }

    private static List<Assumption> assumptions() {
        return List.of(new Assumption("A-01", "water at 25 degC", Assumption.Effect.CONSERVATIVE, List.of(READ)),
                new Assumption("A-02", "plane stress", Assumption.Effect.NEUTRAL, List.of()),
                new Assumption("A-03", "no stress from the jig", Assumption.Effect.UNKNOWN, List.of(TOLD)));
    }

    private static Calculation calculation() {
        return new Calculation("C-01", Optional.of("GROOVE"), new Computed("quench.residual", "Residual after machining",
                SiUnit.PASCAL, new Band(70e6, 40e6, 100e6), "s = E a dT / (1 - nu)",
                List.of(new Computed.Input("E", "modulus", SiUnit.PASCAL, new Band(71.7e9, 70e9, 73e9), "table row 7075",
                        Optional.of(READ)),
                        new Computed.Input("d", "depth", SiUnit.METRE, Band.exact(0.02), "/features/0/as_quenched_depth",
                                Optional.empty())),
                List.of(new Computed.Step("Bi", "Biot number", SiUnit.ONE, new Band(1.2e-7, 1e-7, 2e-7))),
                "scatter of the film coefficient", new Computed.Validity(false, "thickness 76 mm, method up to 70 mm"),
                List.of(READ), List.of("A note."),
                List.of(new Computed.Profile("after machining", SiUnit.METRE, SiUnit.PASCAL,
                        List.of(0.0, 0.001, 0.002), List.of(-120e6, 0.0, 70.25e6)))));
    }
}
