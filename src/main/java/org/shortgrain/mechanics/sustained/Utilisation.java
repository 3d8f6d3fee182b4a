package org.shortgrain.mechanics.sustained;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.mechanics.uncertainty.MonteCarlo;
import org.shortgrain.terms.GrainDirection;

/**
 * How much of what it bears the metal is asked to bear: {@code u_k = max(0, sigma_kk)/(f sigma_th,k)} for k = L, LT,
 * ST.
 *
 * <p>The range takes the upper end of the stress against the lower end of the threshold, and the reverse. The factor f
 * is a setting of the project: MIL-HDBK-5J gives no design level and refers to other documents. Thresholds are those of
 * smooth specimens, so the stress must be the local one at the surface.
 *
 * @param point      the point with all that pulls at it
 * @param thresholds threshold by grain direction (Pa); none where it is not known, and then nothing is said of it
 * @param factor     factor f on the threshold, above 0 and up to 1
 */
public record Utilisation(SustainedPoint point, Map<GrainDirection, Given> thresholds, Given factor) {

    /** Copies the map; refuses thresholds and factors that are not above zero. */
    public Utilisation {
        thresholds = Map.copyOf(thresholds);
        if (!(factor.value().low() > 0 && factor.value().high() <= 1)) {
            throw new IllegalArgumentException("factor on the threshold: " + factor.value());
        }
        thresholds.values().forEach(t -> {
            if (!(t.value().low() > 0)) {
                throw new IllegalArgumentException("threshold: " + t.value());
            }
        });
    }

    /**
     * {@return the utilisation along a grain direction, {@code sustained.utilisation}; empty without a threshold}
     *
     * @param along the grain direction
     */
    public Optional<Computed> of(GrainDirection along) {
        return permitted(along).map(permitted -> {
            Computed stress = point.stress(along);
            Band sigma = stress.value();
            Band ratio = new Band(ratio(sigma.value(), permitted.value()), ratio(sigma.low(), permitted.high()),
                    ratio(sigma.high(), permitted.low()));
            return result("sustained.utilisation", "Utilisation along " + along, SiUnit.ONE, ratio,
                    "u = max(0, sigma)/(f sigma_th)", stress, along);
        });
    }

    /**
     * {@return what is left up to the threshold times its factor, {@code sustained.margin} (Pa): negative where it is
     * passed; empty without a threshold}
     *
     * @param along the grain direction
     */
    public Optional<Computed> margin(GrainDirection along) {
        return permitted(along).map(permitted -> {
            Computed stress = point.stress(along);
            Band sigma = stress.value();
            Band margin = new Band(permitted.value() - sigma.value(), permitted.low() - sigma.high(),
                    permitted.high() - sigma.low());
            return result("sustained.margin", "Margin along " + along, SiUnit.PASCAL, margin,
                    "f sigma_th - sigma", stress, along);
        });
    }

    /** {@return the grain direction with the highest upper end of the utilisation; empty if no threshold is known} */
    public Optional<GrainDirection> governing() {
        return thresholds.keySet().stream().sorted()
                .max(Comparator.comparingDouble(k -> of(k).map(u -> u.value().high()).orElse(Double.NEGATIVE_INFINITY)));
    }

    /**
     * {@return the likely range of the utilisation along a grain direction; empty without a threshold}
     *
     * @param along      the grain direction
     * @param monteCarlo number of draws and seed
     */
    public Optional<Likelihood> likelihood(GrainDirection along, MonteCarlo monteCarlo) {
        return Optional.ofNullable(thresholds.get(along))
                .map(threshold -> new UtilisationModel(point, along, threshold, factor).run(monteCarlo));
    }

    private Optional<Band> permitted(GrainDirection along) {
        Band f = factor.value();
        return Optional.ofNullable(thresholds.get(along)).map(Given::value)
                .map(t -> new Band(f.value() * t.value(), f.low() * t.low(), f.high() * t.high()));
    }

    private static double ratio(double stress, double permitted) {
        return Math.max(0, stress) / permitted;
    }

    private Computed result(String id, String title, SiUnit unit, Band value, String equation, Computed stress,
            GrainDirection along) {
        List<Input> inputs = List.of(
                new Input("sigma", stress.title(), SiUnit.PASCAL, stress.value(), stress.id(), Optional.empty()),
                thresholds.get(along).as("sigma_th", "threshold along " + along, SiUnit.PASCAL),
                factor.as("f", "factor of the project on the threshold", SiUnit.ONE));
        return new Computed(id, title, unit, value, equation, inputs, List.of(),
                "upper end of the stress against the lower end of the threshold, and the reverse", stress.validity(),
                List.of(Sources.WHAT_COUNTS, Sources.TENSORS), stress.notes(), List.of());
    }
}
