package org.shortgrain.rulebook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DroolsError;
import org.drools.drl.parser.DroolsParserException;
import org.drools.drl.parser.DrlParser;
import org.kie.internal.builder.conf.LanguageLevelOption;

/** One rule file as text: its rules with their lines, and what is wrong with it before any compiler sees it. */
final class DrlFile {

    /** Every package of rules lies under this one, so that an edited rulebook's classes can be told from the tool's. */
    static final String ROOT_PACKAGE = "rules.";

    private final String name;
    private final String text;
    private final List<Rule> rules = new ArrayList<>();
    private final List<RulebookProblem> problems = new ArrayList<>();

    /**
     * One rule in its file.
     *
     * @param id       its name
     * @param line     line of the word {@code rule}
     * @param thenLine line of the word {@code then}
     * @param from     first character
     * @param to       character after the last
     * @param metadata what stands on it
     */
    record Rule(String id, int line, int thenLine, int from, int to, RuleMetadata metadata) {
    }

    DrlFile(String name, String text) {
        this.name = name;
        this.text = text;
        parse();
    }

    /** {@return the package that a file's rules belong to} */
    static String packageOf(String file) {
        return ROOT_PACKAGE + file.substring(0, file.length() - ".drl".length()).replace('-', '_');
    }

    /** {@return the file that a package's rules stand in} */
    static String fileOf(String packageName) {
        return packageName.substring(ROOT_PACKAGE.length()).replace('_', '-') + ".drl";
    }

    String name() {
        return name;
    }

    List<Rule> rules() {
        return rules;
    }

    /** {@return what is wrong: syntax, package, metadata} */
    List<RulebookProblem> problems() {
        return problems;
    }

    /** {@return the text with all rules but one blanked out, every line and column kept} */
    String only(Rule kept) {
        StringBuilder blanked = new StringBuilder(text);
        for (Rule rule : rules) {
            if (rule != kept) {
                for (int at = rule.from(); at < rule.to(); at++) {
                    if (blanked.charAt(at) != '\n') {
                        blanked.setCharAt(at, ' ');
                    }
                }
            }
        }
        return blanked.toString();
    }

    String text() {
        return text;
    }

    RulebookProblem problem(Rule rule, int line, String message) {
        return new RulebookProblem(name, line, Optional.of(rule.id()), message);
    }

    private void parse() {
        DrlParser parser = new DrlParser(LanguageLevelOption.DRL6);
        PackageDescr content = null;
        try {
            content = parser.parse(false, text);
        } catch (DroolsParserException unreadable) {
            problems.add(RulebookProblem.in(name, "cannot be parsed: " + unreadable.getMessage()));
        }
        for (DroolsError error : parser.getErrors()) {
            int line = error.getLines().length > 0 ? error.getLines()[0] : 0;
            problems.add(new RulebookProblem(name, line, Optional.empty(), plain(error.getMessage())));
        }
        if (problems.isEmpty() && content != null) {
            checkPackage(content);
            content.getRules().forEach(this::add);
        }
    }

    private static String plain(String message) {
        return message.replaceFirst("^\\[ERR \\d+] Line \\d+:\\d+ ", "").strip();
    }

    private void checkPackage(PackageDescr content) {
        if (!packageOf(name).equals(content.getName())) {
            problems.add(new RulebookProblem(name, 1, Optional.empty(), "package is '" + content.getName()
                    + "'; expected '" + packageOf(name) + "'"));
        }
    }

    private void add(RuleDescr rule) {
        Map<String, String> annotations = new HashMap<>();
        for (String annotation : rule.getAnnotationNames()) {
            annotations.put(annotation, String.valueOf(rule.getAnnotation(annotation).getSingleValue()));
        }
        Rule added = new Rule(rule.getName(), rule.getLine(), rule.getConsequenceLine(), rule.getStartCharacter(),
                Math.min(rule.getEndCharacter() + 1, text.length()), new RuleMetadata(rule.getName(), name, annotations));
        added.metadata().complaints().forEach(complaint -> problems.add(problem(added, added.line(), complaint)));
        String then = String.valueOf(rule.getConsequence());
        if (!then.contains(Findings.GLOBAL + ".")) {
            problems.add(problem(added, added.thenLine(), "raises nothing; expected " + Findings.GLOBAL
                    + ".raise(...)"));
        }
        rules.add(added);
    }

    @Override
    public String toString() {
        return name + rules.stream().map(Rule::id).collect(Collectors.joining(" ", " (", ")"));
    }
}
