package org.shortgrain.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * What the description says of one thing: a value, none, unknown, or nothing at all.
 *
 * <p>The four states are kept apart to the end: <em>none</em> is evidence that someone answers for, <em>unknown</em>
 * and <em>absent</em> lead to a question and never to a favourable default. Where a list stands in place of one value it
 * means "one of these", and every test below says whether it asks for certainty ({@code is}) or for the possibility
 * ({@code mayBe}).
 *
 * @param <T> type of the value
 */
public sealed interface Stated<T> {

    /** {@return the place in the description; for an absent key, the place where it is missed} */
    Location at();

    /**
     * A value, or several of which one holds.
     *
     * @param <T>          type of the value
     * @param alternatives the value, or the values of which one holds; at least one
     * @param provenance   who says so
     */
    record Known<T>(List<T> alternatives, Provenance provenance) implements Stated<T> {
        /** Copies the list and refuses an empty one. */
        public Known {
            alternatives = List.copyOf(alternatives);
            if (alternatives.isEmpty()) {
                throw new IllegalArgumentException("no value");
            }
        }

        @Override
        public Location at() {
            return provenance.at();
        }
    }

    /**
     * Looked, and there is none; someone answers for it.
     *
     * @param <T>        type the value would have
     * @param provenance who says so
     */
    record None<T>(Provenance provenance) implements Stated<T> {
        @Override
        public Location at() {
            return provenance.at();
        }
    }

    /**
     * Looked, and it is not stated anywhere.
     *
     * @param <T> type the value would have
     * @param at  place of the word
     */
    record Unknown<T>(Location at) implements Stated<T> {
    }

    /**
     * Not looked at: the key is not in the description.
     *
     * @param <T> type the value would have
     * @param at  where the key is missed
     */
    record Absent<T>(Location at) implements Stated<T> {
    }

    /** {@return whether a value stands} */
    default boolean isKnown() {
        return this instanceof Known;
    }

    /** {@return whether someone states that there is none} */
    default boolean isNone() {
        return this instanceof None;
    }

    /** {@return whether neither a value nor none is stated: unknown or absent} */
    default boolean isMissing() {
        return this instanceof Unknown || this instanceof Absent;
    }

    /** {@return the values of which one holds; empty if there is none or it is missing} */
    default List<T> candidates() {
        return this instanceof Known<T> known ? known.alternatives() : List.of();
    }

    /** {@return the value, if exactly one stands} */
    default Optional<T> single() {
        return candidates().size() == 1 ? Optional.of(candidates().get(0)) : Optional.empty();
    }

    /**
     * {@return whether this certainly is the value}
     *
     * @param value the value asked for
     */
    default boolean is(T value) {
        for (T one : candidates()) {
            if (!value.equals(one)) {
                return false;
            }
        }
        return isKnown();
    }

    /**
     * {@return whether this certainly is one of the values}
     *
     * @param values the values asked for
     */
    @SuppressWarnings("unchecked")
    default boolean isOneOf(T... values) {
        return isKnown() && List.of(values).containsAll(candidates());
    }

    /**
     * {@return whether this can be the value: it is among the alternatives, or nothing is stated}
     *
     * @param value the value asked for
     */
    default boolean mayBe(T value) {
        return isMissing() || candidates().contains(value);
    }

    /**
     * {@return whether a value stands and every alternative passes the test}
     *
     * @param test the test
     */
    default boolean surely(Predicate<? super T> test) {
        for (T one : candidates()) {
            if (!test.test(one)) {
                return false;
            }
        }
        return isKnown();
    }

    /**
     * {@return whether some alternative passes the test}
     *
     * @param test the test
     */
    default boolean any(Predicate<? super T> test) {
        for (T one : candidates()) {
            if (test.test(one)) {
                return true;
            }
        }
        return false;
    }

    /**
     * {@return the items of a list, or of each list of which one holds; empty if there is none or it is missing}
     *
     * @param <E>  type of the items
     * @param list the list as stated
     */
    static <E> List<E> items(Stated<List<E>> list) {
        List<E> items = new ArrayList<>();
        for (List<E> one : list.candidates()) {
            items.addAll(one);
        }
        return items;
    }

    /**
     * {@return this, or what is stated elsewhere where this is not looked at}
     *
     * @param other what is stated elsewhere
     */
    default Stated<T> orIfAbsent(Stated<T> other) {
        return this instanceof Absent ? other : this;
    }

    /**
     * {@return the same state with each value turned into another}
     *
     * @param <R>  type of the new value
     * @param turn what turns a value
     */
    default <R> Stated<R> map(Function<? super T, ? extends R> turn) {
        if (this instanceof Known<T> known) {
            List<R> turned = known.alternatives().stream().<R>map(turn).toList();
            return new Known<>(turned, known.provenance());
        }
        return carried();
    }

    /**
     * {@return a field of a group: what the group's state says where the group itself does not stand}
     *
     * @param <R>   type of the field
     * @param field the field
     */
    default <R> Stated<R> field(Function<? super T, Stated<R>> field) {
        if (this instanceof Known<T> known && known.alternatives().size() == 1) {
            return field.apply(known.alternatives().get(0));
        }
        if (this instanceof Known<T> known) {
            List<Stated<R>> each = known.alternatives().stream().map(field).toList();
            List<R> values = each.stream().flatMap(one -> one.candidates().stream()).distinct().toList();
            boolean sure = each.stream().allMatch(Stated::isKnown);
            return sure ? new Known<>(values, known.provenance()) : new Unknown<>(known.at());
        }
        return carried();
    }

    private <R> Stated<R> carried() {
        if (this instanceof None<T> none) {
            return new None<>(none.provenance());
        }
        return this instanceof Unknown<T> unknown ? new Unknown<>(unknown.at()) : new Absent<>(at());
    }
}
