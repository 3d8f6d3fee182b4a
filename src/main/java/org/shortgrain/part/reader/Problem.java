package org.shortgrain.part.reader;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.shortgrain.part.Location;

/**
 * One thing that is wrong with an input: where, what was found, what was expected, what to do.
 *
 * @param code     entry of the catalogue
 * @param file     file as the user named it
 * @param at       place in the file; line 0 where the whole file is meant
 * @param found    what was found
 * @param expected what was expected
 * @param advice   what to do
 */
public record Problem(ProblemCode code, String file, Location at, String found, String expected, String advice) {

    /** How many problems are printed before the rest is only counted. */
    public static final int SHOWN = 20;

    /** Order of the file. */
    static final Comparator<Problem> IN_FILE_ORDER = Comparator.comparingInt((Problem p) -> p.at().line())
            .thenComparingInt(p -> p.at().column()).thenComparing(p -> p.at().path()).thenComparing(Problem::found);

    /**
     * {@return a problem in the words of the catalogue}
     *
     * @param code   entry of the catalogue
     * @param file   file as the user named it
     * @param at     place in the file
     * @param values what fills the placeholders of the entry
     */
    public static Problem of(ProblemCode code, String file, Location at, Object... values) {
        return new Problem(code, file, at, code.found(values), code.expected(values), code.advice(values));
    }

    /** {@return one paragraph: file, line and column as compilers print them, then found, expected and advice} */
    public String text() {
        String place = at.line() == 0 ? file : "%s:%d:%d".formatted(file, at.line(), at.column());
        String key = at.path().isEmpty() ? "" : " (at " + at.path() + ")";
        String end = advice.endsWith("?") ? "" : ".";
        String warning = code.isWarning() ? "warning: " : "";
        return "%s: %s%s%s. Expected: %s. %s%s".formatted(place, warning, found, key, expected, advice, end);
    }

    /**
     * {@return the paragraphs of the first problems, and how many more there are}
     *
     * @param problems problems in the order of the file
     */
    public static String text(List<Problem> problems) {
        String shown = problems.stream().limit(SHOWN).map(Problem::text).collect(Collectors.joining("\n"));
        int rest = problems.size() - SHOWN;
        return rest <= 0 ? shown
                : shown + "\n" + String.format(Locale.ROOT, "... and %d more; mend these first.", rest);
    }
}
