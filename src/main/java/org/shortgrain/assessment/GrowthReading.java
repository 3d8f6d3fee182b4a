package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.crack.GrowingCrack;
import org.shortgrain.mechanics.crack.GrowthCase;
import org.shortgrain.mechanics.crack.GrowthResult;
import org.shortgrain.mechanics.crack.InspectionInterval;
import org.shortgrain.part.FeatureKind;
import org.shortgrain.part.Form;
import org.shortgrain.part.Identity;
import org.shortgrain.part.Inspection;
import org.shortgrain.part.InspectionMethod;
import org.shortgrain.part.Purpose;
import org.shortgrain.part.Range;
import org.shortgrain.part.Service;
import org.shortgrain.part.Stated;
import org.shortgrain.reference.CrackGrowth;
import org.shortgrain.reference.InspectionTable;
import org.shortgrain.reference.MaterialAnswer;
import org.shortgrain.reference.Toughness;
import org.shortgrain.review.Contribution;
import org.shortgrain.review.DirectionReview;
import org.shortgrain.review.FactorState;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.GrainDirection;
import org.shortgrain.terms.SourceStatus;

/**
 * How long a crack at a place can be watched: from what is found to what is critical, under the sustained stress there.
 *
 * <p>Every input is taken at the end that shortens the time. Where a number is missing, nothing is computed and the
 * practice of the trade stands alone.
 */
final class GrowthReading {

    private static final double MEGA = 1e6;
    private static final String FOUND = "the crack that was found";
    private static final String RESIDUAL = "quench residual";

    /** The longer interval, then the longer growth, then the smaller crack. */
    private static final Comparator<Candidate> BETTER = Comparator.comparingDouble((Candidate one) -> one.interval().length())
            .thenComparingDouble(one -> one.interval().window().orElse(Double.POSITIVE_INFINITY))
            .thenComparing(Comparator.comparingDouble((Candidate one) -> one.result().found()).reversed());

    private final InspectionTable table;

    GrowthReading(InspectionTable table) {
        this.table = table;
    }

    /**
     * What was found out of a place.
     *
     * @param method   the method that sets the interval, in words
     * @param notes    what was taken for granted about it
     * @param first    time to the first look; empty if growth is not computed
     * @param repeat   time between looks; empty if growth is not computed
     * @param result   the computation behind the interval; empty if there is none
     * @param missing  why growth is not computed; empty text if it is
     * @param written  numbers of the calculations
     */
    record Watched(String method, List<String> notes, Optional<InspectionInterval> first,
            Optional<InspectionInterval> repeat, Optional<GrowthResult> result, String missing, List<String> written) {
    }

    /** {@return whether anything is to be said of inspection: one is planned, or the part is in service} */
    static boolean isAsked(Site site) {
        return site.description().inspection().isKnown()
                || site.description().review().field(one -> one.purpose()).is(Purpose.IN_SERVICE);
    }

    /**
     * {@return how long a crack can be watched at a place; empty if nothing pulls there, or the material is resistant and
     * nothing is published of its crack growth}
     *
     * @param site       the place
     * @param directions stress at the place
     * @param material   state of the material factor
     * @param answer     what the tables say of the material
     */
    Optional<Watched> at(Site site, List<DirectionReview> directions, FactorState material, MaterialAnswer answer) {
        Optional<DirectionReview> pulled = directions.stream().filter(one -> one.sustained().total().high() > 0)
                .max(Comparator.comparing((DirectionReview one) -> !rows(answer, direction(one), site).isEmpty())
                        .thenComparing(one -> one.sustained().total().high()));
        if (pulled.isEmpty()) {
            return Optional.empty();
        }
        List<CrackGrowth> rows = rows(answer, direction(pulled.get()), site);
        if (rows.isEmpty() && material == FactorState.ABSENT) {
            return Optional.empty();
        }
        OptionalDouble section = section(site);
        Optional<Given> tough = toughness(answer, direction(pulled.get()));
        Optional<Given> kIscc = kIscc(rows);
        Optional<Given> rate = rate(rows);
        String missing = kIscc.isEmpty() ? "no K_ISCC is published for the material in this form and direction"
                : rate.isEmpty() ? "no velocity of cracks is published for it"
                : tough.isEmpty() ? "no fracture toughness is published for it"
                : section.isEmpty() ? "the finished section is not stated" : "";
        if (!missing.isEmpty()) {
            return Optional.of(new Watched(methods(site).isEmpty() ? "no method stated" : say(methods(site).get(0)),
                    List.of(), Optional.empty(), Optional.empty(), Optional.empty(), missing, List.of()));
        }
        Material numbers = new Material(kIscc.get(), rate.get(), tough.get());
        return Optional.of(watched(site, pulled.get(), numbers, section.getAsDouble(), material));
    }

