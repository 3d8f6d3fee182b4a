package org.shortgrain.rulebook.facts;

import java.util.List;
import org.shortgrain.part.ClampUp;
import org.shortgrain.part.Fastener;
import org.shortgrain.part.Range;

/**
 * The gaps at a place that assembly pulls shut.
 *
 * @param stated    what is stated of them; empty if there are none or nothing is stated
 * @param fasteners the fasteners that pull
 */
public record Gaps(List<ClampUp> stated, List<Fastener> fasteners) {

    private static final double MILLIMETRES = 1000;

    /** Copies the lists. */
    public Gaps {
        stated = List.copyOf(stated);
        fasteners = List.copyOf(fasteners);
    }

    /** {@return the greatest gap (mm) that assembly may pull shut without a shim and without a stated limit; NaN if there is
     * none, which no comparison holds for} */
    public double greatestOpenGap() {
        double greatest = Double.NaN;
        for (ClampUp one : stated) {
            double gap = Range.greatest(one.gap()).orElse(Double.NaN);
            boolean open = one.shim().isNone() && !one.maxGapWithoutShim().isKnown();
            greatest = open && (gap > greatest || Double.isNaN(greatest)) ? gap : greatest;
        }
        return greatest * MILLIMETRES;
    }

    /** {@return whether a bolt across a clevis pulls its arms together for certain: a gap is stated and no shim} */
    public boolean closesClevis() {
        return hasUnshimmedGap() && fasteners.stream().anyMatch(one -> one.clevis().is(true));
    }

    private boolean hasUnshimmedGap() {
        for (ClampUp one : stated) {
            if (!one.shim().isKnown() && one.gap().surely(range -> range.highest() > 0)) {
                return true;
            }
        }
        return false;
    }

    /** {@return the gaps as stated, for texts} */
    public List<String> say() {
        return stated.stream().flatMap(one -> one.gap().candidates().stream()).map(gap -> "gap " + gap.entered())
                .toList();
    }
}
