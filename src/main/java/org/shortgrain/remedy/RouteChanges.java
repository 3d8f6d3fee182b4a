package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Range;
import org.shortgrain.part.RouteStep;
import org.shortgrain.part.reader.DescriptionValue;
import org.shortgrain.part.reader.JsonPatch;
import org.shortgrain.review.RouteLine;

/** Another order of the operations on the planning card. */
final class RouteChanges {

    private static final String FROM_QUENCH = "2 mm";
    private static final Set<String> CUTS = Set.of("finish_machine", "rough_machine", "machine");
    private static final double MILLI = 1e-3;

    private final Subject subject;
    private final List<Candidate> found = new ArrayList<>();

    private RouteChanges(Subject subject) {
        this.subject = subject;
    }

    static Proposals of(Subject subject) {
        RouteChanges changes = new RouteChanges(subject);
        changes.roughFirst();
        changes.cardOrder();
        return Proposals.of(changes.found);
    }

    /** The first rough cut after the quench goes before the solution treatment; a skin is left to finish afterwards. */
    private void roughFirst() {
        List<RouteStep> route = subject.route();
        int heat = first(route, "solution_heat_treat", "harden", "quench");
        int quench = first(route, "quench");
        int age = first(route, "age", "temper");
        List<Integer> after = IntStream.range(Math.max(quench, 0), route.size())
                .filter(i -> CUTS.contains(route.get(i).operation().single().orElse(""))).boxed().toList();
        if (heat < 0 || quench < 0 || after.isEmpty()) {
            return;
        }
        int cut = after.get(0);
        List<Feature> features = subject.features();
        List<String> notes = new ArrayList<>();
        notes.add("An allowance of " + FROM_QUENCH + " a side is left for after the heat treatment, less than a fifth of the"
                + " rough section, so that the finished face stays in the compressed skin (residual.allowance < 0.2).");
        notes.add("The rough part may bow in the quench: straighten before ageing, or leave stock; the bow of the section"
                + " is in the calculations of the new review.");
        notes.add("Proposed card: rough machining moves from operation " + route.get(cut).op().single().orElse("" + (cut + 1))
                + " to before " + route.get(heat).op().single().orElse("" + (heat + 1)) + "; finish machining with "
                + FROM_QUENCH + " follows " + (age < 0 ? "the quench" : "ageing") + ".");
        found.add(new Candidate(subject.kind("rough_first"), "rough machine before the heat treatment, finish "
                + FROM_QUENCH + " afterwards", Optional.empty(), Optional.empty(), notes, now -> {
                    Edits edits = new Edits(now);
                    edits.add("/route/" + heat, DescriptionValue.of("{op: \"" + route.get(heat).op().single().orElse("0")
                            + "A\", do: rough_machine, removes: \"" + removed(route.get(cut)) + "\"}"));
                    for (int at : after) {
                        edits.set("/route/" + (at + 1) + "/removes", FROM_QUENCH);
                    }
                    for (int i = 0; i < features.size(); i++) {
                        edits.set("/features/" + i + "/as_quenched_depth", FROM_QUENCH);
                        int place = i;
                        features.get(i).sectionFinished().single().ifPresent(range -> edits.set("/features/" + place
                                + "/section_as_quenched", String.format(Locale.ROOT, "%.3f mm",
                                        (range.highest() + 2 * 2 * MILLI) / MILLI)));
                    }
                    return edits.patch();
                }));
    }

    private static String removed(RouteStep cut) {
        return cut.removes().single().map(Range::entered).orElse("unknown");
    }

    private static int first(List<RouteStep> route, String... operations) {
        for (int i = 0; i < route.size(); i++) {
            if (Set.of(operations).contains(route.get(i).operation().single().orElse(""))) {
                return i;
            }
        }
        return -1;
    }

    private void cardOrder() {
        List<RouteLine> lines = subject.trial().review().route();
        if (IntStream.range(0, lines.size()).allMatch(i -> lines.get(i).proposed() == i)) {
            return;
        }
        List<Integer> order = IntStream.range(0, lines.size()).boxed()
                .sorted(Comparator.comparingInt(i -> lines.get(i).proposed())).toList();
        String words = String.join(", ", order.stream().map(i -> lines.get(i).op() + " " + lines.get(i).operation()).toList());
        found.add(new Candidate(subject.kind("card_order"), "the card in the order " + words, Optional.empty(),
                Optional.empty(), List.of(), now -> now.at("/route").filter(route -> route.items().size() == lines.size())
                        .map(route -> new Edits(now).set("/route", DescriptionValue.of("[" + String.join(", ",
                                order.stream().map(i -> route.items().get(i).json()).toList()) + "]")).patch())
                        .orElse(JsonPatch.NOTHING)));
    }
}
