package org.shortgrain.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.shortgrain.review.Grade;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.PlainText;

/**
 * The rules of a rulebook as text, made of what stands on them and typed nowhere else. Lines have at most 80 columns;
 * examples stand as they are in their files.
 */
public final class RuleCatalogue {

    private static final int WIDTH = 80;
    private static final String INDENT = "  ";
    private static final String DEEP = "    ";
    private static final int IDS = 14;

    private final Rulebook rulebook;
    private final Function<String, Optional<String>> documents;

    /**
     * Makes a catalogue.
     *
     * @param rulebook  the rulebook
     * @param documents id of a document to its title, number and edition; empty where it is not known
     */
    public RuleCatalogue(Rulebook rulebook, Function<String, Optional<String>> documents) {
        this.rulebook = rulebook;
        this.documents = documents;
    }

    /** {@return all rules, one line each, by file} */
    public String list() {
        List<String> lines = new ArrayList<>();
        lines.add("Rulebook " + rulebook.edition() + ", " + rulebook.rules().size() + " rules");
        lines.add("SHA-256 " + rulebook.sha256());
        rulebook.rules().stream().map(RuleInfo::file).distinct().sorted().forEach(file -> {
            lines.add("");
            lines.add(file);
            rulebook.rules().stream().filter(rule -> rule.file().equals(file)).forEach(rule -> lines.addAll(
                    PlainText.lines(INDENT + PlainText.padded(rule.id(), IDS) + PlainText.padded(
                            rule.effectiveGrade().word(), 11), " ".repeat(INDENT.length() + IDS + 11), rule.title(), WIDTH)));
        });
        return text(lines);
    }

    /**
     * {@return all that is known of a rule; empty if there is no such rule}
     *
     * @param id id of the rule, in capitals or not
     */
    public Optional<String> page(String id) {
        return rulebook.rules().stream().filter(rule -> rule.id().equalsIgnoreCase(id)).findFirst().map(this::page);
    }

    private String page(RuleInfo rule) {
        List<String> lines = new ArrayList<>(PlainText.lines(rule.id() + INDENT, INDENT, rule.title(), WIDTH));
        lines.addAll(PlainText.lines("", INDENT, grade(rule) + ", " + rule.factor().word() + ", " + rule.file(), WIDTH));
        if (!rule.applies().isEmpty()) {
            lines.addAll(PlainText.lines("Asked of: ", INDENT, rule.applies().stream()
                    .map(tag -> tag.replace('_', ' ')).collect(Collectors.joining(", ")), WIDTH));
        }
        if (!rule.subsumes().isEmpty()) {
            lines.addAll(PlainText.lines("Stands for: ", INDENT, String.join(", ", rule.subsumes()), WIDTH));
        }
        section(lines, "Why", List.of(rule.why()), INDENT);
        section(lines, "What would mend it, the best first", rule.remedies(), "- ");
        lines.add("");
        lines.add("Sources");
        rule.sources().forEach(source -> source(lines, source));
        example(lines, "An example that it speaks of", rule.id(), "trigger");
        example(lines, "A near miss that it is quiet on", rule.id(), "quiet");
        return text(lines);
    }

    private static String grade(RuleInfo rule) {
        return rule.grade() == rule.effectiveGrade() ? rule.grade().word()
                : Grade.OBJECTION.word() + ", lowered to " + rule.effectiveGrade().word()
                        + " until somebody has read a source for it";
    }

    private static void section(List<String> lines, String title, List<String> texts, String bullet) {
        lines.add("");
        lines.add(title);
        String first = bullet.isBlank() ? INDENT : INDENT + bullet;
        texts.forEach(text -> lines.addAll(PlainText.lines(first, " ".repeat(first.length()), text, WIDTH)));
    }

    private void source(List<String> lines, Citation source) {
        String clause = source.clause().isEmpty() ? "" : ", " + source.clause();
        String confirm = source.status().needsConfirmation() ? "; confirm before anything rests on it" : "";
        lines.addAll(PlainText.lines(INDENT, DEEP, source.id() + clause + " (" + source.status().word() + confirm + ")",
                WIDTH));
        documents.apply(source.id()).ifPresent(title -> lines.addAll(PlainText.lines(DEEP, DEEP, title, WIDTH)));
    }

    private void example(List<String> lines, String title, String id, String kind) {
        rulebook.files().example(id, kind).ifPresent(text -> {
            lines.add("");
            lines.add(title + " (a change of examples/base.yaml)");
            text.lines().filter(line -> !line.isBlank()).forEach(line -> lines.add(DEEP + line));
        });
    }

    private static String text(List<String> lines) {
        return lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    }
}
