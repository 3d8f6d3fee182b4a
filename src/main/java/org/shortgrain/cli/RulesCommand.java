package org.shortgrain.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.reference.Source;
import org.shortgrain.rulebook.RuleCatalogue;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code shortgrain rules}: what the rulebook asks, and where each rule comes from. */
@Command(name = "rules", mixinStandardHelpOptions = true, versionProvider = Main.Version.class,
        description = "Lists the rules, or shows one with its sources, remedies and examples.")
final class RulesCommand implements Callable<Integer> {

    @Spec
    private CommandSpec command;

    @Parameters(paramLabel = "ID", arity = "0..1", description = "A rule, such as STRESS-03.")
    private String id;

    @Mixin
    private RulebookOption rulebook;

    @Override
    public Integer call() {
        Knowledge knowledge = rulebook.knowledge();
        RuleCatalogue catalogue = new RuleCatalogue(knowledge.rulebook(),
                key -> knowledge.tables().sources().find(key).map(Source::reference));
        if (id == null) {
            command.commandLine().getOut().print(catalogue.list());
            return ExitCode.OK.code();
        }
        Optional<String> page = catalogue.page(id.toUpperCase(java.util.Locale.ROOT));
        if (page.isEmpty()) {
            throw new CommandFailure(ExitCode.USAGE, "the rulebook has no rule " + id
                    + "; 'shortgrain rules' lists them");
        }
        command.commandLine().getOut().print(page.get());
        return ExitCode.OK.code();
    }
}
