package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.GrainDirection;

/** Ratings by scheme: letters and words, by material, temper, form, thickness, strength and direction. */
final class RatingTable {
    static final Set<String> CONFIDENCES = Set.of("", "high", "medium-high", "medium", "low-medium", "low");
    private static final Set<String> DIRECTIONS = Set.of("L", "LT", "ST", "any");
    private static final double MM = 1e-3;
    private static final double MPA = 1e6;

    private final RowIndex<Rating> index = new RowIndex<>();

    /** One row. An empty direction means that the scheme classes the material by its worst direction. */
    record Rating(Scope scope, Optional<GrainDirection> direction, Crosswalk.Word word, String title,
            Citation citation, String confidence, String remark) {

        /** {@return the row's key in words} */
        String row() {
            return scope.describe();
        }
    }

    static RatingTable read(Csv csv, Scope.Reader scopes, Crosswalk crosswalk) {
        List<Row> rows = csv.read("data/ratings.csv", "alloys", "tempers", "uts_min_MPa", "uts_max_MPa", "forms",
                "thickness_min_mm", "thickness_max_mm", "direction", "scheme", "word", "source", "clause", "status",
                "confidence", "printed_temper", "remark");
        List<Rating> ratings = new ArrayList<>();
        Bands bands = new Bands();
        for (Row row : rows) {
            Rating rating = rating(row, scopes, crosswalk);
            ratings.add(rating);
            String key = String.join("\n", row.text("alloys"), row.text("tempers"), row.text("forms"),
                    row.text("direction"), row.text("scheme"), row.text("uts_min_MPa"), row.text("uts_max_MPa"),
                    row.text("source"));
            bands.add(key, ratings.size() - 1, rating.scope().thickness(), row);
        }
        ThicknessBand[] closed = bands.closed(ratings.size());
        RatingTable table = new RatingTable();
        for (int i = 0; i < ratings.size(); i++) {
            Rating r = ratings.get(i);
            Scope scope = r.scope().withThickness(closed[i]);
            table.index.add(scope, new Rating(scope, r.direction(), r.word(), r.title(), r.citation(), r.confidence(),
                    r.remark()));
        }
        return table;
    }

    private static Rating rating(Row row, Scope.Reader scopes, Crosswalk crosswalk) {
        Scope scope = scopes.read(row)
                .withThickness(ThicknessBand.of(row.number("thickness_min_mm", 0, 1000, MM),
                        row.number("thickness_max_mm", 0, 1000, MM), false))
                .withUts(ThicknessBand.of(row.number("uts_min_MPa", 100, 3000, MPA),
                        row.number("uts_max_MPa", 100, 3000, MPA), false));
        String scheme = row.oneOf("scheme", crosswalk.schemes());
        Optional<Crosswalk.Word> word = crosswalk.find(scheme, row.text("word"));
        if (word.isEmpty()) {
            row.fault("'" + row.text("word") + "' is no word of " + scheme);
        }
        Optional<GrainDirection> direction = direction(row);
        if (word.isPresent() && word.get().worstDirection() == direction.isPresent()) {
            row.fault("direction is '" + row.text("direction") + "', but " + scheme
                    + (word.get().worstDirection() ? " classes by the worst direction: write any"
                            : " rates each direction"));
        }
        Optional<Crosswalk.Scheme> known = crosswalk.scheme(scheme);
        return new Rating(scope, direction, word.orElse(null), known.isPresent() ? known.get().title() : scheme, row.citation(),
                row.oneOf("confidence", CONFIDENCES), row.text("remark"));
    }

    static Optional<GrainDirection> direction(Row row) {
        String text = row.oneOf("direction", DIRECTIONS);
        for (GrainDirection direction : GrainDirection.values()) {
            if (direction.name().equals(text)) {
                return Optional.of(direction);
            }
        }
        return Optional.empty();
    }

    List<Rating> all() {
        return index.all();
    }

    List<Rating> of(Alloy alloy) {
        return index.of(alloy);
    }

    /** What bears on each direction of one material. */
    Map<GrainDirection, LevelAnswer> answers(Alloy alloy, Question q) {
        List<LevelJudge.Piece> pieces = new ArrayList<>();
        index.matching(alloy, q, (rating, match, open) -> pieces.add(new LevelJudge.Piece(rating, match, open)));
        Map<GrainDirection, LevelAnswer> answers = new EnumMap<>(GrainDirection.class);
        for (GrainDirection direction : GrainDirection.values()) {
            answers.put(direction, LevelJudge.judge(direction, q, pieces));
        }
        return answers;
    }
}