    /** What the tables say of crack growth in the material. */
    private record Material(Given kIscc, Given rate, Given toughness) {
    }

    /** One crack to start from, with its interval. */
    private record Candidate(String method, String note, GrowthResult result, InspectionInterval interval) {
    }

    private Watched watched(Site site, DirectionReview pulled, Material numbers, double section, FactorState material) {
        boolean edge = site.feature().what().any(GrowthReading::isEdge);
        List<Candidate> best = new ArrayList<>();
        for (InspectionMethod method : effective(site)) {
            found(site, method, edge, section).stream()
                    .map(crack -> candidate(site, pulled, numbers, section, edge, crack, say(method), "longest"))
                    .min(BETTER).ifPresent(best::add);
        }
        InspectionTable.Place place = edge ? InspectionTable.Place.EDGE : InspectionTable.Place.SURFACE;
        Optional<Candidate> first = table.found(InspectionTable.ASSUMED, place, section).stream()
                .map(crack -> candidate(site, pulled, numbers, section, edge, crack, "flaw assumed from manufacture",
                        material == FactorState.ABSENT ? "longest" : "first_susceptible"))
                .min(BETTER);
        Optional<Candidate> repeat = best.stream().max(BETTER);
        if (repeat.isEmpty()) {
            return new Watched(say(effective(site).get(0)), List.of(), Optional.empty(), Optional.empty(), Optional.empty(),
                    "no size is known that the method finds", List.of());
        }
        List<String> written = new ArrayList<>(repeat.get().result().computed(repeat.get().method()).stream()
                .map(site::write).toList());
        List<String> notes = new ArrayList<>(Stream.of(repeat.get().note(), methods(site).isEmpty()
                ? "No method is stated: eddy current is taken." : "").filter(one -> !one.isEmpty()).toList());
        for (InspectionTable.Crack crack : cracksFound(site)) {
            Candidate open = candidate(site, pulled, numbers, section, edge, crack, FOUND, "longest");
            open.result().computed(FOUND).stream().map(site::write).forEach(written::add);
            notes.add(sayFound(open));
        }
        return new Watched(repeat.get().method(), notes, first.map(Candidate::interval),
                Optional.of(repeat.get().interval()), Optional.of(repeat.get().result()), "", written);
    }

    /** The cracks that were found at the place and whose depth is stated. */
    private static List<InspectionTable.Crack> cracksFound(Site site) {
        return Stated.items(site.description().service().field(Service::cracks)).stream()
                .filter(one -> one.feature().is(site.id())).flatMap(one -> one.depth().single().stream()
                        .filter(depth -> depth.highest() > 0).map(depth -> new InspectionTable.Crack(depth.highest(),
                                Math.max(depth.highest(), Range.greatest(one.length()).orElse(0) / 2), false,
                                new Citation("user-statement", "service/cracks", SourceStatus.SECONDARY), ""))).toList();
    }

