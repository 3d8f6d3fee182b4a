package org.shortgrain.mechanics.water;

import java.util.ArrayList;
import java.util.List;

/**
 * Floor of a hollow in the plane of its length, with the walls at its ends: points joined by straight lines, from the rear
 * end forwards. Two points one above the other are a step or an upright wall.
 *
 * @param points the points; along the length they do not go back
 */
public record Floor(List<Point> points) {

    /**
     * A point of the floor.
     *
     * @param x distance along the length from the rear (m)
     * @param z height (m)
     */
    public record Point(double x, double z) {

        /** Refuses a point that lies nowhere. */
        public Point {
            if (!Double.isFinite(x) || !Double.isFinite(z)) {
                throw new IllegalArgumentException("not a point: " + x + ", " + z);
            }
        }
    }

    /** Copies the list and refuses a floor without length or one that runs back. */
    public Floor {
        points = List.copyOf(points);
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).x() < points.get(i - 1).x()) {
                throw new IllegalArgumentException("the floor runs back at " + points.get(i));
            }
        }
        if (points.size() < 2 || points.get(0).x() == points.get(points.size() - 1).x()) {
            throw new IllegalArgumentException("a floor without length: " + points);
        }
    }

    /**
     * {@return the level floor of a box with upright walls at both ends}
     *
     * @param length length (m), above 0
     * @param depth  height of the walls (m), 0 or more
     * @throws IllegalArgumentException if a size is out of its range
     */
    public static Floor box(double length, double depth) {
        if (!(length > 0 && depth >= 0)) {
            throw new IllegalArgumentException("no box: length " + length + " m, depth " + depth + " m");
        }
        return new Floor(List.of(new Point(0, depth), new Point(0, 0), new Point(length, 0), new Point(length, depth)));
    }

    /** {@return place of the rear end (m)} */
    public double rear() {
        return points.get(0).x();
    }

    /** {@return place of the forward end (m)} */
    public double front() {
        return points.get(points.size() - 1).x();
    }

    /** {@return greatest height (m)} */
    public double highest() {
        return points.stream().mapToDouble(Point::z).max().orElseThrow();
    }

    /** {@return least height (m)} */
    public double lowest() {
        return points.stream().mapToDouble(Point::z).min().orElseThrow();
    }

    /**
     * {@return the place (m) that lies lowest at a tilt along the length; of several, the one furthest to the rear}
     *
     * @param slope rise over run of the tilt, positive where the rear is low
     */
    public double lowestAt(double slope) {
        Point low = points.get(0);
        for (Point point : points) {
            if (point.z() + slope * point.x() < low.z() + slope * low.x()) {
                low = point;
            }
        }
        return low.x();
    }

    /**
     * {@return the same floor with a point of its own at a place}
     *
     * @param x the place (m); beyond an end, the end is meant
     */
    Floor marked(double x) {
        int next = 0;
        while (next < points.size() && points.get(next).x() < x) {
            next++;
        }
        if (next == 0 || next == points.size() || points.get(next).x() == x) {
            return this;
        }
        Point before = points.get(next - 1);
        Point after = points.get(next);
        double share = (x - before.x()) / (after.x() - before.x());
        List<Point> all = new ArrayList<>(points);
        all.add(next, new Point(x, before.z() + share * (after.z() - before.z())));
        return new Floor(all);
    }

    /**
     * {@return index of the lowest of the points at a place}
     *
     * @param x a place that has a point
     */
    int indexAt(double x) {
        int found = -1;
        for (int i = 0; i < points.size(); i++) {
            if (points.get(i).x() == x && (found < 0 || points.get(i).z() < points.get(found).z())) {
                found = i;
            }
        }
        if (found < 0) {
            throw new IllegalArgumentException("the floor has no point at " + x + " m");
        }
        return found;
    }
}
