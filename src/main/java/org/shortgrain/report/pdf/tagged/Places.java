package org.shortgrain.report.pdf.tagged;

import java.util.LinkedHashMap;
import java.util.Map;

/** Where the anchors of a document lie, known once the pages are made up. */
final class Places {

    private final Map<String, Place> byAnchor = new LinkedHashMap<>();

    /**
     * A place.
     *
     * @param page number of the page, from 0
     * @param top  distance from the upper edge of the sheet, points
     */
    record Place(int page, double top) {
    }

    void add(String anchor, Place place) {
        if (byAnchor.put(anchor, place) != null) {
            throw new IllegalArgumentException("two places are called '" + anchor + "'");
        }
    }

    Place of(String anchor) {
        Place place = byAnchor.get(anchor);
        if (place == null) {
            throw new IllegalArgumentException("a link leads to '" + anchor + "', which is no place of the document");
        }
        return place;
    }

    /** {@return the number of a place's page as printed} */
    String pageNumber(String anchor) {
        return Integer.toString(of(anchor).page() + 1);
    }
}
