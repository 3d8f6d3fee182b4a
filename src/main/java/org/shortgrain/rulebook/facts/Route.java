package org.shortgrain.rulebook.facts;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

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
        return done().filter(step -> step.is(operations)).toList();
    }

    /**
     * {@return the operations of a kind that count as done, in order}
     *
     * @param kind the kind
     */
    public List<Step> ofKind(String kind) {
        return done().filter(step -> step.isKind(kind)).toList();
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
        return all(operations).stream().anyMatch(step -> step.isAt(feature));
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
        return all(operations).stream().findFirst();
    }

    /**
     * {@return the last of some operations}
     *
     * @param operations canonical words
     */
    public Optional<Step> last(String... operations) {
        List<Step> found = all(operations);
        return found.isEmpty() ? Optional.empty() : Optional.of(found.get(found.size() - 1));
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
        return after(step).anyMatch(later -> later.isAny(operations));
    }

    /**
     * {@return whether some operation is done before a step at a place that both share}
     *
     * @param step       the step
     * @param operations canonical words, or kinds written {@code kind:name}
     */
    public boolean hasBefore(Step step, String... operations) {
        return before(step).anyMatch(earlier -> earlier.isAny(operations));
    }

    /**
     * {@return the last operation of some that is done before a step at a place that both share}
     *
     * @param step       the step
     * @param operations canonical words, or kinds written {@code kind:name}
     */
    public Optional<Step> lastBefore(Step step, String... operations) {
        return before(step).filter(earlier -> earlier.isAny(operations)).reduce((one, next) -> next);
    }

    /**
     * {@return the steps that break a pair of the order of operations: the earlier operation is done after the later one
     * at a place that both share, and the later one is not done again}
     *
     * @param pair the pair
     */
    public List<Step> breaking(OrderPair pair) {
        return done().filter(pair::isFirst)
                .filter(step -> before(step).anyMatch(pair::isSecond) && after(step).noneMatch(pair::isSecond))
                .toList();
    }

    /**
     * {@return the first operation before a step that the step belongs before, and that none of its like precedes}
     *
     * @param late the step
     * @param pair the order in which they belong
     */
    public Optional<Step> unprepared(Step late, OrderPair pair) {
        return pair.isFirst(late) && late.isDone() ? before(late).filter(pair::isSecond)
                .filter(second -> before(second).noneMatch(pair::isFirst)).findFirst() : Optional.empty();
    }

    /** {@return the card as that of a steel part} */
    public SteelCard steel() {
        return new SteelCard(this);
    }

    /** {@return the card as that of an aluminium part} */
    public AgeingCard ageing() {
        return new AgeingCard(this);
    }

    Stream<Step> after(Step step) {
        return done().filter(later -> later.position() > step.position() && later.sharesPlaceWith(step));
    }

    Stream<Step> before(Step step) {
        return done().filter(earlier -> earlier.position() < step.position() && earlier.sharesPlaceWith(step));
    }

    /** {@return the last solution treatment, hardening or quench: what sets the quench stress} */
    public Optional<Step> lastQuench() {
        return last("quench").or(() -> last("solution_heat_treat", "harden", "heat_treat"));
    }

    /**
     * {@return whether a crack inspection is done before a step, in the same overhaul or repair}
     *
     * @param step the step
     */
    public boolean isInspectedInRework(Step step) {
        return before(step).anyMatch(earlier -> earlier.isRework() && earlier.isKind("surface_ndt"));
    }

    /**
     * {@return whether an operation is the last of several that come before a step at a place that both share}
     *
     * @param step   the step
     * @param first  the operation asked for: a canonical word, or a kind written {@code kind:name}
     * @param others the others
     */
    public boolean isLastBefore(Step step, String first, String... others) {
        return before(step).filter(one -> one.isAny(first) || one.isAny(others)).reduce((one, next) -> next)
                .filter(last -> last.isAny(first) && !last.isAny(others)).isPresent();
    }

    /**
     * {@return whether something that names a halogen is used before a step and no clean without one comes between}
     *
     * @param step the step
     */
    public boolean isTaintedBefore(Step step) {
        return before(step).filter(earlier -> earlier.is("clean") || earlier.mentions(HALOGENS))
                .reduce((one, next) -> next).filter(last -> last.mentions(HALOGENS)).isPresent();
    }

    /**
     * {@return the steps that cut metal at a feature after the last quench}
     *
     * @param feature id of the feature
     */
    public List<Step> cutAfterQuench(String feature) {
        int quench = lastQuench().map(Step::position).orElse(-1);
        return ofKind("machining").stream().filter(step -> step.position() > quench && step.isAt(feature)).toList();
    }

    private Stream<Step> done() {
        return steps.stream().filter(Step::isDone);
    }
}
