package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The tempers for which a row speaks.
 *
 * <p>Tokens of the column {@code tempers}, separated by {@code |}:
 * {@code *} any; {@code =T651} this designation alone; {@code T73} the designation with whatever stress relief digits,
 * and {@code T6} with whatever further digits; {@code H>=1000}, {@code SCT<1000} a condition by its ageing temperature;
 * {@code CW<=37} cold work in percent; {@code not_sensitised} any but sensitised; any other word itself;
 * {@code !CH900} all but this (a row has only such tokens or none).
 */
final class TemperPattern {
    private static final Pattern COMPARE = Pattern.compile("(H|SCT|RH|TH|CH|SRH|CW)(>=|<=|<|>)(\\d+)");
    private static final Pattern FAMILY = Pattern.compile("T(10|[1-9])(\\d{0,2})");
    private static final Pattern EXACT = Pattern.compile("=T(10|[1-9])(\\d{0,2}?)(51[01]?|52|54)?");

    private final String text;
    private final String described;
    private final List<Token> tokens = new ArrayList<>();
    private final boolean allBut;

    private TemperPattern(String text, boolean allBut) {
        this.text = text;
        this.described = text.startsWith("!") ? "all but " + text.substring(1).replace("|!", "/")
                : text.substring(text.startsWith("=") ? 1 : 0).replace("|=", "/").replace('|', '/');
        this.allBut = allBut;
    }

    /** {@return the tokens as written in the table} */
    String text() {
        return text;
    }

    /** {@return the tokens as a reader expects them, such as T6/T651} */
    String describe() {
        return described;
    }

    /** {@return the tempers that it names one by one: neither any, nor a comparison, nor all but some} */
    List<String> names() {
        return allBut ? List.of() : Stream.of(text.split("\\|")).filter(token -> !token.matches(".*[*<>].*|not_.*"))
                .map(token -> token.startsWith("=") ? token.substring(1) : token).toList();
    }

    boolean isAny() {
        return text.equals("*");
    }

    /** {@return the pattern that any temper fits} */
    static TemperPattern any() {
        TemperPattern pattern = new TemperPattern("*", false);
        pattern.tokens.add(new Any());
        return pattern;
    }

    static TemperPattern parse(Row row, String column) {
        List<String> words = row.list(column);
        if (words.isEmpty()) {
            row.fault(column + " is blank; write * for any temper");
        }
        int excluded = 0;
        for (String word : words) {
            excluded += word.startsWith("!") ? 1 : 0;
        }
        boolean allBut = excluded > 0;
        if (allBut && excluded < words.size()) {
            row.fault(column + " mixes ! with plain tokens");
        }
        TemperPattern pattern = new TemperPattern(String.join("|", words), allBut);
        for (String word : words) {
            pattern.tokens.add(token(row, allBut ? word.substring(1) : word));
        }
        return pattern;
    }

    private static Token token(Row row, String word) {
        if (word.equals("*")) {
            return new Any();
        }
        if (word.equals("not_sensitised")) {
            return new NotSensitised();
        }
        if (word.startsWith("=")) {
            return exactly(row, word);
        }
        if (word.length() > 1 && word.charAt(0) == 'T' && Character.isDigit(word.charAt(1))) {
            return family(row, word);
        }
        if (word.indexOf('<') > 0 || word.indexOf('>') > 0) {
            return compared(row, word);
        }
        return new Word(word);
    }

    private static Token exactly(Row row, String word) {
        Matcher m = EXACT.matcher(word);
        if (!m.matches()) {
            row.fault("'" + word + "' is no T temper");
            return new Word(word);
        }
        return new Exactly(word.substring(1), m.group(1), m.group(2), m.group(3) == null ? "" : m.group(3));
    }

    private static Token family(Row row, String word) {
        Matcher m = FAMILY.matcher(word);
        if (!m.matches()) {
            row.fault("'" + word + "' is no T temper family; write =" + word + " for this designation alone");
            return new Word(word);
        }
        return new Family(m.group(1), m.group(2));
    }

