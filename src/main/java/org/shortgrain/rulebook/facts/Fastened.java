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
        for (Fastener one : fasteners) {
            if (Wording.names(one.type(), type)) {
                return true;
            }
        }
        return false;
    }

    /** {@return whether a fastener other than a rivet is stated here of which neither the preload nor torque and lubrication
     * are} */
    public boolean hasBoltOfUnknownPreload() {
        for (Fastener one : fasteners) {
            if (!Wording.names(one.type(), "rivet") && isPreloadOpen(one)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isPreloadOpen(Fastener one) {
        return one.preload().isMissing() && (one.torque().isMissing() || one.lubrication().isMissing());
    }

    /** {@return the greatest strength (MPa) of a fastener whose thread is cut; NaN if there is none} */
    public double strengthOfCutThreads() {
        double strongest = Double.NaN;
        for (Fastener one : fasteners) {
            strongest = one.thread().is(ThreadMaking.CUT) ? stronger(strongest, one) : strongest;
        }
        return strongest / MEGA;
    }

    /** {@return the greatest strength (MPa) of a plated fastener; NaN if there is none} */
    public double strengthOfPlatedBolts() {
        double strongest = Double.NaN;
        for (Fastener one : fasteners) {
            strongest = one.plating().isKnown() ? stronger(strongest, one) : strongest;
        }
        return strongest / MEGA;
    }

    /** The greater of a strength and that of a fastener (Pa); one that is not known counts for nothing. */
    private static double stronger(double strongest, Fastener one) {
        double strength = Range.greatest(one.strength()).orElse(Double.NaN);
        return strength > strongest || Double.isNaN(strongest) ? strength : strongest;
    }
}
