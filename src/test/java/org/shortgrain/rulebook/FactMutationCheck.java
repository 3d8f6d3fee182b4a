package org.shortgrain.rulebook;

import com.github.javaparser.ParserConfiguration;
import com.github.javaparser.StaticJavaParser;
import com.github.javaparser.ast.CompilationUnit;
import com.github.javaparser.ast.Node;
import com.github.javaparser.ast.body.MethodDeclaration;
import com.github.javaparser.ast.expr.Expression;
import com.github.javaparser.ast.expr.LambdaExpr;
import com.github.javaparser.ast.stmt.ReturnStmt;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.ToolProvider;

/**
 * Do the examples of the rules notice when a fact answers wrongly? {@link MutationCheck} spoils the text of the rules; this
 * spoils what they ask: every {@code return} of every method of {@code rulebook.facts} that answers yes or no is turned
 * round, one at a time. Run by hand from the root of the project:
 *
 * <pre>java -cp "target/classes:target/test-classes:target/lib/*" org.shortgrain.rulebook.FactMutationCheck</pre>
 *
 * <p>The facts are rewritten and compiled once, with every answer passed through {@link Spoil}, and asked in a second
 * process that has them in front of the class path. An answer is asked of no example that does not reach it. An example
 * notices where its rule is silent on a trigger, speaks of a near miss or of the base, or where a rule speaks of a trigger
 * that did not before and has nothing to do with it.
 */
public final class FactMutationCheck {

    private static final Path FACTS = Path.of("src", "main", "java", "org", "shortgrain", "rulebook", "facts");
    private static final Path EXAMPLES = Path.of("rules", "examples");
    private static final Path WORK = Path.of("target", "spoilt-facts");
    private static final Path LIST = WORK.resolve("returns.txt");

    private final List<ExampleFile> examples;
    private final ShippedReview reviewer = ShippedReview.ofShipped();
    private final Map<String, RuleInfo> rules;
    private final Map<ExampleFile, String> texts = new LinkedHashMap<>();
    private final Map<ExampleFile, Set<String>> raised = new LinkedHashMap<>();
    private final Map<ExampleFile, BitSet> reached = new LinkedHashMap<>();

    private FactMutationCheck() throws IOException {
        examples = ExampleFile.in(EXAMPLES);
        rules = reviewer.knowledge().rulebook().rules().stream().collect(Collectors.toMap(RuleInfo::id, rule -> rule));
    }

    /**
     * Prints the score and the answers that no example needs.
     *
     * @param args none; the second process is started with one
     * @throws IOException          if facts or examples cannot be read
     * @throws InterruptedException if it is stopped
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        if (args.length == 0) {
            spoil();
            String path = WORK.resolve("classes") + File.pathSeparator + System.getProperty("java.class.path");
            System.exit(new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp", path,
                    FactMutationCheck.class.getName(), "ask").inheritIO().start().waitFor());
        }
        new FactMutationCheck().ask();
        System.exit(0);
    }

    /** Rewrites and compiles the facts, and lists the returns by their numbers. */
    private static void spoil() throws IOException {
        RuleCache.delete(WORK);
        Files.createDirectories(WORK.resolve("classes"));
        StaticJavaParser.setConfiguration(new ParserConfiguration()
                .setLanguageLevel(ParserConfiguration.LanguageLevel.JAVA_17));
        List<String> returns = new ArrayList<>();
        List<String> sources = new ArrayList<>();
        try (Stream<Path> files = Files.list(FACTS)) {
            for (Path file : files.filter(one -> !one.endsWith("package-info.java")).sorted().toList()) {
                CompilationUnit unit = StaticJavaParser.parse(file);
                unit.findAll(MethodDeclaration.class, method -> method.getType().asString().equals("boolean"))
                        .forEach(method -> spoil(file, method, returns));
                Path rewritten = WORK.resolve("java").resolve("org/shortgrain/rulebook/facts").resolve(file.getFileName());
                Files.createDirectories(rewritten.getParent());
                Files.writeString(rewritten, unit.toString());
                sources.add(rewritten.toString());
            }
        }
        Files.write(LIST, returns);
        List<String> call = new ArrayList<>(List.of("--release", "17", "-nowarn", "-cp",
                System.getProperty("java.class.path"), "-d", WORK.resolve("classes").toString()));
        call.addAll(sources);
        if (ToolProvider.getSystemJavaCompiler().run(null, null, null, call.toArray(String[]::new)) != 0) {
            throw new IllegalStateException("the rewritten facts do not compile");
        }
    }

