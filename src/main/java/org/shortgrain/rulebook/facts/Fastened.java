package org.shortgrain.rulebook.facts;

import java.util.List;
import org.shortgrain.part.Fastener;
import org.shortgrain.part.Range;
import org.shortgrain.part.ThreadMaking;

/**
 * The fasteners through a place.
 *
 * @param fasteners what is stated of them; empty if there are none or nothing is stated
 */
public record Fastened(List<Fastener> fasteners) {

    private static final double MEGA = 1e6;

    /** Copies the list. */
    public Fastened {
        fasteners = List.copyOf(fasteners);
    }

    /**
     * {@return whether a fastener of some type is among them}
     *
     * @param type word that its type contains
     */
    public boolean has(String type) {
        return fasteners.stream().anyMatch(one -> Wording.names(one.type(), type));
    }

    /** {@return whether a fastener other than a rivet is stated here of which neither the preload nor torque and lubrication
     * are} */
    public boolean hasBoltOfUnknownPreload() {
        return fasteners.stream().filter(one -> !Wording.names(one.type(), "rivet")).anyMatch(one ->
                one.preload().isMissing() && (one.torque().isMissing() || one.lubrication().isMissing()));
    }

    /** {@return the greatest strength (MPa) of a fastener whose thread is cut; NaN if there is none} */
    public double strengthOfCutThreads() {
        return fasteners.stream().filter(one -> one.thread().is(ThreadMaking.CUT))
                .flatMap(one -> one.strength().candidates().stream()).mapToDouble(Range::highest).max()
                .orElse(Double.NaN) / MEGA;
    }

    /** {@return the greatest strength (MPa) of a plated fastener; NaN if there is none} */
    public double strengthOfPlatedBolts() {
        return fasteners.stream().filter(one -> one.plating().isKnown())
                .flatMap(one -> one.strength().candidates().stream()).mapToDouble(Range::highest).max()
                .orElse(Double.NaN) / MEGA;
    }
}
