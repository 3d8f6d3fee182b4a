package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.water.StandingWater;
import org.shortgrain.part.DirectionWord;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Identity;
import org.shortgrain.part.Level;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.ReviewRequest;
import org.shortgrain.part.Stated;
import org.shortgrain.part.StressDirection;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.MinimumSet;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.part.reader.UnjudgedKeys;
import org.shortgrain.reference.RouteOrder;
import org.shortgrain.reference.Source;
import org.shortgrain.reference.StandIns;
import org.shortgrain.review.Assumption;
import org.shortgrain.review.Calculation;
import org.shortgrain.review.DirectionReview;
import org.shortgrain.review.Factor;
import org.shortgrain.review.FactorJudgement;
import org.shortgrain.review.FactorState;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.Finding;
import org.shortgrain.review.InService;
import org.shortgrain.review.MaterialLine;
import org.shortgrain.review.Question;
import org.shortgrain.review.ReportNumber;
import org.shortgrain.review.Review;
import org.shortgrain.review.SourceLine;
import org.shortgrain.rulebook.Applicability;
import org.shortgrain.rulebook.Outcome;
import org.shortgrain.rulebook.facts.Metal;
import org.shortgrain.rulebook.facts.OrderPair;
import org.shortgrain.rulebook.facts.Part;
import org.shortgrain.rulebook.facts.Place;
import org.shortgrain.rulebook.facts.Route;
import org.shortgrain.rulebook.facts.Tag;
import org.shortgrain.rulebook.facts.Zone;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.GrainDirection;

/**
 * Reviews a part: reads the card, looks the material up, computes and judges each place, asks the rulebook, and puts the
 * review together. Immutable; several threads may use one.
 */
public final class Reviewer {

    private final Knowledge knowledge;
    private final Wording wording;
    private final String toolVersion;
    private final MaterialReading materials;
    private final MinimumSet minimum = new MinimumSet();
    private final Remembered<StandingWater, Caught.Pooled> waters = new Remembered<>(Caught.Pooled::of);
    /** Lasts as long as the reviewer: equal quench cases are computed once, whatever the part. */
    private final StressJudge stress;

    /**
     * Makes a reviewer.
     *
     * @param knowledge   rulebook and tables
     * @param wording     the cautions, in the words of the templates
     * @param toolVersion version of the tool
     */
    public Reviewer(Knowledge knowledge, Wording wording, String toolVersion) {
        this.knowledge = knowledge;
        this.wording = wording;
        this.toolVersion = toolVersion;
        this.materials = new MaterialReading(knowledge.tables().materials());
        this.stress = stressJudge(knowledge, materials);
    }

    /**
     * {@return the review of a part as a user gets it, not yet sealed with its content hash: the open questions are decided,
     * which takes further reviews of the part with each admissible answer, see {@link DecisiveQuestions}}
     *
     * @param read  what was read
     * @param input the file it was read from
     * @param date  date of the review, ISO 8601
     */
    public Review review(Reading.Read read, Review.InputId input, String date) {
        Review open = review(read.description(), input, read.paths(), date);
        boolean asks = open.questions().stream().anyMatch(one -> one.role() == Question.Role.JUDGING);
        Optional<EditableDescription> edited = asks ? EditableDescription.of(read.source()) : Optional.empty();
        return edited.map(part -> new DecisiveQuestions(new Trials(this)).decided(open, part))
                .orElse(open);
    }

    /** {@return the knowledge that judges} */
    Knowledge knowledge() {
        return knowledge;
    }

    /** {@return the behaviour of the material, for answers that depend on it} */
    MaterialReading materials() {
        return materials;
    }

    /**
     * {@return the review of a part, not yet sealed with its content hash, in which every open question counts as decisive}
     *
     * @param description the part
     * @param input       the file it was read from
     * @param paths       keys and list items that stand in it
     * @param date        date of the review, ISO 8601
     */
    public Review review(PartDescription description, Review.InputId input, List<String> paths, String date) {
        return review(description, input, paths, date, true);
    }

    /** As above; without what is there for the reader alone and decides nothing: draws, values as stated, sources. */
    Review trial(PartDescription description) {
        return review(description, new Review.InputId("", ""), List.of(), "", false);
    }

    private Review review(PartDescription description, Review.InputId input, List<String> paths, String date,
            boolean whole) {
        Examined seen = examine(description, whole);
        Outcome outcome = matter(description, seen).ask(knowledge.rulebook());
        InService inService = whole
                ? seen.service().found(description, seen.places(), seen.reviews(), seen.limits(), date) : InService.NONE;
        return assembled(description, input, paths, date, seen.ledger(), seen.material(), seen.part().route(),
                seen.reviews(), outcome, inService, whole);
    }

