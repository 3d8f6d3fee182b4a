package org.shortgrain.report.pdf.tagged;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.report.pdf.figure.Ink;
import org.shortgrain.report.pdf.figure.Stroke;
import org.shortgrain.report.pdf.tagged.Lines.Font;

/** Sets headings, paragraphs, lists, contents and listings. */
final class ProseSetter {

    /** Longer lines than some ninety letters lose the eye on its way back. */
    private static final double WIDEST_MEASURE = 442;
    private static final double BULLET_INDENT = 15;
    private static final double WIDE_INDENT = 21;
    private static final int LAST_OF_ONE_DIGIT = 9;
    private static final double COLUMN_GAP = 18;
    private static final double CONTENTS_INDENT = 18;
    private static final double BEFORE_CONTENTS = 6;
    private static final double CONTENTS_SLACK = 0.6;
    private static final Stroke CONTENTS_DOTS = new Stroke(Ink.RULE, 0.6, Stroke.Dash.DOTTED);
    /** A paragraph of up to this many lines stays whole; a longer one keeps two lines on each side of a break. */
    private static final int WHOLE = 3;
    private static final int KEPT = 2;

    private static final List<Font> HEADINGS = List.of(
            new Font(Face.BOLD, 13, 16.5, Ink.DEEP),
            new Font(Face.BOLD, 9.8, 13, Ink.DEEP),
            new Font(Face.BOLD, 8.6, 11.6, Ink.BLACK));
    private static final double[] BEFORE_HEADING = {15, 9.5, 6};
    private static final double[] AFTER_HEADING = {6, 2.5, 1};
    private static final Stroke UNDER_HEADING = new Stroke(Ink.DEEP, 0.8, Stroke.Dash.SOLID);

    private ProseSetter() {
    }

    static double measure(Setting setting) {
        return Math.min(setting.width(), WIDEST_MEASURE);
    }

    static List<Piece> heading(Block.Heading heading, Setting setting) {
        int index = heading.level() - 1;
        Font font = HEADINGS.get(index);
        boolean first = heading.level() == 1;
        List<Line> lines = setting.broken(heading.text(), font, setting.width());
        StructNode node = setting.section().child("H" + heading.level());
        double height = lines.size() * font.leading() + AFTER_HEADING[index];
        Piece piece = Piece.of(BEFORE_HEADING[index], height, (canvas, left, top) -> {
            for (int i = 0; i < lines.size(); i++) {
                Lines.paint(canvas, lines.get(i), font, left, top + i * font.leading(), node);
            }
            if (first) {
                double rule = top + lines.size() * font.leading() + 2;
                canvas.artifact();
                canvas.line(left, rule, left + setting.width(), rule, UNDER_HEADING);
            }
        });
        return List.of(piece.holdingNext().named(heading.anchors())
                .inOutline(new Piece.Bookmark(heading.level(), heading.text().letters())));
    }

    static List<Piece> paragraph(Block.Paragraph paragraph, Setting setting) {
        Font font = font(paragraph.tone());
        double before = font.leading() * 0.45;
        List<Line> lines = setting.broken(paragraph.text(), font, measure(paragraph.tone(), setting));
        return strips(lines, font, 0, before, setting.section().child("P"));
    }

    private static Font font(Block.Tone tone) {
        return switch (tone) {
            case BODY -> Font.BODY;
            case LEAD -> Font.LEAD;
            case SMALL -> Font.SMALL;
            case FINE -> Font.FINE;
        };
    }

    private static double measure(Block.Tone tone, Setting setting) {
        return tone == Block.Tone.FINE ? setting.width() : measure(setting);
    }

    static List<Piece> items(Block.Items items, Setting setting) {
        StructNode list = setting.section().child("L").numbering(items.numbered() ? "Decimal" : "Disc");
        List<Piece> pieces = new ArrayList<>();
        Font font = font(items.tone());
        double indent = items.numbered() && items.items().size() > LAST_OF_ONE_DIGIT ? WIDE_INDENT : BULLET_INDENT;
        int number = 1;
        for (Text item : items.items()) {
            StructNode entry = list.child("LI");
            StructNode label = entry.child("Lbl");
            StructNode body = entry.child("LBody");
            String mark = items.numbered() ? number++ + "." : "\u2022";
            Line labelLine = setting.broken(Text.of(mark), font, indent + 1).get(0);
            List<Line> lines = setting.broken(item, font, measure(items.tone(), setting) - indent);
            List<Piece> strips = new ArrayList<>(strips(lines, font, indent, font.leading() * 0.2, body));
            Piece first = strips.get(0);
            strips.set(0, new Piece(first.before(), first.height(), first.holdsNext(), false, first.head(),
                    first.anchors(), first.bookmark(), (canvas, left, top) -> {
                        Lines.paint(canvas, labelLine, font, left + 2, top, label);
                        first.painter().paint(canvas, left, top);
                    }));
            pieces.addAll(strips);
        }
        return pieces;
    }

    /** Lines as strips that keep the first two and the last two together. */
    static List<Piece> strips(List<Line> lines, Font font, double indent, double before, StructNode node) {
        List<Piece> pieces = new ArrayList<>();
        int from = 0;
        while (from < lines.size()) {
            int left = lines.size() - from;
            int count = lines.size() <= WHOLE ? left : from == 0 || left == KEPT ? KEPT : 1;
            List<Line> strip = lines.subList(from, from + count);
            pieces.add(Piece.of(from == 0 ? before : 0, count * font.leading(), (canvas, x, top) -> {
                for (int i = 0; i < strip.size(); i++) {
                    Lines.paint(canvas, strip.get(i), font, x + indent, top + i * font.leading(), node);
                }
            }));
            from += count;
        }
        return pieces;
    }

    /** In two columns, read down the left one first. */
    static List<Piece> contents(Block.Contents contents, Setting setting) {
        StructNode list = setting.section().child("TOC");
        Font font = Font.TABLE;
        double measure = (setting.width() - COLUMN_GAP) / 2;
        List<ContentsLine> lines = new ArrayList<>();
        for (Block.Entry entry : contents.entries()) {
            lines.add(new ContentsLine(
                    setting.broken(Text.EMPTY.link(entry.text(), entry.anchor()), font, measure - 2 * CONTENTS_INDENT)
                            .get(0),
                    setting.broken(Text.EMPTY.pageOf(entry.anchor()), font, CONTENTS_INDENT).get(0), entry.anchor(),
                    list.child("TOCI").child("Reference")));
        }
        int rows = (lines.size() + 1) / 2;
        double height = font.leading() + CONTENTS_SLACK;
        return List.of(Piece.of(BEFORE_CONTENTS, rows * height, (canvas, left, top) -> {
            for (int i = 0; i < lines.size(); i++) {
                double columnLeft = i < rows ? left : left + measure + COLUMN_GAP;
                paint(canvas, lines.get(i), font, columnLeft, measure, top + (i % rows) * height);
            }
        }));
    }

    private record ContentsLine(Line text, Line page, String anchor, StructNode node) {
    }

    private static void paint(Canvas canvas, ContentsLine line, Font font, double left, double measure, double top) {
        double pageLeft = measure - canvas.fonts().width(font.base(), font.size(),
                canvas.places().pageNumber(line.anchor()));
        Lines.paint(canvas, line.text(), font, left, top, line.node());
        canvas.artifact();
        double baseline = font.baseline(top);
        canvas.line(left + line.text().width() + 4, baseline, left + pageLeft - 5, baseline, CONTENTS_DOTS);
        Lines.paint(canvas, line.page(), font, left + pageLeft, top, line.node());
    }
}
