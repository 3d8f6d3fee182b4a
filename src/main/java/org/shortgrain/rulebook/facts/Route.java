package org.shortgrain.rulebook.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The card as understood: the operations that count as done, in order.
 *
 * @param steps    all operations of the card, in its order
 * @param stated   whether a card is stated at all
 * @param complete whether the card is stated to be complete
 */
public record Route(List<Step> steps, boolean stated, boolean complete) {

    /** Words of solvents, inks and fluids that leave halogens behind. */
    private static final String[] HALOGENS = {"trichlor", "perchlor", "chlorinated", "chlorothene", "halogenated",
        "fluorinated", "methylene chloride"};

    /** Copies the list. */
    public Route {
        steps = List.copyOf(steps);
    }

    /**
     * {@return the operations of some words that count as done, in order}
     *
     * @param operations canonical words
     */
    public List<Step> all(String... operations) {
        List<Step> found = new ArrayList<>();
        for (Step step : done()) {
            if (step.is(operations)) {
                found.add(step);
            }
        }
        return found;
    }

    /**
     * {@return the operations of a kind that count as done, in order}
     *
     * @param kind the kind
     */
    public List<Step> ofKind(String kind) {
        List<Step> found = new ArrayList<>();
        for (Step step : done()) {
            if (step.isKind(kind)) {
                found.add(step);
            }
        }
        return found;
    }

    /**
     * {@return whether one of some operations is on the card and counts as done}
     *
     * @param operations canonical words
     */
    public boolean has(String... operations) {
        return !all(operations).isEmpty();
    }

    /**
     * {@return whether one of some operations is done at a feature}
     *
     * @param feature    id of the feature
     * @param operations canonical words
     */
    public boolean hasAt(String feature, String... operations) {
        for (Step step : all(operations)) {
            if (step.isAt(feature)) {
                return true;
            }
        }
        return false;
    }

    /**
     * {@return whether the card is stated and none of some operations is on it}
     *
     * <p>Not the same as "not done": a card that is not stated to be complete may leave it out.
     *
     * @param operations canonical words
     */
    public boolean lacks(String... operations) {
        return stated && !has(operations);
    }

    /**
     * {@return the first of some operations}
     *
     * @param operations canonical words
     */
    public Optional<Step> first(String... operations) {
        List<Step> found = all(operations);
        return found.isEmpty() ? Optional.empty() : Optional.of(found.get(0));
    }

    /**
     * {@return the last of some operations}
     *
     * @param operations canonical words
     */
    public Optional<Step> last(String... operations) {
        return last(all(operations));
    }

    private static Optional<Step> last(List<Step> steps) {
        return steps.isEmpty() ? Optional.empty() : Optional.of(steps.get(steps.size() - 1));
    }

    /**
     * {@return whether the last sealant or inhibitor of the card goes on at a place, and no later inspection names a drain}
     *
     * @param feature the place
     */
    public boolean sealsOverDrain(String feature) {
        Optional<Step> last = last("seal", "cpc").filter(step -> step.isAt(feature));
        return last.isPresent() && ofKind("inspection").stream()
                .noneMatch(step -> step.position() > last.get().position() && step.mentions("drain"));
    }

    /**
     * {@return whether some operation is done after a step at a place that both share}
     *
     * @param step       the step
     * @param operations canonical words, or kinds written {@code kind:name}
     */
    public boolean hasAfter(Step step, String... operations) {
        return !those(after(step), operations).isEmpty();
    }

    /**
     * {@return whether some operation is done before a step at a place that both share}
     *
     * @param step       the step
     * @param operations canonical words, or kinds written {@code kind:name}
     */
    public boolean hasBefore(Step step, String... operations) {
        return !those(before(step), operations).isEmpty();
    }

    /**
     * {@return the last operation of some that is done before a step at a place that both share}
     *
     * @param step       the step
     * @param operations canonical words, or kinds written {@code kind:name}
     */
    public Optional<Step> lastBefore(Step step, String... operations) {
        return last(those(before(step), operations));
    }

    private static List<Step> those(List<Step> steps, String... operations) {
        List<Step> those = new ArrayList<>();
        for (Step step : steps) {
            if (step.isAny(operations)) {
                those.add(step);
            }
        }
        return those;
    }