    /**
     * {@return what the rules are asked about a part, for whoever wants to ask them alone}
     *
     * @param description the part
     */
    public Matter matter(PartDescription description) {
        return matter(description, examine(description, true));
    }

    private Matter matter(PartDescription description, Examined seen) {
        List<Object> facts = facts(description, seen.material(), seen.part(), seen.places());
        facts.addAll(seen.service().facts());
        return new Matter(facts, applicability(seen.part()), seen.places().stream().map(Place::id).toList());
    }

    /**
     * A part before the rules are asked.
     *
     * @param ledger   questions, assumptions and calculations so far
     * @param material what the tables hold on its material
     * @param part     the part as a fact
     * @param places   its places as facts, in the order of the description
     * @param reviews  the same places with their factors
     * @param service  what is to be said of service
     * @param limits   what the tension is compared with beside own tests
     */
    private record Examined(Ledger ledger, MaterialReading.Found material, Part part, List<Place> places,
            List<FeatureReview> reviews, InServiceReading service, Map<GrainDirection, Limit> limits) {
    }

    private Examined examine(PartDescription description, boolean whole) {
        Ledger ledger = new Ledger();
        MissingFields.ask(minimum, description, ledger);
        Ground ground = ground(description, ledger);
        EnvironmentJudge environment = new EnvironmentJudge(knowledge.tables());
        Protection protection = new Protection(knowledge.tables().protectionCredits());
        Part part = new Part(description, ground.material().metal(), ground.route(),
                environment.zone(description, Optional.empty()));
        InServiceReading service = new InServiceReading(knowledge.tables(), ground.tests());
        List<FeatureReview> reviews = new ArrayList<>();
        List<Place> places = new ArrayList<>();
        List<Feature> features = features(description);
        for (int i = 0; i < features.size(); i++) {
            Feature feature = features.get(i);
            Directions pulled = Directions.of(feature, ground.material().metal());
            Site site = ground.site(i, waters);
            int before = ledger.calculations().size();
            StressJudge.Judged judged = stress.judge(site, ground.limitsAt(site), ground.factor(), pulled.certain(), whole);
            Zone zone = environment.zone(description, Optional.of(feature));
            FactorJudgement wet = environment.judge(site, zone).judgement();
            FactorJudgement prone = materialJudgement(pulled, ground.material());
            List<Computed> computed = ledger.calculations().stream().skip(before).map(Calculation::computed).toList();
            Place place = protection.beside(new Place(part, feature, site.id(), pulled.all(), zone, prone, judged.judgement(),
                    wet, judged.tensions(), computed), ledger);
            places.add(place);
            reviews.add(new FeatureReview(site.id(), what(feature), prone, place.stress(), place.environment(),
                    judged.directions()));
            service.look(site, judged.directions(), places.get(i), ground.material().answer());
        }
        return new Examined(ledger, ground.material(), part, places, reviews, service, ground.limits());
    }

    private static List<Feature> features(PartDescription description) {
        return Stated.items(description.features());
    }

    /** What pulls at one place, as an examination of the part finds it. */
    PlaceStress stressAt(PartDescription description, int feature) {
        Ground ground = ground(description, new Ledger());
        Site site = ground.site(feature, waters);
        return stress.at(site, ground.limitsAt(site), ground.factor());
    }

    private Ground ground(PartDescription description, Ledger ledger) {
        Route route = new RouteReading(knowledge.tables().operations()).read(description, ledger);
        MaterialReading.Found material = materials.read(description);
        double factor = thresholdFactor(description, ledger);
        OwnTestReading tests = OwnTestReading.of(description, material.metal(), knowledge.tables(), ledger);
        return new Ground(description, ledger, route, material, factor, Limit.of(description, material.answer()), tests);
    }

    /**
     * What bears on every place of a part.
     *
     * @param description the part
     * @param ledger      questions, assumptions and calculations so far
     * @param route       the card as understood
     * @param material    what the tables hold on its material
     * @param factor      the project's factor on the threshold
     * @param limits      what the tension is compared with beside own tests
     * @param tests       own tests
     */
    private record Ground(PartDescription description, Ledger ledger, Route route, MaterialReading.Found material,
            double factor, Map<GrainDirection, Limit> limits, OwnTestReading tests) {

        Site site(int feature, Remembered<StandingWater, Caught.Pooled> waters) {
            List<Feature> features = features(description);
            Feature one = features.get(feature);
            return new Site(description, one, MissingFields.name(features, feature),
                    Directions.of(one, material.metal()).all(), material.metal(), material.elastic(), route, ledger, waters);
        }

        Map<GrainDirection, Limit> limitsAt(Site site) {
            return tests.at(site.id(), limits);
        }
    }

    private static String what(Feature feature) {
        return feature.what().single().map(kind -> kind.word().replace('_', ' ')).orElse("kind not stated");
    }

