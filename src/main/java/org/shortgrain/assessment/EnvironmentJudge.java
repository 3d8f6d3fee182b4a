package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.part.Environment;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Fluid;
import org.shortgrain.part.Humidity;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;
import org.shortgrain.reference.FluidTable;
import org.shortgrain.reference.ReferenceTables;
import org.shortgrain.reference.StandIns;
import org.shortgrain.reference.ZoneTable;
import org.shortgrain.review.Factor;
import org.shortgrain.rulebook.facts.Zone;

/**
 * Judges how wet a place is.
 *
 * <p>A place counts as dry only by evidence: a zone of the driest class, humidity on record, metal above the dew point, no
 * fluid, and no water held. Coating, sealant and paint delay attack and are not counted here. A zone that is not stated
 * leaves the factor unknown.
 */
final class EnvironmentJudge {

    /** Wetness class of a controlled, dry zone. */
    static final int CONTROLLED = 0;
    /** Wetness class from which water is pooled, or the place immersed. */
    private static final int POOLED = 4;
    /** The zone without air, where nothing condenses. */
    private static final String VACUUM = "orbit_vacuum";

    private final ZoneTable zones;
    private final FluidTable fluids;
    private final StandIns standIns;
    private final double dry;

    EnvironmentJudge(ReferenceTables tables) {
        this.zones = tables.zones();
        this.fluids = tables.fluids();
        this.standIns = tables.standIns();
        this.dry = standIns.of("dry_air").value();
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
        List<String> names = List.copyOf(new LinkedHashSet<>(Stated.items(stated)));
        Optional<ZoneTable.Zone> wettest = wettest(names);
        return new Zone(names, wettest.isPresent() ? wettest.get().wetness().rank() : -1);
    }

    /**
     * {@return how wet a place is}
     *
     * @param site the place
     * @param zone its zone
     */
    Wetness judge(Site site, Zone zone) {
        Optional<ZoneTable.Zone> wettest = wettest(zone.names());
        List<Sign> signs = new ArrayList<>();
        wettest.ifPresentOrElse(one -> zone(site, one, signs), () -> signs.add(
                Sign.open("the zone is not stated; the worst of the list is " + zones.worst().name())));
        fluids(site.description(), signs);
        signs.addAll(WaterReading.at(site, wettest, standIns));
        Wetness wetness = Wetness.of(signs, wettest.isPresent());
        if (wetness.state() == Wetness.State.UNKNOWN) {
            signs.forEach(sign -> sign.ask().ifPresent(ask -> site.ask(Factor.ENVIRONMENT, ask.text(), ask.why(),
                    Optional.of("the place counts as one that may hold water"), ask.at())));
        }
        return wetness;
    }

    private Optional<ZoneTable.Zone> wettest(List<String> names) {
        Optional<ZoneTable.Zone> wettest = Optional.empty();
        for (String name : names) {
            Optional<ZoneTable.Zone> zone = zones.find(name);
            boolean wetter = zone.isPresent()
                    && (wettest.isEmpty() || zone.get().wetness().rank() > wettest.get().wetness().rank());
            wettest = wetter ? zone : wettest;
        }
        return wettest;
    }

    private void zone(Site site, ZoneTable.Zone wettest, List<Sign> signs) {
        String words = String.format(Locale.ROOT, "zone %s: %s, %s", wettest.word(), wettest.wetness().code(),
                wettest.wetness().meaning());
        if (wettest.wetness().rank() >= POOLED) {
            signs.add(Sign.stands(words));
        } else if (wettest.wetness().rank() > CONTROLLED) {
            signs.add(Sign.comes(words));
        } else {
            controlled(site, wettest, words, signs);
        }
    }

    private void controlled(Site site, ZoneTable.Zone zone, String words, List<Sign> signs) {
        Stated<Humidity> humidity = site.description().environment().field(Environment::humidity);
        if (humidity.isMissing() || humidity.isNone()) {
            signs.add(Sign.open(words + "; but no humidity is stated"));
            return;
        }
        double greatest = humidity.candidates().stream().mapToDouble(this::greatest).max().orElseThrow();
        if (greatest > dry) {
            signs.add(Sign.comes(String.format(Locale.ROOT, "%s; but the humidity stated, up to %.0f %%, is above %.0f %%",
                    words, greatest * 100, dry * 100)));
            return;
        }
        signs.add(Sign.dry(String.format(Locale.ROOT, "%s; humidity on record, up to %.0f %%", words, greatest * 100)));
        if (greatest > 0 && !zone.word().equals(VACUUM)) {
            signs.add(new CondensationReading(site, standIns).onMetal(zone, greatest));
        }
    }

    /** Greatest relative humidity that a statement allows: the word dry stands for the limit of the driest class. */
    private double greatest(Humidity humidity) {
        boolean saidDry = humidity.word().filter(Humidity.HumidityWord.DRY::equals).isPresent();
        return humidity.relative().map(Range::highest).orElse(saidDry ? dry : 1.0);
    }

    private void fluids(PartDescription description, List<Sign> signs) {
        Stated<List<Fluid>> stated = description.environment().field(Environment::fluids);
        if (stated.isMissing()) {
            signs.add(Sign.open("whether fluids wet the part is not stated"));
        }
        if (stated.isNone()) {
            signs.add(Sign.dry("no fluid wets the part, as stated"));
        }
        for (Fluid fluid : Stated.items(stated)) {
            String name = fluid.name().single().orElse("fluid of unknown name");
            FluidTable.Electrolyte carries = fluid.name().single().flatMap(fluids::find)
                    .map(FluidTable.Fluid::electrolyte).orElse(FluidTable.Electrolyte.UNKNOWN);
            String words = name.replace('_', ' ');
            signs.add(switch (carries) {
                case YES -> Sign.comes(words + " wets the part");
                case UNKNOWN -> Sign.open("whether " + words + " holds water is not known");
                case NO -> Sign.dry(words + " holds no water");
            });
        }
    }
}
