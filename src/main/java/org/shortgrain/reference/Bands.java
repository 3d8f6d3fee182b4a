package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Thickness bands of rows that differ in nothing else.
 *
 * <p>Printed bands in inches step by 0.001 inch (2.000, then 2.001): the gap is not real and is closed here, each band
 * beginning just above the end of the one below. Bands of one key that overlap are a fault of the table.
 */
final class Bands {
    /** The step of the printed inch tables with the rounding of the metric columns (m). */
    private static final double PRINTED_STEP = 0.031e-3;

    private final Map<String, List<Entry>> byKey = new HashMap<>();

    private record Entry(int index, ThicknessBand band, Row row) {
    }

    void add(String key, int index, ThicknessBand band, Row row) {
        List<Entry> entries = byKey.get(key);
        if (entries == null) {
            entries = new ArrayList<>(1);
            byKey.put(key, entries);
        }
        entries.add(new Entry(index, band, row));
    }

    /**
     * {@return the bands by the index that they were added with, gaps closed; overlaps are noted as faults}
     *
     * @param rows how many rows were added
     */
    ThicknessBand[] closed(int rows) {
        ThicknessBand[] bands = new ThicknessBand[rows];
        for (List<Entry> entries : byKey.values()) {
            if (entries.size() > 1) {
                entries.sort((a, b) -> Double.compare(a.band().from(), b.band().from()));
            }
            Entry below = null;
            for (Entry entry : entries) {
                ThicknessBand band = entry.band();
                if (below != null) {
                    double gap = band.from() - below.band().to();
                    if (gap > 0 && gap <= PRINTED_STEP) {
                        band = band.startingAfter(below.band().to());
                    } else if (gap == 0 && below.band().toTaken()) {
                        band = band.startingAfter(below.band().to());
                    } else if (band.overlaps(below.band())) {
                        entry.row().fault("overlaps the thickness band of " + below.row().place()
                                + ", or is the same row again");
                    }
                }
                bands[entry.index()] = band;
                below = entry;
            }
        }
        return bands;
    }
}
