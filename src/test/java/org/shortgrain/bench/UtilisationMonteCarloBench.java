package org.shortgrain.bench;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Direction;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.GrainAxes;
import org.shortgrain.mechanics.StressTensor;
import org.shortgrain.mechanics.sustained.Contribution;
import org.shortgrain.mechanics.sustained.SustainedPoint;
import org.shortgrain.mechanics.sustained.Utilisation;
import org.shortgrain.mechanics.uncertainty.Distribution.Shape;
import org.shortgrain.mechanics.uncertainty.MonteCarlo;
import org.shortgrain.terms.GrainDirection;

/**
 * CPU time of one utilisation with its 10,000 draws, warm: five contributions and an uncertain threshold, with the
 * grain direction known and with a cone of 10 degrees. Run by hand: prints the median of the batches in milliseconds.
 */
public final class UtilisationMonteCarloBench {

    private static final int BATCHES = 15;
    private static final int PER_BATCH = 100;
    private static final MonteCarlo DRAWS = new MonteCarlo(10_000, 1);

    private UtilisationMonteCarloBench() {
    }

    /**
     * Runs the benchmark.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        for (double cone : new double[] {0, Math.toRadians(10)}) {
            Utilisation utilisation = utilisation(cone);
            System.out.printf("cone %.0f deg: likelihood %.3f ms, extremes %.3f ms (median of %d batches of %d)%n",
                    Math.toDegrees(cone),
                    median(() -> utilisation.likelihood(GrainDirection.ST, DRAWS).orElseThrow().aboveOne().value().value()),
                    median(() -> utilisation.of(GrainDirection.ST).orElseThrow().value().high()), BATCHES, PER_BATCH);
        }
    }

    private static Utilisation utilisation(double cone) {
        List<Contribution> contributions = List.of(contribution("residual", Direction.Z, 40, 70, 100),
                contribution("fit", Direction.along(0.1, 0, 1), 20, 40, 60),
                contribution("clamp-up", Direction.along(0, 0.3, 1), 0, 10, 25),
                contribution("one g", Direction.X, 18, 20, 22),
                Contribution.stated("pressure", StressTensor.alongSurface(Direction.X, 1), given(5, 8, 11), Shape.NORMAL));
        return new Utilisation(new SustainedPoint(GrainAxes.ALONG_PART_AXES, cone, contributions),
                Map.of(GrainDirection.ST, given(150, 170, 200)), Given.exact(1, "bench"));
    }

    private static Contribution contribution(String source, Direction along, double low, double value, double high) {
        return Contribution.stated(source, Contribution.along(along), given(low, value, high), Shape.TRIANGULAR);
    }

    private static Given given(double low, double value, double high) {
        return new Given(new Band(value * 1e6, low * 1e6, high * 1e6), "bench", Optional.empty());
    }

    private static double median(DoubleSupplier work) {
        double[] milliseconds = new double[BATCHES];
        double kept = 0;
        for (int batch = 0; batch < BATCHES; batch++) {
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            for (int i = 0; i < PER_BATCH; i++) {
                kept += work.getAsDouble();
            }
            milliseconds[batch] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e6 / PER_BATCH;
        }
        Arrays.sort(milliseconds);
        return kept < 0 ? Double.NaN : milliseconds[BATCHES / 2];
    }
}
