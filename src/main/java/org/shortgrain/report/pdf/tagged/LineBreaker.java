package org.shortgrain.report.pdf.tagged;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shortgrain.report.pdf.tagged.Line.Fragment;
import org.shortgrain.report.pdf.tagged.Line.Framed;
import org.shortgrain.report.pdf.tagged.Line.Letters;
import org.shortgrain.report.pdf.tagged.Line.LinkMark;
import org.shortgrain.report.pdf.tagged.Line.Matter;
import org.shortgrain.report.pdf.tagged.Line.PageNumber;

/**
 * Breaks running text into lines no wider than the measure.
 *
 * <p>Lines end at spaces. A word wider than a whole line is broken behind a separator of paths and part numbers where
 * there is one near the edge, else behind any letter: a hash has no better place.
 */
final class LineBreaker {

    private static final String SEPARATORS = "/\\-_.,:;=|+";
    /** A break behind a separator may leave this share of the line empty. */
    private static final double SLACK = 0.3;
    /** Page numbers of two digits fit every report seen; a third digit may touch its neighbour. */
    private static final String WIDEST_PAGE_NUMBER = "00";
    private static final double EPSILON = 1e-6;

    private final Fonts fonts;
    private final GlyphGuard guard;
    private final Face base;
    private final double size;
    private final double measure;

    private final List<Line> lines = new ArrayList<>();
    private final List<Atom> word = new ArrayList<>();
    private final List<Fragment> open = new ArrayList<>();
    private double x;
    private double textEnd;
    /** Whether the open line goes on from one that was full: spaces at its beginning are not drawn. */
    private boolean wrapped;

    private LineBreaker(Fonts fonts, GlyphGuard guard, Face base, double size, double measure) {
        this.fonts = fonts;
        this.guard = guard;
        this.base = base;
        this.size = size;
        this.measure = measure;
    }

    /** A piece of a word: matter that is not broken unless the word is wider than a line. */
    private record Atom(Matter matter, double width) {
    }

    /**
     * {@return the lines of a text, at least one}
     *
     * @param fonts   for the widths
     * @param guard   for what cannot be printed
     * @param text    the text
     * @param base    face of plain letters
     * @param size    size of the letters, points
     * @param measure greatest width of a line, points
     */
    static List<Line> lines(Fonts fonts, GlyphGuard guard, Text text, Face base, double size, double measure) {
        LineBreaker breaker = new LineBreaker(fonts, guard, base, size, measure);
        for (Inline part : text.parts()) {
            breaker.take(part);
        }
        breaker.endWord();
        if (!breaker.open.isEmpty() || breaker.lines.isEmpty()) {
            breaker.endLine();
        }
        return breaker.lines;
    }

    private void take(Inline part) {
        if (part instanceof Inline.Run run) {
            takeLetters(run.text(), face(run.style()), Optional.empty());
        } else if (part instanceof Inline.Link link) {
            takeLetters(link.text(), face(link.style()), Optional.of(new LinkMark(link)));
        } else if (part instanceof Inline.PageOf page) {
            word.add(new Atom(new PageNumber(base, page.anchor()), fonts.width(base, size, WIDEST_PAGE_NUMBER)));
        } else if (part instanceof Inline.Badge badge) {
            String letters = guard.only(Face.BOLD, badge.word());
            word.add(new Atom(new Framed(letters, badge.frame()), Badges.width(fonts, letters, size)));
        }
    }

    private Face face(Inline.Style style) {
        return switch (style) {
            case PLAIN -> base;
            case BOLD -> Face.BOLD;
            case ITALIC -> Face.OBLIQUE;
            case MONO -> Face.MONO;
        };
    }

    private void takeLetters(String text, Face face, Optional<LinkMark> link) {
        for (GlyphGuard.Span span : guard.spans(face, text)) {
            String letters = span.text();
            int from = 0;
            for (int i = 0; i < letters.length(); i++) {
                char c = letters.charAt(i);
                if (c == ' ' || c == '\n') {
                    addToWord(span.face(), letters.substring(from, i), link);
                    endWord();
                    if (c == ' ') {
                        addSpace(span.face(), link);
                    } else {
                        endLine();
                        wrapped = false;
                    }
                    from = i + 1;
                }
            }
            addToWord(span.face(), letters.substring(from), link);
        }
    }

