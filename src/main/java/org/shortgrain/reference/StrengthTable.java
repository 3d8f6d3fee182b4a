package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.shortgrain.terms.GrainDirection;

/** Minimum and typical strengths by material, temper, form, thickness and direction. */
final class StrengthTable {
    private static final Set<String> DIRECTIONS = Set.of("L", "LT", "ST", "T", "all");
    private static final double MM = 1e-3;
    private static final double CM2 = 1e-4;
    private static final double MPA = 1e6;
    private static final double PERCENT = 0.01;
    /** Two sources that differ by no more than the rounding of a table in whole MPa do not disagree (Pa). */
    private static final double ROUNDING = 1e6;

    private final RowIndex<StrengthRow> index = new RowIndex<>();

    /** One row; {@code direction} as printed. */
    record StrengthRow(Scope scope, String direction, Strength strength, Strength ifMaybe) {
        boolean concerns(GrainDirection asked, boolean transverseIsSt) {
            return switch (direction) {
                case "all" -> true;
                case "T" -> asked != GrainDirection.L;
                case "ST" -> asked == GrainDirection.ST || (transverseIsSt && asked == GrainDirection.LT);
                default -> direction.equals(asked.name());
            };
        }
    }

    static StrengthTable read(Csv csv, Scope.Reader scopes) {
        List<Row> rows = csv.read("data/strengths.csv", "alloys", "tempers", "forms", "thickness_min_mm",
                "thickness_max_mm", "area_min_cm2", "area_max_cm2", "direction", "basis", "ftu_MPa", "fty_MPa",
                "elongation_percent", "printed_ftu_ksi", "printed_fty_ksi", "printed_band_in", "source", "clause",
                "status", "remark");
        List<Scope> scopesRead = new ArrayList<>();
        Bands bands = new Bands();
        for (Row row : rows) {
            Scope scope = scopes.read(row)
                    .withThickness(ThicknessBand.of(row.number("thickness_min_mm", 0, 1000, MM),
                            row.number("thickness_max_mm", 0, 1000, MM), true))
                    .withArea(ThicknessBand.ofArea(row.number("area_min_cm2", 0, 1e5, CM2),
                            row.number("area_max_cm2", 0, 1e5, CM2)));
            scopesRead.add(scope);
            String key = String.join("\n", row.text("alloys"), row.text("tempers"), row.text("forms"),
                    row.text("direction"), row.text("basis"), row.text("source"), row.text("area_min_cm2"),
                    row.text("area_max_cm2"), row.text("remark").contains("AMS") ? row.text("remark") : "",
                    row.text("remark").contains("carbon grade") ? row.text("remark") : "");
            bands.add(key, scopesRead.size() - 1, scope.thickness(), row);
        }
        ThicknessBand[] closed = bands.closed(rows.size());
        StrengthTable table = new StrengthTable();
        for (int i = 0; i < rows.size(); i++) {
            Scope scope = scopesRead.get(i).withThickness(closed[i]);
            table.index.add(scope, strengthRow(rows.get(i), scope));
        }
        return table;
    }

    private static StrengthRow strengthRow(Row row, Scope scope) {
        String direction = row.oneOf("direction", DIRECTIONS);
        Strength.Basis basis = row.constant("basis", Strength.Basis.values());
        OptionalDouble ftu = row.number("ftu_MPa", 50, 3000, MPA);
        OptionalDouble fty = row.number("fty_MPa", 20, 3000, MPA);
        if (ftu.isEmpty() && fty.isEmpty()) {
            row.fault("ftu_MPa and fty_MPa are both blank");
        }
        if (ftu.isPresent() && fty.isPresent() && ftu.getAsDouble() < fty.getAsDouble()) {
            row.fault("ftu_MPa lies below fty_MPa");
        }
        Strength sure = new Strength(basis, ftu, fty, row.number("elongation_percent", 0, 60, PERCENT), direction,
                false, scope.describe(), row.citation(), row.text("remark"));
        Strength maybe = new Strength(basis, ftu, fty, sure.elongation(), direction, true, sure.row(), sure.citation(),
                sure.remark());
        return new StrengthRow(scope, direction, sure, maybe);
    }

    List<StrengthRow> all() {
        return index.all();
    }

    List<StrengthRow> of(Alloy alloy) {
        return index.of(alloy);
    }

    /** Rows for steel by strength level, the strength levels that rows of a material name (ksi), rising. */
    List<Integer> strengthLevels(Alloy alloy) {
        return index.of(alloy).stream().map(r -> r.scope().tempers().text()).filter(t -> t.startsWith("HT-"))
                .map(t -> Integer.valueOf(t.substring(3))).distinct().sorted().toList();
    }

    /** The minimum strengths in each direction of one material. */
    Map<GrainDirection, StrengthAnswer> answers(Alloy alloy, Question q) {
        List<Found> found = new ArrayList<>();
        index.matching(alloy, q, (row, match, open) -> found.add(new Found(row, match, open)));
        Map<GrainDirection, StrengthAnswer> answers = new EnumMap<>(GrainDirection.class);
        for (GrainDirection direction : GrainDirection.values()) {
            answers.put(direction, answer(q, direction, found));
        }
        return answers;
    }

    private record Found(StrengthRow row, Match match, Set<OpenDatum> open) {
    }

    private static StrengthAnswer answer(Question q, GrainDirection direction, List<Found> found) {
        List<Strength> hits = new ArrayList<>();
        EnumSet<OpenDatum> open = EnumSet.noneOf(OpenDatum.class);
        boolean own = false;
        for (Found one : found) {
            if (one.row().concerns(direction, q.transverseIsSt())) {
                own |= one.row().strength().basis().minimum() && one.row().concerns(direction, false);
                hits.add(one.match() == Match.YES ? one.row().strength() : one.row().ifMaybe());
                open.addAll(one.open());
            }
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

    private static StrengthAnswer governed(List<Strength> hits, EnumSet<OpenDatum> open) {
        Optional<Strength> ftu = lowest(hits, true);
        Optional<Strength> fty = lowest(hits, false);
        return new StrengthAnswer(fty.or(() -> ftu), ftu.map(Strength::ftu).orElse(OptionalDouble.empty()),
                fty.map(Strength::fty).orElse(OptionalDouble.empty()), open, hits);
    }

    /** The lowest minimum; among sources that agree within rounding, the one seen most firmly. */
    private static Optional<Strength> lowest(List<Strength> hits, boolean ultimate) {
        double least = Double.POSITIVE_INFINITY;
        for (Strength hit : hits) {
            if (hit.basis().minimum()) {
                least = Math.min(least, value(hit, ultimate).orElse(least));
            }
        }
        Strength best = null;
        for (Strength hit : hits) {
            double value = value(hit, ultimate).orElse(Double.POSITIVE_INFINITY);
            if (hit.basis().minimum() && value <= least + ROUNDING
                    && (best == null || hit.citation().status().compareTo(best.citation().status()) < 0
                            || (hit.citation().status() == best.citation().status()
                                    && value < value(best, ultimate).orElse(0)))) {
                best = hit;
            }
        }
        return Optional.ofNullable(best).filter(b -> value(b, ultimate).isPresent());
    }

    private static OptionalDouble value(Strength strength, boolean ultimate) {
        return ultimate ? strength.ftu() : strength.fty();
    }
}
