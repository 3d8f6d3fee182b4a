package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shortgrain.assessment.HollowReading;
import org.shortgrain.assessment.Trials;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.water.DrainHole;
import org.shortgrain.mechanics.water.Hole;
import org.shortgrain.part.Drainage;
import org.shortgrain.part.Feature;
import org.shortgrain.part.FeatureKind;
import org.shortgrain.part.Opening;
import org.shortgrain.part.reader.DescriptionValue;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.JsonPatch;

/**
 * Drain holes in a hollow: of the next drill above the least size of the standard, where they leave no more than a film in
 * every attitude stated; one, and where one cannot, two. Holes that drain already stay; others give way.
 *
 * @param subject  the part
 * @param path     place of the drainage in the description
 * @param id       name of the place
 * @param drainage the drainage there
 * @param hollow   the hollow as the review reads it
 */
record DrainChanges(Subject subject, String path, String id, Drainage drainage, HollowReading hollow) {

    /** Places that are holes, threads or shanks themselves: they are turned or filled, and not drained by another hole. */
    private static final Set<FeatureKind> BORES = EnumSet.of(FeatureKind.LUG_BORE, FeatureKind.BOLT_HOLE, FeatureKind.BORE,
            FeatureKind.THREADED_HOLE, FeatureKind.EAR, FeatureKind.BOLT_SHANK, FeatureKind.EXTERNAL_THREAD);
    private static final Set<FeatureKind> WELDS = EnumSet.of(FeatureKind.WELD, FeatureKind.WELD_HAZ);
    /** Rule that asks for wider drains where a thick fluid comes, and the width that it asks for (m): own derivation. */
    private static final String THICK_FLUID = "DRAINAGE-20";
    private static final double FOR_THICK_FLUID = 12.7e-3;
    private static final double MILLI = 1e-3;

    Proposals of(Feature feature) {
        if (feature.what().any(BORES::contains)) {
            return Proposals.of(List.of());
        }
        if (feature.what().any(WELDS::contains)) {
            return missing("no drain hole is put into a weld or beside it (TO 35-1-3, 3.12, read)");
        }
        boolean onFloor = hollow.opening() == Opening.UP || hollow.opening() == Opening.CLOSED;
        if (onFloor && hollow.declared() && hollow.shape().isPresent()) {
            return placed();
        }
        return Proposals.of(List.of(atLowestPoint()));
    }

    private Proposals missing(String words) {
        return new Proposals(List.of(), List.of("Drain at " + id + ": " + words + (words.endsWith(".") ? "" : ".")));
    }

    /** The least hole of the standard where the place can only be named: what stays is not known, or nothing can. */
    private Candidate atLowestPoint() {
        String least = String.format(Locale.ROOT, "%.3f mm", DrainHole.LEAST / MILLI);
        Function<EditableDescription, JsonPatch> write = now -> drilled(now, List.of("{diameter: " + least
                + ", at_lowest_point: true, path_continues: true}"));
        List<String> notes = new ArrayList<>(List.of(WaterChanges.WETTED));
        Optional<WaterNumbers> numbers = numbers(write).filter(one -> hollow.declared());
        notes.add(numbers.flatMap(WaterNumbers::left).orElse("What stays behind it is not known until "
                + WaterChanges.open(hollow) + "."));
        return new Candidate(subject.kind("drain"), "drain hole of " + least + " at the lowest point of " + id + vented()
                + ", with the way out going on" + instead(), Optional.of(id), Optional.empty(), notes, write);
    }

    private Proposals placed() {
        Drill drill = Drill.of(drainage, subject.tables().standIns());
        Proposals least = placed(drill, drill.notBelow(DrainHole.LEAST), "the least drain hole of MIL-STD-1568C 5.2.2.3, 9.525 mm");
        boolean thick = least.candidates().stream().flatMap(one -> reviewed(one.write()).stream())
                .anyMatch(trial -> trial.review().findings().stream().anyMatch(one -> one.rule().equals(THICK_FLUID)
                        && one.feature().filter(id::equals).isPresent()));
        return thick ? placed(drill, drill.notBelow(FOR_THICK_FLUID), "the 12.7 mm that " + THICK_FLUID
                + " asks for, since a thick fluid comes") : least;
    }

    private Proposals placed(Drill drill, double diameter, String above) {
        DrainSearch search = new DrainSearch(hollow, kept().map(this::hole).flatMap(Optional::stream).toList(), diameter,
                drill.place());
        if (!search.hasRoom()) {
            return missing("its floor has no room for a hole of " + drill.text(diameter) + ", the next drill not below " + above);
        }
        DrainSearch.Found one = search.one();
        Optional<DrainSearch.Found> two = one.drains() ? Optional.empty() : search.two();
        DrainSearch.Found best = two.filter(pair -> pair.depth() < one.depth()).orElse(one);
        Function<EditableDescription, JsonPatch> write = now -> drilled(now, best.spots().stream()
                .map(spot -> hole(spot, drill, diameter)).toList());
        Optional<WaterNumbers> numbers = numbers(write);
        if (!best.drains()) {
            return missing("neither one hole" + (two.isPresent() ? " nor two" : "") + " of " + drill.text(diameter) + " leave no more"
                    + " than a film in every attitude. The best, " + at(best, drill) + ": " + numbers.flatMap(WaterNumbers::left)
                    .orElse(WaterNumbers.text(best.depth() / MILLI, "mm") + " stay"));
        }
        List<String> notes = notes(numbers);
        notes.add(drill.text(diameter) + ": the next drill of a" + (drill.inch() ? "n inch" : " metric") + " shop not below " + above
                + ".");
        if (best.spots().size() == 1) {
            double[] reach = search.reach(best);
            notes.add("From " + drill.text(reach[0]) + " to " + drill.text(reach[1]) + " from that end no more than a film stays.");
        }
        notes.add("Least distance of an edge from a wall: " + drill.text(best.clear()) + search.besides().stream().boxed().findFirst()
                .map(across -> " from an end, and " + drill.text(across) + " from the sides in the middle of the width").orElse("")
                + ". Keep clear of the fillets.");
        return Proposals.of(List.of(new Candidate(subject.kind("drain"), words(best, drill, diameter, numbers), Optional.of(id),
                Optional.empty(), notes, write)));
    }

