package org.shortgrain.rulebook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shortgrain.part.reader.FormTable;
import org.shortgrain.part.reader.UnjudgedKeys;
import org.shortgrain.reference.RulebookTableException;
import org.shortgrain.reference.Sources;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.error.YAMLException;

/**
 * Checks and compiles rules. As a program, the step of the build that turns the shipped rulebook into classes.
 *
 * <p>Run with one processor, it writes the same bytes whenever it is given the same rules.
 */
public final class RuleCompiler {

    /** What rules may see: when these classes change, the rules are compiled anew. */
    private static final List<String> API = List.of("rulebook", "part", "review", "terms", "mechanics", "reference");
    private static final String CLASSES = "rules";
    /** Classes that judge; the report only repeats what was said. */
    private static final List<String> JUDGES = List.of("org/shortgrain/assessment", "org/shortgrain/rulebook",
            "org/shortgrain/remedy", CLASSES);
    /** Classes among them that only list what was stated, for the report. */
    private static final Set<String> LISTERS = Set.of("StatedLines");
    private static final String MANIFEST = "rulebook/manifest.sha256";

    private RuleCompiler() {
    }

    /**
     * Compiles the shipped rulebook.
     *
     * @param arguments the folder of the rulebook; the folder of the tool's classes
     * @throws IOException if the classes cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        // whichever runtime builds them, class files that the oldest supported one loads, and of a level at which strings
        // are joined without linking at run time
        System.setProperty("drools.dialect.java.compiler.lnglevel", "1.8");
        int code = 0;
        try {
            build(Path.of(arguments[0]), Path.of(arguments[1])).ifPresent(System.out::println);
            listJudgedKeys(Path.of(arguments[1]));
            FormTable.write(Path.of(arguments[1]));
            Sources.compile(Path.of(arguments[0]), Path.of(arguments[1], "rulebook"));
        } catch (RulebookTableException faulty) {
            faulty.faults().forEach(fault -> System.err.println("rules/" + fault));
            code = 1;
        } catch (RulebookException faulty) {
            faulty.problems().forEach(problem -> System.err.println("rules/" + problem));
            code = 1;
        }
        // the engine's workers would keep the process alive for a while
        System.exit(code);
    }

    /** Lists the keys of a description that rules and computations ask for, so that the report can name the others. */
    private static void listJudgedKeys(Path classes) throws IOException {
        List<Path> judges = JUDGES.stream().map(classes::resolve).toList();
        Path list = classes.resolve(UnjudgedKeys.LIST);
        Files.createDirectories(list.getParent());
        Files.writeString(list, String.join("\n", UnjudgedKeys.asked(AccessorCalls.in(judges, LISTERS))));
    }

    /**
     * {@return what was done; empty if nothing had changed}
     *
     * @param folder  folder of the rulebook
     * @param classes folder of the tool's classes
     */
    static Optional<String> build(Path folder, Path classes) throws RulebookException, IOException {
        RulebookFiles files = RulebookFiles.in(folder);
        String api = api(classes);
        String builtFrom = Sha256.of(files.manifest() + api + RuleCache.version(org.kie.api.KieServices.class));
        Path index = classes.resolve(ShippedIndex.PLACE);
        if (Files.exists(index) && ShippedIndex.parse(Files.readString(index)).builtFrom().equals(builtFrom)) {
            return Optional.empty();
        }
        Files.deleteIfExists(index);
        RuleCache.delete(classes.resolve(CLASSES));
        RulebookAbout about = RulebookAbout.of(files);
        CompiledRules compiled = compile(files.rules(), documents(files), List.of());
        new CompiledRules(GatheredLambdas.in(compiled.classes()), compiled.models()).writeClasses(classes);
        Files.createDirectories(index.getParent());
        Files.writeString(classes.resolve(MANIFEST), files.manifest());
        Files.writeString(index, new ShippedIndex(builtFrom, api, about.edition(), files.sha256(), compiled.models())
                .text());
        return Optional.of("rulebook " + about.edition() + ": " + files.rules().size() + " rule files compiled");
    }

    /**
     * {@return rules as classes}
     *
     * @param texts     rule file to text
     * @param documents ids of documents that may be cited; empty to allow all
     * @param beside    rules that these rules stand beside
     * @throws RulebookException with every fault
     */
    static CompiledRules compile(SortedMap<String, String> texts, Optional<Set<String>> documents,
            List<RuleInfo> beside) throws RulebookException {
        List<DrlFile> checked = new RuleForm(texts, documents, beside).checked();
        return checked.isEmpty() ? new CompiledRules(new java.util.TreeMap<>(), List.of())
                : new DrlCompiler(checked).compile();
    }

    /** {@return ids of the documents that a rulebook lists; empty if it has no list} */
    static Optional<Set<String>> documents(RulebookFiles files) throws RulebookException {
        if (!files.names().contains(RulebookFiles.SOURCES)) {
            return Optional.empty();
        }
        try {
            Object read = new Yaml(new SafeConstructor(new LoaderOptions())).load(files.text(RulebookFiles.SOURCES));
            if (read instanceof Map<?, ?> documents) {
                return Optional.of(documents.keySet().stream().map(String::valueOf).collect(Collectors.toSet()));
            }
            throw new RulebookException(RulebookProblem.in(RulebookFiles.SOURCES, "is no map of document ids"));
        } catch (YAMLException malformed) {
            throw new RulebookException(RulebookProblem.in(RulebookFiles.SOURCES,
                    malformed.getMessage().lines().findFirst().orElse("cannot be read")));
        }
    }

    private static String api(Path classes) throws IOException {
        List<String> hashes = new ArrayList<>();
        for (String part : API) {
            Path folder = classes.resolve("org/shortgrain").resolve(part);
            if (Files.isDirectory(folder)) {
                try (Stream<Path> found = Files.walk(folder)) {
                    for (Path path : found.filter(Files::isRegularFile).sorted().toList()) {
                        hashes.add(Sha256.of(Files.readAllBytes(path)) + "  "
                                + classes.relativize(path).toString().replace('\\', '/'));
                    }
                }
            }
        }
        return Sha256.of(String.join("\n", hashes).getBytes(StandardCharsets.UTF_8));
    }
}
