package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Form;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Range;
import org.shortgrain.part.ResidualStress;
import org.shortgrain.part.RouteStep;
import org.shortgrain.part.Stated;
import org.shortgrain.part.reader.DescriptionValue;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.JsonPatch;

/**
 * Rough machining moved before the heat treatment, with a skin left to finish afterwards: the card, the section that is then
 * quenched, the allowance, and how far the part may bow.
 */
final class RoughFirst {

    private static final Set<String> CUTS = Set.of("finish_machine", "rough_machine", "machine");
    private static final Set<String> HEATS = Set.of("solution_heat_treat", "harden", "quench");

    private final Subject subject;
    private final List<RouteStep> route;
    private final int heat;
    /** Cuts after the last quench that move before the heat treatment. */
    private final List<Integer> moved;
    /** Cuts after the last quench that stay, to finish. */
    private final List<Integer> finishing;

    private RoughFirst(Subject subject, int heat, List<Integer> cuts) {
        this.subject = subject;
        this.route = subject.route();
        this.heat = heat;
        List<Integer> finishes = cuts.stream().filter(i -> does(i, Set.of("finish_machine"))).toList();
        this.finishing = finishes.isEmpty() ? cuts.subList(cuts.size() - 1, cuts.size()) : finishes;
        this.moved = cuts.stream().filter(i -> !finishing.contains(i)).toList();
    }

    /** {@return the change, where the card quenches and cuts afterwards} */
    static Proposals of(Subject subject) {
        List<RouteStep> route = subject.route();
        int quench = IntStream.range(0, route.size()).filter(i -> does(route, i, Set.of("quench"))).reduce((a, b) -> b).orElse(-1);
        int heat = quench < 0 ? -1 : IntStream.rangeClosed(0, quench).filter(i -> does(route, i, HEATS)).findFirst().orElse(-1);
        List<Integer> cuts = quench < 0 ? List.of()
                : IntStream.range(quench, route.size()).filter(i -> does(route, i, CUTS)).boxed().toList();
        return cuts.isEmpty() ? Proposals.of(List.of()) : new RoughFirst(subject, heat, cuts).proposed(new RoughBow(subject,
                route.get(quench)));
    }

    private static boolean does(List<RouteStep> route, int i, Set<String> operations) {
        return operations.contains(route.get(i).operation().single().orElse(""));
    }

    private boolean does(int i, Set<String> operations) {
        return does(route, i, operations);
    }

    private Proposals proposed(RoughBow bow) {
        Optional<Allowance> allowance = Allowance.of(sections(subject.part()), bow);
        if (allowance.isEmpty()) {
            return new Proposals(List.of(), List.of("An allowance after the heat treatment that is less than a fifth of the rough"
                    + " section: the thinnest finished section is " + Lengths.said(sections(subject.part()).stream().min(Double::compare)
                    .orElseThrow()) + "."));
        }
        double stock = allowance.get().stock();
        List<String> notes = new ArrayList<>(allowance.get().notes());
        notes.add(quenched(stock));
        if (subject.features().stream().anyMatch(one -> one.residualStress().field(ResidualStress::value).isKnown())) {
            notes.add("The residual stress that was measured is taken out: it was that of the old order of operations.");
        }
        notes.add("Card now: " + card(IntStream.range(0, route.size()).mapToObj(this::said)) + ".");
        notes.add("Proposed card: " + card(proposedCard(stock)) + ".");
        notes.add("The quenchant must reach every pocket that is machined first.");
        return Proposals.of(List.of(new Candidate(subject.kind("rough_first"), "rough machine before the heat treatment, finish "
                + Lengths.said(stock) + " afterwards", Optional.empty(), Optional.empty(), notes, now -> written(now, stock))));
    }

    /** The finished sections of the places that are judged; those of the form where no place states one. */
    private static List<Double> sections(PartDescription part) {
        List<Double> places = features(part).stream().flatMap(one -> one.sectionFinished().candidates().stream())
                .flatMap(range -> Stream.of(range.lowest(), range.highest())).distinct().toList();
        return places.isEmpty() ? part.form().field(Form::finishedThickness).candidates().stream()
                .flatMap(range -> Stream.of(range.lowest(), range.highest())).distinct().toList() : places;
    }

    private static List<Feature> features(PartDescription part) {
        return Stated.items(part.features());
    }

    private static OptionalDouble finished(PartDescription part, Feature feature) {
        OptionalDouble own = Range.greatest(feature.sectionFinished());
        return own.isPresent() ? own : Range.greatest(part.form().field(Form::finishedThickness));
    }

    /** The thickest section of the rough part (m), where the form states its finished ones. */
    private static OptionalDouble roughest(PartDescription part, double stock) {
        OptionalDouble form = Range.greatest(part.form().field(Form::finishedThickness));
        return form.isEmpty() ? form : OptionalDouble.of(2 * stock + Math.max(form.getAsDouble(),
                sections(part).stream().mapToDouble(Double::doubleValue).max().orElse(0)));
    }

