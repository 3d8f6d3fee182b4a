package org.shortgrain.mechanics.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.mechanics.quench.FilmCoefficient;
import org.shortgrain.mechanics.quench.PublishedRelief;
import org.shortgrain.mechanics.quench.Quench;
import org.shortgrain.mechanics.quench.StressRelief;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/** Says what the views of a blank rest on: inputs, range, sources and notes. */
final class BlankEvidence {

    private static final Citation METHOD = new Citation("quench-method", "quench, relief and bound",
            SourceStatus.DERIVED);

    private final ResidualStressCase c;
    private final ReliefCredit relief;
    private final PublishedRelief published;

    BlankEvidence(ResidualStressCase c, ReliefCredit relief, PublishedRelief published) {
        this.c = c;
        this.relief = relief;
        this.published = published;
    }

    String rangeOfBound(boolean withModel) {
        return String.format(Locale.ROOT, "lower end: a mild quench leaves nothing; value: the bound%s; upper end: the"
                + " larger of %.3g of the value and of %.2g times the flow stress",
                withModel ? " or the cold-water model" : "", published.model().high(), published.upperYield().high());
    }

    String rangeOfModel(Quench.Known quench) {
        return String.format(Locale.ROOT, "lower end: %.2g of the model for scatter and %.2g for ageing; value: the"
                + " model, but no less than publications found left; upper end: the larger of %.3g of the value and of"
                + " %.2g times the flow stress%s", published.model().low(), published.aged().low(),
                published.model().high(), published.upperYield().high(),
                quench.bathOnRecord() ? "" : " in cold water, as the bath is not on record");
    }

    List<Computed.Input> inputs(Quench.Known quench) {
        return List.of(
                new Computed.Input("T0", "solution temperature", SiUnit.DEGREE_CELSIUS,
                        Band.exact(quench.solutionTemperature()), "stated", Optional.empty()),
                new Computed.Input("Tb", "bath temperature of " + quench.film().name(), SiUnit.DEGREE_CELSIUS,
                        Band.exact(quench.film().bathTemperature()), "table " + quench.film().name(),
                        Optional.of(quench.film().source())));
    }

    List<Citation> sourcesOfBound() {
        List<Citation> sources = new ArrayList<>(List.of(METHOD, c.material().source(),
                published.upperYield().source(), published.model().source()));
        sources.addAll(sourcesOfRelief());
        return sources;
    }

    List<Citation> sourcesOfModel(FilmCoefficient film) {
        List<Citation> sources = new ArrayList<>(sourcesOfBound());
        sources.addAll(List.of(film.source(), published.aged().source()));
        if (film.shareOfColdWater() < 1) {
            sources.add(film.sourceOfShare());
        }
        return sources;
    }

    private List<Citation> sourcesOfRelief() {
        List<Citation> sources = new ArrayList<>();
        relief.retained().ifPresent(share -> sources.add(share.source()));
        if (c.relief() instanceof StressRelief.UphillQuenched) {
            sources.add(published.uphillReach().source());
        }
        return sources;
    }

    List<String> notesOnBound() {
        List<String> notes = new ArrayList<>();
        notes.add(c.quench() instanceof Quench.Unknown
                ? "the quench is not known: the bound from the W-temper yield stands, and no compression is credited"
                : "the models do not hold here: the bound from the W-temper yield stands");
        notes.addAll(notesOnRelief());
        return notes;
    }

    List<String> notesOnModel(Quench.Known quench) {
        List<String> notes = new ArrayList<>();
        if (quench.film().shareOfColdWater() < 1) {
            notes.add(String.format(Locale.ROOT, "in hot water and polymer the model is good to an order of magnitude;"
                    + " no less than %.2f of the cold-water stress is taken", quench.film().shareOfColdWater()));
        }
        if (!quench.bathOnRecord()) {
            notes.add("bath temperature or agitation is not on record: the upper end takes cold water");
        }
        notes.addAll(notesOnRelief());
        return notes;
    }

    private List<String> notesOnRelief() {
        if (relief.isOutOfReach()) {
            return List.of("the uphill quench does not reach this surface: no credit");
        }
        if (!(c.relief() instanceof StressRelief.None) && relief.retained().isEmpty()) {
            return List.of(c.relief().words() + ", but by less than any published figure covers: no credit");
        }
        return relief.retained()
                .map(share -> String.format(Locale.ROOT, "%s: no less than %.2f of the as-quenched stress is taken",
                        share.treatment(), share.high()))
                .stream().toList();
    }
}
