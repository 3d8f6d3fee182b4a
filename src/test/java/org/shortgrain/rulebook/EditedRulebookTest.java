package org.shortgrain.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EditedRulebookTest {

    @TempDir
    private Path temporary;

    private RuleCache cache() {
        return new RuleCache(temporary.resolve("cache").resolve("rulebooks"));
    }

    private Path edited(String file, String what, String by) {
        Path folder = RulebookFixture.copy("small", temporary.resolve("edited"));
        RulebookFixture.edit(folder, file, what, by);
        return folder;
    }

    private List<String> problems(Path folder) {
        return RulebookFixture.lines(assertThrows(RulebookException.class, () -> Rulebook.from(folder, cache())));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '!', textBlock = """
            a word that is no keyword       ! when\\n  $bore : Bore( hoop > 100 ) ! whenever\\n  Bore() ! 16 ! mismatched input
            a field that does not exist     ! hoop > 100 ) ! hooop > 100 )     ! 17 ! hooop
            a fact that does not exist      ! $bore : Bore( hoop > 100 ) ! $bore : Boar( hoop > 100 ) ! 17 ! Boar
            a method that does not exist    ! $bore.id(), "The bore carries " + $bore.hoop() + " MPa.") ! $bore.idd(), "x") ! 19 ! idd
            a name that is not bound        ! .evidence("hoop tension " + $bore.hoop() ! .evidence("hoop tension " + $lug.hoop() ! 20 ! $lug
            a consequence that is no Java   ! .at($bore.at());\\nend\\n\\nrule "STRESS-02" ! .at($bore.at()) + ;\\nend\\n\\nrule "STRESS-02" ! 20 ! Parse error
            a value of the wrong kind       ! hoop > 100 ) ! hoop > "high" )   ! 17 ! high
            a grade that does not exist     ! @grade("condition") ! @grade("major") ! 7 ! expected one of objection, condition, question, advice
            a factor that does not exist    ! @factor("stress") ! @factor("strain") ! 7 ! expected one of material
            a source without a status       ! handbook | 1.2 | read ! handbook | 1.2 ! 7 ! id | clause | status
            a status that does not exist    ! handbook | 1.2 | read ! handbook | 1.2 | seen ! 7 ! 'seen' is no source status
            a document that is not listed   ! handbook | 1.2 | read ! handbok | 1.2 | read ! 7 ! no document 'handbok'
            a rule without a reason         ! @why("Two of the three factors meet.") ! '' ! 23 ! @why is missing
            a tag that does not exist       ! @applies("forging") ! @applies("forging rain") ! 7 ! 'rain' is not known
            an annotation that is not known ! @title("Bore under lasting tension") ! @title("A") @severity("B") ! 7 ! @severity is not known
            a rule that raises nothing      ! findings.raise($bore.id(), "The bore carries " + $bore.hoop() + " MPa and holds water.").at($bore.at()); ! String none = $bore.id(); ! 33 ! raises nothing
            an id of another form           ! rule "STRESS-01" ! rule "Stress one" ! 7 ! is no rule id
            a circle of subsumption         ! @title("Bore under lasting tension") ! @title("A") @subsumes("STRESS-02") ! 7 ! is graver
            a rule to subsume that is not   ! @subsumes("STRESS-01 WATER-01") ! @subsumes("STRESS-09") ! 23 ! there is no rule STRESS-09
            another package                 ! package rules.stress; ! package rules.strain; ! 1 ! expected 'rules.stress'
            """)
    void aFaultIsNamedWithItsFileAndLine(String fault, String what, String by, int line, String message) {
        List<String> problems = problems(edited("stress.drl", what.replace("\\n", "\n"), by.replace("\\n", "\n")));
        assertTrue(problems.get(0).startsWith("stress.drl:" + line + ": "), problems::toString);
        assertTrue(problems.stream().anyMatch(problem -> problem.contains(message)), problems::toString);
        assertTrue(problems.stream().noneMatch(problem -> problem.contains("\n") || problem.contains("\tat ")),
                problems::toString);
    }

    @Test
    void faultsOfSeveralFilesAreAllTold() {
        Path folder = edited("stress.drl", "$bore.id(), \"The bore carries \" + $bore.hoop() + \" MPa.\")",
                "$bore.idd(), \"x\")");
        RulebookFixture.edit(folder, "water-traps.drl", "wet, hoop > 900", "wet, hop > 900");
        List<String> problems = problems(folder);
        assertEquals(2, problems.size(), problems::toString);
        assertTrue(problems.get(0).startsWith("stress.drl:19: STRESS-01: "), problems::toString);
        assertTrue(problems.get(1).startsWith("water-traps.drl:29: WATER-02: "), problems::toString);
    }

    @Test
    void anIdThatStandsInTwoFilesIsAFault() {
        Path folder = edited("water-traps.drl", "WATER-03", "STRESS-01");
        assertTrue(problems(folder).get(0).endsWith("ids are unique"));
    }

    @Test
    void aTextNamesEachThingThatIsNoRulebook() throws IOException {
        assertTrue(problems(temporary.resolve("nowhere")).get(0).contains("is not a folder"));
        Path empty = Files.createDirectory(temporary.resolve("empty"));
        assertTrue(problems(empty).get(0).startsWith("rulebook.yaml: is missing"));
        Files.writeString(empty.resolve("rulebook.yaml"), "edition: [");
        assertTrue(problems(empty).get(0).startsWith("rulebook.yaml:1: "), problems(empty).get(0));
        Files.writeString(empty.resolve("rulebook.yaml"), "edition: 1\nextend: shipped\n");
        assertTrue(problems(empty).get(0).contains("'extend' is not known"));
        Files.writeString(empty.resolve("rulebook.yaml"), "edition: 1\ndisabled: {STRESS-01: no}\n");
        assertTrue(problems(empty).get(0).contains("extends no rulebook"));
    }

    @Test
    void aRulebookIsCompiledOnceForEachContent() throws Exception {
        Path folder = RulebookFixture.copy("small", temporary.resolve("edited"));
        Rulebook.from(folder, cache());
        List<Path> first = cached();
        Rulebook.from(folder, cache());
        assertEquals(first, cached());
        assertEquals(1, first.size(), first::toString);
        RulebookFixture.edit(folder, "stress.drl", "hoop > 100 )", "hoop > 200 )");
        Rulebook other = Rulebook.from(folder, cache());
        assertEquals(2, cached().size());
        assertEquals(Set.of(), other.judge(List.of(Bore.of("LUG-A", 150, false)), Applicability.toAll(), List.of())
                .raised());
    }

    @Test
    void theCacheHoldsWhatTheCompilerMade() throws Exception {
        Path folder = RulebookFixture.folder("small");
        Outcome compiled = judged(Rulebook.from(folder, cache()));
        assertEquals(compiled, judged(Rulebook.from(folder, cache())));
    }

    private static Outcome judged(Rulebook rulebook) {
        return rulebook.judge(List.of(Bore.of("LUG-A", 150, true)), Applicability.toAll(), List.of());
    }

    private List<Path> cached() throws IOException {
        try (Stream<Path> found = Files.list(temporary.resolve("cache").resolve("rulebooks"))) {
            return found.sorted().toList();
        }
    }

    @Test
    void aCacheThatOthersCanWriteToIsNotUsed() throws Exception {
        Path root = Files.createDirectories(temporary.resolve("cache").resolve("rulebooks"));
        Files.setPosixFilePermissions(root, PosixFilePermissions.fromString("rwxrwxrwx"));
        Rulebook rulebook = Rulebook.from(RulebookFixture.folder("small"), cache());
        assertEquals(5, rulebook.rules().size());
        assertEquals(List.of(), cached());
    }

    @Test
    void theCacheLiesWhereTheOperatingSystemKeepsCaches() {
        assertEquals(Path.of("/home/me/.cache"), RuleCache.userCaches("Linux", "/home/me", name -> Optional.empty()));
        assertEquals(Path.of("/c"), RuleCache.userCaches("Linux", "/home/me", name -> Optional.of("/c")));
        assertEquals(Path.of("/Users/me/Library/Caches"),
                RuleCache.userCaches("Mac OS X", "/Users/me", name -> Optional.empty()));
        assertEquals(Path.of("local"), RuleCache.userCaches("Windows 11", "me",
                Map.of("LOCALAPPDATA", Optional.of("local"))::get));
    }

    @Test
    void theHashCoversWhatJudgesAndNothingElse() throws Exception {
        Path folder = RulebookFixture.copy("small", temporary.resolve("edited"));
        String before = RulebookFiles.in(folder).sha256();
        Files.writeString(folder.resolve("CHANGES.md"), "text");
        Files.createDirectories(folder.resolve("examples"));
        Files.writeString(folder.resolve("examples").resolve("STRESS-01.trigger.yaml"), "a: 1");
        assertEquals(before, RulebookFiles.in(folder).sha256());
        Files.createDirectories(folder.resolve("data"));
        Files.writeString(folder.resolve("data").resolve("table.csv"), "a,b\n");
        String after = RulebookFiles.in(folder).sha256();
        assertNotEquals(before, after);
        Files.move(folder.resolve("data").resolve("table.csv"), folder.resolve("data").resolve("other.csv"));
        assertNotEquals(after, RulebookFiles.in(folder).sha256());
    }

    @Test
    void rulesBesideTheShippedOnesAreAddedToThem() throws Exception {
        Rulebook both = Rulebook.from(RulebookFixture.folder("beside"), cache());
        Rulebook shipped = Rulebook.shipped();
        assertEquals(shipped.rules().size() + 1, both.rules().size());
        assertTrue(both.rules().containsAll(shipped.rules()));
        assertEquals("house rules", both.edition());
        assertNotEquals(shipped.sha256(), both.sha256());
        assertTrue(both.files().names().containsAll(shipped.files().names()));
        assertTrue(both.judge(List.of(Bore.of("LUG-A", 60, false)), Applicability.toAll(), List.of()).raised()
                .contains("HOUSE-01"));
    }

    @Test
    void aRuleThatIsDisabledSaysWhy() throws Exception {
        Path folder = RulebookFixture.copy("beside", temporary.resolve("edited"));
        Files.writeString(folder.resolve("rulebook.yaml"),
                "edition: e\nextends: shipped\ndisabled: {HOUSE-01: covered by the stress office}\n");
        Outcome outcome = Rulebook.from(folder, cache()).judge(List.of(Bore.of("LUG-A", 60, false)),
                Applicability.toAll(), List.of());
        assertFalse(outcome.raised().contains("HOUSE-01"));
        assertTrue(outcome.notApplicable().stream().anyMatch(one -> one.rule().equals("HOUSE-01")
                && one.reason().equals("Disabled by this rulebook: covered by the stress office")));
    }

    @Test
    void aRuleThatDoesNotExistCannotBeDisabled() throws IOException {
        Path folder = RulebookFixture.copy("beside", temporary.resolve("edited"));
        Files.writeString(folder.resolve("rulebook.yaml"),
                "edition: e\nextends: shipped\ndisabled: {HOUSE-77: reason}\n");
        assertTrue(problems(folder).get(0).contains("HOUSE-77"));
    }

    @Test
    void rulesThatFeedEachOtherWithoutEndAreStopped() throws Exception {
        Path folder = edited("stress.drl", "findings.raise($bore.id(), \"The bore carries \" + $bore.hoop() + \" MPa.\")",
                "drools.insert(new Bore($bore.id(), $bore.hoop() + 1, false, $bore.at()));\n"
                        + "  findings.raise($bore.id(), \"more\")");
        Rulebook endless = Rulebook.from(folder, cache());
        assertThrows(RuleFailedException.class, () -> judged(endless));
    }

    @Test
    void twoBuildsOfTheSameRulesGiveTheSameBytes() throws Exception {
        assertEquals(built("one"), built("other"));
    }

    /** As the build runs it: in a process of its own, with one processor. */
    private Map<String, String> built(String name) throws Exception {
        Path classes = temporary.resolve(name);
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:ActiveProcessorCount=1", "-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path"),
                RuleCompiler.class.getName(), RulebookFixture.folder("small").toString(), classes.toString())
                .redirectErrorStream(true).start();
        String printed = new String(process.getInputStream().readAllBytes());
        assertEquals(0, process.waitFor(), printed);
        Map<String, String> hashes = new TreeMap<>();
        try (Stream<Path> found = Files.walk(classes)) {
            for (Path file : found.filter(Files::isRegularFile).toList()) {
                hashes.put(classes.relativize(file).toString(), Sha256.of(Files.readAllBytes(file)));
            }
        }
        return hashes;
    }

    @Test
    void theBuildStepSkipsWhatHasNotChangedAndLeavesNoOldClass() throws Exception {
        Path classes = temporary.resolve("classes");
        Path folder = RulebookFixture.copy("small", temporary.resolve("edited"));
        assertTrue(RuleCompiler.build(folder, classes).isPresent());
        assertEquals(Optional.empty(), RuleCompiler.build(folder, classes));
        RulebookFixture.edit(folder, "stress.drl", "hoop > 100 )", "hoop > 200 )");
        assertTrue(RuleCompiler.build(folder, classes).isPresent());
        CompiledRules expected = RuleCompiler.compile(RulebookFiles.in(folder).rules(), Optional.empty(), List.of());
        try (Stream<Path> found = Files.walk(classes)) {
            assertEquals(GatheredLambdas.in(expected.classes()).keySet(), found.filter(path -> path.toString().endsWith(".class"))
                    .map(path -> classes.relativize(path).toString()).collect(Collectors.toSet()));
        }
    }
}
