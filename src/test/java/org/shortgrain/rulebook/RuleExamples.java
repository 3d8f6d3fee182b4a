package org.shortgrain.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;

/**
 * Holds every rule against its two examples: {@code ID.trigger.yaml} makes it speak, {@code ID.quiet.yaml} comes near and
 * does not. Both are changes of {@code base.yaml}, see {@link ExamplePatch}. A rule may have more of either,
 * {@code ID.quiet-2.yaml} and so on: one near miss for each of its conditions. Of the base every rule is quiet.
 *
 * <p>The trigger must add that rule to what the base raises and nothing else, except rules that it subsumes or that
 * subsume it, and rules that a comment line of the example names: {@code # also: OTHER-01 OTHER-02}.
 */
final class RuleExamples {

    private static final Pattern ALSO = Pattern.compile("(?m)^#\\s*also:(.*)$");

    private final Map<String, RuleInfo> rules;
    private final Path folder;
    private final Reviewer reviewer;
    private final Map<String, List<ExampleFile>> further;
    private Optional<Set<String>> raisedOfBase = Optional.empty();

    /** Reviews a description. */
    @FunctionalInterface
    interface Reviewer {
        /**
         * {@return ids of the rules that are raised, as findings or questions of their own or folded in}
         *
         * @param yaml text of a part description
         */
        Set<String> raised(String yaml);
    }

    RuleExamples(List<RuleInfo> rules, Path folder, Reviewer reviewer) {
        this.rules = rules.stream().collect(Collectors.toMap(RuleInfo::id, rule -> rule));
        this.folder = folder;
        this.reviewer = reviewer;
        this.further = further(folder);
    }

    private static Map<String, List<ExampleFile>> further(Path folder) {
        try {
            return ExampleFile.in(folder).stream().filter(example -> example.name().matches(".*-[0-9]+\\.yaml"))
                    .collect(Collectors.groupingBy(ExampleFile::rule));
        } catch (IOException unreadable) {
            return fail(unreadable);
        }
    }

    /** {@return two tests for each rule and one for each further example, and one that no example belongs to no rule} */
    Stream<DynamicTest> tests() {
        Stream<DynamicTest> each = rules.values().stream().sorted(RuleInfo.ORDER).flatMap(this::tests);
        return Stream.concat(each, Stream.of(
                DynamicTest.dynamicTest("every example belongs to a rule", this::checkNoneIsLeftOver)));
    }

    private Stream<DynamicTest> tests(RuleInfo rule) {
        Stream<DynamicTest> two = Stream.of(
                DynamicTest.dynamicTest(rule.id() + " speaks of its trigger",
                        () -> checkTrigger(rule, rule.id() + ".trigger.yaml")),
                DynamicTest.dynamicTest(rule.id() + " is quiet on its near miss",
                        () -> checkQuiet(rule, rule.id() + ".quiet.yaml")));
        Stream<DynamicTest> more = further.getOrDefault(rule.id(), List.of()).stream()
                .map(example -> DynamicTest.dynamicTest(rule.id() + (example.trigger() ? " speaks of " : " is quiet on ")
                        + example.name(), () -> check(rule, example)));
        return Stream.concat(two, more);
    }

    private void check(RuleInfo rule, ExampleFile example) {
        if (example.trigger()) {
            checkTrigger(rule, example.name());
        } else {
            checkQuiet(rule, example.name());
        }
    }

    private void checkTrigger(RuleInfo rule, String file) {
        Set<String> raised = new TreeSet<>(reviewer.raised(merged(file)));
        assertTrue(raised.contains(rule.id()), () -> rule.id() + " is silent; raised: " + raised);
        Set<String> added = new TreeSet<>(raised);
        added.removeAll(ofBase());
        added.removeIf(other -> related(rule, other));
        added.remove(rule.id());
        assertEquals(new TreeSet<>(also(read(file))), added,
                () -> "rules beside " + rule.id() + " that its trigger adds (name them in '# also:' if they belong)");
    }

    private void checkQuiet(RuleInfo rule, String file) {
        assertFalse(ofBase().contains(rule.id()), () -> rule.id() + " speaks of the base");
        Set<String> raised = reviewer.raised(merged(file));
        assertFalse(raised.contains(rule.id()), () -> rule.id() + " speaks; raised: " + new TreeSet<>(raised));
    }

    private Set<String> ofBase() {
        if (raisedOfBase.isEmpty()) {
            raisedOfBase = Optional.of(reviewer.raised(read(ExampleFile.BASE)));
        }
        return raisedOfBase.get();
    }

    private void checkNoneIsLeftOver() {
        try (Stream<Path> files = Files.list(folder)) {
            List<String> strangers = new ArrayList<>();
            for (String name : files.map(file -> file.getFileName().toString()).sorted().toList()) {
                boolean known = ExampleFile.named(name).map(one -> rules.containsKey(one.rule()))
                        .orElse(!name.endsWith(".yaml") || name.equals(ExampleFile.BASE));
                if (!known) {
                    strangers.add(name);
                }
            }
            assertEquals(List.of(), strangers);
        } catch (IOException unreadable) {
            fail(unreadable);
        }
    }

    private String merged(String file) {
        return ExampleFile.named(file).orElseThrow().description(this::read);
    }

    private boolean related(RuleInfo rule, String other) {
        return below(rules, rule.id()).contains(other) || below(rules, other).contains(rule.id());
    }

    /** {@return the rules that a rule subsumes, directly or through others} */
    static Set<String> below(Map<String, RuleInfo> rules, String id) {
        Set<String> reached = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(List.of(id));
        while (!open.isEmpty()) {
            RuleInfo rule = rules.get(open.remove(0));
            if (rule != null) {
                rule.subsumes().stream().filter(reached::add).forEach(open::add);
            }
        }
        return reached;
    }

    private static List<String> also(String patch) {
        return ALSO.matcher(patch).results().flatMap(match -> Arrays.stream(match.group(1).strip().split("[\\s,]+")))
                .filter(id -> !id.isEmpty()).toList();
    }

    private String read(String name) {
        try {
            return Files.readString(folder.resolve(name));
        } catch (IOException missing) {
            return fail("no example " + folder.resolve(name));
        }
    }
}
