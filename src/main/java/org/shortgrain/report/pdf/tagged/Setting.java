package org.shortgrain.report.pdf.tagged;

import java.util.List;

/**
 * What every setter needs.
 *
 * @param fonts   for the widths of letters
 * @param guard   for what cannot be printed
 * @param width   width of the text, points
 * @param section the element to which blocks are added
 */
record Setting(Fonts fonts, GlyphGuard guard, double width, StructNode section) {

    List<Line> broken(Text text, Lines.Font font, double measure) {
        return Lines.broken(fonts, guard, text, font, measure);
    }

    Setting in(StructNode other) {
        return new Setting(fonts, guard, width, other);
    }
}
