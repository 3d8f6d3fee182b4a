package org.shortgrain.mechanics;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.LegendreRuleFactory;

/**
 * Quadrature of Gauss and Legendre with a fixed number of points: exact for polynomials up to the degree 2 n - 1.
 *
 * <p>Takes the rule straight from the library: its factory of integrators sets up arithmetic of 40 digits when it is
 * made, which delays a cold review by a tenth of a second.
 */
public final class GaussLegendre {

    private final GaussIntegrator unit;

    /**
     * A rule.
     *
     * @param points number of points, 1 or more
     */
    public GaussLegendre(int points) {
        this.unit = new GaussIntegrator(new LegendreRuleFactory().getRule(points));
    }

    /**
     * {@return the integral of a function}
     *
     * @param function smooth between the limits
     * @param from     lower limit
     * @param to       upper limit
     */
    public double integral(DoubleUnaryOperator function, double from, double to) {
        double middle = 0.5 * (from + to);
        double half = 0.5 * (to - from);
        return half * unit.integrate(u -> function.applyAsDouble(middle + half * u));
    }
}