    /**
     * {@return the steps that break a pair of the order of operations: the earlier operation is done after the later one
     * at a place that both share, and the later one is not done again}
     *
     * @param pair the pair
     */
    public List<Step> breaking(OrderPair pair) {
        List<Step> breaking = new ArrayList<>();
        for (Step step : done()) {
            if (pair.isFirst(step) && second(pair, before(step)).isPresent() && second(pair, after(step)).isEmpty()) {
                breaking.add(step);
            }
        }
        return breaking;
    }

    private static Optional<Step> second(OrderPair pair, List<Step> steps) {
        for (Step step : steps) {
            if (pair.isSecond(step)) {
                return Optional.of(step);
            }
        }
        return Optional.empty();
    }

    /**
     * {@return the first operation before a step that the step belongs before, and that none of its like precedes}
     *
     * @param late the step
     * @param pair the order in which they belong
     */
    public Optional<Step> unprepared(Step late, OrderPair pair) {
        if (pair.isFirst(late) && late.isDone()) {
            for (Step step : before(late)) {
                if (pair.isSecond(step) && before(step).stream().noneMatch(pair::isFirst)) {
                    return Optional.of(step);
                }
            }
        }
        return Optional.empty();
    }

    /** {@return the card as that of a steel part} */
    public SteelCard steel() {
        return new SteelCard(this);
    }

    /** {@return the card as that of an aluminium part} */
    public AgeingCard ageing() {
        return new AgeingCard(this);
    }

    /** {@return what is done after a step at a place that both share} */
    List<Step> after(Step step) {
        List<Step> after = new ArrayList<>();
        for (Step later : done()) {
            if (later.position() > step.position() && later.sharesPlaceWith(step)) {
                after.add(later);
            }
        }
        return after;
    }

    /** {@return what is done before a step at a place that both share} */
    List<Step> before(Step step) {
        List<Step> before = new ArrayList<>();
        for (Step earlier : done()) {
            if (earlier.position() < step.position() && earlier.sharesPlaceWith(step)) {
                before.add(earlier);
            }
        }
        return before;
    }

    /** {@return the last solution treatment, hardening or quench: what sets the quench stress} */
    public Optional<Step> lastQuench() {
        Optional<Step> quench = last("quench");
        return quench.isPresent() ? quench : last("solution_heat_treat", "harden", "heat_treat");
    }

    /**
     * {@return whether a crack inspection is done before a step, in the same overhaul or repair}
     *
     * @param step the step
     */
    public boolean isInspectedInRework(Step step) {
        return before(step).stream().anyMatch(earlier -> earlier.isRework() && earlier.isKind("surface_ndt"));
    }

    /**
     * {@return whether an operation is the last of several that come before a step at a place that both share}
     *
     * @param step   the step
     * @param first  the operation asked for: a canonical word, or a kind written {@code kind:name}
     * @param others the others
     */
    public boolean isLastBefore(Step step, String first, String... others) {
        Optional<Step> last = Optional.empty();
        for (Step one : before(step)) {
            last = one.isAny(first) || one.isAny(others) ? Optional.of(one) : last;
        }
        return last.isPresent() && last.get().isAny(first) && !last.get().isAny(others);
    }

    /**
     * {@return whether something that names a halogen is used before a step and no clean without one comes between}
     *
     * @param step the step
     */
    public boolean isTaintedBefore(Step step) {
        return before(step).stream().filter(earlier -> earlier.is("clean") || earlier.mentions(HALOGENS))
                .reduce((one, next) -> next).filter(last -> last.mentions(HALOGENS)).isPresent();
    }

    /**
     * {@return the steps that cut metal at a feature after the last quench}
     *
     * @param feature id of the feature
     */
    public List<Step> cutAfterQuench(String feature) {
        int quench = lastQuench().map(Step::position).orElse(-1);
        List<Step> cuts = new ArrayList<>();
        for (Step step : ofKind("machining")) {
            if (step.position() > quench && step.isAt(feature)) {
                cuts.add(step);
            }
        }
        return cuts;
    }

    private List<Step> done() {
        List<Step> done = new ArrayList<>();
        for (Step step : steps) {
            if (step.isDone()) {
                done.add(step);
            }
        }
        return done;
    }
}
