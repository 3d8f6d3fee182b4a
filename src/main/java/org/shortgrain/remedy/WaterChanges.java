package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.mechanics.water.DrainHole;
import org.shortgrain.part.Drainage;
import org.shortgrain.part.Feature;
import org.shortgrain.part.FeatureKind;
import org.shortgrain.part.Opening;

/** A hollow that holds water, drained, turned or filled. */
final class WaterChanges {

    private static final Set<FeatureKind> BORES = EnumSet.of(FeatureKind.LUG_BORE, FeatureKind.BOLT_HOLE, FeatureKind.BORE,
            FeatureKind.THREADED_HOLE, FeatureKind.EAR);
    private static final double MILLI = 1e-3;

    private final Subject subject;
    private final List<Candidate> found = new ArrayList<>();

    private WaterChanges(Subject subject) {
        this.subject = subject;
    }

    static Proposals of(Subject subject, String path, Feature feature) {
        WaterChanges changes = new WaterChanges(subject);
        feature.drainage().single().ifPresent(drainage -> changes.water(path + "/drainage", Subject.id(path, feature), drainage,
                feature.what().any(BORES::contains)));
        return Proposals.of(changes.found);
    }

    /** A bore is no hollow to be drained by another hole: it is turned or filled. */
    private void water(String path, String id, Drainage drainage, boolean bore) {
        boolean cup = drainage.holdsWater().is(true) || drainage.opening().isOneOf(Opening.UP, Opening.SIDE, Opening.CLOSED);
        if (!cup) {
            return;
        }
        String least = String.format(Locale.ROOT, "%.3f mm", DrainHole.LEAST / MILLI);
        String wetted = "Water still comes where the zone is wet: draining shortens the wetness, it does not make the place dry.";
        if (!bore) {
            found.add(drained(path, id, least, wetted));
        }
        found.add(new Candidate(subject.kind("turn"), id + " turned so that it opens down", Optional.of(id), Optional.empty(),
                List.of(wetted), now -> new Edits(now).removeIfThere(path + "/holds_water").set(path + "/opening", "down").patch()));
        found.add(new Candidate(subject.kind("fill"), id + " filled with sealant bonded to a primed wall", Optional.of(id),
                Optional.empty(), List.of("Water behind a bond that fails is not seen: inspect it."),
                now -> new Edits(now).removeIfThere(path + "/holds_water").set(path + "/filled_with", "sealant")
                        .set(path + "/filling_bonded", "true").patch()));
    }

    private Candidate drained(String path, String id, String least, String wetted) {
        return new Candidate(subject.kind("drain"), "drain hole of " + least + " at the lowest point of " + id
                + ", vented, with the way out going on", Optional.of(id), Optional.empty(), List.of(wetted,
                        "What stays behind the hole is in the calculations of the new review."),
                now -> new Edits(now).removeIfThere(path + "/holds_water").set(path + "/drain_holes", "[{diameter: " + least
                        + ", at_lowest_point: true, path_continues: true}]").set(path + "/vented", "true").patch());
    }
}
