package org.shortgrain.report.pdf;

import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.part.Location;
import org.shortgrain.report.pdf.tagged.Attachment;
import org.shortgrain.report.pdf.tagged.Paper;
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

/** Reviews invented to try the report: names, numbers and rules mean nothing. */
public final class SampleReview {

    static final String LONG_NAME = "EX-7001-1/" + "Outboard_fitting.left-hand+".repeat(7);
    static final String HASH = "3f2a91bc77d01e45a0c2".repeat(4).substring(0, 64);
    static final String WARNING = "WARNING. Cracks of this kind can grow unseen. Treat an objection as a reason to"
            + " stop release.";
    static final String PRECHECK = "Not valid for release.";
    private static final double MEGA = 1e6;
    private static final Citation HANDBOOK = new Citation("handbook-1", "table 5", SourceStatus.READ);
    private static final Citation RECALLED = new Citation("lecture-2", "", SourceStatus.MEMORY);

    private final int features;
    private final int findings;
    private final String part;

    private SampleReview(int features, int findings, String part) {
        this.features = features;
        this.findings = findings;
        this.part = part;
    }

    /** {@return a review of two places with five findings} */
    public static Review usual() {
        return new SampleReview(2, 5, "EX-7001-1").review(Verdict.OBJECTION, "design");
    }

    /** {@return a review of twelve places with sixty findings and names of two hundred letters} */
    public static Review large() {
        return new SampleReview(12, 60, LONG_NAME).review(Verdict.OBJECTION, "supplier_precheck");
    }

