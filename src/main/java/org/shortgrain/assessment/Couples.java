package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.shortgrain.part.Fastener;
import org.shortgrain.part.Fit;
import org.shortgrain.part.Location;
import org.shortgrain.part.Neighbour;
import org.shortgrain.part.Plating;
import org.shortgrain.part.Stated;
import org.shortgrain.reference.GalvanicMembers;
import org.shortgrain.reference.GalvanicMembers.Kind;
import org.shortgrain.reference.GalvanicMembers.Member;
import org.shortgrain.reference.GalvanicTable;
import org.shortgrain.rulebook.facts.Couple;
import org.shortgrain.rulebook.facts.Couple.Call;
import org.shortgrain.rulebook.facts.Couple.Contact;
import org.shortgrain.rulebook.facts.Couple.Side;
import org.shortgrain.rulebook.facts.Finish;
import org.shortgrain.rulebook.facts.Metal;
import org.shortgrain.rulebook.facts.Part;
import org.shortgrain.rulebook.facts.Place;
import org.shortgrain.rulebook.facts.Sealing;
import org.shortgrain.rulebook.facts.Zone;

/**
 * Finds the couples of a part: with its neighbours, bushes and fasteners, each as the metal that touches.
 *
 * <p>Plating is the metal that touches; paint and conversion film are not counted, they wear. Where a material leaves a
 * choice, the pair that lies furthest apart counts. One series only, the anodic index: no difference is taken across two.
 */
final class Couples {

    /** Wetness class that is taken where no zone is stated: the wettest. */
    private static final int WETTEST = 5;

    private static final List<String> SMALL = List.of("bush", "pin", "bolt", "screw", "rivet", "fastener", "insert");

    private final GalvanicTable series;
    private final GalvanicMembers members;

    /**
     * Makes a finder.
     *
     * @param series  potentials and limits
     * @param members where materials stand in the series
     */
    Couples(GalvanicTable series, GalvanicMembers members) {
        this.series = series;
        this.members = members;
    }

    /**
     * {@return the couples of a part}
     *
     * @param part   the part
     * @param places its places
     */
    List<Couple> of(Part part, List<Place> places) {
        List<Couple> couples = new ArrayList<>();
        Spot whole = new Spot(Optional.empty(), side(part.metal(), part.finish()), part.zone(), part.sealing(), false);
        addNeighbours(whole, part.description().neighbours(), couples);
        for (Place place : places) {
            Spot here = new Spot(Optional.of(place.id()), side(place.metal(), place.finish()), place.zone(),
                    place.sealing(), place.isSusceptible() && place.isStressed());
            addNeighbours(here, place.feature().neighbours(), couples);
            place.fit().single().flatMap(fit -> bush(here, fit)).ifPresent(couples::add);
            for (Fastener one : place.fasteners()) {
                fastener(here, one).ifPresent(couples::add);
            }
        }
        return couples.stream().filter(couple -> !isSaidTwice(couple, couples)).toList();
    }

    private void addNeighbours(Spot here, Stated<List<Neighbour>> stated, List<Couple> couples) {
        for (Neighbour one : Stated.items(stated)) {
            neighbour(here, one).ifPresent(couples::add);
        }
    }

    /** A bush or fastener that is named among the neighbours as well as in the fit makes one couple, that of the fit. */
    private static boolean isSaidTwice(Couple couple, List<Couple> all) {
        if (!couple.isBy(Contact.NEIGHBOUR) || !isSmall(couple.other().name().toLowerCase(Locale.ROOT))) {
            return false;
        }
        for (Couple other : all) {
            if (!other.isBy(Contact.NEIGHBOUR) && other.other().outer().equals(couple.other().outer())) {
                return true;
            }
        }
        return false;
    }

    private static boolean isSmall(String name) {
        for (String small : SMALL) {
            if (name.contains(small)) {
                return true;
            }
        }
        return false;
    }

    /** The side of the part at one place, and what holds there. */
    private record Spot(Optional<String> feature, Outside part, Zone zone, Sealing sealing, boolean atRisk) {
    }

    /** A side with its rows of the index, of which one holds. */
    private record Outside(Side side, List<GalvanicTable.Entry> rows) {
    }

    private Optional<Couple> neighbour(Spot here, Neighbour neighbour) {
        boolean answered = neighbour.compatible().is(true) && !neighbour.material().isKnown();
        boolean dry = neighbour.wetted().is(false);
        if (answered || dry) {
            return Optional.empty();
        }
        String name = neighbour.what().single().orElse("neighbour");
        return outside(name, neighbour.material(), neighbour.coating()).map(other -> couple(Contact.NEIGHBOUR, here,
                other, ratio(neighbour.areaRatio()), neighbour.insulated(), neighbour.origin().at()));
    }

