package org.shortgrain.rulebook.facts;

import java.util.List;
import java.util.Optional;
import org.shortgrain.part.Fastener;
import org.shortgrain.part.FeatureKind;
import org.shortgrain.part.Fit;
import org.shortgrain.part.FitKind;
import org.shortgrain.part.Neighbour;
import org.shortgrain.part.Stated;
import org.shortgrain.part.Surface;

/**
 * What is joined on at a place, and how the crevice between is kept from water.
 *
 * @param place the place
 */
public record Joint(Place place) {

    private static final String[] ABSORBENT = {"felt", "cork", "paper", "fabric", "leather", "wood", "sponge",
        "open-cell"};

    /** {@return whether something is joined on: a face, a fastener or a neighbour is stated} */
    public boolean isThere() {
        return place.is(FeatureKind.FAYING_SURFACE) || !place.fasteners().isEmpty() || !place.neighbours().isEmpty();
    }

    /** {@return whether something is joined on, and the faces certainly have no sealant between them} */
    public boolean isDry() {
        return isThere() && place.sealing().isFayingDry();
    }

    /** {@return whether something is joined on, and nothing is stated of sealant between the faces} */
    public boolean isSealOpen() {
        return isThere() && place.sealing().faying().isMissing();
    }

    /** {@return whether fasteners go in wet: what is stated of one here, else of the sealing} */
    public Stated<Boolean> fastenersWet() {
        Optional<Stated<Boolean>> own = Optional.empty();
        for (Fastener fastener : place.fasteners()) {
            Stated<Boolean> wet = fastener.installedWet();
            if (wet.is(false)) {
                return wet;
            }
            own = own.isEmpty() && !(wet instanceof Stated.Absent) ? Optional.of(wet) : own;
        }
        return own.isPresent() ? own.get() : place.sealing().fastenersWet();
    }

    /** {@return whether there are fasteners, and nothing is stated of sealant on them} */
    public boolean areFastenersOpen() {
        return !place.fasteners().isEmpty() && fastenersWet().isMissing();
    }

    /** {@return whether the hole certainly has no primer where a fastener or bush goes in} */
    public boolean isHoleUnprimed() {
        return place.isBare() || place.surface(Surface::boreCoatedBeforeBush).is(false);
    }

    /** {@return whether a bush or pin is pressed in dry for certain; interference fasteners go in over dry primer} */
    public boolean isBushDry() {
        return isBush() && bushWet().is(false);
    }

    /** {@return whether a bush or pin is pressed in, and nothing is stated of wet sealant} */
    public boolean isBushOpen() {
        return isBush() && bushWet().isMissing();
    }

    private Stated<Boolean> bushWet() {
        return place.fit().field(Fit::installedWet);
    }

    private boolean isBush() {
        return place.isPressed() && !place.isFit(FitKind.INTERFERENCE_FASTENER);
    }

    /** {@return whether the ends of a bush or pin certainly are not sealed} */
    public boolean areEndsOpen() {
        return place.fit().field(Fit::sealedEnds).is(false);
    }

    /**
     * {@return whether a neighbour is named so}
     *
     * @param word what its name contains
     */
    public boolean hasNeighbour(String word) {
        return place.neighbours().stream().anyMatch(one -> Wording.names(one.what(), word));
    }

    /** {@return neighbours that take up water: felt, cork, paper, fabric, leather, wood, sponge} */
    public List<Neighbour> absorbents() {
        return place.neighbours().stream().filter(one -> Wording.names(one.material(), ABSORBENT)
                || Wording.names(one.what(), ABSORBENT)).toList();
    }
}