    /** {@return a review with nothing in it but a verdict} */
    public static Review empty(Verdict verdict) {
        return new Review(new Review.Tool("0.1"), new Review.RulebookId("0.1", HASH),
                new Review.InputId("part.yaml", HASH), HASH, new Review.PartId("EX-7001-1", "", ""), "design", "", "",
                verdict, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    /** {@return the files that a report carries} */
    public static List<Attachment> attachments() {
        StringBuilder yaml = new StringBuilder("# invented for demonstration\nschema: 1\n");
        for (int i = 0; i < 70; i++) {
            yaml.append("  - {op: \"").append(10 + i).append("\", do: finish_machine, at: [GROOVE-1], removes: 2 mm}\n");
        }
        return List.of(
                new Attachment("part.yaml", "application/x-yaml", "the description", Attachment.Relationship.SOURCE,
                        yaml.toString().getBytes(StandardCharsets.UTF_8)),
                new Attachment("part.review.json", "application/json", "the review as data",
                        Attachment.Relationship.DATA, "{}\n".getBytes(StandardCharsets.UTF_8)));
    }

    /** {@return options for a draft on A4} */
    public static ReviewPdf.Options options() {
        return options(Paper.A4, Units.SI);
    }

    static ReviewPdf.Options options(Paper paper, Units units) {
        return new ReviewPdf.Options(paper, units, ReviewPdf.Status.DRAFT, "SR-7001", "1",
                OffsetDateTime.of(2026, 1, 15, 0, 0, 0, 0, ZoneOffset.UTC));
    }

    private Review review(Verdict verdict, String purpose) {
        return new Review(new Review.Tool("0.1"), new Review.RulebookId("0.1", HASH),
                new Review.InputId("part.yaml", HASH), HASH,
                new Review.PartId(part, "C", "Fitting, \u03b1-Seite, charni\u00e8re (invented for demonstration)"),
                purpose, "materials and processes checker", "2026-01-15", verdict,
                List.of("Material, stress and environment meet at GROOVE-1.", "One decisive question is open."),
                featureReviews(), findingList(), questions(), assumptions(), calculations(), material(), route(),
                stated(), rules("asked"), rules("idle"), List.of("/inspection/method", "/neighbours/0/area_ratio"),
                sources(), List.of(WARNING,
                "This report is advice.", PRECHECK)).withInService(inService());
    }

    private static InService inService() {
        CrackFound crack = new CrackFound("K-01", "GROOVE-1", "Found 2009-03; length 40 mm",
                List.of(new CrackFound.Evidence(Factor.STRESS, List.of("Core tension is exposed."), List.of())),
                List.of(new CrackFound.Share("quench residual after machining", stress(70, 40, 100), 1)),
                List.of(new CrackFound.Alternative("fatigue", List.of(), List.of("No marks of cycles."), "Decides: striations.",
                        HANDBOOK)),
                List.of(new CrackFound.Check("Keep the crack faces", HANDBOOK)),
                List.of(new CrackFound.Check("All parts of the lot", HANDBOOK)));
        Amount days = new Amount("days", 50, 50, 50);
        return new InService(List.of(crack), List.of(
                new InspectionSchedule("GROOVE-1", "eddy current: crack of 1.3 mm depth",
                        InspectionSchedule.Outcome.NOT_INSPECTABLE, Optional.empty(), Optional.empty(),
                        List.of("Repeat: not inspectable."), List.of(), List.of("Declared: visual."), List.of("The last line."),
                        List.of("C-01")),
                new InspectionSchedule("LUG-2", "eddy current: crack of 1.3 mm depth", InspectionSchedule.Outcome.BY_GROWTH,
                        Optional.of(days), Optional.of(days), List.of("Half of the time."),
                        List.of(new InspectionSchedule.Due("2026-03-01", "look again")), List.of(), List.of("The last line."),
                        List.of())),
                List.of(new OwnTests("GROOVE-1", "7075-T6, die forging, ST, ASTM G44",
                        List.of(new OwnTests.Point(200, 7, true), new OwnTests.Point(45, 84, false)),
                        Optional.of(stress(50, 20, 65)), true, true, List.of("It counts."), Optional.of("C-01"))));
    }

    private List<FeatureReview> featureReviews() {
        List<FeatureReview> reviews = new ArrayList<>();
        for (int i = 1; i <= features; i++) {
            boolean groove = i % 2 == 1;
            String id = (groove ? "GROOVE-" : "LUG-") + i;
            reviews.add(new FeatureReview(id, groove ? "groove" : "lug_bore",
                    judged(Factor.MATERIAL, FactorState.PRESENT, "7075-T6 die forging is rated low in the ST direction."),
                    judged(Factor.STRESS, groove ? FactorState.PRESENT : FactorState.ABSENT,
                            "The upper end of the tension, 130 MPa, is above the threshold of 48 MPa x 0.5."),
                    judged(Factor.ENVIRONMENT, groove ? FactorState.UNKNOWN : FactorState.PRESENT,
                            "The drain hole is smaller than 9.5 mm; where the water goes is not declared."),
                    List.of(direction(GrainDirection.ST, groove ? 70 : 12), direction(GrainDirection.LT, -20))));
        }
        return reviews;
    }

    private static FactorJudgement judged(Factor factor, FactorState state, String reason) {
        return new FactorJudgement(factor, state, List.of(reason));
    }

    private static DirectionReview direction(GrainDirection direction, double residual) {
        List<Contribution> parts = List.of(
                new Contribution("quench residual after machining", stress(residual, residual - 30, residual + 30),
                        Optional.of("C-01")),
                new Contribution("interference fit", stress(18, 12, 24), Optional.of("C-02")),
                new Contribution("one g on the ground", stress(8, 8, 8), Optional.empty()));
        Amount total = stress(residual + 26, residual - 10, residual + 62);
        Threshold threshold = new Threshold(stress(48, 48, 60), 0.5, "threshold of a test in salt water", HANDBOOK);
        return new DirectionReview(new SustainedStress(direction, total, parts),
                direction == GrainDirection.ST ? Optional.of(threshold) : Optional.empty(),
                direction == GrainDirection.ST
                        ? Optional.of(new Amount("1", total.value() / 24, Math.max(0, total.low()) / 24, total.high() / 24))
                        : Optional.empty());
    }

    private static Amount stress(double value, double low, double high) {
        return new Amount("MPa", value, low, high);
    }

    private List<Finding> findingList() {
        List<Finding> list = new ArrayList<>();
        for (int i = 1; i <= findings; i++) {
            Grade grade = Grade.values()[Math.min(3, (i - 1) * 4 / findings)];
            String feature = i % 2 == 1 ? "GROOVE-1" : "LUG-2";
            list.add(new Finding(String.format(Locale.ROOT, "F-%02d", i), "STRESS-0" + i % 9, grade, Factor.STRESS,
                    i % 5 == 0 ? Optional.empty() : Optional.of(feature),
                    "Sustained tension reaches the threshold in the stressed direction",
                    "At " + feature + " the sustained tension in the ST direction is 96 MPa (60 to 130 MPa), against a "
                            + "threshold of 48 MPa times the project's factor of 0.5.",
                    List.of("sum of 96 MPa from calculation C-01 and two more parts",
                            "hole 19.00 mm to 19.02 mm in " + (i % 11 == 0 ? LONG_NAME : "the lug")),
                    "Cracks were seen in smooth specimens of this alloy and temper at this stress after 30 days.",
                    List.of("Over-age the forging to T73 after quench; check strength.",
                            "Machine the groove before solution heat treatment.",
                            "Lower the interference of the bush."),
                    List.of(HANDBOOK, RECALLED), List.of(new Location("/features/0/fit", 31, 5)),
                    i == 3 ? List.of("FIT-02", "FIT-04") : List.of(), i == 4));
        }
        return list;
    }

    private static List<Question> questions() {
        return List.of(
                new Question("Q-01", Optional.of("WATER-02"), Question.Role.JUDGING, Factor.ENVIRONMENT,
                        Optional.of("GROOVE-1"), "Where does the water go that leaves the drain hole?",
                        "A blind path keeps the groove wet.", Optional.of("the groove counts as wet"), true,
                        List.of(new Answer("it runs outside", Verdict.NO_OBJECTION_SUBJECT_TO_CONDITIONS, "environment absent",
                                JsonPatch.NOTHING), new Answer("it runs into the box below", Verdict.OBJECTION,
                                        "environment present", JsonPatch.NOTHING)), "look at the installation drawing",
                        new Location("/features/0/drainage", 40, 5)),
                new Question("Q-02", Optional.empty(), Question.Role.IDENTITY, Factor.RECORD, Optional.empty(),
                        "Which revision of the drawing does the card name?", "The card may be older than the drawing.",
                        Optional.empty(), false, List.of(), "", new Location("/planning", 12, 1)));
    }

    private static List<Assumption> assumptions() {
        return List.of(new Assumption("A-01", "The quench bath is water at 25 \u00b0C, the most severe of the usual ones.",
                        Assumption.Effect.CONSERVATIVE, List.of(HANDBOOK)),
                new Assumption("A-02", "Loads without a share of life act for the whole life.",
                        Assumption.Effect.CONSERVATIVE, List.of()));
    }

    private static List<Calculation> calculations() {
        List<Double> depth = new ArrayList<>();
        List<Double> before = new ArrayList<>();
        List<Double> afterDepth = new ArrayList<>();
        List<Double> after = new ArrayList<>();
        for (int i = 0; i <= 76; i++) {
            double z = (i - 38) / 38.0;
            double stress = 90 * (1 - 3 * z * z) * MEGA;
            depth.add(i * 1e-3);
            before.add(stress);
            if (i >= 30) {
                afterDepth.add(i * 1e-3);
                after.add(stress - 10 * MEGA);
            }
        }
        Computed residual = new Computed("residual.exposed", "Residual stress at the finished surface, ST",
                SiUnit.PASCAL, new Band(70 * MEGA, 40 * MEGA, 100 * MEGA), "s = released stress at the face",
                List.of(input("t", "thickness of the section at quench", SiUnit.METRE, Band.exact(0.076),
                                "/form/heat_treat_thickness"),
                        input("a", "depth of the finished surface", SiUnit.METRE, Band.exact(0.03), "stated"),
                        input("E", "Young's modulus", SiUnit.PASCAL, Band.exact(7.17e10), "table 7075"),
                        input("alpha", "thermal expansion", SiUnit.PER_KELVIN, Band.exact(23.6e-6), "table 7075")),
                List.of(new Computed.Step("s(a)", "stress of the blank there", SiUnit.PASCAL, Band.exact(80 * MEGA))),
                "lowest and highest of three views of the bath", new Computed.Validity(true, "plates of 10 to 200 mm"),
                List.of(HANDBOOK), List.of("governing view: cold water"),
                List.of(new Computed.Profile("before machining", SiUnit.METRE, SiUnit.PASCAL, depth, before),
                        new Computed.Profile("after machining, held flat", SiUnit.METRE, SiUnit.PASCAL, afterDepth,
                                after)));
        Computed fit = new Computed("fit.bore-hoop", "Hoop stress at the bore of the outer part", SiUnit.PASCAL,
                new Band(18 * MEGA, 12 * MEGA, 24 * MEGA), "p = delta / (d (co/Eo + ci/Ei)); sigma = p co",
                List.of(input("D_hole", "diameter of the hole", SiUnit.METRE, new Band(0.01901, 0.019, 0.01902),
                                "/features/0/fit/hole"),
                        input("do", "outside diameter", SiUnit.METRE, Band.exact(0.028), "/features/0/fit/outer_width"),
                        input("di", "bore of the inner part", SiUnit.METRE, Band.exact(0.015), "/features/0/fit/bush_bore")),
                List.of(new Computed.Step("delta0", "diametral interference", SiUnit.METRE,
                        new Band(4e-5, 3e-5, 6e-5))),
                "extremes of the limits of size", new Computed.Validity(false, "the lug yields: elastic sum only"),
                List.of(RECALLED), List.of(), List.of());
        return List.of(new Calculation("C-01", Optional.of("GROOVE-1"), residual),
                new Calculation("C-02", Optional.of("LUG-2"), fit));
    }

    private static Computed.Input input(String symbol, String meaning, SiUnit unit, Band value, String origin) {
        return new Computed.Input(symbol, meaning, unit, value, origin, Optional.of(HANDBOOK));
    }

    private static List<MaterialLine> material() {
        return List.of(new MaterialLine("7075-T6 die forging, ST", "D", "low resistance", true, HANDBOOK),
                new MaterialLine("threshold, ST", "48 MPa", "least stress of a failure", true, HANDBOOK),
                new MaterialLine("yield strength", "430 MPa", "caps the elastic sum", false, RECALLED));
    }

    private static List<RouteLine> route() {
        return List.of(new RouteLine("20", "solution_heat_treat", "solution_heat_treat", List.of(), "", List.of(), 1),
                new RouteLine("21", "quench", "quench", List.of(), "tension in the core", List.of(), 2),
                new RouteLine("30", "age", "age", List.of(), "", List.of(), 3),
                new RouteLine("60", "finish_machine", "finish_machine", List.of("GROOVE-1"), "bares tension",
                        List.of("F-01", "F-02"), 0),
                new RouteLine("70", "anodise", "anodize", List.of(), "protects", List.of(), 4),
                new RouteLine("90", "install_bushing", "install_bushing", List.of("LUG-2"), "tension", List.of("F-03"), 5));
    }

    private List<StatedLine> stated() {
        List<StatedLine> lines = new ArrayList<>(List.of(
                line("/part/number", part), line("/part/revision", "C"), line("/part/criticality", "safety_critical"),
                line("/part/function", "carries the hinge load"), line("/part/effect_of_failure", "loss of the surface"),
                line("/drawing/number", "EX-7001"), line("/drawing/revision", "C"), line("/planning/number", "RC-7001"),
                line("/planning/revision", "4"), line("/material/alloy", "7075"), line("/material/temper", "T6"),
                line("/form/product", "die_forging"),
                new StatedLine("/form/heat_treat_thickness", "3 in", "76.2 mm", "drawing note 4"),
                line("/grain/basis", "forging_drawing"), line("/grain/L", "X"), line("/grain/LT", "Y"),
                line("/grain/ST", "Z"), line("/grain/parting_line", "plane Z=0"),
                line("/environment/zone", "wheel_well"), line("/environment/salt", "coastal"),
                line("/surface/primer", "MIL-PRF-23377"), line("/surface/topcoat", "none")));
        for (int i = 0; i < features; i++) {
            String path = "/features/" + i;
            boolean groove = i % 2 == 0;
            lines.add(line(path + "/id", (groove ? "GROOVE-" : "LUG-") + (i + 1)));
            lines.add(line(path + "/stress_direction", "ST"));
            if (groove) {
                lines.add(line(path + "/drainage/opening", "up"));
                lines.add(line(path + "/drainage/depth", "20 mm"));
                lines.add(line(path + "/drainage/length", "200 mm"));
                lines.add(line(path + "/drainage/attitude/ground/pitch", "3 deg"));
                lines.add(line(path + "/drainage/attitude/flight/pitch", "-2 deg"));
                lines.add(line(path + "/drainage/drain_holes/0/diameter", "6 mm"));
                lines.add(line(path + "/drainage/drain_holes/0/path_continues", "unknown"));
            } else {
                lines.add(line(path + "/fit/kind", "press_bushing"));
                lines.add(line(path + "/fit/hole", "19.000 mm to 19.020 mm"));
            }
        }
        return lines;
    }

    private static StatedLine line(String path, String value) {
        return new StatedLine(path, value, "", "");
    }

    private static List<RuleUse> rules(String word) {
        List<RuleUse> rules = new ArrayList<>();
        for (int i = 1; i <= 14; i++) {
            rules.add(new RuleUse("ROUTE-" + (10 + i), "Peening comes after the last cut of the surface, " + word,
                    "no peening among the operations"));
        }
        return rules;
    }

    private static List<SourceLine> sources() {
        return List.of(new SourceLine("handbook-1", "An invented handbook of thresholds, edition 3, 2001", "read"),
                new SourceLine("lecture-2", "Invented lecture notes on interference fits", "memory"));
    }
}
