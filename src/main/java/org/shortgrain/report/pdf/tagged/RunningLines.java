package org.shortgrain.report.pdf.tagged;

import java.util.List;
import org.shortgrain.report.pdf.figure.Ink;
import org.shortgrain.report.pdf.figure.Stroke;
import org.shortgrain.report.pdf.tagged.Lines.Font;

/** Draws the head and foot of a page, as artifacts: they repeat what the document says once. */
final class RunningLines {

    private static final double HEAD_ABOVE_TEXT = 24;
    private static final double FOOT_BELOW_TEXT = 14;
    private static final double HEAD_SHARE = 0.58;
    private static final double FOOT_SHARE = 0.45;
    private static final double MIDDLE_SHARE = 0.36;
    private static final Stroke RULE = new Stroke(Ink.RULE, 0.5, Stroke.Dash.SOLID);

    private final Running running;
    private final Paper paper;
    private final Setting setting;
    private final int pages;

    RunningLines(Running running, Paper paper, Setting setting, int pages) {
        this.running = running;
        this.paper = paper;
        this.setting = setting;
        this.pages = pages;
    }

    void paint(Canvas canvas, int page) {
        double left = paper.textLeft();
        double right = left + paper.textWidth();
        double headTop = paper.textTop() - HEAD_ABOVE_TEXT;
        double footTop = paper.textTop() + paper.textHeight() + FOOT_BELOW_TEXT;
        canvas.mute(true);
        canvas.artifact();
        canvas.line(left, headTop + 13, right, headTop + 13, RULE);
        canvas.line(left, footTop - 3, right, footTop - 3, RULE);
        put(canvas, Text.of(running.head()), HEAD_SHARE, left, headTop, 0);
        if (!running.banner().isEmpty()) {
            put(canvas, Text.EMPTY.badge(running.banner(), Inline.Frame.HEAVY), 1 - HEAD_SHARE, right, headTop, 1);
        }
        put(canvas, Text.of(running.foot()), FOOT_SHARE, left, footTop, 0);
        put(canvas, Text.of(running.middle()), MIDDLE_SHARE, left + paper.textWidth() * 0.63, footTop, 0.5);
        put(canvas, Text.of(running.pages().replace("{pages}", Integer.toString(pages))
                .replace("{page}", Integer.toString(page + 1))), 1 - FOOT_SHARE - MIDDLE_SHARE, right, footTop, 1);
        canvas.mute(false);
    }

    /** One line, cut off with an ellipsis when it is too long for its share. */
    private void put(Canvas canvas, Text text, double share, double x, double top, double shift) {
        List<Line> lines = setting.broken(text, Font.RUNNING, paper.textWidth() * share);
        Line line = lines.get(0);
        if (lines.size() > 1) {
            String letters = text.letters();
            int end = letters.length();
            do {
                end--;
                lines = setting.broken(Text.of(letters.substring(0, end) + "\u2026"), Font.RUNNING,
                        paper.textWidth() * share);
            } while (lines.size() > 1);
            line = lines.get(0);
        }
        Lines.paint(canvas, line, Font.RUNNING, x - shift * line.width(), top, setting.section());
    }
}
