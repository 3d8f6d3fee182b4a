package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.RouteStep;
import org.shortgrain.part.Stated;
import org.shortgrain.part.reader.Nearest;
import org.shortgrain.reference.OperationTable;
import org.shortgrain.review.Factor;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Question;
import org.shortgrain.review.RouteLine;
import org.shortgrain.rulebook.facts.Route;
import org.shortgrain.rulebook.facts.Step;

/** Reads the card: each operation under the word of the operation list, in the order of the card. */
final class RouteReading {

    private final OperationTable operations;

    RouteReading(OperationTable operations) {
        this.operations = operations;
    }

    /**
     * {@return the card as understood; operations that the list does not know are asked}
     *
     * @param description the part
     * @param ledger      where questions go
     */
    Route read(PartDescription description, Ledger ledger) {
        List<Step> steps = new ArrayList<>();
        for (RouteStep row : Stated.items(description.route())) {
            Optional<OperationTable.Operation> known = row.operation().single().flatMap(operations::find);
            Step step = new Step(steps.size(), row, known.map(OperationTable.Operation::word),
                    known.map(OperationTable.Operation::kinds).orElse(Set.of()));
            if (known.isEmpty()) {
                ledger.ask(unknown(step));
            }
            steps.add(step);
        }
        return new Route(steps, description.route().isKnown(), description.routeComplete().is(true));
    }

    private Ledger.Asked unknown(Step step) {
        String near = step.stated().operation().single().flatMap(word -> Nearest.to(word, operations.spellings()))
                .map(word -> " The nearest operation of the list is " + word.replace('_', ' ') + ".").orElse("");
        return new Ledger.Asked(Optional.empty(), Question.Role.JUDGING, Factor.STRESS, Optional.empty(),
                "What is done in " + step.label() + "?" + near,
                "the operation is not in the list of operations, so its effect on stress and surface is not known",
                Optional.of("the operation is left out of the order of the card"), step.at());
    }

    /**
     * {@return the card for the report}
     *
     * @param route    the card as understood
     * @param findings what was found; those on the order are named at their operations
     * @param proposal how the order might be put right
     */
    static List<RouteLine> lines(Route route, List<Finding> findings, RouteProposal proposal) {
        List<Integer> places = proposal.places(route);
        return route.steps().stream().map(step -> new RouteLine(
                step.stated().op().single().orElse(""), step.stated().operation().single().orElse("not stated"),
                step.operation().orElse(""), step.features(), effect(step), breaches(step, findings),
                places.get(step.position()))).toList();
    }

    private static List<String> breaches(Step step, List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.at().stream().anyMatch(at -> at.path().equals(step.at().path())))
                .map(Finding::id).toList();
    }

    private static String effect(Step step) {
        List<String> effects = new ArrayList<>();
        if (!step.isDone()) {
            effects.add("not done or not on record");
        }
        say(step, effects, "relieves_stress", "relieves stress");
        say(step, effects, "leaves_tension", "leaves or opens tension");
        say(step, effects, "leaves_compression", "leaves compression");
        say(step, effects, "hydrogen_charging", "charges steel with hydrogen");
        say(step, effects, "finish", "protects the surface");
        say(step, effects, "evidence", "gives evidence");
        return String.join("; ", effects);
    }

    private static void say(Step step, List<String> effects, String kind, String words) {
        if (step.isKind(kind)) {
            effects.add(words);
        }
    }
}
