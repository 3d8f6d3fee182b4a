package org.shortgrain.mechanics.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shortgrain.mechanics.quench.FilmCoefficient;
import org.shortgrain.mechanics.quench.QuenchMaterial;
import org.shortgrain.mechanics.quench.QuenchSolver;
import org.shortgrain.mechanics.quench.QuenchedPlate;
import org.shortgrain.mechanics.quench.QuenchedSection;
import org.shortgrain.mechanics.quench.RelievedPlate;
import org.shortgrain.mechanics.quench.SectionQuench;
import org.shortgrain.mechanics.quench.StressProfile;
import org.shortgrain.mechanics.quench.StressRelief;
import org.shortgrain.terms.GrainDirection;

/**
 * The computed stress of the blank, as a plate, as a bar or as both, according to its shape and to the direction
 * asked for.
 *
 * <p>Bar for width over thickness below 1.5, plate from 2, the larger of both between; round bars as bars. Along ST a
 * plate has the band inside its edges only.
 */
final class ModelViews {

    private final QuenchSolver solver;
    private final ResidualStressCase c;
    private final double thickness;
    private final double solutionTemperature;

    ModelViews(QuenchSolver solver, ResidualStressCase c, double thickness, double solutionTemperature) {
        this.solver = solver;
        this.c = c;
        this.thickness = thickness;
        this.solutionTemperature = solutionTemperature;
    }

    /** The blank as quenched. */
    List<ResidualField> asQuenched(QuenchMaterial material, FilmCoefficient film) {
        SectionQuench quench = new SectionQuench(material, film, thickness, solutionTemperature);
        QuenchedSection section = c.section();
        List<ResidualField> fields = new ArrayList<>();
        if (section.mayBeCompact()) {
            fields.add(ResidualField.Bar.of("bar model, " + film.name(), solver.bar(quench),
                    section.shape() == QuenchedSection.Shape.ROUND_BAR));
        }
        if (mayBePlate()) {
            StressProfile inPlane = solver.plate(quench).profile();
            fields.add(new ResidualField.Plate("plate model, " + film.name(), inPlane, inPlane, through(quench)));
        }
        return fields;
    }

    /** What the edge of a plate adds along L where the surface is known to lie near it. */
    Optional<ResidualField> isInsideEdge(QuenchMaterial material, FilmCoefficient film) {
        return EdgeBand.reaches(c.section(), c.surface().edgeDistance()) ? mayBeInsideEdge(material, film)
                : Optional.empty();
    }

    /** What the edge of a plate adds along L where the surface is not known to lie far from it. */
    Optional<ResidualField> mayBeInsideEdge(QuenchMaterial material, FilmCoefficient film) {
        if (c.direction() != GrainDirection.L || !mayBePlate() || !mayFeelEdge()) {
            return Optional.empty();
        }
        SectionQuench quench = new SectionQuench(material, film, thickness, solutionTemperature);
        return Optional.of(ResidualField.Bar.of("inside the edge of a plate, " + film.name(),
                solver.bar(quench).times(EdgeBand.ALONG_OF_BAR), false));
    }

    /** The plate after its relief, where the relief can be computed. */
    Optional<ResidualField> relieved(QuenchMaterial material, FilmCoefficient film) {
        if (!mayBePlate()) {
            return Optional.empty();
        }
        SectionQuench quench = new SectionQuench(material, film, thickness, solutionTemperature);
        if (c.relief() instanceof StressRelief.Stretched stretched && stretched.permanentStrain().isPresent()) {
            return Optional.of(plate("stretched", solver.stretched(quench,
                    stretched.permanentStrain().getAsDouble()), film));
        }
        if (c.relief() instanceof StressRelief.Compressed compressed && compressed.permanentStrain().isPresent()) {
            return Optional.of(plate("ideally compressed", solver.compressed(quench,
                    compressed.permanentStrain().getAsDouble()), film));
        }
        if (c.relief() instanceof StressRelief.UphillQuenched uphill) {
            QuenchedPlate plate = solver.uphill(quench, uphill.film());
            return Optional.of(plate("uphill quenched", new RelievedPlate(plate.profile(), plate.profile(), 0), film));
        }
        return Optional.empty();
    }

    private ResidualField plate(String how, RelievedPlate plate, FilmCoefficient film) {
        return new ResidualField.Plate("plate model, " + film.name() + ", " + how, plate.along(), plate.across(),
                StressProfile.uniform(thickness, 0));
    }

    private boolean mayBePlate() {
        return c.direction() == GrainDirection.LT ? c.section().mayBePlateAcross() : c.section().mayBePlate();
    }

    private boolean mayFeelEdge() {
        return EdgeBand.mayReach(c.section(), c.surface().edgeDistance())
                && !c.surface().isAsQuenched(c.section().rulingThickness());
    }

    /** Only asked for along ST, so that a plate needs no bar computed for its other directions. */
    private StressProfile through(SectionQuench quench) {
        double core = c.direction() == GrainDirection.ST && mayFeelEdge()
                ? EdgeBand.THROUGH_OF_BAR * Math.max(0, solver.bar(quench).radial().at(0)) : 0;
        return StressProfile.uniform(thickness, core);
    }
}