    private static void spoil(Path file, MethodDeclaration method, List<String> returns) {
        for (ReturnStmt stated : method.findAll(ReturnStmt.class, one -> isOf(method, one))) {
            Expression answer = stated.getExpression().orElseThrow();
            returns.add(file.getFileName().toString().replace(".java", "") + "." + method.getNameAsString() + ": "
                    + answer.toString().replaceAll("\\s+", " "));
            stated.setExpression(StaticJavaParser.parseExpression("org.shortgrain.rulebook.Spoil.answer("
                    + (returns.size() - 1) + ", " + answer + ")"));
        }
    }

    /** A return inside a lambda is none of the method. */
    private static boolean isOf(MethodDeclaration method, ReturnStmt stated) {
        Node at = stated;
        while (at != method) {
            if (at instanceof LambdaExpr) {
                return false;
            }
            at = at.getParentNode().orElseThrow();
        }
        return true;
    }

    private void ask() throws IOException {
        long start = System.nanoTime();
        List<String> returns = Files.readAllLines(LIST);
        for (ExampleFile example : examples) {
            texts.put(example, example.description(FactMutationCheck::text));
            Spoil.turn(-1);
            raised.put(example, ShippedReview.raised(reviewer.review(texts.get(example))));
            reached.put(example, Spoil.seen());
        }
        System.out.printf(Locale.ROOT, "%d answers, %d examples reviewed as they are, %.0f s%n", returns.size(),
                examples.size(), (System.nanoTime() - start) / 1e9);
        List<String> unnoticed = new ArrayList<>();
        int unreached = 0;
        for (int number = 0; number < returns.size(); number++) {
            int one = number;
            if (reached.values().stream().noneMatch(seen -> seen.get(one))) {
                unreached++;
                unnoticed.add("not reached: " + returns.get(number));
            } else if (!isNoticed(number)) {
                unnoticed.add("not noticed: " + returns.get(number));
            }
        }
        System.out.printf(Locale.ROOT, "%d of %d answers turned round are noticed (%.1f %%), %d are reached by no example,"
                + " %.0f s%n", returns.size() - unnoticed.size(), returns.size(),
                100.0 * (returns.size() - unnoticed.size()) / returns.size(), unreached, (System.nanoTime() - start) / 1e9);
        unnoticed.forEach(System.out::println);
    }

    private boolean isNoticed(int number) {
        return Stream.concat(examples.stream().filter(ExampleFile::trigger),
                examples.stream().filter(example -> !example.trigger()))
                .filter(example -> reached.get(example).get(number)).anyMatch(example -> notices(example, number));
    }

    private boolean notices(ExampleFile example, int number) {
        Spoil.turn(number);
        Set<String> now;
        try {
            now = ShippedReview.raised(reviewer.review(texts.get(example)));
        } catch (RuntimeException fails) {
            return true;
        }
        if (now.contains(example.rule()) != example.trigger()) {
            return true;
        }
        Set<String> added = new TreeSet<>(now);
        added.removeAll(raised.get(example));
        added.removeIf(other -> RuleExamples.below(rules, other).contains(example.rule())
                || RuleExamples.below(rules, example.rule()).contains(other));
        return example.trigger() && !added.isEmpty();
    }

    private static String text(String example) {
        try {
            return Files.readString(EXAMPLES.resolve(example));
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }
}
