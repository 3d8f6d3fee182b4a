package org.shortgrain.mechanics.clampup;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Extremes;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/**
 * Preload of a bolt tightened by torque: {@code F = T/(K D)}, with the spread {@code F (1 -/+ Gamma)} of torque
 * control.
 *
 * <p>Stress corrosion takes the greatest preload, for how hard it can pull a gap shut and for the bending that it
 * induces; retention takes the least. Relaxation, creep and temperature come on top and are not in it. Spread: J. Fail.
 * Anal. Prev. 2019, doi 10.1007/s11668-019-00693-z, quoting NASA practice (secondary); a wrench maker's glossary gives
 * +/-30 % instead (secondary).
 *
 * @param torque      tightening torque T (N m)
 * @param nutFactor   nut factor K
 * @param diameter    nominal thread diameter D (m)
 * @param lubrication state of the thread
 */
public record BoltPreload(Given torque, Given nutFactor, Given diameter, Lubrication lubrication) {

    /** State of the thread, which sets the spread of torque control. */
    public enum Lubrication {
        /** As received, unlubricated: +/-35 %. */
        AS_RECEIVED(0.35),
        /** Lubricated: +/-25 %. */
        LUBRICATED(0.25),
        /** Not known: the wider spread counts. */
        UNKNOWN(0.35);

        private final double spread;

        Lubrication(double spread) {
            this.spread = spread;
        }

        /** {@return Gamma in F (1 -/+ Gamma)} */
        public double spread() {
            return spread;
        }
    }

    /** {@return the preload of one bolt, {@code clampup.bolt-preload} (N)} */
    public Computed preload() {
        Band spread = new Band(1, 1 - lubrication.spread(), 1 + lubrication.spread());
        Band preload = Extremes.of(v -> v[0] / (v[1] * v[2]) * v[3], torque.value(), nutFactor.value(), diameter.value(),
                spread);
        Input gamma = new Input("Gamma", "spread of torque control, thread "
                + lubrication.name().toLowerCase(Locale.ROOT).replace('_', ' '), SiUnit.ONE,
                Band.exact(lubrication.spread()), "state of the thread", Optional.of(Sources.PRELOAD_SPREAD));
        return new Computed("clampup.bolt-preload", "Preload of one bolt", SiUnit.NEWTON, preload,
                "F = T/(K D), F_min,max = F (1 -/+ Gamma)",
                List.of(torque.as("T", "tightening torque", SiUnit.NEWTON_METRE),
                        nutFactor.as("K", "nut factor", SiUnit.ONE),
                        diameter.as("D", "nominal thread diameter", SiUnit.METRE), gamma),
                List.of(), "spread of torque control with the limits of torque and nut factor",
                new Validity(true, "Torque control, at assembly."), List.of(Sources.PRELOAD_SPREAD),
                List.of("Relaxation, creep and temperature after assembly are not in it."), List.of());
    }
}
