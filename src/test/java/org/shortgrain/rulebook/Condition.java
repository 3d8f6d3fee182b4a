package org.shortgrain.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One element of a rule's condition as text: a pattern with its constraints, perhaps with {@code not} or {@code exists}
 * before it or {@code from} behind it.
 *
 * @param word        {@code not}, {@code exists} or empty text
 * @param head        binding and fact type, such as {@code $place : Place}
 * @param constraints constraints, parted at their commas and {@code &&}
 * @param from        what it is taken from, with the word; empty text if from the facts
 */
record Condition(String word, String head, List<String> constraints, String from) {

    private static final Pattern START = Pattern.compile(
            "\\s*(?:(not|exists)\\s+)?((?:\\$\\w+\\s*:\\s*)?[A-Z]\\w*)\\s*\\(");
    private static final Pattern FROM = Pattern.compile("\\s+from\\s+");
    private static final Pattern COMPARED = Pattern.compile("(?s)(.+?)\\s(<=|>=|==|!=|<|>)\\s(.+)");
    private static final Pattern WORDED = Pattern.compile("(?s)(.+?)\\s(not\\s+)?(matches|contains|memberOf|in)\\b(.+)");
    private static final Map<String, String> OPPOSITE = Map.of("<", ">=", ">=", "<", ">", "<=", "<=", ">", "==", "!=",
            "!=", "==");

    Condition {
        constraints = List.copyOf(constraints);
    }

    /**
     * {@return the elements of what stands between {@code when} and {@code then}}
     *
     * @throws IllegalArgumentException if it holds something that this reader does not know
     */
    static List<Condition> read(String when) {
        List<Condition> elements = new ArrayList<>();
        String text = when.replaceAll("(?m)//.*$", "");
        Matcher start = START.matcher(text);
        int at = 0;
        while (!text.substring(at).isBlank()) {
            if (!start.find(at) || start.start() != at) {
                throw new IllegalArgumentException("not known in a condition: " + text.substring(at).strip());
            }
            int close = closing(text, start.end() - 1);
            String inside = text.substring(start.end(), close);
            at = close + 1;
            String from = "";
            Matcher source = FROM.matcher(text);
            if (source.find(at) && source.start() == at) {
                at = endOfLine(text, source.end());
                from = text.substring(source.start(), at).strip();
            }
            elements.add(new Condition(Optional.ofNullable(start.group(1)).orElse(""), start.group(2),
                    parted(inside, ",", "&&"), from));
        }
        return elements;
    }

    /** {@return this with one constraint left out} */
    Condition without(int constraint) {
        List<String> rest = new ArrayList<>(constraints);
        rest.remove(constraint);
        return new Condition(word, head, rest, from);
    }

    /** {@return this with another constraint in place of one} */
    Condition with(int constraint, String other) {
        List<String> changed = new ArrayList<>(constraints);
        changed.set(constraint, other);
        return new Condition(word, head, changed, from);
    }

    /** {@return this with another word before it} */
    Condition worded(String other) {
        return new Condition(other, head, constraints, from);
    }

    /** {@return the name that it binds; empty text if none} */
    String binding() {
        return head.startsWith("$") ? head.substring(0, head.indexOf(':')).strip() : "";
    }

    /** {@return the alternatives of a constraint that is an "or"; the constraint alone if it is none} */
    static List<String> alternatives(String constraint) {
        return parted(constraint, "||");
    }

    /** {@return the opposite of a constraint: a comparison turned round, a {@code !} taken away or put before it} */
    static String opposite(String constraint) {
        if (alternatives(constraint).size() > 1) {
            return "!( " + constraint + " )";
        }
        Matcher worded = WORDED.matcher(outside(constraint));
        if (worded.matches()) {
            int word = worded.start(3);
            return worded.group(2) == null ? constraint.substring(0, word) + "not " + constraint.substring(word)
                    : constraint.substring(0, worded.start(2)) + constraint.substring(word);
        }
        Matcher compared = COMPARED.matcher(outside(constraint));
        if (compared.matches()) {
            return constraint.substring(0, compared.start(2)) + OPPOSITE.get(compared.group(2))
                    + constraint.substring(compared.end(2));
        }
        return constraint.startsWith("!") ? constraint.substring(1).strip() : "!( " + constraint + " )";
    }

    /** {@return the element as a rule file has it} */
    String text() {
        return ((word.isEmpty() ? "" : word + " ") + head + "( " + String.join(", ", constraints) + " ) " + from).strip();
    }

    /** The text with all that stands in quotes or inner brackets blanked out, every character in its place. */
    private static String outside(String text) {
        StringBuilder seen = new StringBuilder();
        int depth = 0;
        boolean quoted = false;
        for (int at = 0; at < text.length(); at++) {
            char one = text.charAt(at);
            quoted ^= one == '"' && (at == 0 || text.charAt(at - 1) != '\\');
            depth -= !quoted && one == ')' ? 1 : 0;
            seen.append(depth == 0 && !quoted && one != '"' ? one : '_');
            depth += !quoted && one == '(' ? 1 : 0;
        }
        return seen.toString().replace("->", "__");
    }

    private static List<String> parted(String text, String... marks) {
        String seen = outside(text);
        List<String> parts = new ArrayList<>();
        int from = 0;
        for (int at = 0; at < seen.length(); at++) {
            for (String mark : marks) {
                if (seen.startsWith(mark, at)) {
                    parts.add(text.substring(from, at).strip());
                    from = at + mark.length();
                }
            }
        }
        parts.add(text.substring(from).strip());
        parts.removeIf(String::isEmpty);
        return parts;
    }

    private static int closing(String text, int open) {
        int close = outside(text.substring(open)).indexOf(')');
        if (close < 0) {
            throw new IllegalArgumentException("no closing bracket: " + text.substring(open));
        }
        return open + close;
    }

    private static int endOfLine(String text, int from) {
        int end = text.indexOf('\n', from);
        return end < 0 ? text.length() : end;
    }
}
