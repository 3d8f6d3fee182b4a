package org.shortgrain.mechanics.quench;

/**
 * Nodes from the centre of a section (0) to its quenched surface, closer together towards the surface, and the finite
 * volumes about them.
 *
 * <p>The first node lies on the centre and the last on the surface, so that the surface temperature needs no
 * extrapolation. Volume edges lie halfway between nodes. A slab is counted per area of its face, a cylinder per radian
 * and per length.
 */
final class SectionGrid {

    /** Heat flow and symmetry of the section. */
    enum Shape {
        /** Wide plate; last spacing over first 0.15. */
        SLAB(0.15),
        /** Long round bar; last spacing over first 0.30. */
        CYLINDER(0.30);

        private final double spacingRatio;

        Shape(double spacingRatio) {
            this.spacingRatio = spacingRatio;
        }
    }

    /** Distance of each node from the centre, m. */
    final double[] node;
    /** Distance between node i and node i + 1, m. */
    final double[] spacing;
    /** Area of the volume edge between node i and node i + 1. */
    final double[] edgeArea;
    /** Volume about each node. */
    final double[] volume;
    /** Area of the quenched surface. */
    final double surfaceArea;

    SectionGrid(Shape shape, double halfThickness, int intervals) {
        node = nodes(halfThickness, intervals, shape.spacingRatio);
        spacing = new double[intervals];
        edgeArea = new double[intervals];
        volume = new double[intervals + 1];
        double inner = 0;
        for (int i = 0; i <= intervals; i++) {
            double outer = i < intervals ? 0.5 * (node[i] + node[i + 1]) : halfThickness;
            volume[i] = shape == Shape.SLAB ? outer - inner : 0.5 * (outer * outer - inner * inner);
            if (i < intervals) {
                spacing[i] = node[i + 1] - node[i];
                edgeArea[i] = shape == Shape.SLAB ? 1 : outer;
            }
            inner = outer;
        }
        surfaceArea = shape == Shape.SLAB ? 1 : halfThickness;
    }

    int nodes() {
        return node.length;
    }

    /** Mean over the section of a quantity given at the nodes. */
    double mean(double[] quantity) {
        double sum = 0;
        double whole = 0;
        for (int i = 0; i < volume.length; i++) {
            sum += volume[i] * quantity[i];
            whole += volume[i];
        }
        return sum / whole;
    }

    private static double[] nodes(double half, int intervals, double ratio) {
        // StrictMath, so that a report has the same bytes on every machine
        double growth = intervals > 1 ? StrictMath.pow(ratio, 1.0 / (intervals - 1)) : 1;
        double[] node = new double[intervals + 1];
        double step = 1;
        for (int i = 1; i <= intervals; i++) {
            node[i] = node[i - 1] + step;
            step *= growth;
        }
        double scale = half / node[intervals];
        for (int i = 1; i < intervals; i++) {
            node[i] *= scale;
        }
        node[intervals] = half;
        return node;
    }
}
