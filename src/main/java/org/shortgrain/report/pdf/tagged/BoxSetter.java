package org.shortgrain.report.pdf.tagged;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.report.pdf.figure.Ink;
import org.shortgrain.report.pdf.figure.Stroke;
import org.shortgrain.report.pdf.tagged.Lines.Font;

/** Sets what stands in boxes: the title block, the verdict, call-outs. */
final class BoxSetter {

    private static final double BAR = 3;
    private static final double INSIDE = 9;
    private static final double FIELD_SIDE = 5;
    private static final double FIELD_ABOVE = 3;
    private static final double FIELD_BELOW = 3.5;
    private static final double VERDICT_SIZE = 17;
    private static final double VERDICT_LEADING = 22;
    private static final Stroke GRID = new Stroke(Ink.BLACK, 0.5, Stroke.Dash.SOLID);
    private static final Stroke GRID_EDGE = new Stroke(Ink.BLACK, 1.1, Stroke.Dash.SOLID);
    private static final Stroke BROKEN_EDGE = new Stroke(Ink.BLACK, 1.4, Stroke.Dash.DASHED);
    private static final Stroke HEAVY_EDGE = new Stroke(Ink.BLACK, 2.4, Stroke.Dash.SOLID);

    private BoxSetter() {
    }

    static List<Piece> titleBlock(Block.TitleBlock block, Setting setting) {
        StructNode grid = setting.section().child("Div");
        List<Piece> pieces = new ArrayList<>();
        int count = block.fields().size();
        for (int from = 0; from < count; from += block.columns()) {
            List<Block.Field> row = block.fields().subList(from, Math.min(count, from + block.columns()));
            Piece piece = fieldRow(row, setting, grid, from == 0, from + block.columns() >= count);
            pieces.add(from + block.columns() < count ? piece.holdingNext() : piece);
        }
        return pieces;
    }

    private static Piece fieldRow(List<Block.Field> row, Setting setting, StructNode grid, boolean first,
            boolean last) {
        double width = setting.width() / row.size();
        List<List<Line>> labels = new ArrayList<>();
        List<List<Line>> values = new ArrayList<>();
        List<StructNode> nodes = new ArrayList<>();
        double height = 0;
        for (Block.Field field : row) {
            List<Line> label = setting.broken(Text.of(field.label() + " "), Font.LABEL, width - 2 * FIELD_SIDE);
            List<Line> value = setting.broken(field.value(), Font.VALUE, width - 2 * FIELD_SIDE);
            labels.add(label);
            values.add(value);
            nodes.add(grid.child("P"));
            height = Math.max(height, label.size() * Font.LABEL.leading() + value.size() * Font.VALUE.leading());
        }
        double boxHeight = height + FIELD_ABOVE + FIELD_BELOW;
        return Piece.of(first ? 8 : 0, boxHeight, (canvas, left, top) -> {
            canvas.artifact();
            for (int i = 0; i < row.size(); i++) {
                canvas.strokeBox(left + i * width, top, width, boxHeight, GRID);
            }
            edges(canvas, left, top, setting.width(), boxHeight, first, last);
            for (int i = 0; i < row.size(); i++) {
                double x = left + i * width + FIELD_SIDE;
                double y = paint(canvas, labels.get(i), Font.LABEL, x, top + FIELD_ABOVE, nodes.get(i));
                paint(canvas, values.get(i), Font.VALUE, x, y, nodes.get(i));
            }
        });
    }

    private static void edges(Canvas canvas, double left, double top, double width, double height, boolean first,
            boolean last) {
        canvas.line(left, top, left, top + height, GRID_EDGE);
        canvas.line(left + width, top, left + width, top + height, GRID_EDGE);
        if (first) {
            canvas.line(left, top, left + width, top, GRID_EDGE);
        }
        if (last) {
            canvas.line(left, top + height, left + width, top + height, GRID_EDGE);
        }
    }