    private List<String> notes(Optional<WaterNumbers> numbers) {
        List<String> notes = new ArrayList<>(List.of(WaterChanges.WETTED));
        notes.add(numbers.filter(WaterNumbers::drained).flatMap(WaterNumbers::left).orElse("The hole does not count for certain: why"
                + " is told in the review of the changed part."));
        numbers.ifPresent(found -> {
            notes.addAll(found.outflow());
            found.dew().ifPresent(notes::add);
        });
        if (dropped() > 0) {
            notes.add("Holes that are there and are not shown to drain are opened up if they lie there, or else closed.");
        }
        return notes;
    }

    private String words(DrainSearch.Found found, Drill drill, double diameter, Optional<WaterNumbers> numbers) {
        String holes = found.spots().size() == 1 ? "drain hole of " : found.spots().size() + " drain holes of ";
        return holes + drill.text(diameter) + " in " + id + ", " + at(found, drill) + vented() + ", with the way out going on"
                + instead() + numbers.filter(WaterNumbers::drained).flatMap(WaterNumbers::worst).map(left -> ": " + left + " stay")
                        .orElse("");
    }

    /** Where the holes lie, from the end and the side from which the description counts. */
    private String at(DrainSearch.Found found, Drill drill) {
        String end = hollow.lengthwise().along() >= 0 ? "rear end" : "forward end";
        String side = hollow.sideways().across() >= 0 ? "positive" : "negative";
        boolean one = found.spots().size() == 1;
        Function<DrainSearch.Spot, String> place = spot -> drill.text(spot.fromEnd()) + spot.fromSide().stream().boxed()
                .map(across -> " by " + drill.text(across)).findFirst().orElse("");
        boolean across = found.spots().stream().anyMatch(spot -> spot.fromSide().isPresent());
        return "near edge" + (one ? " " : "s ") + found.spots().stream().map(place).collect(Collectors.joining(" and "))
                + " from its " + end + (across ? " by the side that a " + side + " roll lowers" : "");
    }

    private String vented() {
        return hollow.opening() == Opening.CLOSED ? ", vented high up at the far end" : "";
    }

    private String instead() {
        long dropped = dropped();
        return dropped == 0 ? "" : ", instead of " + (dropped == 1 ? "the hole" : "the " + dropped + " holes")
                + " not shown to drain";
    }

    private static String hole(DrainSearch.Spot spot, Drill drill, double diameter) {
        OptionalDouble side = spot.fromSide();
        return "{diameter: " + drill.text(diameter) + ", from_low_end: " + drill.text(spot.fromEnd())
                + (side.isPresent() ? ", from_low_side: " + drill.text(side.getAsDouble()) : "") + ", path_continues: true}";
    }

    private JsonPatch drilled(EditableDescription now, List<String> holes) {
        List<DescriptionValue> there = now.at(path + "/drain_holes").map(DescriptionValue::items).orElse(List.of());
        Stream<String> stay = kept().map(stated().toList()::indexOf).filter(i -> i < there.size()).map(i -> there.get(i).json());
        Edits edits = WaterChanges.emptied(now, path, drainage).set(path + "/drain_holes", "["
                + Stream.concat(stay, holes.stream()).collect(Collectors.joining(", ")) + "]");
        return (hollow.opening() == Opening.CLOSED ? edits.set(path + "/vented", "true") : edits).patch();
    }

    private Stream<org.shortgrain.part.DrainHole> stated() {
        return drainage.drainHoles().single().stream().flatMap(List::stream);
    }

    /** Holes that stay: wide enough, where it is known, with a way out, and met by no hole of a neighbour that might narrow
     * them. */
    private Stream<org.shortgrain.part.DrainHole> kept() {
        return stated().filter(one -> one.pathContinues().is(true) && !one.neighbourHole().isKnown() && hole(one).isPresent());
    }

    private Optional<Hole> hole(org.shortgrain.part.DrainHole one) {
        Optional<Given> width = HollowReading.given(one.diameter())
                .filter(given -> given.value().low() >= DrainHole.LEAST - DrainHole.METRIC_ALLOWANCE);
        return width.flatMap(wide -> hollow.place(one, width));
    }

    private long dropped() {
        return stated().count() - kept().count();
    }

    private Optional<WaterNumbers> numbers(Function<EditableDescription, JsonPatch> write) {
        return reviewed(write).map(trial -> WaterNumbers.of(trial.review(), id));
    }

    private Optional<Trials.Trial> reviewed(Function<EditableDescription, JsonPatch> write) {
        return WaterChanges.reviewed(subject, write);
    }
}