    private List<Object> facts(PartDescription description, MaterialReading.Found material, Part part,
            List<Place> places) {
        List<Object> facts = new ArrayList<>(List.of(part, part.route()));
        facts.addAll(part.route().steps());
        facts.addAll(places);
        facts.addAll(new Couples(knowledge.tables().galvanic(), knowledge.tables().galvanicMembers()).of(part, places));
        facts.addAll(new MaterialFacts(knowledge.tables()).of(description, material.answer()));
        for (RouteOrder.Pair row : knowledge.tables().routeOrder().before()) {
            facts.add(new OrderPair(row));
        }
        return facts;
    }

    private static Applicability applicability(Part part) {
        return tag -> Tag.valueOf(tag.toUpperCase(Locale.ROOT)).keepsOut(part);
    }

    private static StressJudge stressJudge(Knowledge knowledge, MaterialReading reading) {
        StandIns standIns = knowledge.tables().standIns();
        Map<Level, ServicePulls.Share> shares = Map.of(Level.LOW, share(standIns.of("load_low")),
                Level.MODERATE, share(standIns.of("load_moderate")), Level.HIGH, share(standIns.of("load_high")));
        Given friction = Declared.standIn(standIns.of("press_fit_friction"));
        return new StressJudge(new ResidualPulls(knowledge.quench()), new FitPulls(reading::elastic, friction),
                new ServicePulls(shares));
    }

    private static ServicePulls.Share share(StandIns.StandIn standIn) {
        return new ServicePulls.Share(standIn.value(), standIn.source());
    }

    private double thresholdFactor(PartDescription description, Ledger ledger) {
        Optional<Double> stated = description.review().field(ReviewRequest::thresholdFactor).single();
        if (stated.isPresent()) {
            return stated.get();
        }
        StandIns.StandIn standIn = knowledge.tables().standIns().of("threshold_factor");
        ledger.assume(String.format(Locale.ROOT, "The project's factor on the threshold is not stated; %.2g is taken.",
                standIn.value()), Assumption.Effect.CONSERVATIVE, standIn.source());
        return standIn.value();
    }

    /**
     * The directions in which lasting tension may act at a place.
     *
     * @param all     the directions
     * @param certain whether each of them is pulled for certain
     */
    private record Directions(Set<GrainDirection> all, boolean certain) {

        static Directions of(Feature feature, Metal metal) {
            Optional<StressDirection> stated = feature.stressDirection().single();
            if (stated.isPresent() && stated.get() instanceof StressDirection.Named named) {
                return named(named.word());
            }
            if (feature.stressDirection().isKnown() && stated.isEmpty()) {
                Set<GrainDirection> either = EnumSet.noneOf(GrainDirection.class);
                feature.stressDirection().candidates().forEach(one -> either.addAll(
                        one instanceof StressDirection.Named named ? named(named.word()).all()
                                : EnumSet.allOf(GrainDirection.class)));
                return new Directions(either, false);
            }
            return new Directions(EnumSet.allOf(GrainDirection.class), false);
        }

        private static Directions named(DirectionWord word) {
            return switch (word) {
                case L -> new Directions(EnumSet.of(GrainDirection.L), true);
                case LT -> new Directions(EnumSet.of(GrainDirection.LT), true);
                case ST -> new Directions(EnumSet.of(GrainDirection.ST), true);
                case TRANSVERSE, ACROSS_FLOW -> new Directions(EnumSet.of(GrainDirection.LT, GrainDirection.ST), false);
                case MIXED -> new Directions(EnumSet.allOf(GrainDirection.class), true);
            };
        }
    }

    private static FactorJudgement materialJudgement(Directions pulled, MaterialReading.Found material) {
        List<String> reasons = new ArrayList<>();
        Set<FactorState> states = EnumSet.noneOf(FactorState.class);
        for (GrainDirection direction : pulled.all()) {
            FactorState state = MaterialReading.state(material.answer().in(direction));
            states.add(state);
            reasons.add(String.format(Locale.ROOT, "%s along %s: %s%s", material.metal().stated(), direction,
                    material.answer().in(direction).level().level().word(),
                    state == FactorState.UNKNOWN ? "; not settled by what is stated" : ""));
        }
        boolean all = states.equals(EnumSet.of(FactorState.PRESENT));
        if (all || pulled.certain() && states.contains(FactorState.PRESENT)) {
            return new FactorJudgement(Factor.MATERIAL, FactorState.PRESENT, reasons);
        }
        if (states.equals(EnumSet.of(FactorState.ABSENT))) {
            return new FactorJudgement(Factor.MATERIAL, FactorState.ABSENT, reasons);
        }
        if (states.contains(FactorState.PRESENT)) {
            reasons.add("which grain direction is pulled is not settled");
        }
        return new FactorJudgement(Factor.MATERIAL, FactorState.UNKNOWN, reasons);
    }

