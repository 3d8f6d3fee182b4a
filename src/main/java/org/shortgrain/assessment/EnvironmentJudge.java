package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.part.Drainage;
import org.shortgrain.part.Environment;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Fluid;
import org.shortgrain.part.Humidity;
import org.shortgrain.part.Opening;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;
import org.shortgrain.reference.FluidTable;
import org.shortgrain.reference.ZoneTable;
import org.shortgrain.review.Factor;
import org.shortgrain.review.FactorJudgement;
import org.shortgrain.review.FactorState;
import org.shortgrain.rulebook.facts.Zone;

/**
 * Judges whether a place can be wet.
 *
 * <p>A place counts as dry only by evidence: a zone of the driest class, humidity on record, no fluid, and no water held.
 * Coating, sealant and paint delay attack and are not counted here. A zone that is not stated leaves the factor unknown.
 */
final class EnvironmentJudge {

    /** Relative humidity up to which a controlled zone counts as dry: 40 %, scale of the wetness classes. */
    private static final double DRY = 0.40;
    /** Wetness class of a controlled, dry zone. */
    private static final int CONTROLLED = 0;

    private final ZoneTable zones;
    private final FluidTable fluids;

    EnvironmentJudge(ZoneTable zones, FluidTable fluids) {
        this.zones = zones;
        this.fluids = fluids;
    }

    /**
     * {@return the zone of the part, or of a place where it states its own}
     *
     * @param description the part
     * @param feature     the place; empty for the part
     */
    Zone zone(PartDescription description, Optional<Feature> feature) {
        Stated<List<String>> own = feature.map(Feature::zone).orElse(new Stated.Absent<>(description.environment().at()));
        Stated<List<String>> stated = own.isKnown() ? own : description.environment().field(Environment::zone);
        List<String> names = stated.candidates().stream().flatMap(List::stream).distinct().toList();
        int wetness = names.stream().flatMap(name -> zones.find(name).stream()).mapToInt(zone -> zone.wetness().rank())
                .max().orElse(-1);
        return new Zone(names, wetness);
    }

    /**
     * {@return the environment factor at a place}
     *
     * @param description the part
     * @param feature     the place
     * @param zone        its zone
     */
    FactorJudgement judge(PartDescription description, Feature feature, Zone zone) {
        List<String> wet = new ArrayList<>();
        List<String> open = new ArrayList<>();
        List<String> dry = new ArrayList<>();
        fluids(description, wet, open, dry);
        water(feature, wet, open, dry);
        if (!zone.isStated()) {
            open.add("the zone is not stated; the worst of the list is " + zones.worst().name());
        } else {
            zone(description, zone, wet, open, dry);
        }
        if (!wet.isEmpty() && zone.isStated()) {
            return new FactorJudgement(Factor.ENVIRONMENT, FactorState.PRESENT, wet);
        }
        if (!open.isEmpty()) {
            open.addAll(0, wet);
            return new FactorJudgement(Factor.ENVIRONMENT, FactorState.UNKNOWN, open);
        }
        return new FactorJudgement(Factor.ENVIRONMENT, FactorState.ABSENT, dry);
    }

    private void zone(PartDescription description, Zone zone, List<String> wet, List<String> open, List<String> dry) {
        ZoneTable.Zone worst = zone.names().stream().flatMap(name -> zones.find(name).stream())
                .max(Comparator.comparingInt(one -> one.wetness().rank())).orElseThrow();
        String words = String.format(Locale.ROOT, "zone %s: %s, %s", worst.word(), worst.wetness().code(),
                worst.wetness().meaning());
        if (worst.wetness().rank() > CONTROLLED) {
            wet.add(words);
            return;
        }
        Stated<Humidity> humidity = description.environment().field(Environment::humidity);
        boolean recorded = humidity.surely(one -> one.relative().map(Range::highest).orElse(1.0) <= DRY
                || one.word().filter(Humidity.HumidityWord.DRY::equals).isPresent());
        if (recorded) {
            dry.add(words + "; humidity on record");
        } else if (humidity.isKnown()) {
            wet.add(words + "; but the humidity stated is above " + Math.round(DRY * 100) + " %");
        } else {
            open.add(words + "; but no humidity is stated");
        }
    }

    private void fluids(PartDescription description, List<String> wet, List<String> open, List<String> dry) {
        Stated<List<Fluid>> stated = description.environment().field(Environment::fluids);
        if (stated.isMissing()) {
            open.add("whether fluids wet the part is not stated");
        }
        if (stated.isNone()) {
            dry.add("no fluid wets the part, as stated");
        }
        for (Fluid fluid : stated.candidates().stream().flatMap(List::stream).toList()) {
            String name = fluid.name().single().orElse("fluid of unknown name");
            FluidTable.Electrolyte carries = fluid.name().single().flatMap(fluids::find)
                    .map(FluidTable.Fluid::electrolyte).orElse(FluidTable.Electrolyte.UNKNOWN);
            switch (carries) {
                case YES -> wet.add(name.replace('_', ' ') + " wets the part");
                case UNKNOWN -> open.add("whether " + name.replace('_', ' ') + " holds water is not known");
                case NO -> dry.add(name.replace('_', ' ') + " holds no water");
            }
        }
    }

    private static void water(Feature feature, List<String> wet, List<String> open, List<String> dry) {
        Stated<Drainage> stated = feature.drainage();
        if (stated.isNone()) {
            dry.add("water cannot stand here, as stated");
            return;
        }
        Optional<Drainage> drainage = stated.single();
        if (drainage.isEmpty()) {
            open.add("whether water stands here is not stated");
            return;
        }
        Stated<Boolean> holds = drainage.get().holdsWater();
        if (holds.is(true)) {
            wet.add("water stands here, as stated");
        } else if (holds.is(false)) {
            dry.add("no water stands here, as stated");
        } else if (drainage.get().opening().is(Opening.UP) && drainage.get().drainHoles().isNone()) {
            wet.add("the place opens upwards and has no drain hole");
        } else if (drainage.get().opening().isMissing()) {
            open.add("where the place opens to is not stated");
        }
    }
}
