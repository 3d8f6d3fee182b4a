package org.shortgrain.remedy;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.shortgrain.part.reader.DescriptionValue;
import org.shortgrain.part.reader.JsonPatch;
import org.shortgrain.review.RouteLine;

/** Another order of the operations on the planning card. */
final class RouteChanges {

    private RouteChanges() {
    }

    static Proposals of(Subject subject) {
        return Proposals.all(List.of(RoughFirst.of(subject), Proposals.of(cardOrder(subject).stream().toList())));
    }

    /** The operations in the order that the rules of order ask for; empty where they stand so. */
    private static Optional<Candidate> cardOrder(Subject subject) {
        List<RouteLine> lines = subject.trial().review().route();
        if (IntStream.range(0, lines.size()).allMatch(i -> lines.get(i).proposed() == i)) {
            return Optional.empty();
        }
        List<Integer> order = IntStream.range(0, lines.size()).boxed()
                .sorted(Comparator.comparingInt(i -> lines.get(i).proposed())).toList();
        String words = String.join(", ", order.stream().map(i -> lines.get(i).op() + " " + lines.get(i).operation()).toList());
        return Optional.of(new Candidate(subject.kind("card_order"), "the card in the order " + words, Optional.empty(),
                Optional.empty(), List.of(), now -> now.at("/route").filter(route -> route.items().size() == lines.size())
                        .map(route -> new Edits(now).set("/route", DescriptionValue.of("[" + String.join(", ",
                                order.stream().map(i -> route.items().get(i).json()).toList()) + "]")).patch())
                        .orElse(JsonPatch.NOTHING)));
    }
}
