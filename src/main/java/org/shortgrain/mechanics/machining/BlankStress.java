package org.shortgrain.mechanics.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.quench.FilmCoefficient;
import org.shortgrain.mechanics.quench.PublishedRelief;
import org.shortgrain.mechanics.quench.Quench;
import org.shortgrain.mechanics.quench.QuenchMaterial;
import org.shortgrain.mechanics.quench.QuenchRange;
import org.shortgrain.mechanics.quench.QuenchSolver;

/**
 * Finds the views of the blank's stress that a case has to consider: the models where they hold, the bound where they
 * do not, and never less than published measurements found.
 */
final class BlankStress {

    private final QuenchSolver solver;
    private final FilmCoefficient coldWater;
    private final PublishedRelief published;

    BlankStress(QuenchSolver solver, FilmCoefficient coldWater, PublishedRelief published) {
        this.solver = Objects.requireNonNull(solver, "solver");
        this.coldWater = Objects.requireNonNull(coldWater, "coldWater");
        this.published = Objects.requireNonNull(published, "published");
    }

    BlankViews of(ResidualStressCase c) {
        ReliefCredit relief = new ReliefCredit(c, published);
        if (c.section().rulingThickness().isEmpty()) {
            return bounded(c, relief, new Computed.Validity(true,
                    "any section; the thickness at quench is not known"), Optional.empty());
        }
        double thickness = c.section().rulingThickness().getAsDouble();
        double temperature = c.quench() instanceof Quench.Known known ? known.solutionTemperature()
                : c.material().solutionTemperature();
        Computed.Validity range = QuenchRange.of(thickness, temperature);
        if (!range.inside()) {
            return bounded(c, relief, range, Optional.empty());
        }
        ModelViews models = new ModelViews(solver, c, thickness, temperature);
        return c.quench() instanceof Quench.Known known ? modelled(c, relief, known, models, range)
                : bounded(c, relief, range, Optional.of(models));
    }

    /**
     * The bound; with it, where the section is known, the cold-water model, since the bound cannot say what cutting a
     * section from one side adds.
     */
    private BlankViews bounded(ResidualStressCase c, ReliefCredit relief, Computed.Validity validity,
            Optional<ModelViews> models) {
        BoundViews bound = new BoundViews(c);
        double stronger = published.upperYield().high();
        double scatter = published.model().high();
        List<View> nominal = share(relief.left(), bound.nominal());
        List<View> upper = share(relief.left() * Math.max(stronger, scatter), bound.upper());
        models.ifPresent(m -> {
            List<ResidualField> cold = m.asQuenched(c.material(), coldWater);
            nominal.addAll(share(relief.left(), cold));
            upper.addAll(share(relief.left() * scatter, cold));
            upper.addAll(share(relief.left(), m.asQuenched(c.material().withYieldTimes(stronger), coldWater)));
        });
        nominal.addAll(share(1, bound.remaining(relief.atLeast())));
        upper.addAll(share(scatter, bound.remaining(relief.atLeast())));
        BlankEvidence evidence = new BlankEvidence(c, relief, published);
        return new BlankViews(share(0, bound.nominal()), nominal, upper, validity,
                evidence.rangeOfBound(models.isPresent()), List.of(), evidence.sourcesOfBound(),
                evidence.notesOnBound());
    }

    private BlankViews modelled(ResidualStressCase c, ReliefCredit relief, Quench.Known quench, ModelViews models,
            Computed.Validity range) {
        QuenchMaterial metal = c.material();
        FilmCoefficient film = quench.film();
        QuenchMaterial stronger = metal.withYieldTimes(published.upperYield().high());
        FilmCoefficient strongest = quench.bathOnRecord() ? film : coldWater;
        List<ResidualField> asQuenched = models.asQuenched(metal, film);
        List<View> nominal = views(c, relief, models, metal, film, asQuenched);
        List<View> upper = views(c, relief, models, stronger, strongest, models.asQuenched(stronger, strongest));
        nominal.forEach(view -> upper.add(view.times(published.model().high())));
        models.mayBeInsideEdge(stronger, strongest).ifPresent(field -> upper.add(new View(field, relief.left())));

        double favourable = published.model().low() * published.aged().low() * relief.leftAtBest();
        BlankEvidence evidence = new BlankEvidence(c, relief, published);
        return new BlankViews(share(favourable, asQuenched), nominal, upper, range,
                evidence.rangeOfModel(quench), evidence.inputs(quench), evidence.sourcesOfModel(film),
                evidence.notesOnModel(quench));
    }

    /** The model, and what publications leave of it after relief, and of the cold-water stress in a milder bath. */
    private List<View> views(ResidualStressCase c, ReliefCredit relief, ModelViews models, QuenchMaterial metal,
            FilmCoefficient film, List<ResidualField> asQuenched) {
        List<View> views = share(relief.left(), asQuenched);
        if (film.shareOfColdWater() < 1) {
            views.addAll(share(relief.left() * film.shareOfColdWater(), models.asQuenched(metal, coldWater)));
        }
        models.isInsideEdge(metal, film).ifPresent(field -> views.add(new View(field, relief.left())));
        models.relieved(metal, film).ifPresent(field -> views.add(new View(field, 1)));
        views.addAll(share(1, new BoundViews(c).remaining(relief.atLeast())));
        return views;
    }

    private static List<View> share(double share, List<ResidualField> fields) {
        return new ArrayList<>(fields.stream().map(field -> new View(field, share)).toList());
    }
}
