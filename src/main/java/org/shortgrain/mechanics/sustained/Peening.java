package org.shortgrain.mechanics.sustained;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Direction;
import org.shortgrain.mechanics.Extremes;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.mechanics.StressTensor;
import org.shortgrain.mechanics.uncertainty.Distribution;
import org.shortgrain.terms.Citation;

/**
 * Shot peening: a thin compressed layer, and the tension under it that balances it.
 *
 * <p>The compression is shown but never counted: depth and size of the layer are known from memory only, and a pit, a
 * scratch or a later cut goes through it. The tension below the layer is counted where the point judged lies there. In
 * a thin section peened on both faces that tension is large, which is why thin webs are exempt from peening.
 *
 * <p>Layer (own model, low confidence): compression from its surface value straight to its peak, then as a parabola to
 * none at the depth {@code d_c = k_d x arc height}. Material removed after peening moves the surface into the layer.
 * Balance: {@code sigma_core = 2 d_c |mean| / (t - 2 d_c)}, both faces peened.
 *
 * @param arcHeight   Almen arc height on the A strip (m)
 * @param depthFactor k_d; for aluminium 1.2 to 1.6 (memory)
 * @param surface     compression at the surface as peened (Pa), as a positive number
 * @param peak        greatest compression (Pa), as a positive number
 * @param peakPlace   where the peak lies, as a share of the depth, 0 to 1; for aluminium 0.2 to 0.4 (memory)
 * @param thickness   thickness of the section (m)
 * @param removed     material removed after peening (m), 0 for none
 */
