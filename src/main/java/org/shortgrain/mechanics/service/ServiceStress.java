package org.shortgrain.mechanics.service;

import java.util.List;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Extremes;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/**
 * The stress that a lasting load puts on a place, before any local concentration.
 *
 * <p>Only lasting loads belong here: standing weight, level flight, pressure held for long, springs, rigging. Peaks of
 * manoeuvre and gust are too short for stress corrosion (MIL-HDBK-5J 3.1.3.1, secondary).
 */
public final class ServiceStress {

    private static final Citation LASTING = new Citation("mil-hdbk-5j", "3.1.3.1", SourceStatus.SECONDARY);
    private static final Citation THICK_WALL = new Citation("shigley-mechanical-engineering-design",
            "9th ed., 3-14, thick-walled cylinder under inner pressure", SourceStatus.MEMORY);
    private static final Citation SHARE = new Citation("own-derivation", "words turned into a share of yield",
            SourceStatus.DERIVED);

    private ServiceStress() {
    }

    /**
     * {@return a stress as the description declares it, {@code service.declared} (Pa)}
     *
     * @param load   the load, in the words of the trade
     * @param stress the stress (Pa)
     */
    public static Computed declared(String load, Given stress) {
        return result("service.declared", load, stress.value(), "sigma as declared",
                List.of(stress.as("sigma", "declared nominal stress", SiUnit.PASCAL)), "limits as declared",
                "As declared; not recomputed.", List.of(LASTING));
    }

    /**
     * {@return force over area, {@code service.force-over-area} (Pa)}
     *
     * @param load  the load, in the words of the trade
     * @param force the force (N)
     * @param area  the area that carries it (m2), above zero
     * @throws IllegalArgumentException if the area is not above zero
     */
    public static Computed overArea(String load, Given force, Given area) {
        requirePositive("area", area);
        Band stress = Extremes.of(v -> v[0] / v[1], force.value(), area.value());
        return result("service.force-over-area", load, stress, "sigma = F/A",
                List.of(force.as("F", "lasting force", SiUnit.NEWTON),
                        area.as("A", "area that carries it", SiUnit.SQUARE_METRE)),
                "limits of force and area", "Evenly spread over the area.", List.of(LASTING));
    }

    /**
     * {@return the greatest hoop tension in a tube or vessel under inner pressure, at its bore,
     * {@code service.pressure-hoop} (Pa)}
     *
     * <p>{@code sigma = p (ro^2 + ri^2)/(ro^2 - ri^2)}, Lam&eacute;; for a thin wall it tends to p r/t. It rises with
     * pressure and bore and falls with the wall throughout, so corners are extremes.
     *
     * @param pressure inner pressure over the outer one (Pa)
     * @param bore     inside diameter (m), above zero
     * @param wall     wall (m), above zero
     * @throws IllegalArgumentException if bore or wall is not above zero
     */
    public static Computed pressureHoop(Given pressure, Given bore, Given wall) {
        requirePositive("bore", bore);
        requirePositive("wall", wall);
        Band stress = Extremes.of(v -> v[0] * hoopFactor(v[1] / 2, v[1] / 2 + v[2]), pressure.value(), bore.value(),
                wall.value());
        return result("service.pressure-hoop", "pressurisation", stress,
                "sigma = p (ro^2 + ri^2)/(ro^2 - ri^2), ri = d/2, ro = ri + t",
                List.of(pressure.as("p", "inner pressure", SiUnit.PASCAL), bore.as("d", "bore", SiUnit.METRE),
                        wall.as("t", "wall", SiUnit.METRE)),
                "limits of pressure, bore and wall", "Long round tube or vessel away from ends, elastic.",
                List.of(LASTING, THICK_WALL));
    }

    private static double hoopFactor(double inner, double outer) {
        double ri = inner * inner;
        double ro = outer * outer;
        return (ro + ri) / (ro - ri);
    }

    /**
     * {@return the stress that a word such as "moderate" stands for, {@code service.share-of-yield} (Pa): anything from
     * none to the share of the yield strength}
     *
     * @param load          the load, in the words of the trade
     * @param share         the share at most, 0 to 1
     * @param yieldStrength least yield strength (Pa)
     */
    public static Computed shareOfYield(String load, Given share, Given yieldStrength) {
        double high = share.value().high() * yieldStrength.value().low();
        return result("service.share-of-yield", load, new Band(high / 2, 0, high), "0 to k Fty; best estimate the middle",
                List.of(share.as("k", "share that the word stands for", SiUnit.ONE),
                        yieldStrength.as("Fty", "least yield strength", SiUnit.PASCAL)),
                "from no load to the share", "A stand-in for a number that is not stated.", List.of(LASTING, SHARE));
    }

    private static void requirePositive(String name, Given given) {
        if (!(given.value().low() > 0)) {
            throw new IllegalArgumentException(name + " is not above zero: " + given.value());
        }
    }

    private static Computed result(String id, String load, Band stress, String equation, List<Computed.Input> inputs,
            String rangeBasis, String validity, List<Citation> sources) {
        return new Computed(id, "Lasting stress, " + load, SiUnit.PASCAL, stress, equation, inputs, List.of(), rangeBasis,
                new Validity(true, validity), sources, List.of(), List.of());
    }
}
