package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.shortgrain.part.FeatureKind;
import org.shortgrain.part.Fit;
import org.shortgrain.part.Material;
import org.shortgrain.part.Surface;
import org.shortgrain.reference.ProtectionCredits;
import org.shortgrain.reference.ProtectionCredits.Credit;
import org.shortgrain.reference.ProtectionCredits.Measure;
import org.shortgrain.review.Assumption;
import org.shortgrain.review.FactorJudgement;
import org.shortgrain.review.FactorState;
import org.shortgrain.rulebook.facts.Finish;
import org.shortgrain.rulebook.facts.Place;
import org.shortgrain.terms.Citation;

/**
 * Says beside the factors of a place what protects it and with what that is credited: it delays or reduces, and clears
 * nothing. The state of a factor is never changed here.
 */
final class Protection {

    private final ProtectionCredits credits;

    Protection(ProtectionCredits credits) {
        this.credits = credits;
    }

    /**
     * {@return the place with what protects it among the reasons of the factors that are not absent}
     *
     * @param place  the place as judged without any protection
     * @param ledger where it is written down that protection was not counted
     */
    Place beside(Place place, Ledger ledger) {
        Set<Measure> measures = at(place);
        return new Place(place.part(), place.feature(), place.id(), place.directions(), place.zone(), place.material(),
                beside(place.id(), place.stress(), "stress", measures, ledger),
                beside(place.id(), place.environment(), "environment", measures, ledger), place.tensions(), place.computed());
    }

    private FactorJudgement beside(String id, FactorJudgement factor, String word, Set<Measure> measures, Ledger ledger) {
        List<Credit> here = measures.stream().map(credits::of).filter(credit -> credit.factor().equals(word)).toList();
        if (here.isEmpty() || factor.state() == FactorState.ABSENT) {
            return factor;
        }
        String names = here.stream().map(Credit::words).collect(Collectors.joining(", "));
        String effects = here.stream().map(credit -> credit.effect().words()).distinct().collect(Collectors.joining(" or "));
        ledger.assume(id + ": " + names + " is not counted: it " + effects + " and clears nothing. "
                + here.stream().map(Credit::meaning).collect(Collectors.joining("; ")) + ".",
                Assumption.Effect.CONSERVATIVE, here.stream().map(Credit::source).distinct().toArray(Citation[]::new));
        List<String> reasons = new ArrayList<>(factor.reasons());
        reasons.add("protected by " + names + ", which " + effects + " and is not counted");
        return new FactorJudgement(factor.factor(), factor.state(), reasons);
    }

    /** Measures that are stated of a place for certain. */
    private static Set<Measure> at(Place place) {
        Set<Measure> found = EnumSet.noneOf(Measure.class);
        Finish finish = place.finish();
        add(found, Measure.TOPCOAT, finish.topcoat().isKnown());
        add(found, Measure.PRIMER, finish.primer().isKnown());
        add(found, Measure.PRETREATMENT, finish.pretreatment().isKnown());
        add(found, Measure.PLATING, finish.plating().isKnown());
        add(found, Measure.CLADDING, place.part().material().field(Material::clad).isKnown());
        add(found, Measure.INHIBITOR, finish.inhibitor().isKnown());
        boolean joined = place.is(FeatureKind.FAYING_SURFACE) || !place.fasteners().isEmpty();
        add(found, Measure.FAYING_SEALANT, joined && place.sealing().faying().isKnown());
        add(found, Measure.WET_INSTALLATION, place.fit().field(Fit::installedWet).is(true)
                || !place.fasteners().isEmpty() && place.sealing().fastenersWet().is(true));
        add(found, Measure.SHOT_PEENING, place.isPeened());
        add(found, Measure.COLD_WORK, place.route().hasAt(place.id(), "cold_work_hole"));
        if (place.feature().surface().field(Surface::bare).is(true)) {
            found.removeAll(EnumSet.of(Measure.TOPCOAT, Measure.PRIMER, Measure.PRETREATMENT, Measure.PLATING));
        }
        return found;
    }

    private static void add(Set<Measure> found, Measure measure, boolean stated) {
        if (stated) {
            found.add(measure);
        }
    }
}