    static List<Piece> verdict(Block.Verdict verdict, Setting setting) {
        StructNode box = setting.section().child("Div");
        StructNode word = box.child("P");
        StructNode explanation = box.child("P");
        boolean solid = verdict.frame() == Inline.Frame.SOLID;
        Font large = new Font(Face.BOLD, VERDICT_SIZE, VERDICT_LEADING, solid ? Ink.WHITE : Ink.BLACK);
        double measure = setting.width() - 2 * INSIDE;
        List<Line> wordLines = setting.broken(Text.of(verdict.word() + " "), large, measure);
        List<Line> lines = setting.broken(verdict.explanation(), Font.BODY, measure);
        double wordHeight = wordLines.size() * VERDICT_LEADING + 8;
        double height = wordHeight + lines.size() * Font.BODY.leading() + 12;
        return List.of(Piece.of(10, height, (canvas, left, top) -> {
            canvas.artifact();
            if (solid) {
                canvas.fillBox(left, top, setting.width(), wordHeight, Ink.BLACK);
            } else {
                canvas.fillBox(left, top, setting.width(), wordHeight, Ink.PALE);
            }
            canvas.strokeBox(left, top, setting.width(), height, edge(verdict.frame()));
            paint(canvas, wordLines, large, left + INSIDE, top + 4, word);
            paint(canvas, lines, Font.BODY, left + INSIDE, top + wordHeight + 5, explanation);
        }));
    }

    private static Stroke edge(Inline.Frame frame) {
        return switch (frame) {
            case SOLID -> GRID_EDGE;
            case HEAVY -> HEAVY_EDGE;
            case THIN -> GRID;
            case DASHED -> BROKEN_EDGE;
        };
    }

    /** A call-out is cut between lines when it must be; its bar and ground go on. */
    static List<Piece> callout(Block.Callout callout, Setting setting) {
        StructNode box = setting.section().child("Div");
        double measure = Math.min(ProseSetter.measure(setting), setting.width() - BAR - 2 * INSIDE);
        List<Piece> inner = new ArrayList<>();
        Line label = setting.broken(Text.EMPTY.badge(callout.label(), callout.frame()), Font.BODY, measure).get(0);
        StructNode labelNode = box.child("P");
        inner.add(Piece.of(0, Font.BODY.leading() + 2,
                (canvas, left, top) -> Lines.paint(canvas, label, Font.BODY, left, top, labelNode)).holdingNext());
        for (Text paragraph : callout.paragraphs()) {
            List<Line> lines = setting.broken(paragraph, Font.BODY, measure);
            inner.addAll(ProseSetter.strips(lines, Font.BODY, 0, 3.5, box.child("P")));
        }
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < inner.size(); i++) {
            pieces.add(grounded(inner.get(i), callout.frame(), setting.width(), i == 0, i == inner.size() - 1));
        }
        return pieces;
    }

    private static Piece grounded(Piece inner, Inline.Frame frame, double width, boolean first, boolean last) {
        double above = first ? 7 : inner.before();
        double below = last ? 7 : 0;
        double height = above + inner.height() + below;
        double bar = frame == Inline.Frame.SOLID || frame == Inline.Frame.HEAVY ? BAR : BAR / 2;
        Piece piece = Piece.of(first ? 8 : 0, height, (canvas, left, top) -> {
            canvas.artifact();
            canvas.fillBox(left, top, width, height, Ink.PALE);
            canvas.fillBox(left, top, bar, height, frame == Inline.Frame.THIN ? Ink.GREY : Ink.BLACK);
            inner.painter().paint(canvas, left + BAR + INSIDE, top + above);
        });
        return inner.holdsNext() ? piece.holdingNext() : piece;
    }

    private static double paint(Canvas canvas, List<Line> lines, Font font, double left, double top,
            StructNode node) {
        double y = top;
        for (Line line : lines) {
            Lines.paint(canvas, line, font, left, y, node);
            y += font.leading();
        }
        return y;
    }
}
