package org.shortgrain.report.pdf.tagged;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.report.pdf.figure.Figure;
import org.shortgrain.report.pdf.tagged.Lines.Font;

/** Sets a figure: its number and conclusion above, its note below, all on one page. */
final class FigureSetter {

    private static final double BEFORE = 12;
    private static final double GAP = 4;

    private FigureSetter() {
    }

    static List<Piece> pieces(Block.Picture picture, Setting setting) {
        Figure figure = picture.figure();
        StructNode group = setting.section().child("Div");
        StructNode titleNode = group.child("P");
        StructNode node = group.child("Figure").alternative(figure.alternative());
        Text title = Text.EMPTY.bold(picture.label() + ". ").bold(figure.title());
        List<Line> titleLines = setting.broken(title, Font.BODY, ProseSetter.measure(setting));
        double titleHeight = titleLines.size() * Font.BODY.leading() + GAP;
        double figureHeight = figure.height(setting.width());
        List<Line> noteLines = new ArrayList<>();
        if (!figure.note().isEmpty()) {
            noteLines.addAll(setting.broken(Text.of(figure.note()), Font.SMALL, ProseSetter.measure(setting)));
        }
        StructNode noteNode = noteLines.isEmpty() ? node : group.child("P");
        double height = titleHeight + figureHeight + GAP + noteLines.size() * Font.SMALL.leading();
        return List.of(Piece.of(BEFORE, height, (canvas, left, top) -> {
            for (int i = 0; i < titleLines.size(); i++) {
                Lines.paint(canvas, titleLines.get(i), Font.BODY, left, top + i * Font.BODY.leading(), titleNode);
            }
            double figureTop = top + titleHeight;
            canvas.mark(node);
            canvas.bound(node, left, figureTop, setting.width(), figureHeight);
            figure.draw(new SheetPen(canvas, left, figureTop), setting.width());
            double noteTop = figureTop + figureHeight + GAP;
            for (int i = 0; i < noteLines.size(); i++) {
                Lines.paint(canvas, noteLines.get(i), Font.SMALL, left, noteTop + i * Font.SMALL.leading(), noteNode);
            }
        }).named(List.of(picture.anchor())));
    }
}
