package org.shortgrain.rulebook.oracle;

import static org.shortgrain.rulebook.oracle.Reading.product;
import static org.shortgrain.rulebook.oracle.Reading.section;
import static org.shortgrain.rulebook.oracle.Reading.series;

import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.shortgrain.part.Done;
import org.shortgrain.part.Form;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Product;
import org.shortgrain.part.Range;
import org.shortgrain.part.RouteStep;

/** The card: each operation and what stands before and after it. */
final class RouteOracle {

    private RouteOracle() {
    }

    static void addTo(Oracle oracle) {
        oracle.whole("STRESS-05", part -> hardens(part) && length(part) > 0.3
                && some(part, (card, i) -> done(card.get(i), "finish_machine")
                && highest(card.get(i).removes().single()) < 0.001 && before(card, i, "quench")));
        oracle.whole("STRESS-10", part -> hardens(part) && some(part, step -> done(step, "quench")
                && (step.medium().isMissing() || step.temperature().isMissing() && !step.medium().is("moving air"))));
        oracle.whole("STRESS-11", part -> hardens(part) && section(part) > 50
                && product(part, Product.DIE_FORGING, Product.HAND_FORGING)
                && some(part, step -> done(step, "quench") && step.medium().is("water")
                        && highest(step.temperature().single()) < 50));
        oracle.whole("STRESS-12", part -> series(part, "2", "7")
                && some(part, step -> done(step, "quench") && step.medium().is("moving air")));
        oracle.whole("STRESS-13", part -> List.of("7075", "2024").contains(Reading.alloy(part)) && section(part) > 50
                && some(part, step -> done(step, "quench") && step.medium().is("water")
                        && highest(step.temperature().single()) > 90));
        oracle.whole("STRESS-14", part -> series(part, "2", "7")
                && some(part, step -> done(step, "quench") && highest(step.delay().single()) > 15));
        oracle.whole("STRESS-15", part -> hardens(part) && some(part, step -> done(step, "stress_relieve")));
        oracle.whole("STRESS-17", part -> hardens(part) && some(part, step -> done(step, "compress")
                && step.set().isKnown() && outside(step, 0.01, 0.05)));
        oracle.whole("STRESS-18", part -> hardens(part) && some(part, step -> done(step, "stretch")
                && step.set().isKnown() && outside(step, 0.01, 0.03)));
        oracle.whole("MATERIAL-15", part -> series(part, "7") && some(part, (card, i) -> heatsAgedMetal(card, i)));
        oracle.whole("FORMING-11", part -> some(part, (card, i) -> done(card.get(i), "straighten")
                && before(card, i, "shot_peen") && !after(card, i, "shot_peen")));
        oracle.whole("FORMING-12", part -> some(part, (card, i) -> done(card.get(i), "straighten")
                && before(card, i, "anodize", "plate") && !after(card, i, "anodize", "plate")));
        oracle.whole("ASSEMBLY-07", part -> some(part, (card, i) -> done(card.get(i), "anodize", "plate")
                && before(card, i, "install_bushing")));
        oracle.whole("SEALING-12", part -> part.routeComplete().is(true) && some(part, step -> is(step, "seal"))
                && !some(part, step -> Reading.says(step.remarks(), "squeeze")));
        oracle.whole("SEALING-14", part -> some(part, step -> is(step, "seal") && step.product().isMissing()
                && step.spec().isMissing()));
        oracle.whole("EXPOSURE-22", part -> some(part, step -> is(step, "leak_test") && step.medium().is("tap water")));
        oracle.whole("SEALING-11", part -> some(part, (card, i) -> i > 0 && is(card.get(i - 1), "seal")
                && is(card.get(i), "leak_test") && highest(card.get(i).delay().single()) < 7 * 24 * 3600));
    }

    /** Aluminium that is hardened by solution treatment and quench. */
    private static boolean hardens(PartDescription part) {
        return series(part, "2", "6", "7");
    }

    private static List<RouteStep> card(PartDescription part) {
        return part.route().single().orElse(List.of());
    }

    private static boolean some(PartDescription part, Predicate<RouteStep> step) {
        return card(part).stream().anyMatch(step);
    }

    private static boolean some(PartDescription part, BiPredicate<List<RouteStep>, Integer> step) {
        List<RouteStep> card = card(part);
        return IntStream.range(0, card.size()).anyMatch(i -> step.test(card, i));
    }

    private static boolean is(RouteStep step, String... operations) {
        return List.of(operations).contains(step.operation().single().orElse(""));
    }

    private static boolean done(RouteStep step, String... operations) {
        return is(step, operations) && !step.done().is(Done.NO);
    }

    /** Baked or relieved above 121 degC, and not solution treated again. */
    private static boolean heatsAgedMetal(List<RouteStep> card, int i) {
        return done(card.get(i), "bake", "stress_relieve") && highest(card.get(i).temperature().single()) > 121
                && !after(card, i, "solution_heat_treat");
    }

    private static boolean before(List<RouteStep> card, int i, String... operations) {
        return card.subList(0, i).stream().anyMatch(step -> done(step, operations) && sharePlace(step, card.get(i)));
    }

    private static boolean after(List<RouteStep> card, int i, String... operations) {
        return card.subList(i + 1, card.size()).stream()
                .anyMatch(step -> done(step, operations) && sharePlace(step, card.get(i)));
    }

    /** A step that names no feature is done all over. */
    private static boolean sharePlace(RouteStep one, RouteStep other) {
        return one.at().single().isEmpty() || other.at().single().isEmpty()
                || one.at().single().get().stream().anyMatch(other.at().single().get()::contains);
    }

    private static boolean outside(RouteStep step, double least, double most) {
        Range set = step.set().single().orElseThrow();
        return set.lowest() < least || set.highest() > most;
    }

    private static double highest(java.util.Optional<Range> range) {
        return range.map(Range::highest).orElse(Double.NaN);
    }

    private static double length(PartDescription part) {
        return part.form().field(Form::length).single().map(Range::highest).orElse(Double.NaN);
    }
}
