package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.water.Floor;
import org.shortgrain.mechanics.water.Hole;
import org.shortgrain.mechanics.water.Hollow;
import org.shortgrain.mechanics.water.Rest;
import org.shortgrain.mechanics.water.Tilt;
import org.shortgrain.part.Attitude;
import org.shortgrain.part.Attitudes;
import org.shortgrain.part.Drainage;
import org.shortgrain.part.Opening;
import org.shortgrain.part.ProfilePoint;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;
import org.shortgrain.reference.StandIns;

/**
 * A hollow as the description states it, in the terms of the computation.
 *
 * <p>The attitude counts as declared when those on the ground and in flight are stated, or stated as none. Until then the
 * hollow is taken in the worst attitude of all. An opening that is not stated is taken as facing up.
 *
 * @param opening  where it opens, the worst of several; up if not stated
 * @param certain  whether that is stated
 * @param shape    the hollow; empty where a dimension is missing
 * @param rests    the attitudes; any, where they are not declared
 * @param declared whether they are declared
 */
public record HollowReading(Opening opening, boolean certain, Optional<Hollow> shape, List<Rest> rests, boolean declared) {

    /** Openings, the worst for water first. */
    private static final List<Opening> WORST_FIRST = List.of(Opening.UP, Opening.CLOSED, Opening.SIDE, Opening.DOWN);

    private static final String ON_GROUND = "on the ground";
    private static final String IN_FLIGHT = "in flight";
    private static final String PARKED = "parked";
    private static final String IN_TRANSPORT = "in transport";

    /** {@return the key under which the description has an attitude; empty for what is no attitude of it} */
    static Optional<String> key(String attitude) {
        return switch (attitude) {
            case ON_GROUND -> Optional.of("ground");
            case IN_FLIGHT -> Optional.of("flight");
            case PARKED -> Optional.of("parked");
            case IN_TRANSPORT -> Optional.of("transport");
            default -> Optional.empty();
        };
    }

    /** Copies the list. */
    public HollowReading {
        rests = List.copyOf(rests);
    }

    /**
     * {@return what is stated of a hollow}
     *
     * @param site   the place, for what is taken for granted
     * @param stated the drainage there
     * @param standIns the roll that stands for one that is not stated
     */
    static HollowReading of(Site site, Drainage stated, StandIns standIns) {
        StandIns.StandIn roll = standIns.of("roll");
        return of(stated, standIns, name -> site.ledger().assume(String.format(Locale.ROOT, "%s: %s the roll is not stated;"
                + " up to %.0f degrees to either side are taken, the worst of which counts", site.id(), name, roll.value()),
                org.shortgrain.review.Assumption.Effect.CONSERVATIVE, roll.source()));
    }

    /**
     * {@return what is stated of a hollow, for whoever seeks a better drain: nothing is written down}
     *
     * @param stated   the drainage
     * @param standIns the roll that stands for one that is not stated
     */
    public static HollowReading of(Drainage stated, StandIns standIns) {
        return of(stated, standIns, name -> { });
    }

    private static HollowReading of(Drainage stated, StandIns standIns, Consumer<String> rollTaken) {
        List<Opening> openings = stated.opening().candidates();
        Opening worst = WORST_FIRST.stream().filter(openings::contains).findFirst().orElse(Opening.UP);
        Optional<List<Rest>> rests = rests(stated, standIns.of("roll"), rollTaken);
        return new HollowReading(worst, openings.size() == 1, shape(stated, worst), rests.orElse(List.of(Rest.any())),
                rests.isPresent());
    }

    private static Optional<Hollow> shape(Drainage stated, Opening opening) {
        Optional<Given> width = given(stated.width());
        Optional<Given> depth = given(stated.depth());
        Optional<Given> length = given(stated.length());
        boolean down = opening == Opening.DOWN;
        boolean box = width.isPresent() && depth.isPresent() && length.isPresent();
        Optional<Floor> floor = stated.profile().single().flatMap(HollowReading::floor);
        if (floor.isPresent() && width.isPresent() && (opening == Opening.UP || down)) {
            return Optional.of(new Hollow.Profiled(floor.get(), width.get(), depth, down));
        }
        if (!box || stated.profile().isKnown()) {
            return Optional.empty();
        }
        return Optional.of(switch (opening) {
            case UP, DOWN -> new Hollow.Box(length.get(), width.get(), depth.get(), down);
            case SIDE -> new Hollow.OnItsSide(length.get(), width.get(), depth.get());
            case CLOSED -> new Hollow.Closed(length.get(), width.get(), depth.get());
        });
    }

    /** The floor line, if every point is stated and they run one way; from the rear forwards. */
    private static Optional<Floor> floor(List<ProfilePoint> stated) {
        List<Floor.Point> points = new ArrayList<>();
        for (ProfilePoint point : stated) {
            Optional<Range> x = point.x().single();
            Optional<Range> z = point.z().single();
            if (x.isEmpty() || z.isEmpty()) {
                return Optional.empty();
            }
            points.add(new Floor.Point(x.get().middle(), z.get().middle()));
        }
        if (points.size() > 1 && points.get(0).x() > points.get(points.size() - 1).x()) {
            Collections.reverse(points);
        }
        try {
            return Optional.of(new Floor(points));
        } catch (IllegalArgumentException runsBack) {
            return Optional.empty();
        }
    }