    /** What is left to the crack that was found, if every number lies at the end that shortens the time. */
    private static String sayFound(Candidate open) {
        GrowthResult result = open.result();
        if (result.found() >= result.criticalDepth()) {
            return String.format(Locale.ROOT, "The crack that was found, %.1f mm deep, reaches the critical depth of %.1f mm at the"
                    + " upper end of the stress: nothing is left to inspect.", result.found() * 1e3,
                    result.criticalDepth() * 1e3);
        }
        OptionalDouble window = open.interval().window();
        return String.format(Locale.ROOT, "The crack that was found, %.1f mm deep, ", result.found() * 1e3)
                + (window.isPresent() ? "may become critical within " + ScheduleReading.span(window.getAsDouble()) + "."
                        : "stays below K_ISCC at the sustained stress.");
    }

    private Candidate candidate(Site site, DirectionReview pulled, Material numbers, double section, boolean edge,
            InspectionTable.Crack crack, String method, String cap) {
        GrowingCrack grows = new GrowingCrack(edge ? GrowingCrack.Kind.CORNER : GrowingCrack.Kind.SURFACE,
                crack.depth() / crack.halfLength(), section, Double.POSITIVE_INFINITY);
        Given found = new Given(Band.exact(crack.depth()), method, Optional.of(crack.source()));
        GrowthResult result = new GrowthCase(grows, stress(pulled), rise(site, pulled), numbers.kIscc(), numbers.rate(),
                numbers.toughness(), found, smooth(pulled)).result();
        InspectionTable.Practice factor = table.practice(isAlone(site) ? "factor_single_load_path" : "factor");
        return new Candidate(method, crack.remark(), result, result.interval(new InspectionInterval.Practice(factor.value(),
                table.practice(cap).value(), table.practice("shortest").value())));
    }

    /** Whether the part may be the only one that carries the load. */
    static boolean isAlone(Site site) {
        return !site.description().part().field(Identity::singleLoadPath).is(false);
    }

    /** The declared size first: it is of this shop and this place. A declared size is a depth, as long on the face each way. */
    private List<InspectionTable.Crack> found(Site site, InspectionMethod method, boolean edge, double section) {
        Optional<Range> declared = site.description().inspection().field(Inspection::detectable).candidates().stream()
                .max(Comparator.comparingDouble(Range::highest));
        if (declared.isPresent()) {
            double depth = Math.min(section, declared.get().highest());
            return List.of(new InspectionTable.Crack(depth, depth, depth >= section,
                    new Citation("user-statement", "inspection", SourceStatus.SECONDARY),
                    "The smallest crack that is found is taken as declared, as its depth."));
        }
        return table.found(method.word(), edge ? InspectionTable.Place.EDGE : InspectionTable.Place.SURFACE, section);
    }

    private static List<InspectionMethod> methods(Site site) {
        return List.copyOf(new LinkedHashSet<>(Stated.items(site.description().inspection().field(Inspection::method))));
    }

    private static List<InspectionMethod> effective(Site site) {
        return methods(site).isEmpty() ? List.of(InspectionMethod.EDDY_CURRENT) : methods(site);
    }

    private static String say(InspectionMethod method) {
        return method.word().replace('_', ' ');
    }

    private static boolean isEdge(FeatureKind kind) {
        return switch (kind) {
            case LUG_BORE, BOLT_HOLE, BORE, THREADED_HOLE, FLANGE_EDGE -> true;
            default -> false;
        };
    }

    private static GrainDirection direction(DirectionReview review) {
        return review.sustained().direction();
    }

    private static Given stress(DirectionReview pulled) {
        org.shortgrain.review.Amount total = pulled.sustained().total();
        return new Given(new Band(total.value() * MEGA, total.low() * MEGA, total.high() * MEGA),
                "sustained stress along " + direction(pulled), Optional.empty());
    }

    private static Optional<Given> smooth(DirectionReview pulled) {
        return pulled.threshold().map(one -> new Given(new Band(one.amount().value() * MEGA, one.amount().low() * MEGA,
                one.amount().high() * MEGA), one.kind(), Optional.of(one.source())));
    }