public record Peening(Given arcHeight, Given depthFactor, Given surface, Given peak, Given peakPlace, Given thickness,
        Given removed) {

    /** Largest removal after peening of aluminium (m): 0.003 in, MIL-STD-1568C 5.2.3.1.4 (read). */
    public static final double LARGEST_REMOVAL = 0.076e-3;

    /** Points across each range in the search for the surface stress, which turns at the peak. */
    private static final int GRID_POINTS = 7;

    /** Refuses a layer that does not fit into the section, and numbers out of range. */
    public Peening {
        boolean layer = arcHeight.value().low() > 0 && depthFactor.value().low() > 0 && surface.value().low() >= 0
                && peak.value().low() >= 0 && peakPlace.value().low() >= 0 && peakPlace.value().high() < 1
                && removed.value().low() >= 0;
        if (!layer || 2 * arcHeight.value().high() * depthFactor.value().high() >= thickness.value().low()) {
            throw new IllegalArgumentException("not a peened layer within the section");
        }
    }

    /** {@return the depth of the layer as peened, {@code sustained.peening-depth} (m)} */
    public Computed depth() {
        return result("sustained.peening-depth", "Depth of the peened layer", SiUnit.METRE, depthBand(),
                "d_c = k_d x arc height", List.of(Sources.PEENING_LAYER));
    }

    /**
     * {@return stress at the surface after removal, {@code sustained.peening-surface} (Pa): negative, or none where the
     * removal went through the layer}
     */
    public Computed surfaceStress() {
        Band stress = Extremes.onGrid(v -> -compression(v[4], v[0] * v[1], v[2], v[3], peakPlace.value().value()),
                GRID_POINTS, arcHeight.value(), depthFactor.value(), surface.value(), peak.value(), removed.value());
        return result("sustained.peening-surface", "Stress at the peened surface", SiUnit.PASCAL, stress,
                "straight from surface to peak, then a parabola to none at d_c; moved by the removal",
                List.of(Sources.PEENING_LAYER, Sources.PEENING_RULES));
    }

    /** {@return tension below the layer, {@code sustained.peening-core-tension} (Pa)} */
    public Computed coreTension() {
        Band tension = Extremes.of(v -> coreTension(v[4], v[0] * v[1], mean(v[2], v[3], peakPlace.value().value())),
                arcHeight.value(), depthFactor.value(), surface.value(), peak.value(), thickness.value());
        return result("sustained.peening-core-tension", "Tension below the peened layers", SiUnit.PASCAL, tension,
                "sigma_core = 2 d_c |mean| / (t - 2 d_c)", List.of(Sources.PEENING_BALANCE));
    }

    /**
     * {@return what peening adds to a point: compression that is not credited at the surface, and tension that counts
     * where a pit, flaw or later cut may reach below the layer}
     *
     * @param normal direction across the peened surface, in part axes
     * @param reach  depth below the peened surface that the point judged may have (m)
     */
    public List<Contribution> contributions(Direction normal, Band reach) {
        StressTensor shape = StressTensor.alongSurface(normal, 1);
        List<Contribution> contributions = new ArrayList<>();
        contributions.add(Contribution.computed("peening, surface", shape, surfaceStress(),
                Distribution.Shape.RECTANGULAR).as(Standing.NOT_CREDITED));
        if (reach.high() > depthBand().low()) {
            contributions.add(Contribution.computed("peening, tension below the layer", shape, coreTension(),
                    Distribution.Shape.RECTANGULAR));
        }
        return contributions;
    }

    /** {@return whether no more was removed after peening than {@link #LARGEST_REMOVAL}, aluminium} */
    public boolean removalIsWithinLimit() {
        return removed.value().high() <= LARGEST_REMOVAL;
    }

    /**
     * {@return tension below two equal layers that balances their compression (Pa)}
     *
     * @param thickness       thickness of the section (m)
     * @param depth           depth of either layer (m), less than half of the thickness
     * @param meanCompression mean compression of a layer (Pa), as a positive number
     */
    public static double coreTension(double thickness, double depth, double meanCompression) {
        return 2 * depth * meanCompression / (thickness - 2 * depth);
    }

    private Band depthBand() {
        return Extremes.of(v -> v[0] * v[1], arcHeight.value(), depthFactor.value());
    }

    private static double compression(double z, double depth, double surface, double peak, double peakPlace) {
        double place = z / depth;
        if (place >= 1) {
            return 0;
        }
        if (place < peakPlace) {
            return surface + (peak - surface) * place / peakPlace;
        }
        double beyond = (place - peakPlace) / (1 - peakPlace);
        return peak * (1 - beyond * beyond);
    }

    /** Mean of the layer: the straight part halfway between its ends, two thirds of the peak under the parabola. */
    private static double mean(double surface, double peak, double peakPlace) {
        return peakPlace * (surface + peak) / 2 + (1 - peakPlace) * peak * 2 / 3;
    }

    private Computed result(String id, String title, SiUnit unit, Band value, String equation, List<Citation> sources) {
        String note = removalIsWithinLimit() ? "Removal after peening is within the limit of 0.076 mm for aluminium."
                : String.format(Locale.ROOT, "Up to %.3f mm removed after peening, above the limit of 0.076 mm for"
                        + " aluminium.", removed.value().high() * 1e3);
        return new Computed(id, title, unit, value, equation, inputs(), List.of(), "limits of every input",
                new Validity(removalIsWithinLimit(), "Both faces peened alike, full coverage. " + note), sources,
                List.of("The layer is known from memory only; its compression is shown and not credited."), List.of());
    }

    private List<Input> inputs() {
        return List.of(arcHeight.as("arc height", "Almen arc height, A strip", SiUnit.METRE),
                depthFactor.as("k_d", "depth of the layer over arc height", SiUnit.ONE),
                surface.as("s_0", "compression at the surface as peened", SiUnit.PASCAL),
                peak.as("s_p", "greatest compression", SiUnit.PASCAL),
                peakPlace.as("z_p", "place of the peak over the depth", SiUnit.ONE),
                thickness.as("t", "thickness of the section", SiUnit.METRE),
                removed.as("z", "removed after peening", SiUnit.METRE));
    }
}
