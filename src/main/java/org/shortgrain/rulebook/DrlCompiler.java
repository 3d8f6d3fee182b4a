package org.shortgrain.rulebook;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.io.ResourceType;

/** Compiles rule files of sound form into classes, and says which rule and line is wrong where the engine does not. */
final class DrlCompiler {

    private static final String FOLDER = "src/main/resources/rules/";

    private final List<DrlFile> files;

    DrlCompiler(List<DrlFile> files) {
        this.files = files;
    }

    /**
     * {@return the compiled rules}
     *
     * @throws RulebookException with every rule that does not compile
     */
    CompiledRules compile() throws RulebookException {
        Attempt together = attempt(files.stream().collect(Collectors.toMap(DrlFile::name, DrlFile::text)));
        if (!together.failed()) {
            return together.rules();
        }
        List<RulebookProblem> problems = new ArrayList<>();
        for (DrlFile file : files) {
            if (attempt(Map.of(file.name(), file.text())).failed()) {
                diagnose(file, problems);
            }
        }
        if (problems.isEmpty()) {
            together.messages().forEach(message -> problems.add(RulebookProblem.in("rules", message)));
        }
        throw new RulebookException(problems.stream().distinct().sorted().toList());
    }

    /** One rule at a time, since the engine names lines in generated code, or none. */
    private static void diagnose(DrlFile file, List<RulebookProblem> problems) {
        int before = problems.size();
        for (DrlFile.Rule rule : file.rules()) {
            for (String message : attempt(Map.of(file.name(), file.only(rule))).messages()) {
                CompilerMessage read = new CompilerMessage(message);
                problems.add(file.problem(rule, read.line(file, rule), read.text()));
            }
        }
        if (problems.size() == before) {
            attempt(Map.of(file.name(), file.text())).messages()
                    .forEach(message -> problems.add(RulebookProblem.in(file.name(), message)));
        }
    }

    private static Attempt attempt(Map<String, String> texts) {
        KieServices services = KieServices.Factory.get();
        KieFileSystem input = services.newKieFileSystem();
        new TreeMap<>(texts).forEach((name, text) -> input.write(services.getResources()
                .newByteArrayResource(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8.name())
                .setResourceType(ResourceType.DRL).setSourcePath(FOLDER + name)));
        try {
            KieBuilder builder = services.newKieBuilder(input, DrlCompiler.class.getClassLoader())
                    .buildAll(ExecutableModelProject.class);
            return result(builder);
        } catch (RuntimeException crash) {
            // the engine's compiler has states that it does not report but falls over
            return new Attempt(null, List.of("the rule compiler fails on it: " + crash.getMessage()));
        }
    }

    private static Attempt result(KieBuilder builder) {
        List<String> errors = builder.getResults().getMessages(Message.Level.ERROR).stream().map(Message::getText)
                .filter(text -> !text.startsWith("Java source of ")).distinct().toList();
        if (!errors.isEmpty()) {
            return new Attempt(null, errors);
        }
        InternalKieModule module = (InternalKieModule) builder.getKieModule();
        TreeMap<String, byte[]> classes = new TreeMap<>();
        List<String> models = new ArrayList<>();
        for (String name : module.getFileNames()) {
            if (name.endsWith(".class") && name.startsWith("rules/")) {
                classes.put(name, module.getBytes(name));
            } else if (name.endsWith("drools-model")) {
                new String(module.getBytes(name), StandardCharsets.UTF_8).lines().skip(1).forEach(models::add);
            }
        }
        return new Attempt(new CompiledRules(classes, models), List.of());
    }

    private record Attempt(CompiledRules rules, List<String> messages) {
        boolean failed() {
            return !messages.isEmpty();
        }
    }
}
