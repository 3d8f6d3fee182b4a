package org.shortgrain.rulebook;

import java.util.ArrayList;
import java.util.Arrays;
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
    private static final Pattern BETWEEN = Pattern.compile(";;");
    private static final Pattern SPACE = Pattern.compile("\\s+");
    private static final Pattern WORD_GAP = Pattern.compile("[\\s,]+");
    private static final Pattern BAR = Pattern.compile("\\|");

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
        this.values = annotations.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, entry -> plain(String.valueOf(entry.getValue()))));
    }

    /** {@return the text of an annotation value: quotes and escapes resolved, white space as one space} */
    static String plain(String value) {
        String text = value.strip();
        if (text.length() >= 2 && text.startsWith("\"") && text.endsWith("\"")) {
            text = text.substring(1, text.length() - 1);
        }
        return SPACE.matcher(text.replace("\\\"", "\"").replace("\\\\", "\\")).replaceAll(" ").strip();
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
                words("applies"), parts("sources").stream().map(RuleMetadata::citation).toList(), values.get("why"),
                parts("remedies"), words("subsumes"), file);
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
        String[] parts = BAR.split(text, -1);
        if (parts.length != 3 || parts[0].isBlank()) {
            throw new IllegalArgumentException("'" + text + "' is not of the form id | clause | status");
        }
        return new Citation(parts[0].strip(), parts[1].strip(), SourceStatus.of(parts[2].strip()));
    }

    private List<String> parts(String key) {
        return BETWEEN.splitAsStream(values.getOrDefault(key, "")).map(String::strip)
                .filter(part -> !part.isEmpty()).toList();
    }

    private List<String> words(String key) {
        return WORD_GAP.splitAsStream(values.getOrDefault(key, "")).filter(word -> !word.isEmpty()).toList();
    }

    private String upper(String key) {
        return values.get(key).toUpperCase(Locale.ROOT);
    }
}