    private Review assembled(PartDescription description, Review.InputId input, List<String> paths, String date,
            Ledger ledger, MaterialReading.Found material, Route route, List<FeatureReview> features, Outcome outcome,
            InService inService, boolean whole) {
        List<Question> questions = questions(ledger, outcome);
        VerdictRule verdict = VerdictRule.of(outcome.findings(), questions);
        return new Review(new Review.Tool(toolVersion),
                new Review.RulebookId(knowledge.rulebook().edition(), knowledge.rulebook().sha256()), input, "",
                partId(description), description.review().field(ReviewRequest::purpose).single()
                        .map(purpose -> purpose.word()).orElse("design"),
                description.review().field(ReviewRequest::preparedBy).single().orElse(""), date, verdict.verdict(),
                verdict.because(), features, outcome.findings(), questions, ledger.assumptions(),
                ledger.calculations(), material.lines(), RouteReading.lines(route, outcome.findings(),
                        new RouteProposal(knowledge.tables().routeOrder(), material.metal())),
                whole ? StatedLines.of(description) : List.of(), outcome.applied(), outcome.notApplicable(),
                UnjudgedKeys.among(paths), whole ? sources(ledger, material, features, outcome, inService) : List.of(),
                wording.cautions(description, verdict.verdict()), inService, List.of());
    }

    private static Review.PartId partId(PartDescription description) {
        Stated<Identity> identity = description.part();
        return new Review.PartId(identity.field(Identity::number).single().orElse(""),
                identity.field(Identity::revision).single().orElse(""),
                identity.field(Identity::name).single().orElse(""));
    }

    /** Questions of the minimum set and of the computations, then those of the rules; the decisive ones first. */
    private static List<Question> questions(Ledger ledger, Outcome outcome) {
        List<Ledger.Asked> asked = new ArrayList<>(ledger.asked());
        for (Finding finding : outcome.questions()) {
            asked.add(asked(finding));
        }
        asked.sort(Comparator.comparing((Ledger.Asked one) -> one.role() == Question.Role.IDENTITY));
        List<Question> questions = new ArrayList<>();
        for (Ledger.Asked one : asked) {
            questions.add(new Question(ReportNumber.of('Q', questions.size() + 1), one.rule(), one.role(),
                    one.factor(), one.feature(), one.text(), one.why(), one.standIn(),
                    one.role() == Question.Role.JUDGING, List.of(), "", one.at()));
        }
        return questions;
    }

    private static Ledger.Asked asked(Finding finding) {
        Question.Role role = finding.factor() == Factor.RECORD ? Question.Role.IDENTITY : Question.Role.JUDGING;
        org.shortgrain.part.Location at = finding.at().stream().findFirst()
                .orElse(new org.shortgrain.part.Location("", 0, 0));
        return new Ledger.Asked(Optional.of(finding.rule()), role, finding.factor(), finding.feature(),
                finding.statement(), finding.why(), Optional.empty(), at);
    }

    private List<SourceLine> sources(Ledger ledger, MaterialReading.Found material, List<FeatureReview> features,
            Outcome outcome, InService inService) {
        Set<String> cited = new TreeSet<>();
        for (Finding one : outcome.findings()) {
            cite(cited, one.sources());
        }
        for (Finding one : outcome.questions()) {
            cite(cited, one.sources());
        }
        for (Assumption one : ledger.assumptions()) {
            cite(cited, one.sources());
        }
        for (MaterialLine one : material.lines()) {
            cited.add(one.source().id());
        }
        for (FeatureReview feature : features) {
            citeThresholds(cited, feature.directions());
        }
        for (Calculation one : ledger.calculations()) {
            cite(cited, one.computed());
        }
        cite(cited, inService.citations());
        return cited.stream().map(this::source).toList();
    }

    private static void cite(Set<String> cited, List<Citation> sources) {
        for (Citation source : sources) {
            cited.add(source.id());
        }
    }

    private static void citeThresholds(Set<String> cited, List<DirectionReview> directions) {
        for (DirectionReview one : directions) {
            if (one.threshold().isPresent()) {
                cited.add(one.threshold().get().source().id());
            }
        }
    }

    private static void cite(Set<String> cited, Computed computed) {
        cite(cited, computed.sources());
        for (Computed.Input input : computed.inputs()) {
            if (input.source().isPresent()) {
                cited.add(input.source().get().id());
            }
        }
    }

    private SourceLine source(String id) {
        Optional<Source> known = knowledge.tables().sources().find(id);
        return new SourceLine(id, known.map(Source::reference).orElse(id),
                known.map(Source::seen).orElse("not in the list of sources"));
    }
}
