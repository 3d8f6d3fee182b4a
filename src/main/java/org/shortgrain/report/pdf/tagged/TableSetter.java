package org.shortgrain.report.pdf.tagged;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.report.pdf.figure.Ink;
import org.shortgrain.report.pdf.figure.Stroke;
import org.shortgrain.report.pdf.tagged.Lines.Font;

/**
 * Sets tables. A heading row is repeated on each page, as an artifact since it says nothing new; a row is cut only when
 * it is so high that moving it whole would tear a hole into the page.
 */
final class TableSetter {

    private static final double SIDE = 4;
    /** Parts a number from the text of the next column. */
    private static final double AFTER_NUMBER = 7;
    private static final double BEFORE = 6;
    /** Rows higher than this may be cut. */
    private static final double HIGHEST_WHOLE_ROW = 190;
    /** Lines that stay together at either end of a cut row. */
    private static final int KEPT = 3;
    private static final Stroke RULE = new Stroke(Ink.DEEP, 0.8, Stroke.Dash.SOLID);
    private static final Stroke HAIRLINE = new Stroke(Ink.RULE, 0.4, Stroke.Dash.SOLID);

    private final Block.Table table;
    private final Setting setting;
    private final Form form;
    private final double[] lefts;
    private final double[] widths;

    /**
     * Letters and distances of a table.
     *
     * @param text    letters of its cells
     * @param heading letters of its headings
     * @param above   room above the text of a row
     * @param below   room below it
     * @param between room between two paragraphs of a cell
     */
    private record Form(Font text, Font heading, double above, double below, double between) {

        private static final Form OPEN = new Form(Font.TABLE, Font.TABLE_HEADING, 2.4, 2.6, 2.4);
        private static final Form DENSE = new Form(Font.FINE, Font.FINE_HEADING, 1.1, 1.2, 1);
    }

    private TableSetter(Block.Table table, Setting setting) {
        this.table = table;
        this.setting = setting;
        this.form = table.spacing() == Block.Spacing.DENSE ? Form.DENSE : Form.OPEN;
        int count = table.columns().size();
        this.lefts = new double[count];
        this.widths = new double[count];
        double shares = 0;
        for (Block.Column column : table.columns()) {
            shares += column.share();
        }
        double x = 0;
        for (int i = 0; i < count; i++) {
            lefts[i] = x;
            widths[i] = setting.width() * table.columns().get(i).share() / shares;
            x += widths[i];
        }
    }

    static List<Piece> pieces(Block.Table table, Setting setting) {
        return new TableSetter(table, setting).pieces();
    }

    /** A line of a cell and the space above it. */
    private record Slot(Line line, double gap) {
    }

    /** A cell broken into lines, with its element. */
    private record SetCell(List<Slot> slots, Font font, Block.Align align, double left, double width,
            StructNode node) {

        double height() {
            double height = 0;
            for (Slot slot : slots) {
                height += slot.gap() + font.leading();
            }
            return height;
        }
    }

    private List<Piece> pieces() {
        StructNode node = setting.section().child("Table");
        List<Piece> pieces = new ArrayList<>();
        boolean headed = table.headings() != Block.Headings.SIDE;
        if (headed) {
            pieces.add(headingRow(node.child("THead").child("TR")));
        }
        StructNode body = headed ? node.child("TBody") : node;
        for (int i = 0; i < table.rows().size(); i++) {
            List<Piece> row = row(table.rows().get(i), body.child("TR"), i == table.rows().size() - 1);
            if (i == 0 && !headed) {
                row = withOpeningRule(row);
            }
            for (Piece piece : row) {
                pieces.add(headed ? piece.under(pieces.get(0)) : piece);
            }
        }
        return keptAtEnds(pieces, headed);
    }

    /** The heading holds the first row; the last two rows stay together, so that none stands alone on a page. */
    private List<Piece> keptAtEnds(List<Piece> pieces, boolean headed) {
        int last = pieces.size() - 1;
        if (headed && last > 0) {
            pieces.set(0, pieces.get(0).holdingNext());
        }
        if (last > 1) {
            pieces.set(last - 1, pieces.get(last - 1).holdingNext());
            int first = headed ? 1 : 0;
            if (pieces.get(first).height() < HIGHEST_WHOLE_ROW / 2) {
                pieces.set(first, pieces.get(first).holdingNext());
            }
        }
        return pieces;
    }

