package org.shortgrain.mechanics.quench;

import java.util.Arrays;

/**
 * A symmetric positive definite tridiagonal system, solved by L D L^T without pivoting, as its diagonal dominates.
 * Reused from step to step, so that a quench allocates nothing in its inner loops.
 */
final class SymmetricTridiagonal {

    final double[] diagonal;
    /** Coupling of row i with row i + 1. */
    final double[] off;
    private final double[] pivot;
    private final double[] multiplier;

    SymmetricTridiagonal(int rows) {
        diagonal = new double[rows];
        off = new double[rows - 1];
        pivot = new double[rows];
        multiplier = new double[rows];
    }

    void clear() {
        Arrays.fill(diagonal, 0);
        Arrays.fill(off, 0);
    }

    void factor() {
        pivot[0] = diagonal[0];
        for (int i = 1; i < pivot.length; i++) {
            multiplier[i] = off[i - 1] / pivot[i - 1];
            pivot[i] = diagonal[i] - multiplier[i] * off[i - 1];
        }
    }

    /** Replaces a right-hand side by the solution. */
    void solve(double[] rhs) {
        int last = pivot.length - 1;
        for (int i = 1; i <= last; i++) {
            rhs[i] -= multiplier[i] * rhs[i - 1];
        }
        rhs[last] /= pivot[last];
        for (int i = last - 1; i >= 0; i--) {
            rhs[i] = rhs[i] / pivot[i] - multiplier[i + 1] * rhs[i + 1];
        }
    }
}
