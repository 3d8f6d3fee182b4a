package org.shortgrain.rulebook;

import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A message of the engine's compiler: shortened for a reader, and led back to a line of the rule file. */
final class CompilerMessage {

    private static final Pattern WORD = Pattern.compile("[$A-Za-z_][\\w$]*");
    private static final Pattern LINE_OF_THEN = Pattern.compile("\\(line (\\d+),col \\d+\\)");
    /** Words of the compilers' own sentences, which do not point at anything in a rule. */
    private static final Set<String> OWN_WORDS = Set.of("The", "the", "method", "is", "not", "undefined", "for", "type",
            "cannot", "be", "resolved", "to", "a", "Unable", "parse", "left", "right", "part", "of", "expression", "find",
            "class", "field", "on", "in", "rule", "error", "Error", "and", "or", "variable", "No", "Type", "mismatch",
            "convert", "from", "String", "int", "consequence", "caused", "by", "input", "string", "For", "compiler",
            "fails", "it");

    private final String message;

    CompilerMessage(String message) {
        this.message = message;
    }

    /** {@return what is wrong, in one line, without the list of all symbols that might have stood there instead} */
    String text() {
        return message.replaceAll("\\s+", " ").replaceFirst(",? expected one of .*$", "")
                .replaceFirst("\\(line \\d+,col \\d+\\) ?", "").strip();
    }

    /**
     * {@return the line it is about: counted by the message, or the first in the rule that holds a word of the message}
     *
     * @param file the rule file
     * @param rule the rule
     */
    int line(DrlFile file, DrlFile.Rule rule) {
        Matcher counted = LINE_OF_THEN.matcher(message);
        if (counted.find()) {
            return rule.thenLine() + Integer.parseInt(counted.group(1)) - 1;
        }
        String[] lines = file.text().split("\n", -1);
        int last = rule.line() + (int) file.text().substring(rule.from(), rule.to()).lines().count() - 1;
        for (String word : WORD.matcher(message).results().map(MatchResult::group).toList()) {
            if (!OWN_WORDS.contains(word)) {
                Pattern whole = Pattern.compile("(?<![\\w$])" + Pattern.quote(word) + "(?![\\w$])");
                for (int line = rule.line(); line <= Math.min(last, lines.length); line++) {
                    if (!lines[line - 1].startsWith("@") && whole.matcher(lines[line - 1]).find()) {
                        return line;
                    }
                }
            }
        }
        return rule.line();
    }
}
