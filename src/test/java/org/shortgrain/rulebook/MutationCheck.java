package org.shortgrain.rulebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shortgrain.assessment.Knowledge;

/**
 * Do the examples of the rules notice when a condition of a rule is wrong? Spoils every condition of every rule, one at a
 * time ({@link Mutant}), and asks whether an example would fail. Run by hand from the root of the project:
 *
 * <pre>java -cp "target/classes:target/test-classes:target/lib/*" org.shortgrain.rulebook.MutationCheck [SUBJECT...]</pre>
 *
 * <p>Two scores. <em>Own</em>: the rule's own examples and the base fail, because the mutant is silent on a trigger or
 * speaks of a near miss or of the base. <em>All</em>: these, or the trigger of another rule fails, because it must not add
 * a finding that it does not name. A rule that does not pass its own examples is left out and named.
 */
public final class MutationCheck {

    private static final Path RULES = Path.of("rules");
    private static final Path EXAMPLES = RULES.resolve("examples");
    private static final Path WORK = Path.of("target", "mutants");

    private final MutantRulebook mutated;
    private final List<ExampleFile> examples;
    private final Map<String, Set<String>> raised = new LinkedHashMap<>();
    private final Map<String, RuleInfo> rules;

    private MutationCheck(MutantRulebook mutated, List<ExampleFile> examples, List<RuleInfo> rules) {
        this.mutated = mutated;
        this.examples = examples;
        this.rules = rules.stream().collect(Collectors.toMap(RuleInfo::id, rule -> rule));
    }

    /**
     * Prints the scores by file and the mutants that no example notices.
     *
     * @param subjects beginnings of the ids of the rules to check; none for all
     * @throws IOException       if rules or examples cannot be read
     * @throws RulebookException if a mutant does not compile
     */
    public static void main(String[] subjects) throws IOException, RulebookException {
        System.setProperty("drools.dialect.java.compiler.lnglevel", "17");
        long start = System.nanoTime();
        MutantRulebook mutated = MutantRulebook.of(RulebookFiles.in(RULES), WORK.resolve("rules"),
                new RuleCache(WORK.resolve("cache")));
        System.out.printf(Locale.ROOT, "%d mutants of %d rules compiled, %.0f s%n",
                mutated.mutants().size() - mutated.files().size(), mutated.files().size(), seconds(start));
        Knowledge shipped = Knowledge.shipped();
        MutationCheck check = new MutationCheck(mutated, ExampleFile.in(EXAMPLES), shipped.rulebook().rules());
        check.ask(new ShippedReview(Knowledge.of(mutated.rulebook())));
        String report = check.report(List.of(subjects));
        System.out.print(report);
        Files.writeString(WORK.resolve("report.txt"), report);
        System.out.printf(Locale.ROOT, "%.0f s in all%n", seconds(start));
        System.exit(0);
    }

    private static double seconds(long since) {
        return (System.nanoTime() - since) / 1e9;
    }

    private void ask(ShippedReview reviewer) {
        raised.put(ExampleFile.BASE, ShippedReview.raised(reviewer.review(text(ExampleFile.BASE))));
        for (ExampleFile example : examples) {
            try {
                raised.put(example.name(), ShippedReview.raised(reviewer.review(example.description(MutationCheck::text))));
            } catch (AssertionError | RuntimeException broken) {
                System.out.println(example.name() + " cannot be reviewed: " + broken.getMessage());
            }
        }
    }

    private static String text(String example) {
        try {
            return Files.readString(EXAMPLES.resolve(example));
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    /** Files of the examples of a rule that a mutant, or the rule itself, fails. */
    private Set<String> failed(String id, String rule) {
        Set<String> failed = new TreeSet<>();
        if (raised.get(ExampleFile.BASE).contains(id)) {
            failed.add(ExampleFile.BASE);
        }
        readable().filter(example -> example.rule().equals(rule))
                .filter(example -> raised.get(example.name()).contains(id) != example.trigger())
                .forEach(example -> failed.add(example.name()));
        return failed;
    }

    /** Triggers of other rules where a mutant speaks and the rule does not, or the other way round. */
    private Set<String> failedElsewhere(String id, String rule, String unchanged) {
        return readable().filter(ExampleFile::trigger).filter(example -> !related(example.rule(), rule))
                .filter(example -> raised.get(example.name()).contains(id)
                        != raised.get(example.name()).contains(unchanged))
                .map(ExampleFile::name).collect(Collectors.toCollection(TreeSet::new));
    }

    private Stream<ExampleFile> readable() {
        return examples.stream().filter(example -> raised.containsKey(example.name()));
    }

    private boolean related(String one, String other) {
        return one.equals(other) || RuleExamples.below(rules, one).contains(other)
                || RuleExamples.below(rules, other).contains(one);
    }

    private static final class Score {
        private int mutants;
        private int own;
        private int all;

        private void add(boolean byOwn, boolean byAny) {
            mutants++;
            own += byOwn ? 1 : 0;
            all += byAny ? 1 : 0;
        }

        private String say(String of) {
            return String.format(Locale.ROOT, "%-16s %5d mutants  own %5.1f %%  all %5.1f %%%n", of, mutants,
                    100.0 * own / Math.max(1, mutants), 100.0 * all / Math.max(1, mutants));
        }
    }

    private String report(List<String> subjects) {
        Map<String, Score> byFile = new TreeMap<>();
        Score total = new Score();
        List<String> survivors = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        String unchanged = "";
        boolean counts = false;
        for (Map.Entry<String, Mutant> entry : new TreeMap<>(mutated.mutants()).entrySet()) {
            Mutant mutant = entry.getValue();
            if (mutant.change().equals(Mutant.UNCHANGED)) {
                unchanged = entry.getKey();
                counts = subjects.isEmpty() || subjects.stream().anyMatch(mutant.rule()::startsWith);
                Set<String> failed = failed(unchanged, mutant.rule());
                if (counts && (!failed.isEmpty() || readable().noneMatch(one -> one.rule().equals(mutant.rule())))) {
                    leftOut.add(mutant.rule() + (failed.isEmpty() ? " has no examples" : " fails " + failed));
                    counts = false;
                }
            } else if (counts) {
                boolean own = !failed(entry.getKey(), mutant.rule()).isEmpty();
                boolean any = own || !failedElsewhere(entry.getKey(), mutant.rule(), unchanged).isEmpty();
                total.add(own, any);
                byFile.computeIfAbsent(mutated.files().get(mutant.rule()), file -> new Score()).add(own, any);
                if (!own) {
                    survivors.add((any ? "  " : "! ") + mutant.rule() + "  " + mutant.change());
                }
            }
        }
        return byFile.entrySet().stream().map(file -> file.getValue().say(file.getKey())).collect(Collectors.joining())
                + total.say("all files") + "not counted: " + leftOut.size() + "\n" + lines(leftOut)
                + "not noticed by the rule's own examples (! by none at all): " + survivors.size() + "\n"
                + lines(survivors);
    }

    private static String lines(List<String> texts) {
        return texts.stream().map(text -> text.replaceAll("\\s+", " ") + "\n").collect(Collectors.joining());
    }
}
