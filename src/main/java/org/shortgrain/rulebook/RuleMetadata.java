package org.shortgrain.rulebook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shortgrain.review.Factor;
import org.shortgrain.review.Grade;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/** Reads what stands on a rule, from the text of a rule as from a compiled one. */
final class RuleMetadata {

    private static final Pattern ID = Pattern.compile("[A-Z][A-Z0-9]*-\\d{2,4}");
    private static final Set<String> REQUIRED = Set.of("title", "factor", "grade", "sources", "why", "remedies");
    private static final Set<String> OPTIONAL = Set.of("applies", "subsumes");
    private static final String BETWEEN = ";;";
    private static final Pattern SPACE = Pattern.compile("\\s+");
    private static final Pattern WORD_GAP = Pattern.compile("[\\s,]+");
    private static final String BAR = "|";

    private final String id;
    private final String file;
    private final Map<String, String> values;
    private final List<String> complaints = new ArrayList<>();

    /**
     * Reads the annotations of a rule.
     *
     * @param id          name of the rule
     * @param file        the file it stands in
     * @param annotations name to value as the engine hands it over, quotes included
     */
    RuleMetadata(String id, String file, Map<String, ?> annotations) {
        this.id = id;
        this.file = file;
        this.values = new HashMap<>();
        annotations.forEach((key, value) -> values.put(key, plain(String.valueOf(value))));
    }

    /** {@return the text of an annotation value: quotes and escapes resolved, white space as one space} */
    static String plain(String value) {
        String text = value.strip();
        if (text.length() >= 2 && text.startsWith("\"") && text.endsWith("\"")) {
            text = text.substring(1, text.length() - 1);
        }
        text = text.indexOf('\\') < 0 ? text : text.replace("\\\"", "\"").replace("\\\\", "\\");
        return isSpaced(text) ? text : SPACE.matcher(text).replaceAll(" ").strip();
    }

    /** Whether there is no white space but single blanks between words, as in most texts. */
    private static boolean isSpaced(String text) {
        boolean blank = true;
        for (int i = 0; i < text.length(); i++) {
            char character = text.charAt(i);
            if (Character.isWhitespace(character) && (blank || character != ' ')) {
                return false;
            }
            blank = character == ' ';
        }
        return !blank || text.isEmpty();
    }

    /** {@return what is wrong with it; empty if it is complete} */
    List<String> complaints() {
        complaints.clear();
        if (!ID.matcher(id).matches()) {
            complaints.add("'" + id + "' is no rule id; expected a subject in capitals, a hyphen and two digits or more,"
                    + " such as STRESS-03");
        }
        REQUIRED.stream().filter(key -> values.getOrDefault(key, "").isEmpty()).sorted()
                .forEach(key -> complaints.add("@" + key + " is missing"));
        values.keySet().stream().filter(key -> !REQUIRED.contains(key) && !OPTIONAL.contains(key)).sorted()
                .forEach(key -> complaints.add("@" + key + " is not known; expected one of "
                        + Stream.concat(REQUIRED.stream(), OPTIONAL.stream()).sorted().collect(Collectors.joining(", "))));
        word("factor", Factor.values());
        word("grade", Grade.values());
        parts("sources").forEach(this::checkSource);
        return List.copyOf(complaints);
    }

    /** {@return the rule's record; only for a rule without complaints} */
    RuleInfo info() {
        return new RuleInfo(id, values.get("title"), Factor.valueOf(upper("factor")), Grade.valueOf(upper("grade")),
                words("applies"), citations(), values.get("why"),
                parts("remedies"), words("subsumes"), file);
    }

    private List<Citation> citations() {
        List<Citation> citations = new ArrayList<>();
        for (String source : parts("sources")) {
            citations.add(citation(source));
        }
        return List.copyOf(citations);
    }

    private void word(String key, Enum<?>[] constants) {
        String word = values.getOrDefault(key, "");
        if (!word.isEmpty() && Arrays.stream(constants).noneMatch(one -> one.name().equals(upper(key)))) {
            complaints.add("@" + key + "(\"" + word + "\") is not known; expected one of " + Arrays.stream(constants)
                    .map(one -> one.name().toLowerCase(Locale.ROOT)).collect(Collectors.joining(", ")));
        }
    }

    private void checkSource(String text) {
        try {
            citation(text);
        } catch (IllegalArgumentException wrong) {
            complaints.add("@sources: " + wrong.getMessage());
        }
    }

    private static Citation citation(String text) {
        List<String> parts = cut(text, BAR);
        if (parts.size() != 3 || parts.get(0).isBlank()) {
            throw new IllegalArgumentException("'" + text + "' is not of the form id | clause | status");
        }
        return new Citation(parts.get(0).strip(), parts.get(1).strip(), SourceStatus.of(parts.get(2).strip()));
    }

    private List<String> parts(String key) {
        List<String> parts = new ArrayList<>();
        for (String part : cut(values.getOrDefault(key, ""), BETWEEN)) {
            if (!part.isBlank()) {
                parts.add(part.strip());
            }
        }
        return List.copyOf(parts);
    }

    /** The texts before, between and after a separator. */
    private static List<String> cut(String text, String separator) {
        List<String> parts = new ArrayList<>();
        int from = 0;
        for (int to = text.indexOf(separator); to >= 0; to = text.indexOf(separator, from)) {
            parts.add(text.substring(from, to));
            from = to + separator.length();
        }
        parts.add(text.substring(from));
        return parts;
    }

    private List<String> words(String key) {
        return !values.containsKey(key) ? List.of()
                : WORD_GAP.splitAsStream(values.get(key)).filter(word -> !word.isEmpty()).toList();
    }

    private String upper(String key) {
        return values.get(key).toUpperCase(Locale.ROOT);
    }
}
