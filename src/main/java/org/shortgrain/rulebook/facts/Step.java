package org.shortgrain.rulebook.facts;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.part.Done;
import org.shortgrain.part.Location;
import org.shortgrain.part.Phase;
import org.shortgrain.part.RouteStep;

/**
 * One operation of the card as understood.
 *
 * @param position  place in the order of the card, from 0
 * @param stated    what the description says
 * @param operation canonical word of the operation; empty if the word is not known
 * @param kinds     kinds it belongs to, such as {@code heat_treat}, {@code cutting}, {@code hydrogen}, {@code finish}
 */
public record Step(int position, RouteStep stated, Optional<String> operation, Set<String> kinds) {

    /** Copies the set. */
    public Step {
        kinds = Set.copyOf(kinds);
    }

    /**
     * {@return whether it is one of some operations}
     *
     * @param operations canonical words
     */
    public boolean is(String... operations) {
        return operation.isPresent() && List.of(operations).contains(operation.get());
    }

    /**
     * {@return whether it is of a kind}
     *
     * @param kind the kind
     */
    public boolean isKind(String kind) {
        return kinds.contains(kind);
    }

    /** {@return whether it counts as done: it is not stated to be left out or not on record} */
    public boolean isDone() {
        return !stated.done().isOneOf(Done.NO, Done.NOT_ON_RECORD);
    }

    /** {@return whether it belongs to an overhaul or a repair} */
    public boolean isRework() {
        return stated.phase().isOneOf(Phase.OVERHAUL, Phase.REPAIR);
    }

    /**
     * {@return whether it is done at a feature: it names the feature, or names none and so is done all over}
     *
     * @param feature id of the feature
     */
    public boolean isAt(String feature) {
        return stated.at().candidates().stream().findFirst().map(at -> at.contains(feature))
                .orElse(!stated.at().isNone());
    }

    /**
     * {@return whether it shares a place with another operation}
     *
     * @param other the other operation
     */
    public boolean sharesPlaceWith(Step other) {
        List<String> here = features();
        List<String> there = other.features();
        return here.isEmpty() || there.isEmpty() || here.stream().anyMatch(there::contains);
    }

    /** {@return the features it names; empty if it is done all over} */
    public List<String> features() {
        return stated.at().candidates().stream().findFirst().orElse(List.of());
    }

    /** {@return the operation as a reader finds it on the card} */
    public String label() {
        String word = stated.operation().single().orElse("operation not stated").replace('_', ' ');
        return stated.op().single().map(op -> "op " + op + " (" + word + ")").orElse(word);
    }

    /** {@return where it stands in the description} */
    public Location at() {
        return stated.origin().at();
    }

    /**
     * {@return a text that its specification, kind, product, method or medium contains, without regard to case}
     *
     * @param texts what to look for
     */
    public boolean mentions(String... texts) {
        String all = String.join(" ", words()).toLowerCase(java.util.Locale.ROOT);
        for (String text : texts) {
            if (all.contains(text.toLowerCase(java.util.Locale.ROOT))) {
                return true;
            }
        }
        return false;
    }

    private List<String> words() {
        return List.of(stated.spec(), stated.kind(), stated.product(), stated.method(), stated.medium(),
                stated.filler(), stated.remarks()).stream().flatMap(one -> one.candidates().stream()).toList();
    }
}
