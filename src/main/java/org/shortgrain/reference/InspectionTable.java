package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shortgrain.terms.Citation;

/** What inspection finds, and by which practice intervals are set. */
public final class InspectionTable {

    /** The word for the flaw that is assumed to be there from manufacture. */
    public static final String ASSUMED = "assumed";
    private static final double MILLIMETRE = 1e-3;
    /** A twelfth of 365.25 days (s). */
    private static final double MONTH = 365.25 / 12 * 86_400;

    private final List<Size> sizes = new ArrayList<>();
    private final Map<String, Practice> practice = new LinkedHashMap<>();

    private InspectionTable() {
    }

    /** Where a crack is looked for. */
    public enum Place {
        /** On a face. */
        SURFACE,
        /** At an edge or in a hole. */
        EDGE
    }

    /**
     * A crack that a method finds.
     *
     * @param depth      depth (m)
     * @param halfLength half the length on a face, or the length from an edge (m), at least the depth
     * @param through    whether it goes through the section
     * @param source     where it comes from
     * @param remark     remark of the row
     */
    public record Crack(double depth, double halfLength, boolean through, Citation source, String remark) {
    }

    /**
     * A number of the practice.
     *
     * @param value   the number; times in s
     * @param meaning what it is
     * @param source  where it comes from
     */
    public record Practice(double value, String meaning, Citation source) {
    }

    /** One row: for sections over one and up to another thickness (m), a depth (m) or a share of the section. */
    private record Size(String method, Place place, double over, double to, OptionalDouble depth, double share,
            OptionalDouble halfLength, Citation source, String remark) {

        Crack in(double section) {
            double deep = Math.min(section, depth.orElse(share * section));
            return new Crack(deep, Math.max(deep, halfLength.orElse(deep)), deep >= section, source, remark);
        }
    }

    static InspectionTable read(Csv csv) {
        InspectionTable table = new InspectionTable();
        for (Row row : csv.read("data/detectable-sizes.csv", "method", "place", "section_over_mm", "section_to_mm",
                "depth_mm", "share_of_section", "half_length_mm", "source", "clause", "status", "remark")) {
            OptionalDouble depth = row.number("depth_mm", 0.01, 200, MILLIMETRE);
            OptionalDouble share = row.number("share_of_section", 0.01, 1, 1);
            if (depth.isPresent() == share.isPresent()) {
                row.fault("one of depth_mm and share_of_section is to be stated");
            }
            table.sizes.add(new Size(row.required("method"), row.constant("place", Place.values()),
                    row.number("section_over_mm", 0, 1000, MILLIMETRE).orElse(0),
                    row.number("section_to_mm", 0, 1000, MILLIMETRE).orElse(Double.POSITIVE_INFINITY), depth,
                    share.orElse(1), row.number("half_length_mm", 0.01, 200, MILLIMETRE), row.citation(),
                    row.text("remark")));
        }
        for (Row row : csv.read("data/inspection-practice.csv", "key", "value", "unit", "meaning", "source", "clause",
                "status")) {
            double unit = row.text("unit").equals("month") ? MONTH : 1;
            Practice one = new Practice(row.requiredNumber("value", 0, 1000, unit), row.required("meaning"),
                    row.citation());
            if (table.practice.put(row.required("key"), one) != null) {
                row.fault("key " + row.text("key") + " stands twice");
            }
        }
        return table;
    }

    /**
     * {@return the cracks that a method finds in 90 of 100 cases, as each source has it; empty if none says}
     *
     * @param method  word of the method, or {@value #ASSUMED}
     * @param place   where it is looked for
     * @param section section (m)
     */
    public List<Crack> found(String method, Place place, double section) {
        return sizes.stream().filter(one -> one.method().equals(method) && one.place() == place && section > one.over()
                && section <= one.to()).map(one -> one.in(section)).toList();
    }

    /**
     * {@return a number of the practice}
     *
     * @param key its key
     * @throws IllegalArgumentException if the table has no such key
     */
    public Practice practice(String key) {
        return Optional.ofNullable(practice.get(key))
                .orElseThrow(() -> new IllegalArgumentException("data/inspection-practice.csv has no row " + key));
    }
}