    private static Token compared(Row row, String word) {
        Matcher m = COMPARE.matcher(word);
        if (!m.matches()) {
            row.fault("'" + word + "' compares nothing that a condition has");
            return new Word(word);
        }
        return new Compared(m.group(1), m.group(2), Integer.parseInt(m.group(3)));
    }

    /**
     * {@return whether the row speaks for a temper}
     *
     * @param temper the temper asked about
     */
    Match match(Temper temper) {
        Match any = Match.NO;
        for (Token token : tokens) {
            any = any.or(token.match(temper));
        }
        if (!allBut) {
            return any;
        }
        return switch (any) {
            case YES -> Match.NO;
            case MAYBE -> Match.MAYBE;
            case NO -> Match.YES;
        };
    }

    private static boolean unstated(Temper temper) {
        return temper instanceof Temper.NotStated || temper instanceof Temper.Unreadable;
    }

    private interface Token {
        Match match(Temper temper);
    }

    private record Any() implements Token {
        @Override
        public Match match(Temper temper) {
            return Match.YES;
        }
    }

    private record NotSensitised() implements Token {
        @Override
        public Match match(Temper temper) {
            if (unstated(temper) || temper.normal().equals("as_welded")) {
                return Match.MAYBE;
            }
            return Match.of(!temper.normal().equals("sensitised"));
        }
    }

    private record Word(String word) implements Token {
        @Override
        public Match match(Temper temper) {
            if (unstated(temper)) {
                return Match.MAYBE;
            }
            boolean hardened = temper instanceof Temper.HardenedTo && word.equals("quenched_and_tempered");
            return Match.of(hardened || temper.normal().equals(word));
        }
    }

    private record Compared(String treatment, String sign, int limit) implements Token {
        @Override
        public Match match(Temper temper) {
            if (unstated(temper)) {
                return Match.MAYBE;
            }
            if (temper instanceof Temper.AgedCondition aged && aged.treatment().equals(treatment)) {
                return Match.of(holds(aged.fahrenheit()));
            }
            if (temper instanceof Temper.ColdWorked worked && treatment.equals("CW")) {
                return Match.of(holds(worked.percent()));
            }
            return Match.of(treatment.equals("CW") && temper.normal().equals("annealed") && holds(0));
        }

        private boolean holds(int number) {
            return switch (sign) {
                case ">=" -> number >= limit;
                case "<=" -> number <= limit;
                case "<" -> number < limit;
                default -> number > limit;
            };
        }
    }

    /** {@code =T651}: the whole designation. With open digits in the question the row may be the one. */
    private record Exactly(String normal, String base, String digits, String relief) implements Token {
        @Override
        public Match match(Temper temper) {
            if (unstated(temper)) {
                return Match.MAYBE;
            }
            if (!(temper instanceof Temper.HeatTreated t)) {
                return Match.NO;
            }
            if (t.normal().equals(normal)) {
                return Match.YES;
            }
            boolean sameBase = t.base().equals(base);
            boolean sameRelief = t.relief().isEmpty() || t.relief().equals(relief);
            return switch (t.open()) {
                case NONE -> Match.NO;
                case RELIEF -> sameBase && t.digits().equals(digits) && sameRelief ? Match.MAYBE : Match.NO;
                case SECOND -> sameBase && sameRelief ? Match.MAYBE : Match.NO;
            };
        }
    }

    /** {@code T73}, {@code T6}: a treatment with whatever relief; without further digits, all its variants. */
    private record Family(String base, String digits) implements Token {
        @Override
        public Match match(Temper temper) {
            if (unstated(temper)) {
                return Match.MAYBE;
            }
            if (!(temper instanceof Temper.HeatTreated t) || !t.base().equals(base)) {
                return Match.NO;
            }
            if (t.digits().equals(digits)) {
                return t.open() == Temper.OpenDigits.SECOND && !digits.isEmpty() ? Match.MAYBE : Match.YES;
            }
            if (digits.isEmpty()) {
                return t.userTreated() ? Match.MAYBE : Match.YES;
            }
            boolean userVariant = t.userTreated() && t.digits().startsWith(digits);
            return userVariant || t.open() == Temper.OpenDigits.SECOND ? Match.MAYBE : Match.NO;
        }
    }
}
