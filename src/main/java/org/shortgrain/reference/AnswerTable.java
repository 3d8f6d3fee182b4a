package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.part.reader.DescriptionValue;
import org.shortgrain.terms.Citation;

/**
 * What may be answered to a question: the worst and the best that is admissible, and where more are usual, those too.
 *
 * <p>An answer goes no further than the other tables do. A question for which nothing stands here cannot be tried. Rows for
 * the same question that hold the same words are one answer, which changes several places.
 */
public final class AnswerTable {
    /** A value that begins with this is drawn from another table: {@code =alloy}, {@code =temper}, {@code =product}. */
    public static final String FROM_TABLE = "=";

    private static final Set<String> CASES = Set.of("", "quenched", "not quenched", "open", "stated", "open bore",
            "open no bore", "open kind not stated", "strength known", "7xxx", "2xxx", "aluminium of unknown strength",
            "other metal of unknown strength", "section not known");
    private static final Set<String> TABLES = Set.of("=alloy", "=temper", "=product");

    private final List<Line> lines = new ArrayList<>();

    private AnswerTable() {
    }

    /** Which way an answer leans. */
    public enum Side {
        /** Nothing admissible counts more against the part. */
        WORST,
        /** Nothing admissible counts less against it. */
        BEST,
        /** In between, or it depends. */
        OTHER,
        /** Decided by the table that the values are drawn from. */
        TABLE
    }

    /** How an answer goes into the description. */
    public enum Way {
        /** Fills in what is left open, and leaves alone what is answered. */
        FILL,
        /** Takes the place of what stands there: for statements that contradict one another. */
        SET,
        /** Joins a list. */
        JOIN
    }

    /**
     * One answer.
     *
     * @param rule   rule that asks; empty text if the place alone decides
     * @param when   the case in which it is admissible; empty text for any
     * @param answer the answer in words, as a clause
     * @param side   which way it leans
     * @param edit   place that it changes, with {@code *} for the number of the place, {@code *[word]} for every item of a list
     *               that is or is named so; empty text for that of the question
     * @param way    how it goes into the description
     * @param value  the value as YAML, with <code>${...}</code> for what depends on the part, or a table
     * @param source source
     */
    public record Entry(String rule, String when, String answer, Side side, String edit, Way way, String value,
            Citation source) {
    }

    private record Line(PathPattern at, Entry entry) {
    }

    static AnswerTable read(Csv csv) {
        AnswerTable table = new AnswerTable();
        for (Row row : csv.read("data/answers.csv", "at", "rule", "when", "answer", "side", "edit", "way", "value", "source",
                "clause", "status", "remark")) {
            if (row.text("at").isEmpty() && row.text("rule").isEmpty()) {
                row.fault("at or rule, or both, say what is asked");
            }
            checkValue(row);
            table.lines.add(new Line(new PathPattern(row.text("at")), new Entry(row.text("rule"),
                    row.oneOf("when", CASES), row.required("answer"), row.constant("side", Side.values()),
                    row.text("edit"), row.constant("way", Way.values()), row.required("value"), row.citation())));
        }
        return table;
    }

    private static void checkValue(Row row) {
        String value = row.text("value");
        if (value.startsWith(FROM_TABLE)) {
            row.oneOf("value", TABLES);
            return;
        }
        try {
            DescriptionValue.of(value);
        } catch (IllegalArgumentException malformed) {
            row.fault("value is no YAML: " + malformed.getMessage());
        }
    }

    /**
     * {@return the answers to a question: those of the rule that asks at this place, else those of the rule, else those of
     * the place}
     *
     * @param rule rule that asks; empty for a field of the minimum set
     * @param path place in the description
     */
    public List<Entry> to(Optional<String> rule, String path) {
        List<Line> own = lines.stream().filter(one -> rule.filter(one.entry().rule()::equals).isPresent())
                .filter(one -> one.at().fits(path)).toList();
        List<Line> here = own.stream().filter(one -> one.at().length() > 0).toList();
        if (!own.isEmpty()) {
            return (here.isEmpty() ? own : here).stream().map(Line::entry).toList();
        }
        return lines.stream().filter(one -> one.entry().rule().isEmpty() && one.at().fits(path)).map(Line::entry).toList();
    }
}
