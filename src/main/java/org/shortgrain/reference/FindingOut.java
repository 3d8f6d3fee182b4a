package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.terms.Citation;

/** How an open datum is found out, and how much work that is: what is cheapest to find out is asked first. */
public final class FindingOut {
    private final List<Line> lines = new ArrayList<>();

    private FindingOut() {
    }

    /**
     * How a datum is found out.
     *
     * @param effort 1 a look at a drawing, to 5 a measurement on the part
     * @param how    what to do, in words
     * @param source source
     */
    public record Step(int effort, String how, Citation source) {
    }

    private record Line(PathPattern at, Step step) {
    }

    static FindingOut read(Csv csv) {
        FindingOut table = new FindingOut();
        for (Row row : csv.read("data/finding-out.csv", "at", "effort", "how", "source", "clause", "status")) {
            table.lines.add(new Line(new PathPattern(row.text("at")), new Step(
                    (int) row.requiredNumber("effort", 1, 5, 1), row.required("how"), row.citation())));
        }
        if (!table.speaksForAllPlaces()) {
            csv.faults().add("data/finding-out.csv", "has no row for all other places");
        }
        return table;
    }

    private boolean speaksForAllPlaces() {
        for (Line line : lines) {
            if (line.at().length() == 0) {
                return true;
            }
        }
        return false;
    }

    /**
     * {@return how the datum at a place is found out, by the most particular row that fits}
     *
     * @param path place in the description
     */
    public Step of(String path) {
        Line found = lines.get(lines.size() - 1);
        for (Line line : lines) {
            if (line.at().fits(path) && (!found.at().fits(path) || line.at().length() > found.at().length())) {
                found = line;
            }
        }
        return found.step();
    }
}