    private Optional<Couple> bush(Spot here, Fit fit) {
        if (!fit.bushMaterial().isKnown()) {
            return Optional.empty();
        }
        return outside("bush", fit.bushMaterial(), fit.bushCoating()).map(other -> couple(Contact.BUSH, here, other,
                OptionalDouble.empty(), fit.installedWet(), fit.bushMaterial().at()));
    }

    private Optional<Couple> fastener(Spot here, Fastener fastener) {
        if (!fastener.material().isKnown()) {
            return Optional.empty();
        }
        Stated<Boolean> wet = fastener.installedWet() instanceof Stated.Absent<Boolean> ? here.sealing().fastenersWet()
                : fastener.installedWet();
        return outside(fastener.type().single().orElse("fastener"), fastener.material(), fastener.plating())
                .map(other -> couple(Contact.FASTENER, here, other, OptionalDouble.empty(), wet,
                        fastener.origin().at()));
    }

    private static OptionalDouble ratio(Stated<Double> stated) {
        return stated.single().filter(value -> value > 0).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private Couple couple(Contact contact, Spot here, Outside other, OptionalDouble ratio, Stated<Boolean> apart,
            Location at) {
        int wetness = here.zone().isStated() ? here.zone().wetness() : WETTEST;
        Pair pair = furthest(here.part(), other);
        Side anode = pair.partIsAnode() ? here.part().side() : other.side();
        Side cathode = pair.partIsAnode() ? other.side() : here.part().side();
        Call band = pair.difference().isEmpty() ? Call.NOT_KNOWN : GalvanicCall.band(pair.difference().getAsInt(),
                series.usable(wetness), series.isolate(wetness));
        GalvanicCall call = band == Call.NOT_KNOWN ? new GalvanicCall(band, "")
                : GalvanicCall.of(anode, cathode, band, wetness, apart.is(true));
        return new Couple(contact, here.feature(), here.part().side(), other.side(), pair.difference(),
                pair.partIsAnode(), series.usable(wetness), band, call.call(), call.reason(), ratio, apart, here.zone(),
                here.sealing(), here.atRisk(), at);
    }

    /** The difference of a pair, and whether the part is its anode. */
    private record Pair(OptionalInt difference, boolean partIsAnode) {
    }

    private static Pair furthest(Outside part, Outside other) {
        Pair furthest = new Pair(OptionalInt.empty(), false);
        for (GalvanicTable.Entry mine : part.rows()) {
            for (GalvanicTable.Entry theirs : other.rows()) {
                int difference = GalvanicTable.difference(mine, theirs);
                if (difference > furthest.difference().orElse(-1)) {
                    boolean anode = mine.potential().orElseThrow() < theirs.potential().orElseThrow();
                    furthest = new Pair(OptionalInt.of(difference), anode);
                }
            }
        }
        return furthest;
    }

    private Outside side(Metal metal, Finish finish) {
        Optional<String> plating = finish.plating().field(Plating::kind).single();
        Optional<Member> outer = plating.isPresent() ? plating.flatMap(members::plating)
                : members.ofFamily(metal.family());
        boolean painted = finish.primer().isKnown() || finish.topcoat().isKnown();
        return outside(new Side(metal.stated(), metal.family(), !metal.family().isEmpty(), outer,
                new Stated.Absent<>(finish.plating().at()), painted, finish.isMissing()));
    }

    /** Empty if it is no conductor. */
    private Optional<Outside> outside(String what, Stated<String> material, Stated<String> coating) {
        String text = material.candidates().stream().findFirst().orElse("");
        Optional<Member> base = members.metal(text);
        if (base.isPresent() && base.get().kind() == Kind.INSULATOR) {
            return Optional.empty();
        }
        Optional<Member> plating = coating.single().flatMap(members::plating);
        String name = (what + " " + text + coating.single().map(one -> ", " + one).orElse("")).strip();
        String family = members.family(text).orElseGet(() -> onlyFamily(base));
        return Optional.of(outside(new Side(name, family, !text.isEmpty(), plating.or(() -> base), coating,
                coating.isKnown() && plating.isEmpty(), coating.isNone())));
    }

    private static String onlyFamily(Optional<Member> base) {
        return base.isPresent() && base.get().families().size() == 1 ? base.get().families().iterator().next() : "";
    }

    private static Outside outside(Side side) {
        return new Outside(side, side.outer().map(Member::rows).orElse(List.of()));
    }
}
