package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.shortgrain.assessment.HollowReading;
import org.shortgrain.assessment.Trials;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.water.Basin;
import org.shortgrain.mechanics.water.Hollow;
import org.shortgrain.mechanics.water.Tilt;
import org.shortgrain.part.Drainage;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Opening;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.JsonPatch;

/**
 * A hollow that holds water: drained and vented, turned, or filled. The numbers told are those of the review of the part so
 * changed.
 */
final class WaterChanges {

    private static final double ML = 1e6;
    /** What every change that drains leaves. */
    static final String WETTED = "Water still comes where the zone is wet: draining shortens the wetness, it does not make"
            + " the place dry.";

    private final Subject subject;
    private final String path;
    private final String id;
    private final Drainage drainage;
    private final HollowReading hollow;
    private final List<Candidate> found = new ArrayList<>();

    private WaterChanges(Subject subject, String path, Feature feature, Drainage drainage) {
        this.subject = subject;
        this.path = path + "/drainage";
        this.id = Subject.id(path, feature);
        this.drainage = drainage;
        this.hollow = HollowReading.of(drainage, subject.tables().standIns());
    }

    static Proposals of(Subject subject, String path, Feature feature) {
        return feature.drainage().single().map(drainage -> new WaterChanges(subject, path, feature, drainage).all(feature))
                .orElse(Proposals.of(List.of()));
    }

    /** A gap draws water in whichever way it faces, and no hole empties it: nothing is proposed for it here. */
    private Proposals all(Feature feature) {
        boolean held = drainage.holdsWater().is(true);
        boolean cup = held || drainage.opening().isOneOf(Opening.UP, Opening.SIDE, Opening.CLOSED);
        if (!cup || drainage.gap().isKnown()) {
            return Proposals.of(List.of());
        }
        vent();
        boolean runsOff = WaterNumbers.of(subject.trial().review(), id).isFilm() && !held && !drainage.filledWith().isKnown();
        if (runsOff) {
            return Proposals.of(found);
        }
        Proposals drains = new DrainChanges(subject, path, id, drainage, hollow).of(feature);
        if (hollow.opening() != Opening.CLOSED) {
            turn();
        }
        fill();
        return Proposals.all(List.of(drains, Proposals.of(found)));
    }

    /** A closed hollow that has a drain but no way in for air. */
    private void vent() {
        boolean drilled = drainage.drainHoles().candidates().stream().anyMatch(holes -> !holes.isEmpty());
        if (hollow.opening() != Opening.CLOSED || !drilled || drainage.vented().is(true)) {
            return;
        }
        Function<EditableDescription, JsonPatch> write = now -> new Edits(now).set(path + "/vented", "true").patch();
        List<String> notes = new ArrayList<>(List.of(WETTED));
        numbers(write).ifPresent(numbers -> {
            numbers.left().ifPresent(notes::add);
            numbers.dew().ifPresent(notes::add);
        });
        found.add(new Candidate(subject.kind("vent"), "second opening of " + id + " high up at its far end, so that air comes in"
                + " as water runs out", Optional.of(id), Optional.empty(), notes, write));
    }

    /** Down, and sideways where no more than a film stays then. */
    private void turn() {
        Function<EditableDescription, JsonPatch> down = turned("down");
        Function<EditableDescription, JsonPatch> aside = turned("side");
        Optional<WaterNumbers> whenDown = numbers(down);
        Optional<WaterNumbers> whenAside = hollow.opening() == Opening.SIDE ? Optional.empty() : numbers(aside);
        Optional<String> compared = whenDown.flatMap(WaterNumbers::worst).map(one -> "Opening down, " + one + " stay"
                + whenAside.flatMap(WaterNumbers::worst).map(other -> "; opening sideways, " + other).orElse("") + ".");
        boolean known = hollow.declared() && compared.isPresent();
        List<String> notes = List.of(WETTED, known ? compared.get() : "What stays when it is turned is not known until "
                + open(hollow) + ".");
        found.add(new Candidate(subject.kind("turn"), id + " turned so that it opens down", Optional.of(id), Optional.empty(), notes,
                down));
        if (known && whenAside.filter(WaterNumbers::isFilm).isPresent()) {
            found.add(new Candidate(subject.kind("turn"), id + " turned so that it opens sideways", Optional.of(id),
                    Optional.empty(), notes, aside));
        }
    }

    private Function<EditableDescription, JsonPatch> turned(String opening) {
        return now -> emptied(now, path, drainage).set(path + "/opening", opening).patch();
    }

    private void fill() {
        Function<EditableDescription, JsonPatch> write = now -> new Edits(now).removeIfThere(path + "/holds_water")
                .set(path + "/filled_with", "sealant").set(path + "/filling_bonded", "true").patch();
        Optional<Band> room = room();
        List<String> notes = new ArrayList<>(List.of("Water behind a bond that fails is not seen: inspect it."));
        notes.add(room.map(volume -> "The filling takes " + WaterNumbers.text(volume.high() * ML, "mL") + " up to the rim; its mass"
                + " follows from the density of the sealant, which no table here holds.").orElse("What the filling takes is not known"
                + " until the volume, or length, width and depth, of the hollow are stated."));
        numbers(write).flatMap(WaterNumbers::besideFilling).ifPresent(notes::add);
        found.add(new Candidate(subject.kind("fill"), id + " filled with " + room.map(volume -> WaterNumbers.text(
                volume.high() * ML, "mL") + " of ").orElse("") + "sealant bonded to a primed wall", Optional.of(id),
                Optional.empty(), notes, write));
    }

    /** Room up to the rim (m3): as stated, or of the shape as drawn. */
    private Optional<Band> room() {
        Optional<Band> stated = HollowReading.given(drainage.volume()).map(Given::value);
        return stated.isPresent() ? stated : hollow.shape().map(shape -> new Band(room(shape, given -> given.value().value()),
                room(shape, given -> given.value().low()), room(shape, given -> given.value().high())));
    }

    private static double room(Hollow shape, Function<Given, Double> end) {
        double[] sizes = shape.sizes().stream().mapToDouble(end::apply).toArray();
        if (shape instanceof Hollow.Profiled) {
            Basin basin = shape.basin(sizes);
            return basin.pool(Tilt.LEVEL, List.of()).volume();
        }
        return shape.capacity(sizes);
    }

    /** The edits that every change but a filling begins with: no statement that water stands, and no filling. */
    static Edits emptied(EditableDescription now, String path, Drainage drainage) {
        Edits edits = new Edits(now).removeIfThere(path + "/holds_water");
        return drainage.filledWith().isKnown() ? edits.set(path + "/filled_with", "none")
                .removeIfThere(path + "/filling_bonded") : edits;
    }

    /** What a review of the part with one change computes of its water; empty where the reader refuses the change. */
    private Optional<WaterNumbers> numbers(Function<EditableDescription, JsonPatch> write) {
        return reviewed(subject, write).map(trial -> WaterNumbers.of(trial.review(), id));
    }

    /** The review of the part with one change; empty where the reader refuses it. */
    static Optional<Trials.Trial> reviewed(Subject subject, Function<EditableDescription, JsonPatch> write) {
        EditableDescription part = subject.trial().part();
        return subject.trials().of(part.with(write.apply(part)));
    }

    /** What must be stated before the water can be computed. */
    static String open(HollowReading hollow) {
        String sizes = "length, width and depth, or width and the points of the floor";
        String attitudes = "the attitudes on the ground and in flight";
        return (hollow.shape().isPresent() ? attitudes : hollow.declared() ? sizes : sizes + ", and " + attitudes)
                + " are stated";
    }
}
