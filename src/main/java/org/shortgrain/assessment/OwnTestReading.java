package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.threshold.TestResult;
import org.shortgrain.mechanics.threshold.ThresholdFit;
import org.shortgrain.part.Environment;
import org.shortgrain.part.Fluid;
import org.shortgrain.part.Form;
import org.shortgrain.part.Material;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Stated;
import org.shortgrain.part.TestData;
import org.shortgrain.part.TestPoint;
import org.shortgrain.reference.ExposureTable;
import org.shortgrain.reference.FluidTable;
import org.shortgrain.reference.ReferenceTables;
import org.shortgrain.review.Amount;
import org.shortgrain.review.OwnTests;
import org.shortgrain.rulebook.facts.Metal;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.GrainDirection;
import org.shortgrain.terms.SourceStatus;

/**
 * Own stress and time results: the threshold they give, and whether it counts.
 *
 * <p>The lower end of its 95 % interval is what the sustained tension is compared with, where alloy, temper, form,
 * direction and environment of the tests are those of the part, and where it either lies below what is otherwise known or
 * the tests identify the threshold. A test of something else changes nothing, and the review says why.
 */
final class OwnTestReading {

    private static final double DAY = 86_400;
    private static final double MEGA = 1e6;
    private static final String KIND = "own tests, lower end of the 95 % interval";

    private final List<One> tests;

    private OwnTestReading(List<One> tests) {
        this.tests = List.copyOf(tests);
    }

    /** One group of results with its fit. */
    private record One(TestData stated, List<TestResult> results, Optional<ThresholdFit> fit, Optional<Computed> threshold,
            Optional<String> calculation, List<String> outside) {

        boolean isFor(String feature) {
            return stated.feature().isMissing() || stated.feature().is(feature);
        }

        Optional<GrainDirection> direction() {
            return stated.direction().single();
        }

        Optional<Band> interval() {
            return threshold.map(Computed::value);
        }

        boolean identified() {
            return fit.isPresent() && fit.get().isIdentified() && fit.get().curve().isPresent();
        }
    }

    /**
     * {@return the own results of a part, fitted and written into the ledger}
     *
     * @param description the part
     * @param metal       its material
     * @param tables      what exposures stand for, and names of fluids
     * @param ledger      what is computed
     */
    static OwnTestReading of(PartDescription description, Metal metal, ReferenceTables tables, Ledger ledger) {
        List<One> tests = new ArrayList<>();
        for (TestData stated : Stated.items(description.testData())) {
            List<TestResult> results = results(stated);
            Optional<ThresholdFit> fit = ThresholdFit.of(results);
            Optional<Computed> threshold = fit.map(ThresholdFit::threshold);
            Optional<String> calculation = threshold.map(one -> ledger.computed(stated.feature().single(), one));
            tests.add(new One(stated, results, fit, threshold, calculation,
                    outside(stated, description, metal, tables)));
        }
        return new OwnTestReading(tests);
    }

    private static List<TestResult> results(TestData stated) {
        List<TestResult> results = new ArrayList<>();
        for (TestPoint point : Stated.items(stated.points())) {
            boolean whole = point.stress().single().isPresent() && point.days().single().isPresent()
                    && point.cracked().single().isPresent();
            if (whole && point.stress().single().get().middle() > 0 && point.days().single().get() > 0) {
                results.add(new TestResult(point.stress().single().get().middle(), point.days().single().get() * DAY,
                        point.cracked().single().get()));
            }
        }
        return results;
    }

    /** What of the scope is not that of the part; empty if all of it is. */
    private static List<String> outside(TestData stated, PartDescription description, Metal metal,
            ReferenceTables tables) {
        List<String> outside = new ArrayList<>();
        compare("alloy", plain(stated.alloy()), plain(description.material().field(Material::alloy)), outside);
        compare("temper", plain(stated.temper()), plain(description.material().field(Material::temper)), outside);
        compare("form", stated.product().single().map(one -> one.word()),
                description.form().field(Form::product).single().map(one -> one.word()), outside);
        if (stated.direction().single().isEmpty()) {
            outside.add("the grain direction of the specimens is not stated");
        }
        outside.addAll(environment(stated, description, metal, tables));
        return outside;
    }

    private static void compare(String what, Optional<String> tested, Optional<String> part, List<String> outside) {
        if (tested.isEmpty()) {
            outside.add("the " + what + " of the specimens is not stated");
        } else if (part.isEmpty()) {
            outside.add("the " + what + " of the part is not settled");
        } else if (!tested.equals(part)) {
            outside.add("the specimens are " + say(tested.get()) + ", the part is " + say(part.get()));
        }
    }

    private static Optional<String> plain(Stated<String> text) {
        return text.single().map(one -> one.strip().toUpperCase(Locale.ROOT));
    }

    private static String say(String word) {
        return word.replace('_', ' ');
    }

