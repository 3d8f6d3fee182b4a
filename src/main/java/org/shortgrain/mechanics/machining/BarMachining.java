package org.shortgrain.mechanics.machining;

import org.shortgrain.mechanics.quench.CoolingHistory;
import org.shortgrain.mechanics.quench.QuenchedBar;
import org.shortgrain.mechanics.quench.StressProfile;

/**
 * What turning and boring release in a long round bar. Elastic; axisymmetric; away from the ends by about one diameter.
 *
 * <pre>
 * turned to radius b:  s_r, s_theta less s_r(b);  s_z less its mean over what is left
 * bored to radius a:   s_r, s_theta plus s_r(a) a^2 / (R^2 - a^2) (1 -+ R^2/r^2);  s_z less its mean over what is left
 * bore hoop:           s_theta(a) + s_r(a) (R^2 + a^2) / (R^2 - a^2), near twice the core stress across for a small bore
 * </pre>
 *
 * <p>Basis: Lame's thick ring (textbook); own algebra.
 *
 * @param radial  radial stress against radius after the cut
 * @param hoop    hoop stress against radius
 * @param axial   axial stress against radius
 */
public record BarMachining(StressProfile radial, StressProfile hoop, StressProfile axial) {

    /**
     * {@return the bar turned down to a smaller radius}
     *
     * @param bar    the quenched bar
     * @param radius the new outer radius, m
     */
    public static BarMachining turned(QuenchedBar bar, double radius) {
        StressProfile axial = bar.axial().between(0, radius);
        double surface = bar.radial().at(radius);
        return new BarMachining(bar.radial().between(0, radius).minusLine(surface, 0, 0),
                bar.hoop().between(0, radius).minusLine(surface, 0, 0), axial.minusLine(meanOverRing(axial), 0, 0));
    }

    /**
     * {@return the bar bored along its axis}
     *
     * @param bar    the quenched bar
     * @param radius radius of the bore, m
     */
    public static BarMachining bored(QuenchedBar bar, double radius) {
        double outer = bar.radius();
        double ring = bar.radial().at(radius) * radius * radius / (outer * outer - radius * radius);
        StressProfile axial = bar.axial().between(radius, outer);
        return new BarMachining(withRing(bar.radial().between(radius, outer), ring, -outer * outer),
                withRing(bar.hoop().between(radius, outer), ring, outer * outer),
                axial.minusLine(meanOverRing(axial), 0, 0));
    }

    /**
     * {@return what is left, as a bar}
     *
     * @param history how the bar was quenched
     */
    QuenchedBar asBar(CoolingHistory history) {
        return new QuenchedBar(radial, hoop, axial, history);
    }

    private static StressProfile withRing(StressProfile before, double ring, double square) {
        double[] r = before.depths();
        double[] stress = before.stresses();
        for (int i = 0; i < r.length; i++) {
            stress[i] += ring * (1 + square / (r[i] * r[i]));
        }
        return StressProfile.through(r, stress);
    }

    /** Mean over the ring: the moment about the axis is the integral of s r dr. */
    private static double meanOverRing(StressProfile stress) {
        double area = 0.5 * (stress.end() * stress.end() - stress.start() * stress.start());
        return stress.moment(0) / area;
    }
}
