package org.shortgrain.report.pdf.figure;

import java.util.ArrayList;
import java.util.List;

/** Wraps the few words inside figures by letter count, so that a figure knows its height before it has a font. */
final class Words {

    private Words() {
    }

    static List<String> wrapped(String text, int letters) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            String rest = word;
            if (!line.isEmpty() && line.length() + 1 + rest.length() > letters) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (rest.length() > letters) {
                lines.add(rest.substring(0, letters));
                rest = rest.substring(letters);
            }
            if (!line.isEmpty()) {
                line.append(' ');
            }
            line.append(rest);
        }
        if (!line.isEmpty()) {
            lines.add(line.toString());
        }
        return lines;
    }

    /** {@return at most so many lines, the last one ending in an ellipsis when words were left out} */
    static List<String> cut(List<String> lines, int most) {
        if (lines.size() <= most) {
            return lines;
        }
        List<String> kept = new ArrayList<>(lines.subList(0, most));
        kept.set(most - 1, kept.get(most - 1) + "\u2026");
        return kept;
    }
}