    private Piece headingRow(StructNode row) {
        List<SetCell> cells = new ArrayList<>();
        for (int i = 0; i < widths.length; i++) {
            Block.Column column = table.columns().get(i);
            cells.add(cell(Block.Cell.of(column.title()), i, form.heading(), row.child("TH").scope("Column")));
        }
        double height = height(cells) + form.above() + form.below();
        return Piece.of(BEFORE, height, (canvas, left, top) -> {
            canvas.artifact();
            canvas.fillBox(left, top, setting.width(), height, Ink.PALE);
            canvas.line(left, top, left + setting.width(), top, RULE);
            canvas.line(left, top + height, left + setting.width(), top + height, RULE);
            paint(canvas, cells, left, top + form.above());
        });
    }

    private List<Piece> withOpeningRule(List<Piece> row) {
        List<Piece> opened = new ArrayList<>(row);
        Piece first = row.get(0);
        opened.set(0, new Piece(BEFORE, first.height(), first.holdsNext(), first.newPage(), first.head(),
                first.anchors(), first.bookmark(), (canvas, left, top) -> {
                    canvas.artifact();
                    canvas.line(left, top, left + setting.width(), top, RULE);
                    first.painter().paint(canvas, left, top);
                }));
        return opened;
    }

    private List<Piece> row(Block.Row row, StructNode node, boolean last) {
        List<SetCell> cells = new ArrayList<>();
        for (int i = 0; i < widths.length; i++) {
            boolean side = i == 0 && table.headings() != Block.Headings.TOP;
            StructNode cell = side ? node.child("TH").scope("Row") : node.child("TD");
            boolean label = i == 0 && table.headings() == Block.Headings.SIDE;
            cells.add(cell(row.cells().get(i), i, label ? form.heading() : form.text(), cell));
        }
        double height = height(cells) + form.above() + form.below();
        Stroke rule = last ? RULE : HAIRLINE;
        if (height <= HIGHEST_WHOLE_ROW) {
            return List.of(Piece.of(0, height, (canvas, left, top) -> {
                canvas.artifact();
                canvas.line(left, top + height, left + setting.width(), top + height, rule);
                paint(canvas, cells, left, top + form.above());
            }).named(row.anchors()));
        }
        List<Piece> slices = slices(cells, rule);
        slices.set(0, slices.get(0).named(row.anchors()));
        return slices;
    }

    /** Cuts a high row between lines. */
    private List<Piece> slices(List<SetCell> cells, Stroke rule) {
        int depth = 0;
        for (SetCell cell : cells) {
            depth = Math.max(depth, cell.slots().size());
        }
        List<Piece> slices = new ArrayList<>();
        int from = 0;
        while (from < depth) {
            int count = from == 0 || depth - from <= KEPT ? Math.min(KEPT, depth - from) : 1;
            int to = from + count;
            boolean first = from == 0;
            boolean end = to == depth;
            List<SetCell> part = new ArrayList<>();
            for (SetCell cell : cells) {
                part.add(part(cell, from, to));
            }
            double height = height(part) + (first ? form.above() : 0) + (end ? form.below() : 0);
            slices.add(Piece.of(0, height, (canvas, left, top) -> {
                if (end) {
                    canvas.artifact();
                    canvas.line(left, top + height, left + setting.width(), top + height, rule);
                }
                paint(canvas, part, left, first ? top + form.above() : top);
            }));
            from = to;
        }
        return slices;
    }

    private static SetCell part(SetCell cell, int from, int to) {
        int size = cell.slots().size();
        List<Slot> slots = cell.slots().subList(Math.min(from, size), Math.min(to, size));
        return new SetCell(slots, cell.font(), cell.align(), cell.left(), cell.width(), cell.node());
    }

    private SetCell cell(Block.Cell cell, int column, Font font, StructNode node) {
        Block.Align align = table.columns().get(column).align();
        double measure = widths[column] - 2 * SIDE;
        double room = align == Block.Align.RIGHT ? measure - AFTER_NUMBER : measure;
        List<Slot> slots = new ArrayList<>();
        for (Text paragraph : cell.paragraphs()) {
            double gap = slots.isEmpty() ? 0 : form.between();
            for (Line line : setting.broken(paragraph, font, room)) {
                slots.add(new Slot(line, gap));
                gap = 0;
            }
        }
        return new SetCell(slots, font, align, lefts[column] + SIDE, measure, node);
    }

    private static double height(List<SetCell> cells) {
        double height = 0;
        for (SetCell cell : cells) {
            height = Math.max(height, cell.height());
        }
        return height;
    }

    private static void paint(Canvas canvas, List<SetCell> cells, double left, double top) {
        for (SetCell cell : cells) {
            double y = top;
            for (Slot slot : cell.slots()) {
                y += slot.gap();
                double inset = cell.align() == Block.Align.RIGHT ? cell.width() - slot.line().width() - AFTER_NUMBER : 0;
                Lines.paint(canvas, slot.line(), cell.font(), left + cell.left() + inset, y, cell.node());
                y += cell.font().leading();
            }
        }
    }
}
