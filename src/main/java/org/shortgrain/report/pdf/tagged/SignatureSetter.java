package org.shortgrain.report.pdf.tagged;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.report.pdf.figure.Ink;
import org.shortgrain.report.pdf.figure.Stroke;
import org.shortgrain.report.pdf.tagged.Lines.Font;

/** Sets the places for signatures: what the signer states on the left, the empty field on the right. */
final class SignatureSetter {

    /** Room for what a signature shows: who, for whom, when, in which role, stating what, by which certificate. */
    private static final double HEIGHT = 74;
    private static final double GAP = 6;
    private static final double FIELD_SHARE = 0.52;
    private static final Stroke EDGE = new Stroke(Ink.BLACK, 0.7, Stroke.Dash.SOLID);

    private SignatureSetter() {
    }

    static List<Piece> pieces(Block.Signatures signatures, Setting setting) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < signatures.slots().size(); i++) {
            Piece piece = piece(signatures.slots().get(i), setting);
            pieces.add(i < signatures.slots().size() - 1 ? piece.holdingNext() : piece);
        }
        return pieces;
    }

    private static Piece piece(Block.Slot slot, Setting setting) {
        StructNode group = setting.section().child("Div");
        StructNode text = group.child("P");
        StructNode form = group.child("Form");
        double fieldWidth = setting.width() * FIELD_SHARE;
        double fieldLeft = setting.width() - fieldWidth;
        double measure = fieldLeft - 10;
        List<Line> role = setting.broken(Text.EMPTY.bold(slot.role() + " "), Font.BODY, measure);
        List<Line> meaning = setting.broken(Text.of(slot.meaning()), Font.SMALL, measure);
        double needed = role.size() * Font.BODY.leading() + meaning.size() * Font.SMALL.leading();
        double height = Math.max(HEIGHT, needed);
        return Piece.of(GAP, height, (canvas, left, top) -> {
            double y = top;
            for (Line line : role) {
                Lines.paint(canvas, line, Font.BODY, left, y, text);
                y += Font.BODY.leading();
            }
            for (Line line : meaning) {
                Lines.paint(canvas, line, Font.SMALL, left, y, text);
                y += Font.SMALL.leading();
            }
            canvas.artifact();
            canvas.strokeBox(left + fieldLeft, top, fieldWidth, height, EDGE);
            canvas.field(left + fieldLeft, top, fieldWidth, height, slot, form);
        });
    }
}
