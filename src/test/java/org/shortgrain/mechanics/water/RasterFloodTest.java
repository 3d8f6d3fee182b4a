package org.shortgrain.mechanics.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shortgrain.mechanics.water.Hollows.MM;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Random floors at random attitudes against a flood over a raster, which knows nothing of the equations under test: from
 * every way out water is taken back cell by cell, the lowest first, and each cell keeps what lies below the highest cell on
 * its way.
 *
 * <p>Tolerance: a cell may be off by the height of half its size, and a step by its whole height over one column, so that
 * both levels and floors are off by no more. The mean over all cases must be far closer, and must fall with the size of the
 * cells, as an error of the raster does and an error of the equations does not. Fins without thickness are not drawn: a
 * raster does not see them.
 */
class RasterFloodTest {

    private static final int CASES = 120;
    private static final Raster COARSE = new Raster(300, 12);
    private static final Raster FINE = new Raster(900, 36);
    private static final double WIDTH = 50 * MM;

    /** Cells along the length and across the width. */
    private record Raster(int along, int across) {
    }

    /** A cell of the raster with its water level. */
    private record Cell(int i, int j, double level) {
    }

    /** A hollow drawn by lot. */
    private record Drawn(Basin basin, Tilt tilt, List<Outlet> holes) {
    }

    @Test
    void theVolumeIsThatOfAFloodOverARaster() {
        Random lot = new Random(20_260_115L);
        double coarse = 0;
        double fine = 0;
        double held = 0;
        int wet = 0;
        for (int n = 0; n < CASES; n++) {
            Drawn drawn = draw(lot);
            double exact = drawn.basin().pool(drawn.tilt(), drawn.holes()).volume();
            double raster = new Flood(drawn, FINE).volume();
            assertEquals(raster, exact, bound(drawn, FINE), drawn.toString());
            fine += Math.abs(exact - raster);
            coarse += Math.abs(exact - new Flood(drawn, COARSE).volume());
            held += exact;
            wet += exact > 1e-7 ? 1 : 0;
        }
        assertTrue(wet > CASES / 3, "the lots hold water: " + wet);
        assertTrue(fine < 0.02 * held, "mean deviation " + fine / held);
        assertTrue(fine < 0.45 * coarse, "cells of a third leave about a third: " + fine / coarse);
    }

    private static Drawn draw(Random lot) {
        List<Floor.Point> points = new ArrayList<>();
        double x = 0;
        int count = 3 + lot.nextInt(6);
        boolean step = false;
        for (int i = 0; i < count; i++) {
            points.add(new Floor.Point(x, 25 * MM * lot.nextDouble()));
            step = !step && i > 0 && i < count - 2 && lot.nextInt(4) == 0;
            x += step ? 0 : (8 + 40 * lot.nextDouble()) * MM;
        }
        Floor floor = new Floor(points);
        OptionalDouble rim = lot.nextBoolean() ? OptionalDouble.of(floor.highest() + 5 * MM * lot.nextDouble())
                : OptionalDouble.empty();
        Tilt tilt = new Tilt(Math.toRadians(24 * lot.nextDouble() - 12), Math.toRadians(16 * lot.nextDouble() - 8));
        List<Outlet> holes = lot.nextInt(3) > 0 ? List.of()
                : List.of(Outlet.point(floor.front() * lot.nextDouble(), WIDTH * lot.nextDouble()));
        return new Drawn(new Basin(floor, WIDTH, rim, true), tilt, holes);
    }

    /** The flood of one hollow over one raster. */
    private static final class Flood {
        private final Drawn drawn;
        private final int along;
        private final int across;
        private final double dx;
        private final double dy;
        private final double[][] height;

        Flood(Drawn drawn, Raster raster) {
            this.drawn = drawn;
            this.along = raster.along();
            this.across = raster.across();
            this.dx = drawn.basin().floor().front() / along;
            this.dy = WIDTH / across;
            this.height = new double[along][across];
            for (int i = 0; i < along; i++) {
                for (int j = 0; j < across; j++) {
                    double x = (i + 0.5) * dx;
                    height[i][j] = interpolated(drawn.basin().floor().points(), x) + plane(x, (j + 0.5) * dy);
                }
            }
        }

