package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.shortgrain.assessment.PlaceStress;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.clampup.ClosedGap;
import org.shortgrain.part.ClampUp;
import org.shortgrain.part.Feature;
import org.shortgrain.part.reader.EditableDescription;

/**
 * Gaps that are pulled shut, shimmed instead above the largest gap for which the place has room.
 *
 * <p>The permissible gap is the largest whose bending, with all else that pulls at the place, stays below the limit of the
 * review. Several gaps at one place share the room so that none bends its strip harder than another; one that is smaller than
 * its share leaves the rest to the others.
 */
final class GapChanges {

    /** Layer of a laminated shim that peels off, and so the step in which gaps are called out (m): common practice, from
     * memory, 0.002 in. */
    private static final double LAYER = 0.05e-3;
    /** Gap drawn up without shim where the permissible one cannot be computed (m): common practice, one layer. */
    private static final double BY_HABIT = LAYER;
    /** The bending that the place has room for is sought so closely (Pa). */
    private static final double CLOSE = 100;
    private static final double MEGA = 1e6;
    private static final String MEASURE = "Measure the gap with the joint closed by hand, before torque.";

    private final Spot spot;
    private final List<ClampUp> stated;
    private final List<Candidate> found = new ArrayList<>();
    private final List<String> missing = new ArrayList<>();

    private GapChanges(Spot spot) {
        this.spot = spot;
        this.stated = spot.feature().clampUp().single().orElse(List.of());
    }

    static Proposals of(Subject subject, int number, Feature feature) {
        GapChanges changes = new GapChanges(new Spot(subject, number, feature));
        int gaps = feature.clampUp().candidates().stream().mapToInt(List::size).max().orElse(0);
        if (gaps > 0) {
            changes.shim(gaps);
        }
        return new Proposals(changes.found, changes.missing);
    }

    private void shim(int gaps) {
        PlaceStress asIs = spot.asIs();
        List<ClosedGap> closed = asIs.gaps().stream().flatMap(Optional::stream).toList();
        if (closed.size() == gaps && asIs.compared() && asIs.utilisation().isPresent()) {
            computed(closed, asIs);
        } else {
            found.add(candidate(shimmed(Collections.nCopies(gaps, BY_HABIT)), List.of(String.format(Locale.ROOT, "Assumption: %s"
                    + " without shim by habit of the trade; the permissible gap cannot be computed, since %s.",
                    ShimmedGaps.millimetres(BY_HABIT), closed.size() < gaps ? "gap, span or thickness is not stated"
                    : "no threshold is published for a direction that may be pulled"), MEASURE)));
        }
    }

    private void computed(List<ClosedGap> closed, PlaceStress asIs) {
        ShimmedGaps none = shimmed(Collections.nCopies(closed.size(), 0.0));
        double alone = used(none);
        if (alone >= 1) {
            missing.add(String.format(Locale.ROOT, "a gap at %s that may be pulled shut: without any the utilisation is %.2f already.",
                    spot.id(), alone));
            found.add(candidate(none, List.of("The limit at " + spot.id() + " is not met by that alone.", MEASURE)));
            return;
        }
        boolean roomForAll = !Spot.reached(asIs);
        List<Double> gaps = roomForAll ? closed.stream().map(one -> one.left().high()).toList() : permissible(closed);
        ShimmedGaps drawn = shimmed(IntStream.range(0, gaps.size())
                .mapToObj(k -> gaps.get(k) < closed.get(k).left().high() ? layers(gaps.get(k)) : gaps.get(k)).toList());
        found.add(candidate(drawn, notes(closed, gaps, drawn, roomForAll)));
    }

    private List<Double> permissible(List<ClosedGap> closed) {
        double bending = closed.stream().mapToDouble(one -> one.stress().value().high()).max().orElseThrow();
        return gaps(closed, Spot.greatest(one -> used(shimmed(gaps(closed, one))), 0, bending, CLOSE));
    }

    private ShimmedGaps shimmed(List<Double> limits) {
        return new ShimmedGaps(spot.path() + "/clamp_up", limits);
    }

    private double used(ShimmedGaps shimmed) {
        return spot.used(shimmed.change(spot.subject().trial().part(), stated));
    }

    /** The gaps that a bending stress permits, none above what there is to close. */
    private static List<Double> gaps(List<ClosedGap> closed, double permitted) {
        Given stress = Given.exact(permitted, "bending that the place has room for");
        return closed.stream().map(one -> Math.min(one.left().high(), one.largestGap(stress).value().low())).toList();
    }

    private static double layers(double gap) {
        return Math.floor(gap / LAYER) * LAYER;
    }

    private List<String> notes(List<ClosedGap> closed, List<Double> gaps, ShimmedGaps drawn, boolean roomForAll) {
        List<String> notes = new ArrayList<>();
        for (int k = 0; k < gaps.size(); k++) {
            String which = (gaps.size() > 1 ? "Gap " + (k + 1) + " at " : "At ") + spot.id();
            boolean limited = gaps.get(k) < closed.get(k).left().high();
            notes.add(which + (limited ? limited(gaps.get(k), drawn.limits().get(k))
                    : roomForAll ? " the gap as stated may be pulled shut; the limit keeps it so."
                    : " the gap as stated may be pulled shut."));
        }
        spot.after(drawn.change(spot.subject().trial().part(), stated)).ifPresent(after -> notes.add(numbers(after)));
        if (stated.stream().anyMatch(one -> one.held().single().isEmpty())) {
            notes.add("How the strip is held is not stated: taken as clamped at both ends, the worst.");
        }
        notes.add(MEASURE);
        return notes;
    }

    private static String limited(double gap, double drawn) {
        return String.format(Locale.ROOT, drawn > 0 ? " %.3f mm may be pulled shut; rounded down to whole layers of a laminated"
                + " shim, %s (common practice)." : " %.3f mm may be pulled shut, less than a layer of a laminated shim, %s (common"
                + " practice): nothing is left to be pulled shut.", gap * 1e3, ShimmedGaps.millimetres(LAYER));
    }

    private String numbers(PlaceStress after) {
        double bending = after.gaps().stream().flatMap(Optional::stream).map(ClosedGap::stress).map(Computed::value)
                .mapToDouble(value -> value.high()).max().orElse(0);
        return String.format(Locale.ROOT, "Bending of the gap pulled shut %.0f MPa%s.", bending / MEGA, after.governing()
                .map(one -> String.format(Locale.ROOT, "; with all else at %s %.0f MPa along %s, utilisation %.3f", spot.id(),
                        one.high() / MEGA, one.direction(), Spot.used(after))).orElse(""));
    }

    private Candidate candidate(ShimmedGaps drawn, List<String> notes) {
        return new Candidate(spot.subject().kind("shim"), drawn.say(spot.id()), Optional.of(spot.id()), Optional.empty(), notes,
                (EditableDescription now) -> drawn.change(now, stated));
    }
}
