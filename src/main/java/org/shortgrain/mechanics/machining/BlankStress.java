package org.shortgrain.mechanics.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.mechanics.quench.FilmCoefficient;
import org.shortgrain.mechanics.quench.PublishedRelief;
import org.shortgrain.mechanics.quench.Quench;
import org.shortgrain.mechanics.quench.QuenchMaterial;
import org.shortgrain.mechanics.quench.QuenchRange;
import org.shortgrain.mechanics.quench.QuenchSolver;
import org.shortgrain.mechanics.quench.RetainedShare;
import org.shortgrain.mechanics.quench.StressRelief;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/**
 * Finds the views of the blank's stress that a case has to consider: the models where they hold, the bound where they
 * do not, and never less than published measurements found.
 */
final class BlankStress {

    private static final Citation METHOD = new Citation("quench-method", "quench, relief and bound",
            SourceStatus.DERIVED);

    private final QuenchSolver solver;
    private final FilmCoefficient coldWater;
    private final PublishedRelief published;

    BlankStress(QuenchSolver solver, FilmCoefficient coldWater, PublishedRelief published) {
        this.solver = Objects.requireNonNull(solver, "solver");
        this.coldWater = Objects.requireNonNull(coldWater, "coldWater");
        this.published = Objects.requireNonNull(published, "published");
    }

    BlankViews of(ResidualStressCase c) {
        if (c.section().rulingThickness().isEmpty()) {
            return bounded(c, new Computed.Validity(true, "any section; the thickness at quench is not known"),
                    Optional.empty());
        }
        double thickness = c.section().rulingThickness().getAsDouble();
        double temperature = c.quench() instanceof Quench.Known known ? known.solutionTemperature()
                : c.material().solutionTemperature();
        Computed.Validity range = QuenchRange.of(thickness, temperature);
        ModelViews models = new ModelViews(solver, c, thickness, temperature);
        if (!range.inside()) {
            return bounded(c, range, Optional.empty());
        }
        return c.quench() instanceof Quench.Known known ? modelled(c, known, models, range)
                : bounded(c, range, Optional.of(models));
    }

    /**
     * The bound; with it, where the section is known, the cold-water model, since the bound cannot say what cutting a
     * section from one side adds.
     */
    private BlankViews bounded(ResidualStressCase c, Computed.Validity validity, Optional<ModelViews> models) {
        BoundViews bound = new BoundViews(c);
        double left = creditedShare(c);
        double stronger = published.upperYield().high();
        double scatter = published.model().high();
        List<ResidualField> nominal = scaled(bound.nominal(), left);
        List<ResidualField> upper = scaled(bound.upper(), left * Math.max(stronger, scatter));
        models.ifPresent(m -> {
            nominal.addAll(scaled(m.asQuenched(c.material(), coldWater), left));
            upper.addAll(scaled(m.asQuenched(c.material().withYieldTimes(stronger), coldWater), left));
            upper.addAll(scaled(m.asQuenched(c.material(), coldWater), left * scatter));
        });
        List<String> notes = new ArrayList<>(List.of(c.quench() instanceof Quench.Unknown
                ? "the quench is not known: the bound from the W-temper yield stands, and no compression is credited"
                : "the models do not hold here: the bound from the W-temper yield stands"));
        notes.addAll(reliefNotes(c));
        return new BlankViews(scaled(bound.nominal(), 0), nominal, upper, atLeast(c), validity, String.format(
                Locale.ROOT, "lower end: a mild quench leaves nothing; value: the bound%s; upper end: the larger of"
                        + " %.3g of the value and of %.2g times the flow stress",
                models.isPresent() ? " or the cold-water model" : "", scatter, stronger),
                List.of(), sources(c, Optional.empty()), notes);
    }

    private BlankViews modelled(ResidualStressCase c, Quench.Known quench, ModelViews models,
            Computed.Validity range) {
        QuenchMaterial metal = c.material();
        QuenchMaterial stronger = metal.withYieldTimes(published.upperYield().high());
        FilmCoefficient film = quench.film();
        List<ResidualField> nominal = views(c, models, metal, film);
        List<ResidualField> upper = new ArrayList<>(views(c, models, stronger,
                quench.bathOnRecord() ? film : coldWater));
        upper.addAll(scaled(nominal, published.model().high()));
        models.insideEdge(stronger, film).ifPresent(field -> upper.add(scaled(field, creditedShare(c))));
        double favourable = published.model().low() * published.aged().low()
                * c.relief().retained(published).map(RetainedShare::low).orElse(1.0);
        return new BlankViews(scaled(models.asQuenched(metal, film), favourable), nominal, upper, atLeast(c), range,
                rangeBasis(quench), inputs(quench), sources(c, Optional.of(film)), notes(c, quench));
    }

