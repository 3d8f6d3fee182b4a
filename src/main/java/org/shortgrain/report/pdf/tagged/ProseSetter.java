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
    private static final double CONTENTS_INDENT = 18;
    private static final double BEFORE_CONTENTS = 8;
    private static final double LINE_NUMBER_WIDTH = 26;
    /** A paragraph of up to this many lines stays whole; a longer one keeps two lines on each side of a break. */
    private static final int WHOLE = 3;
    private static final int KEPT = 2;

    private static final List<Font> HEADINGS = List.of(
            new Font(Face.BOLD, 14, 18, Ink.DEEP),
            new Font(Face.BOLD, 10.4, 14, Ink.DEEP),
            new Font(Face.BOLD, 9, 12.6, Ink.BLACK));
    private static final double[] BEFORE_HEADING = {24, 15, 10};
    private static final double[] AFTER_HEADING = {7, 3.5, 2};
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
        return List.of(piece.holdingNext().named(List.of(heading.anchor()))
                .inOutline(new Piece.Bookmark(heading.level(), heading.text().letters())));
    }

    static List<Piece> paragraph(Block.Paragraph paragraph, Setting setting) {
        Font font = switch (paragraph.tone()) {
            case BODY -> Font.BODY;
            case LEAD -> Font.LEAD;
            case SMALL -> Font.SMALL;
        };
        double before = font.leading() * 0.45;
        List<Line> lines = setting.broken(paragraph.text(), font, measure(setting));
        return strips(lines, font, 0, before, setting.section().child("P"));
    }

    static List<Piece> items(Block.Items items, Setting setting) {
        StructNode list = setting.section().child("L").numbering(items.numbered() ? "Decimal" : "Disc");
        List<Piece> pieces = new ArrayList<>();
        double indent = items.numbered() && items.items().size() > LAST_OF_ONE_DIGIT ? WIDE_INDENT : BULLET_INDENT;
        int number = 1;
        for (Text item : items.items()) {
            StructNode entry = list.child("LI");
            StructNode label = entry.child("Lbl");
            StructNode body = entry.child("LBody");
            String mark = items.numbered() ? number++ + "." : "\u2022";
            Line labelLine = setting.broken(Text.of(mark), Font.BODY, indent + 1).get(0);
            List<Line> lines = setting.broken(item, Font.BODY, measure(setting) - indent);
            List<Piece> strips = new ArrayList<>(strips(lines, Font.BODY, indent, 2.4, body));
            Piece first = strips.get(0);
            strips.set(0, new Piece(first.before(), first.height(), first.holdsNext(), false, first.head(),
                    first.anchors(), first.bookmark(), (canvas, left, top) -> {
                        Lines.paint(canvas, labelLine, Font.BODY, left + 2, top, label);
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

    static List<Piece> contents(Block.Contents contents, Setting setting) {
        StructNode list = setting.section().child("TOC");
        List<Piece> pieces = new ArrayList<>();
        Font font = Font.BODY;
        double measure = setting.width();
        for (Block.Entry entry : contents.entries()) {
            StructNode reference = list.child("TOCI").child("Reference");
            Line text = setting.broken(Text.EMPTY.link(entry.text(), entry.anchor()), font,
                    measure - 2 * CONTENTS_INDENT).get(0);
            Line page = setting.broken(Text.EMPTY.pageOf(entry.anchor()), font, CONTENTS_INDENT).get(0);
            Stroke dots = new Stroke(Ink.RULE, 0.6, Stroke.Dash.DOTTED);
            pieces.add(Piece.of(pieces.isEmpty() ? BEFORE_CONTENTS : 0, font.leading() + 0.6, (canvas, left, top) -> {
                double pageLeft = measure - setting.fonts().width(font.base(), font.size(),
                        canvas.places().pageNumber(entry.anchor()));
                Lines.paint(canvas, text, font, left, top, reference);
                canvas.artifact();
                double baseline = font.baseline(top);
                canvas.line(left + text.width() + 4, baseline, left + pageLeft - 5, baseline, dots);
                Lines.paint(canvas, page, font, left + pageLeft, top, reference);
            }));
        }
        return pieces;
    }

    static List<Piece> listing(Block.Listing listing, Setting setting) {
        StructNode code = setting.section().child("P").child("Code");
        List<Piece> pieces = new ArrayList<>();
        Font font = Font.CODE;
        int number = 0;
        for (String source : listing.lines()) {
            number++;
            String counted = Integer.toString(number);
            double countedWidth = setting.fonts().width(Face.MONO, font.size(), counted);
            List<Line> lines = setting.broken(Text.of(source.replace("\t", "    ") + " "), font,
                    setting.width() - LINE_NUMBER_WIDTH);
            pieces.add(Piece.of(number == 1 ? 6 : 0, lines.size() * font.leading(), (canvas, left, top) -> {
                canvas.artifact();
                canvas.text(Face.MONO, font.size(), Ink.GREY, left + LINE_NUMBER_WIDTH - 8 - countedWidth,
                        font.baseline(top), counted);
                for (int i = 0; i < lines.size(); i++) {
                    Lines.paint(canvas, lines.get(i), font, left + LINE_NUMBER_WIDTH, top + i * font.leading(), code);
                }
            }));
        }
        return pieces;
    }
}