    private String quenched(double stock) {
        OptionalDouble before = Range.greatest(subject.part().form().field(Form::heatTreatThickness));
        OptionalDouble after = roughest(subject.part(), stock);
        return "Section at quench: " + (before.isPresent() ? Lengths.said(before.getAsDouble()) : "not stated") + " -> "
                + (after.isPresent() ? Lengths.said(after.getAsDouble()) + ", the thickest finished section with the allowance on both"
                        + " faces; the review of the change computes the quench stress of each place with its own."
                        : "not told, since form/finished_thickness is not stated; places without a finished section keep the old one.");
    }

    private static String card(Stream<String> lines) {
        return lines.collect(Collectors.joining(", "));
    }

    private String said(int i) {
        return number(i) + " " + route.get(i).operation().single().orElse("operation not stated").replace('_', ' ');
    }

    private String number(int i) {
        return route.get(i).op().single().orElse("line " + (i + 1));
    }

    private Stream<String> proposedCard(double stock) {
        OptionalDouble depth = roughDepth(stock);
        String removes = depth.isPresent() ? " " + Lengths.said(depth.getAsDouble()) : "";
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < route.size(); i++) {
            if (i == heat && moved.isEmpty()) {
                lines.add(number(heat) + "A rough machine" + removes + " (new)");
            } else if (i == heat) {
                moved.forEach(cut -> lines.add(said(cut) + (cut.equals(last()) ? removes : "") + " (moved)"));
            }
            if (!moved.contains(i)) {
                lines.add(said(i) + (finishing.contains(i) ? " " + Lengths.said(stock) : ""));
            }
        }
        return lines.stream();
    }

    private Integer last() {
        return moved.get(moved.size() - 1);
    }

    /** What the last rough cut removes: its own, and what the finishing cuts no longer do; empty where one is not stated. */
    private OptionalDouble roughDepth(double stock) {
        List<Integer> counted = moved.isEmpty() ? finishing : Stream.concat(Stream.of(last()), finishing.stream()).toList();
        if (counted.stream().anyMatch(i -> !route.get(i).removes().isKnown())) {
            return OptionalDouble.empty();
        }
        double finish = finishing.stream().mapToDouble(i -> Range.greatest(route.get(i).removes()).orElseThrow()).max().orElseThrow();
        double own = moved.isEmpty() ? 0 : Range.greatest(route.get(last()).removes()).orElseThrow();
        return OptionalDouble.of(Math.max(0, own + finish - stock));
    }

    /**
     * The change for a part that another may have thickened before. Nothing where the number of operations has changed: the
     * numbers are those of the card as it is.
     */
    private JsonPatch written(EditableDescription now, double stock) {
        return now.at("/route").filter(list -> list.items().size() == route.size()).flatMap(list -> subject.trials().read(now))
                .map(part -> {
                    Edits edits = new Edits(now);
                    card(edits, stock);
                    form(edits, part, stock);
                    places(edits, part, stock);
                    return edits.patch();
                }).orElse(JsonPatch.NOTHING);
    }

    private void card(Edits edits, double stock) {
        finishing.forEach(i -> edits.set("/route/" + i + "/removes", Subject.quoted(Lengths.exact(stock))));
        OptionalDouble rough = roughDepth(stock);
        String depth = rough.isPresent() ? Subject.quoted(Lengths.exact(rough.getAsDouble())) : "unknown";
        if (moved.isEmpty()) {
            edits.add("/route/" + heat, DescriptionValue.of("{op: " + Subject.quoted(route.get(heat).op().single().orElse("0") + "A")
                    + ", do: rough_machine, removes: " + depth + "}"));
            return;
        }
        edits.set("/route/" + last() + "/removes", depth);
        for (int k = 0; k < moved.size(); k++) {
            edits.move("/route/" + moved.get(k), "/route/" + (heat + k));
        }
    }

    /** The width of the blank is no longer that of what is quenched; unknown counts as compact. */
    private static void form(Edits edits, PartDescription part, double stock) {
        OptionalDouble blank = Range.greatest(part.form().field(Form::heatTreatThickness));
        roughest(part, stock).ifPresent(rough -> {
            if (blank.isEmpty() || rough < blank.getAsDouble()) {
                edits.set("/form/heat_treat_thickness", Subject.quoted(Lengths.exact(rough)));
            }
        });
        OptionalDouble width = Range.greatest(part.form().field(Form::width));
        edits.setIfThere("/form/heat_treat_width", width.isPresent()
                ? Subject.quoted(Lengths.exact(width.getAsDouble() + 2 * stock)) : "unknown");
    }

    /** A face that lies no deeper than the allowance as it is stays where it is. */
    private static void places(Edits edits, PartDescription part, double stock) {
        List<Feature> features = features(part);
        for (int i = 0; i < features.size(); i++) {
            String place = "/features/" + i;
            Feature feature = features.get(i);
            OptionalDouble depth = Range.greatest(feature.asQuenchedDepth());
            if (depth.isPresent() && depth.getAsDouble() <= stock) {
                continue;
            }
            edits.set(place + "/as_quenched_depth", Subject.quoted(Lengths.exact(stock)));
            finished(part, feature).ifPresent(finished -> edits.set(place + "/section_as_quenched",
                    Subject.quoted(Lengths.exact(finished + 2 * stock))));
            if (feature.residualStress().field(ResidualStress::value).isKnown()) {
                edits.set(place + "/residual_stress", "unknown");
            }
        }
    }
}
