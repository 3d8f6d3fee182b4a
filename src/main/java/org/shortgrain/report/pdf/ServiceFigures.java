package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.report.pdf.ReviewFigures.Drawn;
import org.shortgrain.report.pdf.figure.IntensityOverDepth;
import org.shortgrain.report.pdf.figure.Point;
import org.shortgrain.report.pdf.figure.StressAgainstTime;
import org.shortgrain.review.Calculation;
import org.shortgrain.review.InspectionSchedule;
import org.shortgrain.review.OwnTests;

/** Own tests with their curve, and the stress intensity of a growing crack, one figure for each place. */
final class ServiceFigures {

    private static final double DAY = 86_400;
    private static final double MEGA = 1e6;
    private static final String INTENSITY = "crack.intensity";
    private static final String CRITICAL = "crack.critical-depth";

    private ServiceFigures() {
    }

    static List<Drawn> of(Report report) {
        List<Drawn> figures = new ArrayList<>();
        for (OwnTests tests : report.review().inService().tests()) {
            Optional<Calculation> fit = tests.calculation().isEmpty() ? Optional.empty()
                    : report.review().calculation(tests.calculation().get());
            if (fit.isPresent()) {
                figures.add(new Drawn(tests(report, tests, fit.get()), Section.SERVICE, fit.get().feature(),
                        Optional.of(fit.get().id())));
            }
        }
        Set<Optional<String>> drawn = new HashSet<>();
        for (Calculation calculation : report.review().computations()) {
            boolean grows = calculation.computed().id().equals(INTENSITY) && !calculation.computed().profiles().isEmpty();
            if (grows && drawn.add(calculation.feature())) {
                figures.add(new Drawn(growth(report, calculation), Section.SERVICE, calculation.feature(),
                        Optional.of(calculation.id())));
            }
        }
        return figures;
    }

    private static StressAgainstTime tests(Report report, OwnTests tests, Calculation calculation) {
        Numbers numbers = report.numbers();
        Band threshold = calculation.computed().value();
        String low = numbers.rounded(threshold.low(), SiUnit.PASCAL);
        String high = numbers.rounded(threshold.high(), SiUnit.PASCAL);
        String place = tests.feature().isEmpty() ? "" : " at " + tests.feature();
        List<StressAgainstTime.Specimen> specimens = new ArrayList<>();
        for (OwnTests.Point one : tests.points()) {
            specimens.add(new StressAgainstTime.Specimen(one.days(), numbers.ofMegapascals(one.stress()), one.cracked()));
        }
        return new StressAgainstTime(tests.identified() ? report.words(ServiceWords.FIGURE_TESTS_IDENTIFIED, place, low, high)
                : report.words(ServiceWords.FIGURE_TESTS_OPEN, place),
                report.words(ServiceWords.FIGURE_TESTS_ALTERNATIVE, tests.scope(), count(tests, true), count(tests, false),
                        numbers.rounded(threshold.value(), SiUnit.PASCAL), low, high),
                report.words(ServiceWords.FIGURE_TESTS_NOTE, calculation.id()), numbers.stressUnit(), specimens,
                curve(numbers, calculation.computed()),
                numbers.stress(threshold.value()), numbers.stress(threshold.low()), numbers.stress(threshold.high()));
    }

    /** The first curve over time. */
    private static List<Point> curve(Numbers numbers, Computed computed) {
        List<Point> curve = new ArrayList<>();
        for (Computed.Profile profile : computed.profiles()) {
            if (profile.xUnit() == SiUnit.SECOND) {
                for (int i = 0; i < profile.x().size(); i++) {
                    curve.add(new Point(profile.x().get(i) / DAY, numbers.stress(profile.y().get(i))));
                }
                break;
            }
        }
        return curve;
    }

    private static String count(OwnTests tests, boolean cracked) {
        return Long.toString(tests.count(cracked));
    }

    private static IntensityOverDepth growth(Report report, Calculation calculation) {
        Computed computed = calculation.computed();
        Numbers numbers = report.numbers();
        Band threshold = input(computed, "K_ISCC");
        double found = input(computed, "a").high();
        Computed.Profile profile = computed.profiles().get(0);
        List<Point> curve = new ArrayList<>();
        for (int i = 0; i < profile.x().size(); i++) {
            curve.add(new Point(numbers.length(profile.x().get(i)), profile.y().get(i) / MEGA));
        }
        String feature = report.place(calculation.feature());
        Optional<Double> toughness = Optional.empty();
        Optional<Double> last = Optional.empty();
        Optional<Computed> critical = critical(report, calculation.feature());
        if (critical.isPresent()) {
            toughness = Optional.of(input(critical.get(), "K_Ic").low() / MEGA);
            last = Optional.of(numbers.length(critical.get().value().low()));
        }
        return new IntensityOverDepth(report.words(title(report, calculation), feature),
                report.words(ServiceWords.FIGURE_GROWTH_ALTERNATIVE, feature,
                        numbers.rounded(computed.value().high(), SiUnit.PASCAL_SQRT_METRE),
                        numbers.rounded(found, SiUnit.METRE), numbers.rounded(threshold.low(), SiUnit.PASCAL_SQRT_METRE),
                        numbers.rounded(threshold.high(), SiUnit.PASCAL_SQRT_METRE)),
                report.words(ServiceWords.FIGURE_GROWTH_NOTE, calculation.id()), numbers.lengthUnit(), curve,
                threshold.low() / MEGA, threshold.high() / MEGA, toughness, numbers.length(found), last);
    }

    private static Optional<Computed> critical(Report report, Optional<String> feature) {
        for (Calculation one : report.review().computations()) {
            if (one.computed().id().equals(CRITICAL) && one.feature().equals(feature)) {
                return Optional.of(one.computed());
            }
        }
        return Optional.empty();
    }

    /** As the schedule of the place has it: the curve alone does not tell what K_ISCC may be credited with. */
    private static ServiceWords title(Report report, Calculation calculation) {
        for (InspectionSchedule one : report.review().inService().schedules()) {
            if (one.calculations().contains(calculation.id())) {
                return switch (one.outcome()) {
                    case NOT_INSPECTABLE -> ServiceWords.FIGURE_GROWTH_FAST;
                    case BY_GROWTH -> ServiceWords.FIGURE_GROWTH_SLOW;
                    case BY_CALENDAR -> ServiceWords.FIGURE_GROWTH_BELOW;
                };
            }
        }
        return ServiceWords.FIGURE_GROWTH_SLOW;
    }

    private static Band input(Computed computed, String symbol) {
        for (Computed.Input one : computed.inputs()) {
            if (one.symbol().equals(symbol)) {
                return one.value();
            }
        }
        throw new IllegalArgumentException(computed.id() + " has no input " + symbol);
    }
}
