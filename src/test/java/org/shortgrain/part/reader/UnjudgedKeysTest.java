package org.shortgrain.part.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class UnjudgedKeysTest {
    private static final Path CLASSES = Path.of("target/classes");
    /** Packages whose classes judge; the report only repeats what was said. */
    private static final List<String> JUDGES = List.of("org.shortgrain.assessment", "org.shortgrain.rulebook",
            "org.shortgrain.remedy", "rules");
    /** Classes that only list what was stated, for the report. */
    private static final Set<String> LISTERS = Set.of("org.shortgrain.assessment.StatedLines");

    private static final List<String> PATHS = List.of("/part", "/part/number", "/part/name", "/material",
            "/material/alloy", "/material/remarks", "/route", "/route/0", "/route/0/sides", "/route/1", "/route/1/sides",
            "/route/1/at", "/route/1/at/0", "/environment/fluids/0/name", "/surface/peened", "/surface/peened/0");

    @Test
    void aKeyThatNothingAsksForIsListedOnceForAllItemsOfAList() {
        List<String> unjudged = new UnjudgedKeys(Set.of("Material.alloy", "RouteStep.at")).of(PATHS);
        assertEquals(List.of("/route/*/sides", "/environment/fluids/*/name", "/surface/peened"), unjudged);
    }

    @Test
    void whatIsAskedForIsNotListed() {
        assertEquals(List.of(), new UnjudgedKeys(Set.of("Material.alloy", "RouteStep.at", "RouteStep.sides", "Fluid.name",
                "Surface.peened")).of(PATHS));
    }

    /** The build reads the class files with one library, here another does, and must find the same. */
    @Test
    void theListOfTheBuildIsWhatTheCompiledJudgesAskFor() {
        assertEquals(asked(), new TreeSet<>(UnjudgedKeys.shipped()));
    }

    @Test
    void theWholeFormHasKeysOfBothKinds() {
        Reading.Read read = (Reading.Read) Read.file(Read.WHOLE_FORM);
        List<String> unjudged = UnjudgedKeys.among(read.paths());
        assertTrue(unjudged.stream().noneMatch(path -> path.startsWith("/part/number")));
        assertTrue(unjudged.size() < read.paths().size());
    }

    private static Set<String> asked() {
        Set<String> calls = new HashSet<>();
        List<Path> folders = JUDGES.stream().map(name -> CLASSES.resolve(name.replace('.', '/'))).filter(Files::isDirectory)
                .toList();
        JavaClasses classes = new ClassFileImporter().importPaths(folders);
        for (JavaClass judge : classes) {
            if (!LISTERS.contains(judge.getName())) {
                targets(judge).filter(target -> target.getOwner().getPackageName().equals("org.shortgrain.part"))
                        .forEach(target -> calls.add(target.getOwner().getSimpleName() + "." + target.getName()));
            }
        }
        return new TreeSet<>(UnjudgedKeys.asked(calls));
    }

    private static Stream<CodeUnitAccessTarget> targets(JavaClass judge) {
        return Stream.concat(judge.getMethodCallsFromSelf().stream().map(call -> call.getTarget()),
                judge.getMethodReferencesFromSelf().stream().map(reference -> reference.getTarget()));
    }
}
