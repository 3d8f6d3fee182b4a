package org.shortgrain.mechanics.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.mechanics.quench.QuenchMaterial;
import org.shortgrain.mechanics.quench.RetainedShare;
import org.shortgrain.mechanics.quench.StressProfile;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/**
 * How far a part bows that is rough machined to an even thickness, then quenched, then finished on both faces.
 *
 * <pre>
 * in the quench:      M = (b - a) m,   m = int s (z - t/2) dz over the half next to the weaker face, 0 to t/2
 *                     kappa = (1 - nu) M / (E t^3 / 12)
 * first face cut:     the section from the allowance to t keeps M about its own middle; kappa = (1 - nu) (M/I) / E
 * bow over a length:  kappa L^2 / 8
 * </pre>
 *
 * <p>Two faces that cool alike leave a symmetric stress and no bow. How unlike they cool is not on any card, so the stress of
 * one half is taken at the lower and of the other at the upper end of the scatter of the model against published measurements:
 * that bounds faces that cool as differently as the model has been found to miss. When both faces are finished equally deep,
 * the second cut takes the bow of the first away again.
 *
 * <p>Range of validity: plates and walls of even thickness in which the stress is alike in both directions of the plane, small
 * deflection, elastic release; free to bow. Not in it: sagging in the furnace, racking, an immersion edge first, a section
 * that is not symmetric. Those can bow a part further, and are why a first article is measured. Basis: own derivation by plate
 * theory; the halves as in the finding that a plate with unlike films takes the mean of its two symmetric cases (Li and Shi
 * 2021, abstract, read).
 *
 * @param blank    stress of the rough part through its thickness as quenched, symmetric
 * @param material the metal
 * @param scatter  lower and upper share of the model that published measurements found
 */
public record RoughPartBow(StressProfile blank, QuenchMaterial material, RetainedShare scatter) {

    private static final Citation BASIS = new Citation("quench-method", "bow of a rough-machined part", SourceStatus.DERIVED);
    private static final double PLATE = 12;

    /** Refuses missing parts. */
    public RoughPartBow {
        Objects.requireNonNull(blank, "blank");
        Objects.requireNonNull(material, "material");
        Objects.requireNonNull(scatter, "scatter");
    }

    /**
     * {@return the bow after the quench, {@code residual.bow-quench} (m): none where both faces cool alike, at most where they
     * cool as unlike as the model scatters}
     *
     * @param length length over which the part bows (m)
     */
    public Computed afterQuench(double length) {
        double t = blank.thickness();
        double middle = blank.start() + t / 2;
        double half = Math.abs(blank.moment(blank.start(), middle, middle));
        Bow most = new Bow((1 - material.poissonRatio()) * (scatter.high() - scatter.low()) * half * PLATE
                / (material.modulusAtRoomTemperature() * t * t * t));
        return result("residual.bow-quench", "Bow of the rough part in the quench",
                new Band(most.over(length) / 2, 0, most.over(length)), "(1 - nu) (b - a) |m| / (E t^3 / 12) x L^2 / 8", length,
                List.of(), new Computed.Step("kappa", "curvature where the faces cool as unlike as the model scatters",
                        SiUnit.PER_METRE, Band.exact(most.curvature())),
                "faces that cool alike, to faces as unlike as the scatter of the model");
    }

    /**
     * {@return the bow when one face is finished and the other not yet, {@code residual.bow-finish} (m)}
     *
     * @param allowance depth of the cut (m), less than the thickness
     * @param length    length over which the part bows (m)
     */
    public Computed afterFirstFace(double allowance, double length) {
        SectionRelease release = SectionRelease.ofPlate(blank, blank.start() + allowance, blank.end());
        Bow bow = Bow.ofPlate(release, release, material.modulusAtRoomTemperature(), material.poissonRatio());
        double nominal = bow.over(length);
        return result("residual.bow-finish", "Bow of the part with one face finished",
                new Band(nominal, scatter.low() * nominal, scatter.high() * nominal), "(1 - nu) (M/I) / E x L^2 / 8", length,
                List.of(input("c", "allowance on the face", allowance)),
                new Computed.Step("kappa", "curvature", SiUnit.PER_METRE, Band.exact(bow.curvature())),
                "scatter of the model against published measurements");
    }

    private Computed result(String id, String title, Band bow, String equation, double length, List<Computed.Input> more,
            Computed.Step curvature, String range) {
        List<Computed.Input> inputs = new ArrayList<>(List.of(input("t", "thickness at quench", blank.thickness()),
                input("L", "length of the part", length),
                new Computed.Input("a, b", "lower and upper share of the model that was measured", SiUnit.ONE,
                        new Band((scatter.low() + scatter.high()) / 2, scatter.low(), scatter.high()), "tables",
                        Optional.of(scatter.source()))));
        inputs.addAll(more);
        return new Computed(id, title, SiUnit.METRE, bow, equation, inputs, List.of(curvature), range,
                new Computed.Validity(true, "even plate or wall, free to bow, small deflection"),
                List.of(BASIS, material.source()), List.of("racking, sagging and an edge that enters first come on top"), List.of());
    }

    private static Computed.Input input(String symbol, String meaning, double length) {
        return new Computed.Input(symbol, meaning, SiUnit.METRE, Band.exact(length), "stated", Optional.empty());
    }
}
