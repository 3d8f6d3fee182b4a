package org.shortgrain.report.pdf.tagged;

import java.util.List;
import java.util.Optional;

/**
 * A strip across the page that is not cut.
 *
 * @param before    space above it when it does not begin a page, points
 * @param height    its height, points
 * @param holdsNext whether it stays on the page of the piece after it
 * @param newPage   whether it begins a page
 * @param head      what is drawn again above it when it begins a page inside a table
 * @param anchors   names by which links reach it
 * @param bookmark  the entry in the reader's outline
 * @param painter   draws it
 */
record Piece(double before, double height, boolean holdsNext, boolean newPage, Optional<Piece> head,
        List<String> anchors, Optional<Bookmark> bookmark, Painter painter) {

    /** Draws a piece. */
    interface Painter {
        /**
         * Draws.
         *
         * @param canvas the page
         * @param left   left edge of the text
         * @param top    upper edge of the piece
         */
        void paint(Canvas canvas, double left, double top);
    }

    /**
     * An entry of the outline.
     *
     * @param level 1 for the highest
     * @param title its words
     */
    record Bookmark(int level, String title) {
    }

    static Piece of(double before, double height, Painter painter) {
        return new Piece(before, height, false, false, Optional.empty(), List.of(), Optional.empty(), painter);
    }

    Piece holdingNext() {
        return new Piece(before, height, true, newPage, head, anchors, bookmark, painter);
    }

    Piece onNewPage() {
        return new Piece(before, height, holdsNext, true, head, anchors, bookmark, painter);
    }

    Piece under(Piece repeated) {
        return new Piece(before, height, holdsNext, newPage, Optional.of(repeated), anchors, bookmark, painter);
    }

    Piece named(List<String> names) {
        return new Piece(before, height, holdsNext, newPage, head, names, bookmark, painter);
    }

    Piece inOutline(Bookmark entry) {
        return new Piece(before, height, holdsNext, newPage, head, anchors, Optional.of(entry), painter);
    }
}