        double volume() {
            double[][] level = levels();
            double volume = 0;
            for (int i = 0; i < along; i++) {
                for (int j = 0; j < across; j++) {
                    volume += (level[i][j] - height[i][j]) * dx * dy;
                }
            }
            return volume;
        }

        private double plane(double x, double y) {
            return x * Math.tan(drawn.tilt().pitch()) / Math.cos(drawn.tilt().roll()) + y * Math.tan(drawn.tilt().roll());
        }

        private double[][] levels() {
            double[][] level = new double[along][across];
            for (double[] row : level) {
                Arrays.fill(row, Double.NaN);
            }
            PriorityQueue<Cell> queue = new PriorityQueue<>(Comparator.comparingDouble(Cell::level));
            queue.addAll(waysOut());
            int[][] steps = {{1, 0}, {-1, 0}, {0, 1}, {0, -1}};
            while (!queue.isEmpty()) {
                Cell cell = queue.poll();
                if (!Double.isNaN(level[cell.i()][cell.j()])) {
                    continue;
                }
                level[cell.i()][cell.j()] = cell.level();
                for (int[] step : steps) {
                    int i = cell.i() + step[0];
                    int j = cell.j() + step[1];
                    if (i >= 0 && i < along && j >= 0 && j < across && Double.isNaN(level[i][j])) {
                        queue.add(new Cell(i, j, Math.max(cell.level(), height[i][j])));
                    }
                }
            }
            return level;
        }

        private List<Cell> waysOut() {
            List<Cell> out = new ArrayList<>();
            List<Floor.Point> points = drawn.basin().floor().points();
            Floor.Point first = points.get(0);
            Floor.Point last = points.get(points.size() - 1);
            for (int j = 0; j < across; j++) {
                double y = (j + 0.5) * dy;
                out.add(edge(0, j, first.z() + plane(0, y)));
                out.add(edge(along - 1, j, last.z() + plane(last.x(), y)));
            }
            drawn.basin().rim().ifPresent(rim -> {
                for (int i = 0; i < along; i++) {
                    double x = (i + 0.5) * dx;
                    out.add(edge(i, 0, rim + plane(x, 0)));
                    out.add(edge(i, across - 1, rim + plane(x, WIDTH)));
                }
            });
            for (Outlet hole : drawn.holes()) {
                int i = Math.min(along - 1, (int) (hole.centre() / dx));
                int j = Math.min(across - 1, (int) (hole.across().orElseThrow() / dy));
                out.add(new Cell(i, j, height[i][j]));
            }
            return out;
        }

        private Cell edge(int i, int j, double wall) {
            return new Cell(i, j, Math.max(height[i][j], wall));
        }
    }

    private static double interpolated(List<Floor.Point> points, double x) {
        for (int i = 1; i < points.size(); i++) {
            Floor.Point before = points.get(i - 1);
            Floor.Point after = points.get(i);
            if (x <= after.x() && x >= before.x() && after.x() > before.x()) {
                return before.z() + (x - before.x()) / (after.x() - before.x()) * (after.z() - before.z());
            }
        }
        throw new AssertionError("off the floor: " + x);
    }

    /** Half a cell at the steepest slope for the level and for the floor, over the whole of it; a step over the whole width
     * once. */
    private static double bound(Drawn drawn, Raster raster) {
        List<Floor.Point> points = drawn.basin().floor().points();
        double dx = drawn.basin().floor().front() / raster.along();
        double dy = WIDTH / raster.across();
        double steepest = 0;
        double steps = 0;
        for (int i = 1; i < points.size(); i++) {
            double run = points.get(i).x() - points.get(i - 1).x();
            double rise = points.get(i).z() - points.get(i - 1).z();
            if (run == 0) {
                steps += Math.abs(rise) * dx * WIDTH;
            } else {
                steepest = Math.max(steepest, Math.abs(rise / run + drawn.tilt().along()));
            }
        }
        double cell = steepest * dx + Math.abs(drawn.tilt().across()) * dy;
        return cell * drawn.basin().floor().front() * WIDTH + steps;
    }
}
