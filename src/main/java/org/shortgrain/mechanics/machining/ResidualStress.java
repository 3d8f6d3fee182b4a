package org.shortgrain.mechanics.machining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.quench.PublishedRelief;

/**
 * The residual stress that quenching, its relief and machining leave at a finished surface.
 *
 * <p>Every view of the blank's stress that the facts allow is cut to the finished section in every way that the
 * restraint allows; the worst counts. Nothing is taken from a favourable assumption: an unknown quench is bounded, an
 * unknown relief is none, an unknown position is the worst position.
 *
 * <p>Not in it: the thin layer that machining itself leaves, straightening, cold working of the surface, peening, and
 * the concentration at a fillet. They come on top.
 */
public final class ResidualStress {

    private final ResidualFields fields;

    /**
     * A computation that respects published experience.
     *
     * @param published what published measurements found left after relief
     */
    public ResidualStress(PublishedRelief published) {
        this.fields = new ResidualFields(Objects.requireNonNull(published, "published"));
    }

    /**
     * {@return the residual stress at a finished surface}
     *
     * @param c the case
     */
    public ExposedStress at(ResidualStressCase c) {
        FieldSet set = fields.of(c);
        Exposures exposures = new Exposures(exposures(set.lower(), c), exposures(set.nominal(), c),
                exposures(set.upper(), c));
        return new ExposedStressReport(c, set, exposures, countedWays(c.surface())).write();
    }

    private static Set<Release> countedWays(FinishedSurface surface) {
        Set<Release> ways = EnumSet.copyOf(surface.restraint().releases());
        if (surface.local()) {
            ways.add(Release.AS_IS);
        }
        return ways;
    }

    private static List<Exposure> exposures(List<ResidualField> fields, ResidualStressCase c) {
        List<Exposure> all = new ArrayList<>();
        for (ResidualField field : fields) {
            for (KeptSection kept : KeptSection.allowedBy(c.surface(), field.thickness())) {
                all.add(Exposure.of(field, kept, c.surface(), c.direction()));
            }
        }
        return all;
    }

    /**
     * What the surface shows in each view.
     *
     * @param lower   exposures of the lower end
     * @param nominal exposures of the value
     * @param upper   exposures of the upper end
     */
    record Exposures(List<Exposure> lower, List<Exposure> nominal, List<Exposure> upper) {

        /** The range of the worst stress over the given ways, before any cap; empty where no view can say. */
        Optional<Band> band(Set<Release> ways) {
            List<Exposure> saying = nominal.stream().filter(e -> e.saysOf(ways)).toList();
            if (saying.isEmpty()) {
                return Optional.empty();
            }
            double value = governing(ways).worstOf(ways);
            double high = upper.stream().filter(e -> e.saysOf(ways)).mapToDouble(e -> e.worstOf(ways)).max()
                    .orElse(value);
            double low = lower.stream().filter(e -> e.saysOf(ways)).mapToDouble(e -> e.worstOf(ways)).min()
                    .orElse(value);
            return Optional.of(new Band(value, Math.min(low, value), Math.max(high, value)));
        }

        /** The nominal exposure with the worst stress. */
        Exposure governing(Set<Release> ways) {
            return nominal.stream().max(Comparator.comparingDouble(e -> e.worstOf(ways))).orElseThrow();
        }
    }
}