    /** {@return a length that the description states, above 0; empty if it does not} */
    public static Optional<Given> given(Stated<Range> stated) {
        return Declared.of(stated).filter(given -> given.value().low() > 0);
    }

    private static Optional<List<Rest>> rests(Drainage stated, StandIns.StandIn roll, Consumer<String> rollTaken) {
        Stated<Attitudes> attitudes = stated.attitude();
        if (attitudes.field(Attitudes::ground).isMissing() || attitudes.field(Attitudes::flight).isMissing()) {
            return Optional.empty();
        }
        List<Rest> rests = new ArrayList<>();
        boolean whole = add(attitudes, Attitudes::ground, ON_GROUND, roll, rests, rollTaken)
                && add(attitudes, Attitudes::flight, IN_FLIGHT, roll, rests, rollTaken)
                && add(attitudes, Attitudes::parked, PARKED, roll, rests, rollTaken)
                && add(attitudes, Attitudes::transport, IN_TRANSPORT, roll, rests, rollTaken);
        return whole && !rests.isEmpty() ? Optional.of(rests) : Optional.empty();
    }

    /** Adds an attitude; false where it is stated only in part. One that is not stated, or stated as none, adds nothing. */
    private static boolean add(Stated<Attitudes> attitudes, Function<Attitudes, Stated<Attitude>> which, String name,
            StandIns.StandIn standIn, List<Rest> rests, Consumer<String> rollTaken) {
        Stated<Attitude> one = attitudes.field(which);
        if (!one.isKnown()) {
            return true;
        }
        Optional<Band> pitch = angle(one.field(Attitude::pitch));
        Optional<Band> roll = one.field(Attitude::roll).isNone() ? Optional.of(Band.exact(0))
                : angle(one.field(Attitude::roll));
        if (pitch.isEmpty()) {
            return false;
        }
        if (roll.isEmpty()) {
            rollTaken.accept(name);
        }
        double most = Math.toRadians(standIn.value());
        rests.add(Rest.of(name, pitch.get(), roll.orElse(new Band(0, -most, most))));
        return true;
    }

    /** An angle: of alternatives the whole range. */
    private static Optional<Band> angle(Stated<Range> stated) {
        if (!stated.isKnown()) {
            return Optional.empty();
        }
        double low = Range.least(stated).orElseThrow();
        double high = Range.greatest(stated).orElseThrow();
        return Optional.of(new Band((low + high) / 2, low, high));
    }

    /** {@return the tilt that says which end of the floor lies low: the first attitude that is not level along the length} */
    public Tilt lengthwise() {
        return rests.stream().flatMap(rest -> rest.tilts().stream()).filter(tilt -> tilt.along() != 0).findFirst()
                .orElse(Tilt.LEVEL);
    }

    /** {@return the tilt that says which side of the floor lies low: the first attitude that is not level across it} */
    public Tilt sideways() {
        return rests.stream().flatMap(rest -> rest.tilts().stream()).filter(tilt -> tilt.across() != 0).findFirst()
                .orElse(Tilt.LEVEL);
    }

    /**
     * {@return a hole in the floor of the hollow}
     *
     * @param fromLowEnd  distance of its near edge from the end that {@link #lengthwise} says is low (m)
     * @param fromLowSide distance of its near edge from the side that {@link #sideways} says is low (m); empty if not stated
     * @param diameter    its diameter (m)
     */
    public Hole hole(Given fromLowEnd, Optional<Given> fromLowSide, Given diameter) {
        Hole.FromEnd.End low = lengthwise().along() >= 0 ? Hole.FromEnd.End.REAR : Hole.FromEnd.End.FRONT;
        return new Hole.FromEnd(low, fromLowEnd,
                fromLowSide.map(near -> new Hole.FromEnd.FromSide(sideways().across() >= 0, near)), diameter);
    }

    /** {@return the hole that is stated to lie at the lowest point} */
    public Hole lowest() {
        boolean side = shape.map(Hollow.OnItsSide.class::isInstance).orElse(false);
        return new Hole.Lowest(side ? shape.orElseThrow().seen(lengthwise()) : lengthwise(), sideways());
    }

    /**
     * {@return where a drain hole lies, as stated; empty if that is not stated}
     *
     * @param stated the hole
     * @param width  its width (m), of what is open
     */
    public Optional<Hole> place(org.shortgrain.part.DrainHole stated, Optional<Given> width) {
        Optional<Given> near = Declared.of(stated.fromLowEnd());
        if (near.isPresent() && width.isPresent() && opening != Opening.SIDE) {
            return Optional.of(hole(near.get(), Declared.of(stated.fromLowSide()), width.get()));
        }
        return stated.atLowestPoint().is(true) ? Optional.of(lowest()) : Optional.empty();
    }
}
