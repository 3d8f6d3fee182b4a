package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Names what the tables do cover near a material that they do not. */
final class Neighbours {
    private Neighbours() {
    }

    /** Other tempers and forms of the alloy; failing these, alloys with the most digits in common. */
    static List<Neighbour> of(MaterialTable table, Alloy alloy, int most) {
        List<Neighbour> near = new ArrayList<>();
        for (String row : rowsOf(table, alloy.name())) {
            near.add(new Neighbour(alloy.name(), row, "same alloy, other temper, form or size"));
            if (near.size() == most) {
                return near;
            }
        }
        if (near.isEmpty()) {
            addNearestNames(table, alloy.name(), alloy.family(), most, near);
        }
        return near;
    }

    static List<Neighbour> ofName(MaterialTable table, String text, int most) {
        List<Neighbour> near = new ArrayList<>();
        addNearestNames(table, text, "", most, near);
        return near;
    }

    private static void addNearestNames(MaterialTable table, String text, String family, int most,
            List<Neighbour> near) {
        for (Alloy other : table.alloys().nearest(text, Integer.MAX_VALUE)) {
            if (near.size() == most) {
                return;
            }
            Set<String> rows = rowsOf(table, other.name());
            if (!other.name().equals(text) && !rows.isEmpty() && (family.isEmpty() || other.family().equals(family))) {
                near.add(new Neighbour(other.name(), rows.iterator().next(),
                        family.isEmpty() ? "similar designation" : "same family"));
            }
        }
    }

    private static Set<String> rowsOf(MaterialTable table, String name) {
        Set<String> rows = new LinkedHashSet<>();
        for (RatingTable.Rating rating : table.ratings().all()) {
            if (rating.scope().alloys().contains(name)) {
                rows.add(rating.scope().describe());
            }
        }
        return rows;
    }
}
