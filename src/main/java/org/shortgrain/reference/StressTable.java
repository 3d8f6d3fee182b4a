package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.GrainDirection;
import org.shortgrain.terms.SourceStatus;

/** Thresholds and test stresses of stress corrosion. */
final class StressTable {
    private static final double MM = 1e-3;
    private static final double CM2 = 1e-4;
    private static final double MPA = 1e6;

    private final RowIndex<StressRow> index = new RowIndex<>();
    private final Crosswalk crosswalk;

    private StressTable(Crosswalk crosswalk) {
        this.crosswalk = crosswalk;
    }

    /** One row. An empty direction means that the source does not say which. */
    record StressRow(Scope scope, Optional<GrainDirection> direction, SccStress stress) {
    }

    static StressTable read(Csv csv, Scope.Reader scopes, Crosswalk crosswalk) {
        List<Row> rows = csv.read("data/scc-stresses.csv", "alloys", "tempers", "forms", "thickness_min_mm",
                "thickness_max_mm", "tested_thickness_mm", "area_min_cm2", "area_max_cm2", "direction", "kind",
                "stress_low_MPa", "stress_high_MPa", "percent_of_yield", "basis", "exposure_days", "printed_ksi",
                "source", "clause", "status", "confidence", "remark");
        List<StressRow> read = new ArrayList<>();
        Bands bands = new Bands();
        for (Row row : rows) {
            Scope scope = scopes.read(row)
                    .withThickness(ThicknessBand.of(row.number("thickness_min_mm", 0, 1000, MM),
                            row.number("thickness_max_mm", 0, 1000, MM), true))
                    .withArea(ThicknessBand.ofArea(row.number("area_min_cm2", 0, 1e5, CM2),
                            row.number("area_max_cm2", 0, 1e5, CM2)));
            read.add(new StressRow(scope, RatingTable.direction(row), stress(row, scope)));
            String key = String.join("\n", row.text("alloys"), row.text("tempers"), row.text("forms"),
                    row.text("direction"), row.text("kind"), row.text("source"), row.text("area_min_cm2"),
                    row.text("area_max_cm2"), row.text("tested_thickness_mm"));
            bands.add(key, read.size() - 1, scope.thickness(), row);
        }
        ThicknessBand[] closed = bands.closed(read.size());
        StressTable table = new StressTable(crosswalk);
        for (int i = 0; i < read.size(); i++) {
            StressRow r = read.get(i);
            Scope scope = r.scope().withThickness(closed[i]);
            table.index.add(scope, new StressRow(scope, r.direction(), r.stress()));
        }
        return table;
    }

    private static SccStress stress(Row row, Scope scope) {
        SccStress.Kind kind = SccStress.Kind.of(row);
        OptionalDouble low = row.number("stress_low_MPa", 1, 2000, MPA);
        OptionalDouble high = row.number("stress_high_MPa", 1, 2000, MPA);
        if (kind.limits() && (low.isEmpty() || high.isEmpty())) {
            row.fault("a " + kind.word() + " row needs stress_low_MPa and stress_high_MPa");
        }
        if (low.isPresent() && high.isPresent() && low.getAsDouble() > high.getAsDouble()) {
            row.fault("stress_low_MPa lies above stress_high_MPa");
        }
        OptionalDouble share = row.number("percent_of_yield", 1, 100, 1);
        StringBuilder statement = new StringBuilder(kind.word());
        if (share.isPresent()) {
            statement.append(" (").append((int) share.getAsDouble()).append(" %)");
        }
        appendIf(statement, row.text("basis"));
        appendIf(statement, row.text("exposure_days").isEmpty() ? "" : row.text("exposure_days") + " d exposure");
        appendIf(statement, row.text("tested_thickness_mm").isEmpty() ? ""
                : "tested at " + row.text("tested_thickness_mm") + " mm");
        appendIf(statement, row.text("printed_ksi").isEmpty() ? "" : "printed " + row.text("printed_ksi") + " ksi");
        return new SccStress(kind, low, high, statement.toString(), false, scope.describe(), row.citation(),
                row.oneOf("confidence", RatingTable.CONFIDENCES), row.text("remark"));
    }

    private static void appendIf(StringBuilder text, String more) {
        if (!more.isEmpty()) {
            text.append(", ").append(more);
        }
    }

    List<StressRow> all() {
        return index.all();
    }

    List<StressRow> of(Alloy alloy) {
        return index.of(alloy);
    }

    /** The rows that speak for a material, or may. */
    List<Found> find(Alloy alloy, Question q) {
        List<Found> found = new ArrayList<>();
        index.matching(alloy, q, (row, match, open) -> found.add(new Found(row, match, open)));
        return found;
    }

    /** A row that speaks for the material, or may. */
    record Found(StressRow row, Match match, Set<OpenDatum> open) {
    }

