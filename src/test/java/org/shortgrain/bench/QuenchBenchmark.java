package org.shortgrain.bench;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;
import java.util.stream.IntStream;
import org.shortgrain.mechanics.machining.FinishedSurface;
import org.shortgrain.mechanics.machining.ResidualStress;
import org.shortgrain.mechanics.machining.ResidualStressCase;
import org.shortgrain.mechanics.machining.Restraint;
import org.shortgrain.mechanics.quench.Quench;
import org.shortgrain.mechanics.quench.QuenchResolution;
import org.shortgrain.mechanics.quench.QuenchSolver;
import org.shortgrain.mechanics.quench.QuenchedPlate;
import org.shortgrain.mechanics.quench.QuenchedSection;
import org.shortgrain.mechanics.quench.Quenches;
import org.shortgrain.mechanics.quench.SectionQuench;
import org.shortgrain.mechanics.quench.StressRelief;
import org.shortgrain.terms.GrainDirection;

/**
 * Times the quench kernels warm, in CPU time of one thread, against the same model, grid and steps written with Python
 * and numpy. Run by hand: {@code java -cp target/classes:target/test-classes:target/lib/* org.shortgrain.bench.QuenchBenchmark
 * [measured CPU milliseconds of the numpy plate with 60 intervals]}.
 */
public final class QuenchBenchmark {

    private static final int BATCHES = 9;
    private static final int RUNS = 40;
    private static final int WARM_UP = 200;
    private static final double MPA = 1e6;
    private static final double MS = 1e-6;

    /** CPU milliseconds of the numpy model: CPython 3.11, numpy 2.4, quiet machine, median of five. */
    private static final double[] NUMPY = {109, 250, 619};
    /** Skin and core of the numpy model for 30, 60 and 120 intervals, MPa. */
    private static final double[][] NUMPY_STRESS = {{-173.60, 153.99}, {-173.66, 154.07}, {-173.70, 154.11}};

    private QuenchBenchmark() {
    }

    /**
     * Prints the times.
     *
     * @param arguments optionally the CPU milliseconds that numpy takes on this machine for 60 intervals
     */
    public static void main(String[] arguments) {
        SectionQuench reference = Quenches.of7050(75, "water20");
        QuenchResolution[] resolutions = {new QuenchResolution(30, 4), new QuenchResolution(60, 2),
            new QuenchResolution(120, 1)};
        double[] numpy = NUMPY.clone();
        if (arguments.length > 0) {
            numpy[1] = Double.parseDouble(arguments[0]);
        }
        System.out.println("plate, 75 mm, cold water   intervals  CPU ms   numpy ms   ratio   skin MPa  core MPa");
        for (int i = 0; i < resolutions.length; i++) {
            QuenchResolution resolution = resolutions[i];
            QuenchedPlate plate = new QuenchSolver(resolution, 1).plate(reference);
            double ms = median(() -> new QuenchSolver(resolution, 1).plate(reference).core());
            System.out.printf("%35d %8.2f %9.0f %8.0f %10.3f %9.3f%n", resolution.intervals(), ms, numpy[i],
                    numpy[i] / ms, plate.skin() / MPA, plate.core() / MPA);
            requireClose(plate, NUMPY_STRESS[i]);
        }
        System.out.printf("bar, 75 mm, cold water, 60 intervals: %.2f ms%n",
                median(() -> new QuenchSolver(QuenchResolution.NORMAL, 1).bar(reference).axial().at(0)));
        System.out.printf("stretch by 2 %%, 60 steps, with its quench: %.2f ms%n",
                median(() -> new QuenchSolver(QuenchResolution.NORMAL, 2).stretched(reference, 0.02)
                        .permanentStrain()));
        surfaces();
    }

    /** One surface, with its quenches remembered: what a review pays for each further place. */
    private static void surfaces() {
        ResidualStress residual = new ResidualStress(QuenchSolver.usual(), Quenches.TABLES.baths(),
                Quenches.TABLES.published());
        FinishedSurface known = FinishedSurface.face(0.020, 0.036, Restraint.HELD);
        FinishedSurface unknown = new FinishedSurface(OptionalDouble.empty(), OptionalDouble.empty(),
                Restraint.UNKNOWN, false, Optional.empty(), OptionalDouble.empty());
        Quench bath = new Quench.Known(Quenches.bath("water20"), 475, false);
        System.out.printf("surface, all known: %.3f ms; place not known: %.3f ms; nor the quench: %.3f ms%n",
                median(() -> exposed(residual, bath, known)), median(() -> exposed(residual, bath, unknown)),
                median(() -> exposed(residual, new Quench.Unknown(), unknown)));
    }

    private static double exposed(ResidualStress residual, Quench quench, FinishedSurface surface) {
        return residual.at(new ResidualStressCase(Quenches.metal("7050"),
                QuenchedSection.of(QuenchedSection.Shape.UNKNOWN, 0.076), quench, new StressRelief.None(), surface,
                GrainDirection.LT, OptionalDouble.empty())).governing().value().value();
    }

    private static void requireClose(QuenchedPlate plate, double[] expected) {
        double off = Math.max(Math.abs(plate.skin() / MPA - expected[0]), Math.abs(plate.core() / MPA - expected[1]));
        if (off > 0.01) {
            throw new IllegalStateException("differs from numpy by " + off + " MPa");
        }
    }

    private static double median(DoubleSupplier work) {
        double kept = IntStream.range(0, WARM_UP).mapToDouble(i -> work.getAsDouble()).sum();
        double[] times = new double[BATCHES];
        for (int batch = 0; batch < BATCHES; batch++) {
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            for (int i = 0; i < RUNS; i++) {
                kept += work.getAsDouble();
            }
            times[batch] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) * MS / RUNS;
        }
        Arrays.sort(times);
        if (Double.isNaN(kept)) {
            throw new IllegalStateException("no result");
        }
        return times[BATCHES / 2];
    }
}
