package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.assessment.PlaceStress;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.fit.FitStress;
import org.shortgrain.mechanics.fit.InterferenceFit;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Fit;
import org.shortgrain.part.FitKind;
import org.shortgrain.part.reader.EditableDescription;

/**
 * Another fit of a bush or pin that is pressed in: with clearance, or with the lightest interference that still holds.
 *
 * <p>With the tolerances as drawn, the loosest pair must hold at the loosest lasting temperature ({@link Hold}), and the
 * tightest must leave the place below its limit at the tightest, with all else that pulls there. The lightest fit that does the
 * first is proposed if it does the second; where none does both, the two bounds that contradict each other are told.
 */
final class FitChanges {

    private static final Set<FitKind> PRESSED = EnumSet.of(FitKind.PRESS_BUSHING, FitKind.SHRINK_BUSHING,
            FitKind.EXPANDED_BUSHING, FitKind.PRESS_PIN, FitKind.INTERFERENCE_FASTENER);
    private static final double MICRO = 1e6;
    private static final double MEGA = 1e6;
    /** The bound from the stress is sought so closely (m). */
    private static final double CLOSE = 1e-8;

    private final Spot spot;
    private final Fit fit;
    private final List<Candidate> found = new ArrayList<>();
    private final List<String> missing = new ArrayList<>();

    private FitChanges(Spot spot, Fit fit) {
        this.spot = spot;
        this.fit = fit;
    }

    static Proposals of(Subject subject, int number, Feature feature) {
        return feature.fit().single().filter(FitChanges::pressed)
                .map(fit -> new FitChanges(new Spot(subject, number, feature), fit).sought())
                .orElse(Proposals.of(List.of()));
    }

    /** Whether interference holds it. */
    static boolean pressed(Fit fit) {
        return fit.kind().any(PRESSED::contains);
    }

    private Proposals sought() {
        clearance();
        Optional<PressFit> drawn = PressFit.of(spot.path() + "/fit", fit);
        if (drawn.isPresent()) {
            PlaceStress asIs = spot.asIs();
            asIs.fit().ifPresent(rings -> light(drawn.get(), rings, asIs));
        }
        return new Proposals(found, missing);
    }

    private void clearance() {
        found.add(new Candidate(spot.subject().kind("clearance_fit"),
                "bush of " + spot.id() + " with clearance, held by a flange or bond", Optional.of(spot.id()), Optional.empty(),
                List.of("Friction holds nothing then: show how the bush is kept."),
                now -> {
                    Edits edits = new Edits(now).set(spot.path() + "/fit/kind", "clearance");
                    for (String limit : List.of("hole", "bush", "interference")) {
                        edits.removeIfThere(spot.path() + "/fit/" + limit);
                    }
                    return edits.patch();
                }));
    }

    private void light(PressFit drawn, InterferenceFit rings, PlaceStress asIs) {
        Hold hold = Hold.of(spot.subject().tables().standIns(), fit, rings);
        double present = rings.interference().diametral().high();
        double most = drawn.lightest(hold.least());
        EditableDescription part = spot.subject().trial().part();
        boolean lighter = most < present - CLOSE;
        Optional<PlaceStress> after = lighter ? spot.after(drawn.change(part, most)) : Optional.empty();
        PlaceStress heaviest = after.orElse(asIs);
        if (Spot.reached(heaviest)) {
            missing.add(contradiction(drawn, rings, hold, after.isPresent() ? most : present));
        }
        after.ifPresent(stress -> found.add(candidate(drawn, hold, most, stress)));
    }

    private Candidate candidate(PressFit drawn, Hold hold, double most, PlaceStress after) {
        List<String> notes = new ArrayList<>();
        after.fit().ifPresent(rings -> notes.addAll(numbers(rings, after, hold)));
        notes.add(hold.said());
        if (Spot.reached(after)) {
            notes.add("The limit at " + spot.id() + " is not met by that alone.");
        } else if (!Spot.within(after)) {
            notes.add("No threshold is published for a direction that may be pulled: the stress is held against nothing.");
        }
        return new Candidate(spot.subject().kind("light_fit"), String.format(Locale.ROOT, "%s at %s, so that interference is"
                + " %.0f to %.0f um and the loosest pair still holds", drawn.say(most), spot.id(),
                (most - drawn.spread()) * MICRO, most * MICRO), Optional.of(spot.id()), Optional.empty(), notes,
                now -> drawn.change(now, most));
    }

    private static List<String> numbers(InterferenceFit rings, PlaceStress after, Hold hold) {
        FitStress stress = new FitStress(rings);
        Computed pressure = stress.pressureWhenLoosest();
        List<String> numbers = new ArrayList<>();
        numbers.add(String.format(Locale.ROOT, "Loosest pair at %s: contact pressure %.1f MPa%s.",
                celsius(stress.loosestTemperature().value().value()), pressure.value().low() / MEGA, hold.force(rings)
                        .map(force -> String.format(Locale.ROOT, ", push-out force %.0f N", force)).orElse("")));
        numbers.add(String.format(Locale.ROOT, "Tightest pair at %s: hoop at the bore %.0f MPa%s.",
                celsius(stress.governingTemperature().value().value()), stress.boreHoop().value().high() / MEGA,
                after.governing().map(one -> String.format(Locale.ROOT, "; with all else there %.0f MPa along %s, utilisation"
                        + " %.3f", one.high() / MEGA, one.direction(), Spot.used(after))).orElse("")));
        return numbers;
    }

    /**
     * Why no interference does both.
     *
     * @param beyond an interference of the tightest pair at which the limit is reached (m)
     */
    private String contradiction(PressFit drawn, InterferenceFit rings, Hold hold, double beyond) {
        FitStress stress = new FitStress(rings);
        double none = -stress.gainedWhenTightest();
        double alone = used(drawn, none);
        if (alone >= 1) {
            return String.format(Locale.ROOT, "an interference at %s within the limit: without the fit the utilisation is"
                    + " %.2f already.", spot.id(), alone);
        }
        double least = Math.ceil(hold.least() * MICRO);
        double most = Math.floor(Spot.greatest(value -> used(drawn, value), none, beyond, CLOSE) * MICRO);
        String bounds = String.format(Locale.ROOT, "an interference at %s that holds and stays within the limit with the tolerances"
                + " as drawn, which spread it by %.0f um: %s, which takes at least %.0f um in the loosest pair; the stress allows"
                + " %s in the tightest, at %s.", spot.id(), drawn.spread() * MICRO, hold.why(), least,
                most > 0 ? String.format(Locale.ROOT, "at most %.0f um", most) : "none",
                celsius(stress.governingTemperature().value().value()));
        return bounds + (most > least
                ? String.format(Locale.ROOT, " Tolerances of %.0f um together, or a bush ground to suit the hole as measured, would"
                        + " do.", most - least)
                : " No tolerances would do.");
    }

    private double used(PressFit drawn, double most) {
        return spot.used(drawn.search(spot.subject().trial().part(), most));
    }

    private static String celsius(double temperature) {
        return String.format(Locale.ROOT, "%.0f degC", temperature);
    }
}
