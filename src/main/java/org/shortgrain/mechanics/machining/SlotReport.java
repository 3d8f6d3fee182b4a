package org.shortgrain.mechanics.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.mechanics.quench.StressProfile;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/**
 * The stress at the root of a narrow slot, over all views of the blank. Flanks that the skin pushes shut earn no credit:
 * the stress as it was counts where it is higher.
 */
final class SlotReport {

    private static final Citation WEIGHT_FUNCTION = new Citation("glinka-shen-1991",
            "weight function of an edge crack", SourceStatus.MEMORY);

    private final ResidualStressCase c;
    private final BlankViews views;
    private final double depth;
    private final double halfWidth;

    SlotReport(ResidualStressCase c, BlankViews views, double depth, double halfWidth) {
        this.c = c;
        this.views = views;
        this.depth = depth;
        this.halfWidth = halfWidth;
    }

    Computed write() {
        double value = roots(views.nominal().stream()).max().orElseThrow();
        double[] all = roots(Stream.of(views.lower(), views.nominal(), views.upper()).flatMap(List::stream)).sorted()
                .toArray();
        double cap = c.finalYield().orElse(Double.POSITIVE_INFINITY);
        List<Citation> sources = new ArrayList<>(views.sources());
        sources.add(WEIGHT_FUNCTION);
        List<String> notes = new ArrayList<>(views.notes());
        notes.add("the concentration at the root is included");
        return new Computed("residual.slot-root", "Residual stress at the root of a narrow slot, " + c.direction(),
                SiUnit.PASCAL, new Band(Math.min(cap, value), Math.min(cap, all[0]),
                        Math.min(cap, all[all.length - 1])),
                "max(s(a), 2 K / sqrt(pi rho) + 0.78 s(a)), K = integral of s m from the mouth to the root", inputs(),
                List.of(), views.basis(), validity(), sources, notes, List.of());
    }

    private DoubleStream roots(Stream<View> of) {
        return of.mapToDouble(view -> {
            StressProfile blank = view.field().in(c.direction());
            double reached = Math.min(depth, blank.end());
            return view.share() * Math.max(blank.at(reached), SlotRoot.rootStress(blank::at, reached, halfWidth));
        });
    }

    private List<Computed.Input> inputs() {
        List<Computed.Input> inputs = new ArrayList<>(List.of(input("a", "depth of the slot", depth),
                input("rho", "root radius or half-width", halfWidth)));
        OptionalDouble thickness = c.section().rulingThickness();
        thickness.ifPresent(t -> inputs.add(input("t", "thickness of the section at quench", t)));
        inputs.addAll(views.inputs());
        return inputs;
    }

    private static Computed.Input input(String symbol, String meaning, double length) {
        return new Computed.Input(symbol, meaning, SiUnit.METRE, Band.exact(length), "stated", Optional.empty());
    }

    private Computed.Validity validity() {
        OptionalDouble thickness = c.section().rulingThickness();
        boolean shallow = thickness.isPresent() && depth < SlotRoot.DEEPEST * thickness.getAsDouble();
        boolean narrow = halfWidth <= depth;
        return new Computed.Validity(views.validity().inside() && shallow && narrow, String.format(Locale.ROOT,
                "%s; slot shallower than %.1f thicknesses and no wider than deep%s", views.validity().statement(),
                SlotRoot.DEEPEST, shallow && narrow ? "" : ", which this one is not"));
    }
}
