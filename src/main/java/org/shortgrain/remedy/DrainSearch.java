package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.shortgrain.assessment.HollowReading;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.water.Basin;
import org.shortgrain.mechanics.water.DrainHole;
import org.shortgrain.mechanics.water.Floor;
import org.shortgrain.mechanics.water.Hole;
import org.shortgrain.mechanics.water.Hollow;
import org.shortgrain.mechanics.water.StandingWater;
import org.shortgrain.mechanics.water.Tilt;

/**
 * Where a drain hole, or two, empty a hollow in every attitude in which the part rests.
 *
 * <p>What stays is computed as the review computes it. Of the places where no more than a film stays, the one is taken that
 * keeps clear of the walls by two diameters, or by as much as there is: a fillet carries the peak of tension, and the hole
 * must not run into its radius (distance from a fillet: common practice, no standard gives one). Among equals the least water
 * counts. Where no place leaves a film, the one with the least depth is told.
 *
 * <p>One hole is sought on a grid over the floor and over the deepest points of the floor at each tilt, and then on ever finer
 * grids round the best place, down to the step of the drawing: over a level floor the depth is convex in the place, as the
 * greatest of linear functions, and the place is found to a few steps; over a floor with several valleys a better one may be
 * missed. Two holes are sought at the ends, the sides, the middle and the deepest points, at each of some distances from the
 * walls: a coarser search, so that "none does" is said of these places.
 *
 * <p>Range of validity: a hollow described in full that opens up or is closed, its attitudes stated.
 */
final class DrainSearch {

    /** Distance of the hole from a wall that is enough, in diameters: common practice. */
    private static final double CLEAR = 2;
    /** Distances from the walls at which pairs are tried, in diameters. */
    private static final double[] PAIR_DISTANCES = {CLEAR, 1.5, 1, 0.5, 0};
    /** Distances are equal within this (m): rounding. */
    private static final double LEAST_STEP = 1e-9;
    private static final int LENGTHWISE = 24;
    private static final int ACROSS = 8;
    private static final int WINDOW = 4;

    private final HollowReading hollow;
    private final Hollow shape;
    private final List<Hole> kept;
    private final double diameter;
    private final double unit;
    private final Floor floor;
    private final double length;
    private final double width;
    private final boolean rolls;

    /**
     * A place of the near edge of a hole.
     *
     * @param fromEnd  distance from the end of the floor that is low at the first attitude that is pitched (m)
     * @param fromSide distance from the side that is low at the first that rolls (m); empty where none rolls
     */
    record Spot(double fromEnd, OptionalDouble fromSide) {
    }

    /**
     * Holes that were looked at.
     *
     * @param spots where they lie
     * @param depth greatest depth that stays with them (m)
     * @param clear least distance of an edge from a wall, up to what is enough (m)
     */
    record Found(List<Spot> spots, double depth, double clear) {

        boolean drains() {
            return depth <= DrainHole.film();
        }
    }

    private static final Comparator<Found> BEST = Comparator.comparing(Found::drains)
            .thenComparingDouble(found -> found.drains() ? found.clear() : 0).thenComparingDouble(found -> -found.depth());

    /**
     * Prepares a search.
     *
     * @param hollow   the hollow, with a shape and its attitudes
     * @param kept     holes that drain it already and stay
     * @param diameter diameter of the new holes (m)
     * @param unit     step of a place on the drawing (m)
     */
    DrainSearch(HollowReading hollow, List<Hole> kept, double diameter, double unit) {
        this.hollow = hollow;
        this.shape = hollow.shape().orElseThrow();
        this.kept = List.copyOf(kept);
        this.diameter = diameter;
        this.unit = unit;
        Basin least = basin(given -> given.value().low());
        this.floor = basin(given -> given.value().value()).floor();
        this.length = least.floor().front() - least.floor().rear();
        this.width = least.width();
        this.rolls = hollow.rests().stream().flatMap(rest -> rest.tilts().stream()).anyMatch(tilt -> tilt.across() != 0);
    }

    private Basin basin(Function<Given, Double> end) {
        return shape.basin(shape.sizes().stream().mapToDouble(end::apply).toArray());
    }

    /** Whether the floor has room for the hole. */
    boolean hasRoom() {
        return diameter <= width && diameter <= length;
    }

    /** Distance of the edge from both side walls of a hole in the middle of the width (m); empty where its place across the
     * width is sought too. */
    OptionalDouble besides() {
        return rolls ? OptionalDouble.empty() : OptionalDouble.of((width - diameter) / 2);
    }

    /** The best place of one hole. */
    Found one() {
        int alongMost = steps(length - diameter);
        int acrossMost = rolls ? steps(width - diameter) : 0;
        Found best = new Found(List.of(), Double.POSITIVE_INFINITY, 0);
        for (int i = 0; i <= LENGTHWISE; i++) {
            for (int j = 0; j <= (rolls ? ACROSS : 0); j++) {
                best = better(best, at(spot(i * alongMost / LENGTHWISE, j * acrossMost / ACROSS)));
            }
        }
        for (double valley : valleys()) {
            best = better(best, at(spot((int) Math.round(valley / unit), acrossMost / 2)));
        }
        int along = Math.max(1, alongMost / LENGTHWISE);
        int across = Math.max(1, acrossMost / ACROSS);
        while (along > 1 || across > 1) {
            along = (along + 1) / 2;
            across = (across + 1) / 2;
            best = around(best, along, across, alongMost, acrossMost);
        }
        return settled(best, alongMost, acrossMost);
    }