    /** By how much the residual stress rises or falls below the surface; compression is none. Empty: taken as even. */
    private static List<GrowthCase.Rise> rise(Site site, DirectionReview pulled) {
        for (Contribution part : pulled.sustained().parts()) {
            if (part.source().startsWith(RESIDUAL) && part.calculation().isPresent()) {
                Optional<Computed> residual = site.ledger().calculation(part.calculation().get());
                Optional<Computed.Profile> left = residual.flatMap(GrowthReading::leftAtSurface);
                if (left.isPresent()) {
                    return rise(left.get());
                }
            }
        }
        return List.of();
    }

    /** The curve after machining whose first point lies nearest to the value at the surface. */
    private static Optional<Computed.Profile> leftAtSurface(Computed residual) {
        return residual.profiles().stream()
                .filter(profile -> profile.name().startsWith("after machining") && profile.x().size() > 1)
                .min(Comparator.comparingDouble(one -> Math.abs(one.y().get(0) - residual.value().value())));
    }

    private static List<GrowthCase.Rise> rise(Computed.Profile profile) {
        List<GrowthCase.Rise> points = new ArrayList<>();
        double surface = Math.max(0, profile.y().get(0));
        for (int i = 0; i < profile.x().size(); i++) {
            double depth = profile.x().get(i) - profile.x().get(0);
            if (points.isEmpty() || depth > points.get(points.size() - 1).depth()) {
                points.add(new GrowthCase.Rise(depth, Math.max(0, profile.y().get(i)) - surface));
            }
        }
        return points;
    }

    private static OptionalDouble section(Site site) {
        Stated<Range> own = site.feature().sectionFinished();
        return Range.least(own.isKnown() ? own : site.form().field(Form::finishedThickness));
    }

    /** Rows of an aluminium alloy are for the short transverse direction; those of other metals for any. */
    private static List<CrackGrowth> rows(MaterialAnswer answer, GrainDirection direction, Site site) {
        if (site.metal().isAluminium() && direction != GrainDirection.ST) {
            return List.of();
        }
        List<CrackGrowth> rows = new ArrayList<>();
        for (CrackGrowth one : answer.growth()) {
            if (one.kisccLow().isPresent()) {
                rows.add(one);
            }
        }
        return rows;
    }

    private static Optional<Given> kIscc(List<CrackGrowth> rows) {
        return rows.stream().min(Comparator.comparingDouble(one -> one.kisccLow().getAsDouble())).map(lowest -> {
            double low = lowest.kisccLow().getAsDouble();
            double high = Math.max(low, rows.stream()
                    .mapToDouble(one -> one.kisccHigh().orElse(one.kisccLow().getAsDouble())).max().orElse(low));
            return new Given(new Band((low + high) / 2, low, high), lowest.row(), Optional.of(lowest.citation()));
        });
    }

    private static Optional<Given> rate(List<CrackGrowth> rows) {
        return rows.stream().filter(one -> one.rateHigh().isPresent())
                .max(Comparator.comparingDouble(one -> one.rateHigh().getAsDouble())).map(fastest -> {
                    double high = fastest.rateHigh().getAsDouble();
                    double low = rows.stream().filter(one -> one.rateLow().isPresent())
                            .mapToDouble(one -> one.rateLow().getAsDouble()).min().orElse(high);
                    return new Given(new Band(Math.sqrt(low * high), low, high), fastest.row(),
                            Optional.of(fastest.citation()));
                });
    }

    private static Optional<Given> toughness(MaterialAnswer answer, GrainDirection direction) {
        String orientation = direction == GrainDirection.ST ? "S-L" : "T-L";
        List<Toughness> rows = answer.toughness().stream().filter(one -> one.orientation().equals(orientation)).toList();
        return rows.stream().min(Comparator.comparingDouble(one -> one.least().orElse(one.average()))).map(lowest -> {
            double low = lowest.least().orElse(lowest.average());
            return new Given(new Band(lowest.average(), low, lowest.average()),
                    String.format(Locale.ROOT, "%s, %s, least published", lowest.row(), orientation),
                    Optional.of(lowest.citation()));
        });
    }
}
