package org.shortgrain.mechanics.machining;

import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.mechanics.Band;

/**
 * What a surface shows in each view and for each section that may have been kept.
 *
 * @param lower   at the favourable end of the published scatter
 * @param nominal of which the largest is the value
 * @param upper   at the unfavourable end
 */
record Exposures(List<Exposure> lower, List<Exposure> nominal, List<Exposure> upper) {

    Exposures {
        lower = List.copyOf(lower);
        nominal = List.copyOf(nominal);
        upper = List.copyOf(upper);
    }

    /** The exposure behind the value: the worst over the ways that count. */
    Exposure governing(Set<Release> ways) {
        return Collections.max(nominal, Comparator.comparingDouble(e -> e.worstOf(ways)));
    }

    /** The range of the worst stress over the ways that count; a view that cannot say how it is released counts as it was. */
    Band band(Set<Release> ways) {
        return bandOf(nominal, List.of(lower, nominal, upper), ways);
    }

    /** The range of one way of release, from the views that can say; empty where none can. */
    Optional<Band> band(Release way) {
        Set<Release> only = EnumSet.of(way);
        List<Exposure> saying = saying(nominal, only);
        return saying.isEmpty() ? Optional.empty()
                : Optional.of(bandOf(saying, List.of(saying(lower, only), saying, saying(upper, only)), only));
    }

    private static List<Exposure> saying(List<Exposure> exposures, Set<Release> ways) {
        return exposures.stream().filter(e -> e.saysOf(ways)).toList();
    }

    private static Band bandOf(List<Exposure> nominal, List<List<Exposure>> all, Set<Release> ways) {
        double value = Double.NEGATIVE_INFINITY;
        for (Exposure e : nominal) {
            value = Math.max(value, e.worstOf(ways));
        }
        double low = value;
        double high = value;
        for (List<Exposure> some : all) {
            for (Exposure e : some) {
                low = Math.min(low, e.worstOf(ways));
                high = Math.max(high, e.worstOf(ways));
            }
        }
        return new Band(value, low, high);
    }
}
