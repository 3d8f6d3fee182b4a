package org.shortgrain.mechanics.machining;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
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
        return nominal.stream().max(Comparator.comparingDouble(e -> e.worstOf(ways))).orElseThrow();
    }

    /** The range of the worst stress over the ways that count; a view that cannot say how it is released counts as it was. */
    Band band(Set<Release> ways) {
        return band(nominal.stream(), Stream.of(lower, nominal, upper).flatMap(List::stream), ways);
    }

    /** The range of one way of release, from the views that can say; empty where none can. */
    Optional<Band> band(Release way) {
        Set<Release> only = EnumSet.of(way);
        if (nominal.stream().noneMatch(e -> e.saysOf(only))) {
            return Optional.empty();
        }
        return Optional.of(band(nominal.stream().filter(e -> e.saysOf(only)),
                Stream.of(lower, nominal, upper).flatMap(List::stream).filter(e -> e.saysOf(only)), only));
    }

    private static Band band(Stream<Exposure> nominal, Stream<Exposure> all, Set<Release> ways) {
        double value = nominal.mapToDouble(e -> e.worstOf(ways)).max().orElseThrow();
        double[] ends = {value, value};
        all.mapToDouble(e -> e.worstOf(ways)).forEach(s -> {
            ends[0] = Math.min(ends[0], s);
            ends[1] = Math.max(ends[1], s);
        });
        return new Band(value, ends[0], ends[1]);
    }
}
