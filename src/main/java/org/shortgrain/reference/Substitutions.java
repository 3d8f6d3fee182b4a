package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.shortgrain.terms.Citation;

/** Changes of alloy or temper that the trade makes to get away from a susceptible one. */
public final class Substitutions {
    private final List<Substitution> all = new ArrayList<>();

    private Substitutions() {
    }

    /**
     * One change.
     *
     * @param fromAlloy  alloy now
     * @param fromTemper temper now
     * @param fromForm   product form now
     * @param toAlloy    alloy proposed
     * @param toTemper   temper proposed
     * @param toForm     product form proposed
     * @param remark     what to mind; empty when nothing
     * @param source     source
     */
    public record Substitution(String fromAlloy, String fromTemper, String fromForm, String toAlloy, String toTemper,
            String toForm, String remark, Citation source) {
    }

    static Substitutions read(Csv csv, MaterialTable materials) {
        Substitutions table = new Substitutions();
        for (Row row : csv.read("data/substitutions.csv", "from_alloy", "from_temper", "from_form", "to_alloy",
                "to_temper", "to_form", "remark", "source", "clause", "status")) {
            for (String column : new String[] {"from_alloy", "to_alloy"}) {
                if (materials.alloys().find(row.text(column)).isEmpty()) {
                    row.fault(column + " '" + row.text(column) + "' is not in alloys.csv");
                }
            }
            table.all.add(new Substitution(row.required("from_alloy"), row.required("from_temper"),
                    row.oneOf("from_form", materials.forms().words()), row.required("to_alloy"),
                    row.required("to_temper"), row.oneOf("to_form", materials.forms().words()), row.text("remark"),
                    row.citation()));
        }
        return table;
    }

    /** {@return all changes} */
    public List<Substitution> all() {
        return Collections.unmodifiableList(all);
    }

    /**
     * {@return the changes from a material}
     *
     * @param alloy alloy, by the name of the tables
     */
    public List<Substitution> from(String alloy) {
        return all.stream().filter(s -> s.fromAlloy().equals(alloy)).toList();
    }
}
