package org.shortgrain.cli;

import java.util.Optional;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.reference.Source;
import org.shortgrain.rulebook.RuleCatalogue;

/** {@code shortgrain rules}: what the rulebook asks, and where each rule comes from. */
final class RulesCommand extends Command {

    static final String NAME = "rules";

    private final Argument<String> id = optionalOperand("ID", String.class, "A rule, such as STRESS-03.");

    private final RulebookOption rulebook;

    RulesCommand(Ahead ahead) {
        super(NAME, "Lists the rules, or shows one with its sources, remedies and examples.");
        rulebook = new RulebookOption(this, ahead);
    }

    @Override
    public Integer call() {
        Knowledge knowledge = rulebook.knowledge();
        RuleCatalogue catalogue = new RuleCatalogue(knowledge.rulebook(),
                key -> knowledge.tables().sources().find(key).map(Source::reference));
        if (!id.isStated()) {
            console().print(catalogue.list());
            return ExitCode.OK.code();
        }
        Optional<String> page = catalogue.page(id.get().toUpperCase(java.util.Locale.ROOT));
        if (page.isEmpty()) {
            throw new CommandFailure(ExitCode.USAGE, "the rulebook has no rule " + id.get()
                    + "; 'shortgrain rules' lists them");
        }
        console().print(page.get());
        return ExitCode.OK.code();
    }
}
