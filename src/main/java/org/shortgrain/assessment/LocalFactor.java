package org.shortgrain.assessment;

import java.util.List;
import java.util.Optional;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.mechanics.concentration.EdgeNotches;
import org.shortgrain.mechanics.concentration.HoleInStrip;
import org.shortgrain.mechanics.concentration.HoleInWidePlate;
import org.shortgrain.mechanics.concentration.ShoulderFillet;
import org.shortgrain.part.Concentration;
import org.shortgrain.part.LoadMode;
import org.shortgrain.part.Stated;
import org.shortgrain.review.Factor;

/**
 * By how much a place raises the nominal stress of loads and clamp-up at its surface. Fit and residual stress are local
 * already and are not multiplied.
 */
final class LocalFactor {

    /**
     * {@return the factor at a place; empty where nothing concentrates the stress, as stated}
     *
     * @param site the place
     */
    Optional<Computed> at(Site site) {
        Stated<Concentration> stated = site.feature().stressConcentration();
        if (stated.isNone()) {
            return Optional.empty();
        }
        Optional<Concentration> one = stated.single();
        Optional<Double> declared = one.flatMap(c -> c.kt().single());
        if (declared.isPresent()) {
            return Optional.of(asDeclared(Declared.exact(one.get().kt(), declared.get())));
        }
        Optional<org.shortgrain.mechanics.concentration.Concentration> shape = one.flatMap(LocalFactor::shape);
        if (shape.isPresent()) {
            return Optional.of(shape.get().compute());
        }
        site.ask(Factor.STRESS, "What raises the nominal stress at " + site.id() + ", and by which factor?",
                "the surface stress counts, not the nominal one",
                Optional.of("the factor of a hole in a wide plate, 3"), stated.at());
        site.assume("the concentration is taken as that of a hole in a wide plate");
        return Optional.of(new HoleInWidePlate().compute());
    }

    private static Computed asDeclared(Given given) {
        return new Computed("concentration.factor", "Concentration factor as declared", SiUnit.ONE, given.value(),
                "Kt as declared", List.of(given.as("Kt", "declared concentration factor", SiUnit.ONE)), List.of(),
                "none: a single declared number", new Computed.Validity(true, "As declared; not recomputed."), List.of(),
                List.of(), List.of());
    }

    private static Optional<org.shortgrain.mechanics.concentration.Concentration> shape(Concentration stated) {
        if (stated.kind().single().isEmpty()) {
            return Optional.empty();
        }
        try {
            return switch (stated.kind().single().get()) {
                case HOLE -> hole(stated);
                case FILLET -> fillet(stated);
                case NOTCH -> notch(stated);
            };
        } catch (IllegalArgumentException notThatShape) {
            return Optional.empty();
        }
    }

    private static Optional<org.shortgrain.mechanics.concentration.Concentration> hole(Concentration stated) {
        Optional<Given> diameter = Declared.of(stated.diameter());
        Optional<Given> width = Declared.of(stated.width());
        if (diameter.isPresent() && width.isPresent()) {
            return Optional.of(new HoleInStrip(diameter.get(), width.get()));
        }
        return diameter.map(any -> new HoleInWidePlate());
    }

    private static Optional<org.shortgrain.mechanics.concentration.Concentration> fillet(Concentration stated) {
        Optional<Given> larger = Declared.of(stated.width());
        Optional<Given> smaller = Declared.of(stated.netWidth());
        Optional<Given> radius = Declared.of(stated.radius());
        boolean round = stated.round().is(true);
        boolean bending = stated.mode().is(LoadMode.BENDING);
        if (larger.isEmpty() || smaller.isEmpty() || radius.isEmpty() || round && bending) {
            return Optional.empty();
        }
        ShoulderFillet.Loading loading = round ? ShoulderFillet.Loading.ROUND_TENSION
                : bending ? ShoulderFillet.Loading.FLAT_BENDING : ShoulderFillet.Loading.FLAT_TENSION;
        return Optional.of(new ShoulderFillet(loading, larger.get(), smaller.get(), radius.get()));
    }

    private static Optional<org.shortgrain.mechanics.concentration.Concentration> notch(Concentration stated) {
        Optional<Given> width = Declared.of(stated.width());
        Optional<Given> depth = Declared.of(stated.depth());
        Optional<Given> radius = Declared.of(stated.radius());
        if (width.isEmpty() || depth.isEmpty() || radius.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new EdgeNotches(width.get(), depth.get(), radius.get()));
    }

}
