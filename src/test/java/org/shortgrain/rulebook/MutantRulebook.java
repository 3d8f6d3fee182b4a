package org.shortgrain.rulebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * All mutants of a rulebook as one rulebook, each under an id of its own, so that they are compiled and asked together.
 *
 * @param rulebook compiled
 * @param mutants  id in it to mutant
 * @param files    id of a mutated rule to the file that it stands in
 */
record MutantRulebook(Rulebook rulebook, Map<String, Mutant> mutants, Map<String, String> files) {

    private static final String METADATA = """
            @title("Mutant") @factor("record") @grade("advice") @sources("own-derivation | mutant | derived")
            @why("Mutant.") @remedies("None")
            """;

    /**
     * {@return the mutants of some rule files, compiled in one go, or taken from the cache if nothing has changed}
     *
     * @param rules  the rulebook; its tables and sources serve the mutants too
     * @param folder where the mutants are written; emptied first
     * @param cache  cache of compiled rulebooks
     */
    static MutantRulebook of(RulebookFiles rules, Path folder, RuleCache cache) throws IOException, RulebookException {
        Map<String, Mutant> mutants = new LinkedHashMap<>();
        Map<String, String> files = new LinkedHashMap<>();
        RuleCache.delete(folder);
        for (String name : rules.names().stream().filter(name -> !name.endsWith(".drl")).toList()) {
            Files.createDirectories(folder.resolve(name).getParent());
            Files.write(folder.resolve(name), rules.bytes(name));
        }
        for (Map.Entry<String, String> text : rules.rules().entrySet()) {
            DrlFile file = new DrlFile(text.getKey(), text.getValue());
            for (DrlFile.Rule rule : file.rules()) {
                files.put(rule.id(), file.name());
                write(file, rule, mutants, folder);
            }
        }
        return new MutantRulebook(Rulebook.from(folder, cache), Map.copyOf(mutants), files);
    }

    private static void write(DrlFile file, DrlFile.Rule rule, Map<String, Mutant> mutants, Path folder)
            throws IOException {
        String name = rule.id().toLowerCase(Locale.ROOT) + ".drl";
        List<String> drl = new ArrayList<>(List.of(header(file, DrlFile.packageOf(name))));
        for (Mutant mutant : Mutant.of(rule.id(), when(file.text().substring(rule.from(), rule.to())))) {
            String id = String.format(Locale.ROOT, "MUTANT-%04d", mutants.size());
            mutants.put(id, mutant);
            drl.add("rule \"" + id + "\"\n" + METADATA + "when\n" + mutant.when() + "\nthen\n  findings.raise(\"" + id
                    + "\");\nend\n");
        }
        Files.writeString(folder.resolve(name), String.join("\n", drl));
    }

    /** All that stands before the rules: imports and globals, under another package. */
    private static String header(DrlFile file, String packageName) {
        return file.only(null).strip().replaceFirst("(?m)^package .*$", "package " + packageName + ";");
    }

    static String when(String rule) {
        int when = rule.indexOf("\nwhen\n");
        int then = rule.indexOf("\nthen\n");
        if (when < 0 || then < when) {
            throw new IllegalArgumentException("when and then do not stand on lines of their own: " + rule);
        }
        return rule.substring(when + "\nwhen\n".length(), then);
    }
}
