package org.shortgrain.mechanics.machining;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.quench.PublishedRelief;
import org.shortgrain.mechanics.quench.QuenchBaths;
import org.shortgrain.mechanics.quench.QuenchSolver;

/**
 * The residual stress that quenching, its relief and machining leave at a finished surface.
 *
 * <p>Every view of the blank's stress that the facts allow is cut to the finished section in every way that the
 * restraint allows; the worst counts. Nothing is taken from a favourable assumption: an unknown quench is bounded, an
 * unknown relief is none, an unknown position is the worst position, and no model is credited with less stress than
 * published measurements found.
 *
 * <p>Not in it: the thin layer that machining itself leaves, straightening, cold working of the surface, peening, and
 * the concentration at a fillet. They come on top. For rough machining before heat treatment the section at quench is
 * the rough-machined one.
 *
 * <p>Safe for use by several threads.
 */
public final class ResidualStress {

    private final BlankStress blank;

    /**
     * A computation that respects published experience.
     *
     * @param solver    computes quenches and remembers them
     * @param baths     the baths on file
     * @param published what published measurements found left after relief
     */
    public ResidualStress(QuenchSolver solver, QuenchBaths baths, PublishedRelief published) {
        this.blank = new BlankStress(solver, baths.coldWater(), published);
    }

    /**
     * {@return the residual stress at a finished surface}
     *
     * @param c the case
     */
    public ExposedStress at(ResidualStressCase c) {
        return report(c).write();
    }

    /**
     * {@return the stress at the same surface as it was in the blank, held flat and free to bow, as far as each can be
     * computed}
     *
     * @param c the case
     */
    public List<Computed> ways(ResidualStressCase c) {
        return report(c).ways();
    }

    private ExposedStressReport report(ResidualStressCase c) {
        BlankViews views = blank.of(c);
        Map<ResidualField, List<Exposure>> known = new IdentityHashMap<>();
        Exposures exposures = new Exposures(exposures(views.lower(), c, known), exposures(views.nominal(), c, known),
                exposures(views.upper(), c, known));
        return new ExposedStressReport(c, views, exposures, countedWays(c.surface()));
    }

    /**
     * {@return the elastic stress at the root of a narrow slot cut from the quenched surface down to the depth of the
     * finished surface; empty where that depth is not known}
     *
     * @param c         the case
     * @param halfWidth root radius or half-width of the slot, m
     */
    public Optional<Computed> slotRoot(ResidualStressCase c, double halfWidth) {
        return c.surface().depth().isEmpty() || c.surface().depth().getAsDouble() == 0 ? Optional.empty()
                : Optional.of(new SlotReport(c, blank.of(c), c.surface().depth().getAsDouble(), halfWidth).write());
    }

    private static Set<Release> countedWays(FinishedSurface surface) {
        Set<Release> ways = EnumSet.copyOf(surface.restraint().releases());
        if (surface.local()) {
            ways.add(Release.AS_IS);
        }
        return ways;
    }

    /** Several views take a share of one field; each field is cut once. */
    private static List<Exposure> exposures(List<View> views, ResidualStressCase c,
            Map<ResidualField, List<Exposure>> known) {
        List<Exposure> all = new ArrayList<>();
        for (View view : views) {
            known.computeIfAbsent(view.field(), field -> cut(field, c)).forEach(one -> all.add(one.in(view)));
        }
        return all;
    }

    private static List<Exposure> cut(ResidualField field, ResidualStressCase c) {
        return KeptSection.allowedBy(c.surface(), field.thickness()).stream()
                .map(kept -> Exposure.of(field, kept, c.surface(), c.direction())).toList();
    }
}