    private static List<String> environment(TestData stated, PartDescription description, Metal metal,
            ReferenceTables tables) {
        Optional<ExposureTable.Exposure> exposure = stated.exposure().single().flatMap(tables.exposures()::of);
        if (exposure.isEmpty()) {
            return List.of("the exposure of the tests " + stated.exposure().single().map(one -> "(" + one + ") ").orElse("")
                    + "is not known to stand for the environment of the part");
        }
        if (!exposure.get().families().contains(metal.family())) {
            return List.of(exposure.get().name() + " is not known to stand for service of this family of materials");
        }
        Stated<List<Fluid>> wetting = description.environment().field(Environment::fluids);
        if (wetting.isMissing()) {
            return List.of("the fluids that wet the part are not stated");
        }
        return Stated.items(wetting).stream().flatMap(one -> one.name().candidates().stream())
                .map(name -> tables.fluids().find(name).map(FluidTable.Fluid::word).orElse(name))
                .filter(name -> !exposure.get().fluids().contains(name))
                .map(name -> exposure.get().name() + " does not stand for " + say(name)).distinct().toList();
    }

    /**
     * {@return the limits at a place, with the own tests where they count}
     *
     * @param feature the place
     * @param limits  what the tension is otherwise compared with
     */
    Map<GrainDirection, Limit> at(String feature, Map<GrainDirection, Limit> limits) {
        Map<GrainDirection, Limit> own = new EnumMap<>(limits);
        for (One test : tests) {
            test.direction().filter(direction -> test.isFor(feature))
                    .ifPresent(direction -> counted(test, own.get(direction)).ifPresent(one -> own.put(direction, one)));
        }
        return own;
    }

    /** The limit that a test gives, if it counts beside another one. */
    private static Optional<Limit> counted(One test, Limit other) {
        Optional<Band> interval = test.interval().filter(band -> band.low() > 0);
        if (!test.outside().isEmpty() || interval.isEmpty()) {
            return Optional.empty();
        }
        double low = interval.get().low();
        boolean lower = other.stress().isEmpty() || low < other.stress().get().value().low();
        if (!lower && !test.identified() || !lower && other.kind().equals(Limit.OWN_STATED)) {
            return Optional.empty();
        }
        Citation source = new Citation("user-statement", test.stated().origin().ref().orElse("test_data"),
                SourceStatus.SECONDARY);
        Given given = new Given(new Band(low, low, Math.max(low, interval.get().value())), KIND, Optional.of(source));
        return Optional.of(new Limit(Optional.of(given), KIND, Optional.of(source), test.identified()));
    }

    /**
     * {@return the own results for the report}
     *
     * @param limits what the tension is otherwise compared with
     */
    List<OwnTests> shown(Map<GrainDirection, Limit> limits) {
        return tests.stream().map(test -> shown(test, limits)).toList();
    }

    private static OwnTests shown(One test, Map<GrainDirection, Limit> limits) {
        Optional<Limit> counted = test.direction().flatMap(direction -> counted(test, limits.get(direction)));
        List<OwnTests.Point> points = test.results().stream()
                .map(one -> new OwnTests.Point(one.stress() / MEGA, one.time() / DAY, one.cracked())).toList();
        return new OwnTests(test.stated().feature().single().orElse(""), scope(test.stated()), points,
                test.interval().map(band -> new Amount("MPa", band.value() / MEGA, band.low() / MEGA, band.high() / MEGA)),
                test.identified(), counted.isPresent(), because(test, counted, limits), test.calculation());
    }

    private static String scope(TestData stated) {
        return String.join(", ", stated.alloy().single().map(alloy -> alloy + stated.temper().single()
                .map(temper -> "-" + temper).orElse(", temper not stated")).orElse("alloy not stated"),
                stated.product().single().map(one -> say(one.word())).orElse("form not stated"),
                stated.direction().single().map(Enum::name).orElse("direction not stated"),
                stated.exposure().single().orElse("exposure not stated"));
    }

    private static List<String> because(One test, Optional<Limit> counted, Map<GrainDirection, Limit> limits) {
        List<String> because = new ArrayList<>();
        if (test.fit().isEmpty()) {
            because.add("Too few results for a fit: four that cracked, at three different stresses, are needed.");
            return because;
        }
        because.add(test.threshold().orElseThrow().validity().statement());
        because.addAll(test.threshold().orElseThrow().notes());
        test.outside().forEach(one -> because.add("Out of scope: " + one + "."));
        if (counted.isPresent()) {
            because.add("The lower end of the interval is what the sustained tension is compared with.");
        } else if (test.outside().isEmpty()) {
            because.add(test.direction().flatMap(direction -> limits.get(direction).stress()).isPresent()
                    ? "It does not replace the threshold that is known otherwise: it is higher, and these tests do not settle it."
                    : "It cannot serve as a threshold: its interval reaches zero.");
        }
        return because;
    }

    /** {@return the own tests of a part for the rules} */
    List<org.shortgrain.rulebook.facts.OwnTest> facts() {
        return tests.stream().map(test -> new org.shortgrain.rulebook.facts.OwnTest(test.stated(),
                test.results().size(), test.fit().isPresent(), test.identified(), test.outside())).toList();
    }
}
