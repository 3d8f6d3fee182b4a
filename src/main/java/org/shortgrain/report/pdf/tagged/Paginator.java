package org.shortgrain.report.pdf.tagged;

import java.util.ArrayList;
import java.util.List;

/**
 * Fills pages with pieces. A chain of pieces that hold one another moves to the next page as a whole, unless it is
 * longer than a page.
 */
final class Paginator {

    private static final double EPSILON = 0.01;

    private final double top;
    private final double bottom;
    private final List<List<Placed>> pages = new ArrayList<>();
    private List<Placed> page = new ArrayList<>();
    private double y;

    private Paginator(double top, double height) {
        this.top = top;
        this.bottom = top + height;
        this.y = top;
        pages.add(page);
    }

    /**
     * A piece at its place.
     *
     * @param piece    the piece
     * @param top      its upper edge on the page
     * @param repeated whether it stands there a second time
     */
    record Placed(Piece piece, double top, boolean repeated) {
    }

    /**
     * {@return the pages, each with its pieces}
     *
     * @param pieces the pieces in reading order
     * @param top    upper edge of the text on every page
     * @param height height of the text on every page
     */
    static List<List<Placed>> pages(List<Piece> pieces, double top, double height) {
        Paginator paginator = new Paginator(top, height);
        int from = 0;
        while (from < pieces.size()) {
            int to = from + 1;
            while (to < pieces.size() && pieces.get(to - 1).holdsNext()) {
                to++;
            }
            paginator.addChain(pieces.subList(from, to));
            from = to;
        }
        return paginator.pages;
    }

    private void addChain(List<Piece> chain) {
        if (!page.isEmpty() && (chain.get(0).newPage() || y + height(chain) > bottom + EPSILON)) {
            turn();
        }
        for (Piece piece : chain) {
            if (!page.isEmpty() && y + piece.before() + piece.height() > bottom + EPSILON) {
                turn();
            }
            add(piece);
        }
    }

    private static double height(List<Piece> chain) {
        double height = 0;
        for (Piece piece : chain) {
            height += piece.before() + piece.height();
        }
        return height;
    }

    private void add(Piece piece) {
        if (page.isEmpty()) {
            if (piece.head().isPresent()) {
                Piece head = piece.head().get();
                page.add(new Placed(head, y, true));
                y += head.height();
            }
        } else {
            y += piece.before();
        }
        page.add(new Placed(piece, y, false));
        y += piece.height();
    }

    private void turn() {
        page = new ArrayList<>();
        pages.add(page);
        y = top;
    }
}
