package org.shortgrain.mechanics.machining;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
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
        BlankViews views = blank.of(c);
        Exposures exposures = new Exposures(exposures(views.lower(), c), exposures(views.nominal(), c),
                exposures(views.upper(), c));
        return new ExposedStressReport(c, views, exposures, countedWays(c.surface())).write();
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
}
