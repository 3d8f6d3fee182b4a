package org.shortgrain.mechanics.fit;

import java.util.List;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Extremes;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/**
 * What friction holds of a fit: push-out force {@code F = mu p pi d l} and torque {@code T = F d/2}.
 *
 * <p>Retention is judged at the lower end (smallest interference, least friction) and at the lasting temperature that
 * loosens the fit most, where stress is judged at the upper end and the tightest temperature. Lowering the interference
 * for stress corrosion is bounded by it.
 */
public final class Retention {

    private final InterferenceFit fit;
    private final FitStress stress;
    private final Given friction;
    private final Given length;

    /**
     * Prepares the retention of a fit.
     *
     * @param fit      the fit
     * @param friction coefficient of friction mu
     * @param length   length of contact l (m)
     */
    public Retention(InterferenceFit fit, Given friction, Given length) {
        this.fit = fit;
        this.stress = new FitStress(fit);
        this.friction = friction;
        this.length = length;
    }

    /**
     * {@return the least diametral interference as assembled (m) at which the loosest pair holds a force at the loosest
     * temperature: {@code F / (mu pi d l p')} with p' the pressure per interference, and what the temperature takes away}
     *
     * <p>The inverse of the lower end of {@link #force()}; every input stands at the end that holds least. It is whatever the
     * interference of this fit is.
     *
     * @param force axial force to be held (N), 0 or more
     */
    public double leastInterference(double force) {
        double held = friction.value().low() * length.value().low() * Math.PI * fit.interference().diameter();
        return force / (held * stress.pressurePerInterference().low()) + stress.lostWhenLoosest();
    }

    /** {@return the push-out force, {@code fit.push-out-force} (N)} */
    public Computed force() {
        return result("fit.push-out-force", "Push-out force held by friction", SiUnit.NEWTON, "F = mu p pi d l", 1);
    }

    /** {@return the torque that friction holds, {@code fit.friction-torque} (N m)} */
    public Computed torque() {
        return result("fit.friction-torque", "Torque held by friction", SiUnit.NEWTON_METRE, "T = mu p pi d l d/2",
                fit.interference().diameter() / 2);
    }

    private Computed result(String id, String title, SiUnit unit, String equation, double arm) {
        Computed pressure = stress.pressureWhenLoosest();
        double circumference = Math.PI * fit.interference().diameter();
        Band held = Extremes.of(v -> v[0] * v[1] * v[2] * circumference * arm, pressure.value(), friction.value(),
                length.value());
        return new Computed(id, title, unit, held, equation,
                List.of(friction.as("mu", "coefficient of friction", SiUnit.ONE),
                        length.as("l", "length of contact", SiUnit.METRE),
                        stress.loosestTemperature().as("T", "loosest lasting temperature", SiUnit.DEGREE_CELSIUS)),
                List.of(new Computed.Step("p", "contact pressure at the loosest temperature", SiUnit.PASCAL,
                        pressure.value())),
                pressure.rangeBasis(), pressure.validity(), pressure.sources(), pressure.notes(), List.of());
    }
}