    /** The model, and what publications leave of it after relief, and of the cold-water stress in a milder bath. */
    private List<ResidualField> views(ResidualStressCase c, ModelViews models, QuenchMaterial metal,
            FilmCoefficient film) {
        double left = creditedShare(c);
        List<ResidualField> views = scaled(models.asQuenched(metal, film), left);
        if (film.shareOfColdWater() < 1) {
            views.addAll(scaled(models.asQuenched(metal, coldWater), left * film.shareOfColdWater()));
        }
        models.relieved(metal, film).ifPresent(views::add);
        return views;
    }

    /** Share of the as-quenched stress left after the relief; all of it where the relief does not reach. */
    private double creditedShare(ResidualStressCase c) {
        if (c.relief() instanceof StressRelief.UphillQuenched && !reachedByUphill(c)) {
            return 1;
        }
        return c.relief().retained(published).map(RetainedShare::high).orElse(1.0);
    }

    private boolean reachedByUphill(ResidualStressCase c) {
        FinishedSurface surface = c.surface();
        boolean near = surface.depth().orElse(Double.MAX_VALUE) <= published.uphillReach().depth();
        boolean otherFaceNear = surface.local() || surface.thickness().isPresent()
                && c.section().rulingThickness().isPresent()
                && c.section().rulingThickness().getAsDouble() - surface.depth().orElse(0)
                        - surface.thickness().getAsDouble() <= published.uphillReach().depth();
        return surface.holeAxis().isEmpty() && near && otherFaceNear;
    }

    private double atLeast(ResidualStressCase c) {
        return c.relief().retained(published).map(RetainedShare::atLeast).orElse(0.0);
    }

    private static List<ResidualField> scaled(List<ResidualField> fields, double share) {
        return new ArrayList<>(fields.stream().map(field -> scaled(field, share)).toList());
    }

    private static ResidualField scaled(ResidualField field, double share) {
        return share == 1 ? field
                : field.times(share, String.format(Locale.ROOT, "%.3g of: %s", share, field.basis()));
    }

    private String rangeBasis(Quench.Known quench) {
        return String.format(Locale.ROOT, "lower end: %.2g of the model for scatter and %.2g for ageing; value: the"
                + " model, but no less than publications found left; upper end: the larger of %.3g of the value and of"
                + " %.2g times the flow stress%s", published.model().low(), published.aged().low(),
                published.model().high(), published.upperYield().high(),
                quench.bathOnRecord() ? "" : " in cold water, as the bath is not on record");
    }

    private static List<Computed.Input> inputs(Quench.Known quench) {
        return List.of(
                new Computed.Input("T0", "solution temperature", SiUnit.DEGREE_CELSIUS,
                        Band.exact(quench.solutionTemperature()), "stated", Optional.empty()),
                new Computed.Input("Tb", "bath temperature of " + quench.film().name(), SiUnit.DEGREE_CELSIUS,
                        Band.exact(quench.film().bathTemperature()), "table " + quench.film().name(),
                        Optional.of(quench.film().source())));
    }

    private List<Citation> sources(ResidualStressCase c, Optional<FilmCoefficient> film) {
        List<Citation> sources = new ArrayList<>(List.of(METHOD, c.material().source(),
                published.upperYield().source()));
        film.ifPresent(f -> {
            sources.addAll(List.of(f.source(), published.model().source(), published.aged().source()));
            if (f.shareOfColdWater() < 1) {
                sources.add(f.sourceOfShare());
            }
        });
        c.relief().retained(published).ifPresent(share -> sources.add(share.source()));
        if (c.relief() instanceof StressRelief.UphillQuenched) {
            sources.add(published.uphillReach().source());
        }
        return sources.stream().distinct().toList();
    }

    private List<String> notes(ResidualStressCase c, Quench.Known quench) {
        List<String> notes = new ArrayList<>();
        if (quench.film().shareOfColdWater() < 1) {
            notes.add(String.format(Locale.ROOT, "in hot water and polymer the model is good to an order of magnitude;"
                    + " no less than %.2f of the cold-water stress is taken", quench.film().shareOfColdWater()));
        }
        if (!quench.bathOnRecord()) {
            notes.add("bath temperature or agitation is not on record: the upper end takes cold water");
        }
        notes.addAll(reliefNotes(c));
        return notes;
    }

    private List<String> reliefNotes(ResidualStressCase c) {
        if (c.relief() instanceof StressRelief.UphillQuenched && !reachedByUphill(c)) {
            return List.of("the uphill quench does not reach this surface: no credit");
        }
        return c.relief().retained(published)
                .map(share -> String.format(Locale.ROOT, "%s: no less than %.2f of the as-quenched stress is taken",
                        share.treatment(), share.high()))
                .stream().toList();
    }
}
