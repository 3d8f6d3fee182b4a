package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.shortgrain.terms.Citation;

/** What may have made a crack, which observation tells it, and what to look at next. */
public final class CrackTable {

    private final List<Cause> causes = new ArrayList<>();
    private final List<Check> checks = new ArrayList<>();

    private CrackTable() {
    }

    /**
     * A mode of cracking.
     *
     * @param key          its key
     * @param name         its name
     * @param speaksFor    observations that speak for it
     * @param speaksAgainst observations that speak against it
     * @param decides      the laboratory observation that decides
     * @param source       where this comes from
     */
    public record Cause(String key, String name, String speaksFor, String speaksAgainst, String decides, Citation source) {
    }

    /**
     * Something to look at after a find.
     *
     * @param sister whether on the sister parts; else on the part itself
     * @param action what to do
     * @param source where this comes from
     */
    public record Check(boolean sister, String action, Citation source) {
    }

    static CrackTable read(Csv csv) {
        CrackTable table = new CrackTable();
        for (Row row : csv.read("data/crack-causes.csv", "cause", "name", "speaks_for", "speaks_against", "decides",
                "source", "clause", "status")) {
            table.causes.add(new Cause(row.required("cause"), row.required("name"), row.required("speaks_for"),
                    row.required("speaks_against"), row.required("decides"), row.citation()));
        }
        for (Row row : csv.read("data/crack-checks.csv", "where", "action", "source", "clause", "status")) {
            table.checks.add(new Check(row.oneOf("where", Set.of("part", "sister")).equals("sister"),
                    row.required("action"), row.citation()));
        }
        return table;
    }

    /** {@return the modes of cracking, stress corrosion first} */
    public List<Cause> causes() {
        return Collections.unmodifiableList(causes);
    }

    /** {@return what to look at next} */
    public List<Check> checks() {
        return Collections.unmodifiableList(checks);
    }
}
