package org.shortgrain.mechanics.fit;

import java.util.Locale;
import org.shortgrain.mechanics.Computed.Validity;

/**
 * Whether a fit stays elastic. Past yield the Lam&eacute; stresses no longer hold (Brown, Marks' Calculations for
 * Machine Design, 2005, p. 137, read); since the interference is imposed, the elastic hoop at the bore is then an upper
 * bound.
 */
final class ElasticRange {

    private ElasticRange() {
    }

    /**
     * Judges the largest equivalent stress of each part against the lower end of its yield strength.
     *
     * @param fit             the fit
     * @param outerEquivalent largest equivalent stress in the outer part (Pa)
     * @param innerEquivalent largest equivalent stress in the inner part (Pa)
     */
    static Validity of(InterferenceFit fit, double outerEquivalent, double innerEquivalent) {
        Part outer = Part.of("outer part", fit.outer(), outerEquivalent);
        Part inner = Part.of("inner part", fit.inner(), innerEquivalent);
        String statement = "Elastic, concentric, full-length contact. " + outer.statement + " " + inner.statement;
        return new Validity(outer.elastic && inner.elastic, statement);
    }

    private record Part(boolean elastic, String statement) {

        static Part of(String name, FitMaterial material, double equivalent) {
            if (equivalent == 0) {
                return new Part(true, "The " + name + " carries no stress.");
            }
            return material.yieldStrength().map(y -> y.value().low())
                    .map(yield -> equivalent <= yield
                            ? new Part(true, text("The %s stays elastic: equivalent stress %.1f MPa, yield %.1f MPa.",
                                    name, mega(equivalent), mega(yield)))
                            : new Part(false, text("The %s yields: elastic equivalent stress %.1f MPa, yield %.1f MPa;"
                                    + " the elastic hoop at the bore is an upper bound.", name, mega(equivalent), mega(yield))))
                    .orElseGet(() -> new Part(false, "The yield strength of the " + name + " is not given: whether it"
                            + " stays elastic is unknown; the elastic hoop at the bore is an upper bound."));
        }

        private static double mega(double pascal) {
            return pascal / 1e6;
        }

        private static String text(String format, Object... values) {
            return String.format(Locale.ROOT, format, values);
        }
    }
}
