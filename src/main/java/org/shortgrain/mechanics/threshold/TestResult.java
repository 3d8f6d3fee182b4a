package org.shortgrain.mechanics.threshold;

/**
 * One specimen of a constant-stress test.
 *
 * @param stress  applied stress (Pa)
 * @param time    time to cracking, or to the end of the test if it did not crack (s)
 * @param cracked whether it cracked; if not it is a run-out, not a failure at the end of the test
 */
public record TestResult(double stress, double time, boolean cracked) {

    /** Refuses stresses and times that are not above zero. */
    public TestResult {
        if (!(stress > 0 && time > 0)) {
            throw new IllegalArgumentException("stress " + stress + " Pa, time " + time + " s");
        }
    }
}