    /** In steps of the drawing to the best place near by, for as long as there is a better one. */
    private Found settled(Found from, int alongMost, int acrossMost) {
        Found best = from;
        Found before;
        do {
            before = best;
            best = around(before, 1, 1, alongMost, acrossMost);
        } while (best != before);
        return best;
    }

    /** The best of the places round one, within four steps each way: the two of the grid before. */
    private Found around(Found from, int alongStep, int acrossStep, int alongMost, int acrossMost) {
        Found best = from;
        int along = (int) Math.round(from.spots().get(0).fromEnd() / unit);
        int across = (int) Math.round(from.spots().get(0).fromSide().orElse(0) / unit);
        for (int i = -WINDOW; i <= WINDOW; i++) {
            for (int j = rolls ? -WINDOW : 0; j <= (rolls ? WINDOW : 0); j++) {
                best = better(best, at(spot(within(along + i * alongStep, alongMost), within(across + j * acrossStep, acrossMost))));
            }
        }
        return best;
    }

    /** The best pair, at the greatest distance from the walls at which one drains; empty where the floor has no room for two. */
    Optional<Found> two() {
        if (length < 2 * diameter && width < 2 * diameter) {
            return Optional.empty();
        }
        Optional<Found> best = Optional.empty();
        for (double distance : PAIR_DISTANCES) {
            List<Spot> spots = spots(distance * diameter);
            for (int i = 0; i < spots.size(); i++) {
                for (int j = i + 1; j < spots.size(); j++) {
                    if (apart(spots.get(i), spots.get(j))) {
                        Found pair = at(spots.get(i), spots.get(j));
                        best = Optional.of(best.map(one -> better(one, pair)).orElse(pair));
                    }
                }
            }
            if (best.filter(Found::drains).isPresent()) {
                return best;
            }
        }
        return best;
    }

    /** How far from the low end a single hole may lie, on its line along the floor, and still leave no more than a film: the
     * nearest and the furthest distance (m), in steps of the drawing from where it was found. */
    double[] reach(Found one) {
        Spot spot = one.spots().get(0);
        int across = (int) Math.round(spot.fromSide().orElse(0) / unit);
        int near = (int) Math.round(spot.fromEnd() / unit);
        int far = near;
        while (near > 0 && at(spot(near - 1, across)).drains()) {
            near--;
        }
        while (far < steps(length - diameter) && at(spot(far + 1, across)).drains()) {
            far++;
        }
        return new double[] {near * unit, far * unit};
    }

    private List<Spot> spots(double fromWall) {
        List<Integer> along = new ArrayList<>(between(fromWall, length - diameter));
        valleys().forEach(valley -> along.add((int) Math.round(valley / unit)));
        List<Integer> across = rolls ? between(fromWall, width - diameter) : List.of(0);
        return along.stream().distinct().flatMap(x -> across.stream().map(y -> spot(x, y))).distinct().toList();
    }

    /** Both walls and the middle, in steps of the drawing. */
    private List<Integer> between(double fromWall, double room) {
        int near = Math.min(steps(fromWall), steps(room / 2));
        return IntStream.of(near, steps(room / 2), steps(room) - near).distinct().boxed().toList();
    }

    /** Whether the edges of two holes leave a diameter of metal between them. */
    private boolean apart(Spot one, Spot other) {
        double across = one.fromSide().orElse(0) - other.fromSide().orElse(0);
        return Math.hypot(one.fromEnd() - other.fromEnd(), across) >= 2 * diameter;
    }

    /** Near edges of holes over the deepest points of the floor at each tilt (m from the low end), within the floor. */
    private List<Double> valleys() {
        boolean rear = hollow.lengthwise().along() >= 0;
        return hollow.rests().stream().flatMap(rest -> rest.tilts().stream()).map(Tilt::along).distinct()
                .map(floor::lowestAt).map(x -> (rear ? x - floor.rear() : floor.front() - x) - diameter / 2)
                .map(x -> Math.max(0, Math.min(length - diameter, x))).distinct().toList();
    }

    private Found at(Spot... spots) {
        List<Hole> holes = new ArrayList<>(kept);
        double clear = CLEAR * diameter;
        for (Spot spot : spots) {
            holes.add(hollow.hole(exact(spot.fromEnd()), spot.fromSide().stream().boxed().findFirst().map(DrainSearch::exact),
                    exact(diameter)));
            clear = Math.min(clear, Math.min(spot.fromEnd(), length - diameter - spot.fromEnd()));
            if (spot.fromSide().isPresent()) {
                double side = spot.fromSide().getAsDouble();
                clear = Math.min(clear, Math.min(side, width - diameter - side));
            }
        }
        return new Found(List.of(spots), new StandingWater(shape, hollow.rests(), holes).greatestDepth(),
                Math.round(clear / LEAST_STEP) * LEAST_STEP);
    }

    private Spot spot(int along, int across) {
        return new Spot(along * unit, rolls ? OptionalDouble.of(across * unit) : OptionalDouble.empty());
    }

    private static Given exact(double metres) {
        return Given.exact(metres, "proposed");
    }

    private static Found better(Found one, Found other) {
        return BEST.compare(other, one) > 0 ? other : one;
    }

    private static int within(int at, int most) {
        return Math.max(0, Math.min(most, at));
    }

    private int steps(double metres) {
        return (int) Math.floor(Math.max(0, metres) / unit + 1e-9);
    }
}