    /** The stresses that bear on one direction, with those that the letter and the level imply. */
    StressAnswer answer(Alloy alloy, Question q, GrainDirection direction, List<Found> found, LevelAnswer level,
            StrengthAnswer strength) {
        List<SccStress> hits = new ArrayList<>();
        EnumSet<OpenDatum> open = EnumSet.noneOf(OpenDatum.class);
        boolean own = false;
        for (Found one : found) {
            Optional<GrainDirection> of = one.row().direction();
            if (of.isEmpty() || q.concerns(of.get(), direction)) {
                own |= one.row().stress().kind().limits() && (of.isEmpty() || of.get() == direction);
                hits.add(one.match() == Match.YES ? one.row().stress() : maybe(one.row().stress()));
                open.addAll(one.open());
            }
        }
        shareOfYield(level, strength).ifPresent(share -> {
            hits.add(share);
            open.addAll(level.open());
            open.addAll(strength.open());
        });
        boolean shortTransverse = direction == GrainDirection.ST
                || (q.transverseIsSt() && direction == GrainDirection.LT);
        if (shortTransverse && level.level() == SccLevel.LEVEL_1
                && hits.stream().noneMatch(h -> h.kind().limits() && !h.mayApply())) {
            crosswalk.typical(SccLevel.LEVEL_1).filter(t -> t.families().contains(alloy.family())).ifPresent(t -> {
                hits.add(typical(t));
                open.addAll(level.open());
            });
        }
        if (q.form().isEmpty()) {
            open.add(OpenDatum.PRODUCT_FORM);
        }
        if (q.alloyOpen()) {
            open.add(OpenDatum.ALLOY);
        }
        if (q.widthOpen() && direction == GrainDirection.LT && !own) {
            open.add(OpenDatum.WIDTH);
        }
        return governed(hits, open);
    }

    private static SccStress maybe(SccStress s) {
        return new SccStress(s.kind(), s.low(), s.high(), s.statement(), true, s.row(), s.citation(), s.confidence(),
                s.remark());
    }

    private static StressAnswer governed(List<SccStress> hits, EnumSet<OpenDatum> open) {
        Optional<SccStress> lowest = Optional.empty();
        double high = 0;
        boolean firm = false;
        for (SccStress hit : hits) {
            if (!hit.kind().limits()) {
                continue;
            }
            high = Math.max(high, hit.high().orElse(0));
            firm |= hit.firm() && !hit.mayApply();
            if (lowest.isEmpty() || lower(hit, lowest.get())) {
                lowest = Optional.of(hit);
            }
        }
        return new StressAnswer(lowest, high > 0 ? OptionalDouble.of(high) : OptionalDouble.empty(),
                lowest.isPresent() && !firm, open, hits);
    }

    private static boolean lower(SccStress a, SccStress b) {
        double x = a.low().orElseThrow();
        double y = b.low().orElseThrow();
        return x < y || (x == y && a.firm() && !b.firm());
    }

    /** The lowest letter's share of the minimum yield strength; where D applies, which has no share, there is none. */
    private static Optional<SccStress> shareOfYield(LevelAnswer level, StrengthAnswer strength) {
        if (strength.fty().isEmpty()) {
            return Optional.empty();
        }
        RatingHit of = null;
        for (RatingHit hit : level.hits()) {
            if (!hit.scheme().equals("g64_letter") || hit.reading() == RatingHit.Reading.WORST_DIRECTION) {
                continue;
            }
            if (hit.shareOfYield().isEmpty()) {
                if (hit.reading() == RatingHit.Reading.APPLIES) {
                    return Optional.empty();
                }
            } else if (of == null || hit.worst().compareTo(of.worst()) < 0) {
                of = hit;
            }
        }
        if (of == null) {
            return Optional.empty();
        }
        double share = of.shareOfYield().getAsDouble();
        double fty = strength.fty().getAsDouble();
        double stress = Math.max(share * fty, of.floor().orElse(0));
        String statement = "letter " + of.word() + ": " + Math.round(share * 100) + " % of the minimum yield strength of "
                + Math.round(fty / MPA) + " MPa";
        SourceStatus status = of.firm() && strength.governing().map(s -> !s.citation().status().needsConfirmation())
                .orElse(false) ? SourceStatus.DERIVED : SourceStatus.MEMORY;
        return Optional.of(new SccStress(SccStress.Kind.SHARE_OF_YIELD, OptionalDouble.of(stress),
                OptionalDouble.of(stress), statement, of.reading() == RatingHit.Reading.MAY_APPLY, of.row(),
                new Citation(of.citation().id(), of.citation().clause(), status), "", ""));
    }

    private static SccStress typical(Crosswalk.Typical t) {
        return new SccStress(SccStress.Kind.TYPICAL_OF_LEVEL, OptionalDouble.of(t.low()), OptionalDouble.of(t.high()),
                "what plate of this level showed in ST, as it has no figure of its own; for comparison only", true,
                "level 1", t.source(), "", "");
    }
}
