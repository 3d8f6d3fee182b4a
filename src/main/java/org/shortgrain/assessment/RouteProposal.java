package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shortgrain.reference.RouteOrder;
import org.shortgrain.rulebook.facts.Metal;
import org.shortgrain.rulebook.facts.OrderPair;
import org.shortgrain.rulebook.facts.Route;
import org.shortgrain.rulebook.facts.Step;

/**
 * An order of the card's own operations in which none is done before what must precede it by the table of orders, for the
 * owner of the card to look at. Nothing is added or left out: an operation that is missing is the matter of findings.
 *
 * <p>An operation that stands after one that it belongs before moves to just before that one, unless another of its like
 * precedes it already; the others keep their order. Only pairs that depend on nothing but the order count. Where the pairs contradict one another for a card, the card's
 * own order is kept.
 */
final class RouteProposal {

    private final List<OrderPair> pairs;

    /**
     * Proposals for a material.
     *
     * @param order the table of orders
     * @param metal the material
     */
    RouteProposal(RouteOrder order, Metal metal) {
        this.pairs = order.before().stream().map(OrderPair::new).filter(pair -> pair.isPlain() && pair.isFor(metal))
                .toList();
    }

    /** {@return for each operation of a card, its place in the proposed order, from 0} */
    List<Integer> places(Route route) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < route.steps().size(); i++) {
            order.add(i);
        }
        List<Integer> proposed = settled(route, new ArrayList<>(order));
        return order.stream().map(proposed::indexOf).toList();
    }

    /** Each move cures one operation; a card of n operations that is not settled after n squared moves never will be. */
    private List<Integer> settled(Route card, List<Integer> order) {
        List<Integer> asIs = List.copyOf(order);
        for (int move = 0; move < order.size() * order.size(); move++) {
            if (!moveOne(inOrder(card, order), order)) {
                return order;
            }
        }
        return asIs;
    }

    private boolean moveOne(Route route, List<Integer> order) {
        for (OrderPair pair : pairs) {
            for (Step late : route.steps()) {
                Optional<Step> unprepared = route.unprepared(late, pair);
                if (unprepared.isPresent()) {
                    order.add(unprepared.get().position(), order.remove(late.position()));
                    return true;
                }
            }
        }
        return false;
    }

    private static Route inOrder(Route card, List<Integer> order) {
        List<Step> steps = new ArrayList<>();
        for (int original : order) {
            Step step = card.steps().get(original);
            steps.add(new Step(steps.size(), step.stated(), step.operation(), step.kinds()));
        }
        return new Route(steps, card.stated(), card.complete());
    }
}
