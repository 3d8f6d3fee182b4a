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
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;

/**
 * Holds every rule against its two examples: {@code ID.trigger.yaml} makes it speak, {@code ID.quiet.yaml} comes near and
 * does not. Both are changes of {@code base.yaml}, see {@link ExamplePatch}.
 *
 * <p>The trigger must add that rule to what the base raises and nothing else, except rules that it subsumes or that
 * subsume it, and rules that a comment line of the example names: {@code # also: OTHER-01 OTHER-02}.
 */
final class RuleExamples {

    private static final Pattern ALSO = Pattern.compile("(?m)^#\\s*also:(.*)$");
    private static final Pattern NAME = Pattern.compile("(.+)\\.(trigger|quiet)\\.yaml");

    private final Map<String, RuleInfo> rules;
    private final Path folder;
    private final Reviewer reviewer;

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
    }

    /** {@return two tests for each rule, and one that no example belongs to no rule} */
    Stream<DynamicTest> tests() {
        Stream<DynamicTest> each = rules.values().stream().sorted(RuleInfo.ORDER).flatMap(rule -> Stream.of(
                DynamicTest.dynamicTest(rule.id() + " speaks of its trigger", () -> checkTrigger(rule)),
                DynamicTest.dynamicTest(rule.id() + " is quiet on its near miss", () -> checkQuiet(rule))));
        return Stream.concat(each, Stream.of(
                DynamicTest.dynamicTest("every example belongs to a rule", this::checkNoneIsLeftOver)));
    }

    private void checkTrigger(RuleInfo rule) {
        String patch = read(rule.id() + ".trigger.yaml");
        Set<String> raised = new TreeSet<>(reviewer.raised(merged(rule.id() + ".trigger.yaml", patch)));
        assertTrue(raised.contains(rule.id()), () -> rule.id() + " is silent; raised: " + raised);
        Set<String> added = new TreeSet<>(raised);
        added.removeAll(reviewer.raised(read("base.yaml")));
        added.removeIf(other -> related(rule, other));
        added.remove(rule.id());
        assertEquals(new TreeSet<>(also(patch)), added,
                () -> "rules beside " + rule.id() + " that its trigger adds (name them in '# also:' if they belong)");
    }

    private void checkQuiet(RuleInfo rule) {
        Set<String> raised = reviewer.raised(merged(rule.id() + ".quiet.yaml", read(rule.id() + ".quiet.yaml")));
        assertFalse(raised.contains(rule.id()), () -> rule.id() + " speaks; raised: " + new TreeSet<>(raised));
    }

    private void checkNoneIsLeftOver() {
        try (Stream<Path> files = Files.list(folder)) {
            List<String> strangers = new ArrayList<>();
            for (String name : files.map(file -> file.getFileName().toString()).sorted().toList()) {
                var match = NAME.matcher(name);
                boolean known = match.matches() ? rules.containsKey(match.group(1)) : !name.endsWith(".yaml")
                        || name.equals("base.yaml");
                if (!known) {
                    strangers.add(name);
                }
            }
            assertEquals(List.of(), strangers);
        } catch (IOException unreadable) {
            fail(unreadable);
        }
    }

    private String merged(String file, String patch) {
        String base = read("base.yaml");
        String merged = ExamplePatch.merged(base, patch);
        assertFalse(merged.equals(ExamplePatch.merged(base, "{}")), () -> file + " changes nothing");
        return merged;
    }

    private boolean related(RuleInfo rule, String other) {
        return below(rule.id()).contains(other) || below(other).contains(rule.id());
    }

    private Set<String> below(String id) {
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
