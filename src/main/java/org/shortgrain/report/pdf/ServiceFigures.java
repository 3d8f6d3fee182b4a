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
import org.shortgrain.review.OwnTests;

/** Own tests with their curve, and the stress intensity of a growing crack, one figure for each place. */
final class ServiceFigures {

    private static final double DAY = 86_400;
    private static final double MEGA = 1e6;
    private static final String INTENSITY = "crack.intensity";

    private ServiceFigures() {
    }

    static List<Drawn> of(Report report) {
        List<Drawn> figures = new ArrayList<>();
        for (OwnTests tests : report.review().inService().tests()) {
            tests.calculation().flatMap(report.review()::calculation)
                    .ifPresent(calculation -> figures.add(new Drawn(tests(report, tests, calculation), Section.SERVICE,
                            calculation.feature(), Optional.of(calculation.id()))));
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
        List<StressAgainstTime.Specimen> specimens = tests.points().stream().map(one -> new StressAgainstTime.Specimen(
                one.days(), numbers.ofMegapascals(one.stress()), one.cracked())).toList();
        List<Point> curve = new ArrayList<>();
        calculation.computed().profiles().stream().filter(one -> one.xUnit() == SiUnit.SECOND).findFirst().ifPresent(profile -> {
            for (int i = 0; i < profile.x().size(); i++) {
                curve.add(new Point(profile.x().get(i) / DAY, numbers.stress(profile.y().get(i))));
            }
        });
        return new StressAgainstTime(tests.identified() ? report.words(ServiceWords.FIGURE_TESTS_IDENTIFIED, place, low, high)
                : report.words(ServiceWords.FIGURE_TESTS_OPEN, place),
                report.words(ServiceWords.FIGURE_TESTS_ALTERNATIVE, tests.scope(), count(tests, true), count(tests, false),
                        numbers.rounded(threshold.value(), SiUnit.PASCAL), low, high),
                report.words(ServiceWords.FIGURE_TESTS_NOTE, calculation.id()), numbers.stressUnit(), specimens, curve,
                numbers.stress(threshold.value()), numbers.stress(threshold.low()), numbers.stress(threshold.high()));
    }

    private static String count(OwnTests tests, boolean cracked) {
        return Long.toString(tests.points().stream().filter(one -> one.cracked() == cracked).count());
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
        String feature = calculation.feature().orElseGet(() -> report.words(Label.WHOLE_PART));
        Optional<Calculation> critical = report.review().computations().stream()
                .filter(one -> one.feature().equals(calculation.feature())
                        && one.computed().id().equals("crack.critical-depth")).findFirst();
        Optional<Double> toughness = critical.map(one -> input(one.computed(), "K_Ic").low() / MEGA);
        Optional<Double> last = critical.map(one -> numbers.length(one.computed().value().low()));
        return new IntensityOverDepth(report.words(title(report, calculation), feature),
                report.words(ServiceWords.FIGURE_GROWTH_ALTERNATIVE, feature,
                        numbers.rounded(computed.value().high(), SiUnit.PASCAL_SQRT_METRE),
                        numbers.rounded(found, SiUnit.METRE), numbers.rounded(threshold.low(), SiUnit.PASCAL_SQRT_METRE),
                        numbers.rounded(threshold.high(), SiUnit.PASCAL_SQRT_METRE)),
                report.words(ServiceWords.FIGURE_GROWTH_NOTE, calculation.id()), numbers.lengthUnit(), curve,
                threshold.low() / MEGA, threshold.high() / MEGA, toughness, numbers.length(found), last);
    }

    /** As the schedule of the place has it: the curve alone does not tell what K_ISCC may be credited with. */
    private static ServiceWords title(Report report, Calculation calculation) {
        return report.review().inService().schedules().stream()
                .filter(one -> one.calculations().contains(calculation.id())).findFirst().map(one -> switch (one.outcome()) {
                    case NOT_INSPECTABLE -> ServiceWords.FIGURE_GROWTH_FAST;
                    case BY_GROWTH -> ServiceWords.FIGURE_GROWTH_SLOW;
                    case BY_CALENDAR -> ServiceWords.FIGURE_GROWTH_BELOW;
                }).orElse(ServiceWords.FIGURE_GROWTH_SLOW);
    }

    private static Band input(Computed computed, String symbol) {
        return computed.inputs().stream().filter(one -> one.symbol().equals(symbol)).map(Computed.Input::value).findFirst()
                .orElseThrow();
    }
}
