package org.shortgrain.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.drools.model.functions.HashedExpression;
import org.drools.model.functions.Predicate1;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.FieldInsnNode;

/** All other tests of the shipped rules run them gathered; here functions are held against what they were made of. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class GatheredLambdasTest {

    private static final List<Bore> BORES = List.of(Bore.of("LUG-A", 50, false), Bore.of("LUG-A", 50, true),
            Bore.of("LUG-A", 150, false), Bore.of("LUG-B", 950, true));

    private CompiledRules written;
    private CompiledRules gathered;

    @BeforeAll
    void compile(@TempDir Path temporary) throws RulebookException {
        Path folder = RulebookFixture.copy("small", temporary.resolve("small"));
        RulebookFixture.edit(folder, "stress.drl", "findings.raise($bore.id(), \"The bore carries \" + $bore.hoop() + \" MPa.\")",
                "Runnable inner = () -> findings.raise($bore.id(), \"within\"); findings.raise($bore.id(), \"a function within\")");
        // a condition that keeps a pattern in a field of its class
        RulebookFixture.edit(folder, "water-traps.drl", "$bore : Bore( wet, hoop > 900 )",
                "$bore : Bore( wet, hoop > 900, id matches \"LUG-.\" )");
        written = RuleCompiler.compile(RulebookFiles.in(folder).rules(), Optional.empty(), List.of());
        gathered = new CompiledRules(GatheredLambdas.in(written.classes()), written.models());
    }

    /** The class that a function went into, and the functions that went there, in the order of their files. */
    private SortedMap<String, List<String>> homes() {
        SortedMap<String, List<String>> homes = new TreeMap<>();
        written.classes().values().forEach(bytes -> CompiledLambda.in(bytes).ifPresent(
                lambda -> homes.computeIfAbsent(lambda.home(), home -> new ArrayList<>()).add(lambda.name())));
        return homes;
    }

    private static HashedExpression constant(ClassLoader loader, String name, String field)
            throws ReflectiveOperationException {
        return (HashedExpression) loader.loadClass(name.replace('/', '.')).getField(field).get(null);
    }

    @Test
    void functionsOfAFileShareAClassForEachInterface() {
        assertTrue(homes().keySet().containsAll(List.of("rules/stress/GatheredBlock2", "rules/stress/GatheredPredicate1",
                "rules/water_traps/GatheredBlock2", "rules/water_traps/GatheredPredicate1")), homes()::toString);
        homes().forEach((home, functions) -> {
            assertTrue(gathered.classes().containsKey(home + ".class"), home);
            functions.forEach(name -> assertTrue(!gathered.classes().containsKey(name + ".class"), name));
        });
    }

    @Test
    void eachKeepsItsHashItsOriginAndItsAnswers() throws ReflectiveOperationException {
        ClassLoader old = written.loader();
        ClassLoader fresh = gathered.loader();
        for (Map.Entry<String, List<String>> home : homes().entrySet()) {
            for (int i = 0; i < home.getValue().size(); i++) {
                String name = home.getValue().get(i);
                HashedExpression was = constant(old, name, CompiledLambda.INSTANCE);
                HashedExpression is = constant(fresh, home.getKey(), CompiledLambda.INSTANCE + i);
                assertEquals(was.getExpressionHash(), is.getExpressionHash(), name);
                if (was instanceof Predicate1<?> condition) {
                    assertSameAnswers(condition, (Predicate1<?>) is);
                }
            }
        }
    }

    @SuppressWarnings("unchecked") // both take bores
    private static void assertSameAnswers(Predicate1<?> was, Predicate1<?> is) {
        assertEquals(was.predicateInformation().getStringConstraint(), is.predicateInformation().getStringConstraint());
        assertEquals(was.predicateInformation().getRuleNameMap(), is.predicateInformation().getRuleNameMap());
        for (Bore bore : BORES) {
            assertEquals(answer((Predicate1<Bore>) was, bore), answer((Predicate1<Bore>) is, bore),
                    () -> was.predicateInformation() + " of " + bore);
        }
    }

    private static boolean answer(Predicate1<Bore> condition, Bore bore) {
        try {
            return condition.test(bore);
        } catch (Exception failed) {
            throw new AssertionError(failed);
        }
    }

    @Test
    void aFunctionIsOneObjectAndNoOther() throws ReflectiveOperationException {
        ClassLoader loader = gathered.loader();
        String home = "rules/water_traps/GatheredPredicate1";
        assertSame(constant(loader, home, "INSTANCE0"), constant(loader, home, "INSTANCE0"));
        assertNotSame(constant(loader, home, "INSTANCE0"), constant(loader, home, "INSTANCE1"));
    }

    @Test
    void aFunctionWithMoreThanItsAnswerStaysAsItIs() {
        List<String> left = gathered.classes().keySet().stream().filter(file -> file.contains("Lambda"))
                .map(file -> file.replaceFirst(".*/(Lambda[A-Z][a-z]+).*", "$1")).sorted().toList();
        assertEquals(List.of("LambdaConsequence", "LambdaPredicate"), left);
    }

    /** In all classes of the shipped rules: a name that is not there would show only when its rule is asked. */
    @Test
    void everyFieldOfTheRulesThatIsReadIsThere() throws IOException {
        Map<String, byte[]> classes = new TreeMap<>();
        Path root = Path.of("target/classes");
        try (Stream<Path> files = Files.walk(root.resolve("rules"))) {
            for (Path file : files.filter(path -> path.toString().endsWith(".class")).toList()) {
                classes.put(root.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
        }
        Set<String> there = new HashSet<>();
        Set<String> read = new HashSet<>();
        classes.values().forEach(bytes -> {
            ClassNode node = new ClassNode();
            new ClassReader(bytes).accept(node, 0);
            node.fields.forEach(field -> there.add(node.name + "." + field.name + field.desc));
            node.methods.forEach(method -> method.instructions.forEach(instruction -> {
                if (instruction instanceof FieldInsnNode field && classes.containsKey(field.owner + ".class")) {
                    read.add(field.owner + "." + field.name + field.desc);
                }
            }));
        });
        read.removeAll(there);
        assertEquals(Set.of(), read);
        assertTrue(there.size() > 1000, "fields of the shipped rules: " + there.size());
    }
}