    private void addToWord(Face face, String letters, Optional<LinkMark> link) {
        if (!letters.isEmpty()) {
            word.add(new Atom(new Letters(face, letters, link), fonts.width(face, size, letters)));
        }
    }

    private void addSpace(Face face, Optional<LinkMark> link) {
        if (!open.isEmpty() || !wrapped) {
            place(new Letters(face, " ", link), fonts.width(face, size, " "));
        }
    }

    private void endWord() {
        if (word.isEmpty()) {
            return;
        }
        double width = 0;
        for (Atom atom : word) {
            width += atom.width();
        }
        if (x + width > measure + EPSILON && !open.isEmpty() && width <= measure + EPSILON) {
            endLine();
        }
        for (Atom atom : word) {
            placeOrBreak(atom);
        }
        word.clear();
    }

    private void placeOrBreak(Atom atom) {
        Matter matter = atom.matter();
        double width = atom.width();
        while (x + width > measure + EPSILON && matter instanceof Letters letters) {
            int cut = cut(letters, measure - x);
            if (cut == 0) {
                if (open.isEmpty()) {
                    break;
                }
                endLine();
                continue;
            }
            String head = letters.text().substring(0, cut);
            place(new Letters(letters.face(), head, letters.link()), fonts.width(letters.face(), size, head));
            textEnd = x;
            endLine();
            String tail = letters.text().substring(cut);
            matter = new Letters(letters.face(), tail, letters.link());
            width = fonts.width(letters.face(), size, tail);
        }
        if (x + width > measure + EPSILON && !open.isEmpty()) {
            endLine();
        }
        if (!(matter instanceof Letters letters && letters.text().isEmpty())) {
            place(matter, width);
            textEnd = x;
        }
    }

    /** How many letters go on the line; 0 when none of them fits or when a fresh line serves better. */
    private int cut(Letters letters, double room) {
        String text = letters.text();
        double width = 0;
        int fitting = 0;
        int separator = 0;
        double separatorAt = 0;
        while (fitting < text.length()) {
            int codePoint = text.codePointAt(fitting);
            int next = fitting + Character.charCount(codePoint);
            double advance = fonts.width(letters.face(), size, text.substring(fitting, next));
            if (width + advance > room + EPSILON) {
                break;
            }
            width += advance;
            fitting = next;
            if (SEPARATORS.indexOf(codePoint) >= 0) {
                separator = fitting;
                separatorAt = width;
            }
        }
        if (separator > 0 && room - separatorAt <= SLACK * measure) {
            return separator;
        }
        if (!open.isEmpty() && room < measure / 2) {
            return 0;
        }
        return fitting;
    }

    private void place(Matter matter, double width) {
        open.add(new Fragment(matter, x, width));
        x += width;
    }

    private void endLine() {
        lines.add(new Line(joined(open), textEnd));
        open.clear();
        x = 0;
        textEnd = 0;
        wrapped = true;
    }

    /** Joins neighbours of the same face and link: fewer text operators, and words that can be found. */
    private static List<Fragment> joined(List<Fragment> fragments) {
        List<Fragment> joined = new ArrayList<>();
        int i = 0;
        while (i < fragments.size()) {
            Fragment first = fragments.get(i++);
            if (first.matter() instanceof Letters letters) {
                StringBuilder text = new StringBuilder(letters.text());
                double width = first.width();
                while (i < fragments.size() && fragments.get(i).matter() instanceof Letters next
                        && next.face() == letters.face() && next.link().equals(letters.link())) {
                    text.append(next.text());
                    width += fragments.get(i++).width();
                }
                joined.add(new Fragment(new Letters(letters.face(), text.toString(), letters.link()), first.x(),
                        width));
            } else {
                joined.add(first);
            }
        }
        return List.copyOf(joined);
    }
}
