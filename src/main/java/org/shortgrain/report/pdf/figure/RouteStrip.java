package org.shortgrain.report.pdf.figure;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * The planning card as a strip: operations in their order, what each leaves behind, and where the order is wrong.
 *
 * @param title       the conclusion
 * @param alternative what it shows, in words
 * @param note        where the order comes from
 * @param steps       the operations in the order of the card
 * @param proposed    how they might be put right; empty where the card's order stands
 */
public record RouteStrip(String title, String alternative, String note, List<Step> steps, Optional<Proposed> proposed)
        implements Figure {

    private static final double ABOVE = 6;
    private static final double NARROWEST_BOX = 72;
    private static final double BOX_HEIGHT = 50;
    private static final double GAP = 13;
    private static final double ROW_GAP = 15;
    private static final double NOTE_LINE = 9.6;
    private static final int NAME_LETTERS = 16;
    private static final int NAME_LINES = 2;
    private static final int EFFECT_LETTERS = 21;
    private static final int EFFECT_LINES = 2;
    private static final double EFFECT_LEADING = 7.2;
    /** Letters of 7 points are 4.1 points wide on average in this font. */
    private static final double LETTER = 4.1;
    private static final double TAB = 13;
    /** A proposed operation bears number and name alone. */
    private static final double PROPOSED_HEIGHT = 30;
    private static final double CAPTION = 14;
    private static final Stroke CROSS = new Stroke(Ink.TINT, 2.4, Stroke.Dash.SOLID);

    /**
     * One operation.
     *
     * @param number its number on the card
     * @param name   what is done
     * @param effect what it leaves behind, in a few words; empty if nothing that matters
     * @param breach why it stands at the wrong place, if it does
     */
    public record Step(String number, String name, String effect, Optional<String> breach) {
        /** Refuses missing parts. */
        public Step {
            Objects.requireNonNull(number, "number");
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(effect, "effect");
            Objects.requireNonNull(breach, "breach");
        }
    }

    /**
     * An order that breaks no rule.
     *
     * @param caption what stands above it
     * @param steps   the same operations in that order
     * @param moved   which of them stand elsewhere on the card, by their place here
     */
    public record Proposed(String caption, List<Step> steps, Set<Integer> moved) {
        /** Copies the list and the set. */
        public Proposed {
            Objects.requireNonNull(caption, "caption");
            steps = List.copyOf(steps);
            moved = Set.copyOf(moved);
        }
    }

    /** Copies the list. */
    public RouteStrip {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(alternative, "alternative");
        Objects.requireNonNull(note, "note");
        steps = List.copyOf(steps);
        Objects.requireNonNull(proposed, "proposed");
    }

    private static int perRow(double width) {
        return (int) Math.max(1, Math.floor((width + GAP) / (NARROWEST_BOX + GAP)));
    }

    private static double boxWidth(double width) {
        return (width + GAP) / perRow(width) - GAP;
    }

    private double boxesHeight(double width) {
        return rows(width) * (BOX_HEIGHT + ROW_GAP) + ABOVE;
    }

    private int rows(double width) {
        return (steps.size() + perRow(width) - 1) / perRow(width);
    }

    private static List<String> breachLines(String breach, double width) {
        return Words.wrapped(breach, (int) ((width - 2 * TAB) / LETTER));
    }

    @Override
    public double height(double width) {
        double cured = proposed.isEmpty() ? 0 : CAPTION + rows(width) * (PROPOSED_HEIGHT + ROW_GAP);
        return cardHeight(width) + cured;
    }

    private double cardHeight(double width) {
        int lines = 0;
        for (Step step : steps) {
            lines += step.breach().isPresent() ? breachLines(step.breach().get(), width).size() : 0;
        }
        return boxesHeight(width) + (lines == 0 ? 0 : lines * NOTE_LINE + ABOVE);
    }

    @Override
    public void draw(Pen pen, double width) {
        int perRow = perRow(width);
        double boxWidth = boxWidth(width);
        double noteY = boxesHeight(width) + 2;
        int breaches = 0;
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            double x = i % perRow * (boxWidth + GAP);
            double y = (double) (i / perRow) * (BOX_HEIGHT + ROW_GAP) + ABOVE;
            connector(pen, i, perRow, boxWidth, x, y, BOX_HEIGHT);
            box(pen, step, boxWidth, x, y);
            if (step.breach().isPresent()) {
                breaches++;
                number(pen, new Point(x + boxWidth - 5, y), breaches);
                number(pen, new Point(6, noteY + 4), breaches);
                for (String line : breachLines(step.breach().get(), width)) {
                    pen.text(new Point(TAB + 3, noteY + 6.5), Pen.Align.LEFT, line, Lettering.LABEL);
                    noteY += NOTE_LINE;
                }
            }
        }
        if (proposed.isPresent()) {
            draw(pen, width, proposed.get());
        }
    }

    private void draw(Pen pen, double width, Proposed order) {
        int perRow = perRow(width);
        double boxWidth = boxWidth(width);
        double top = cardHeight(width);
        pen.text(new Point(0, top + CAPTION / 2), Pen.Align.LEFT, order.caption(), Lettering.STRONG);
        for (int i = 0; i < order.steps().size(); i++) {
            Step step = order.steps().get(i);
            double x = i % perRow * (boxWidth + GAP);
            double y = top + CAPTION + (double) (i / perRow) * (PROPOSED_HEIGHT + ROW_GAP);
            boolean moved = order.moved().contains(i);
            connector(pen, i, perRow, boxWidth, x, y, PROPOSED_HEIGHT);
            List<Point> outline = Shapes.box(x, y, boxWidth, PROPOSED_HEIGHT);
            pen.area(outline, new Fill.Even(moved ? Ink.WHITE : Ink.PALE));
            pen.outline(outline, moved ? Stroke.HEAVY : Stroke.THIN);
            label(pen, step, x, y, moved ? Lettering.STRONG : Lettering.LABEL);
        }
    }

    private static void label(Pen pen, Step step, double x, double y, Lettering name) {
        pen.text(new Point(x + 4, y + 9.5), Pen.Align.LEFT, step.number(), Lettering.STRONG);
        double line = y + 19;
        for (String words : Words.cut(Words.wrapped(step.name(), NAME_LETTERS), NAME_LINES)) {
            pen.text(new Point(x + 4, line), Pen.Align.LEFT, words, name);
            line += 8.4;
        }
    }

    /** From the box before to this one; at the start of a row the arrow comes in from the left edge. */
    private static void connector(Pen pen, int index, int perRow, double boxWidth, double x, double y,
            double boxHeight) {
        double middle = y + boxHeight / 2;
        if (index % perRow > 0) {
            Arrows.arrow(pen, new Point(x - GAP + 1, middle), new Point(x - 1, middle), Stroke.THIN);
        } else if (index > 0) {
            double turn = y - ROW_GAP / 2;
            double end = (perRow - 1) * (boxWidth + GAP) + boxWidth / 2;
            pen.line(List.of(new Point(end, y - ROW_GAP), new Point(end, turn), new Point(x + 10, turn)),
                    Stroke.THIN);
            Arrows.arrow(pen, new Point(x + 10, turn), new Point(x + 10, y), Stroke.THIN);
        }
    }

    private static void box(Pen pen, Step step, double boxWidth, double x, double y) {
        List<Point> outline = Shapes.box(x, y, boxWidth, BOX_HEIGHT);
        boolean wrong = step.breach().isPresent();
        pen.area(outline, new Fill.Even(wrong ? Ink.WHITE : Ink.PALE));
        if (wrong) {
            pen.line(new Point(x, y), new Point(x + boxWidth, y + BOX_HEIGHT), CROSS);
            pen.line(new Point(x, y + BOX_HEIGHT), new Point(x + boxWidth, y), CROSS);
        }
        pen.outline(outline, wrong ? Stroke.HEAVY : Stroke.THIN);
        label(pen, step, x, y, Lettering.LABEL);
        List<String> effect = Words.cut(Words.wrapped(step.effect(), EFFECT_LETTERS), EFFECT_LINES);
        double effectLine = y + BOX_HEIGHT - 4.5 - (effect.size() - 1) * EFFECT_LEADING;
        for (String words : effect) {
            pen.text(new Point(x + 4, effectLine), Pen.Align.LEFT, words, Lettering.SMALL);
            effectLine += EFFECT_LEADING;
        }
    }

    private static void number(Pen pen, Point centre, int number) {
        pen.area(Shapes.circle(centre, 5), new Fill.Even(Ink.BLACK));
        pen.text(centre.plus(0, 2.4), Pen.Align.CENTRE, Integer.toString(number), Lettering.STRONG.in(Ink.WHITE));
    }
}
