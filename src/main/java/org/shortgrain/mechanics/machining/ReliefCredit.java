package org.shortgrain.mechanics.machining;

import java.util.Optional;
import org.shortgrain.mechanics.quench.PublishedRelief;
import org.shortgrain.mechanics.quench.RetainedShare;
import org.shortgrain.mechanics.quench.StressRelief;

/**
 * What a relief is credited with at a surface: the share that published measurements found left, or nothing where the
 * relief does not reach.
 *
 * @param c         the case
 * @param published the published figures
 */
record ReliefCredit(ResidualStressCase c, PublishedRelief published) {

    /** What is left; empty where there was no relief that counts here. */
    Optional<RetainedShare> retained() {
        return isOutOfReach() ? Optional.empty() : c.relief().retained(published);
    }

    /** Share of the as-quenched stress left. */
    double left() {
        return retained().map(RetainedShare::high).orElse(1.0);
    }

    /** Share left at the favourable end of the published figures. */
    double leftAtBest() {
        return retained().map(RetainedShare::low).orElse(1.0);
    }

    /** Stress that is always taken to remain, Pa. */
    double atLeast() {
        return retained().map(RetainedShare::atLeast).orElse(0.0);
    }

    /** Whether an uphill quench does not reach one of the faces that count, or the wall of a hole. */
    boolean isOutOfReach() {
        if (!(c.relief() instanceof StressRelief.UphillQuenched)) {
            return false;
        }
        FinishedSurface surface = c.surface();
        double reach = published.uphillReach().depth();
        boolean floor = surface.depth().isPresent() && surface.depth().getAsDouble() <= reach;
        return surface.holeAxis().isPresent() || !floor || !surface.local() && !reachesOpposite(surface, reach);
    }

    private boolean reachesOpposite(FinishedSurface surface, double reach) {
        if (surface.thickness().isEmpty() || c.section().rulingThickness().isEmpty()) {
            return false;
        }
        double removed = c.section().rulingThickness().getAsDouble() - surface.depth().orElse(0)
                - surface.thickness().getAsDouble();
        return removed <= reach;
    }
}
