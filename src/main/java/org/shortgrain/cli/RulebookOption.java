package org.shortgrain.cli;

import java.nio.file.Path;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.reference.RulebookTableException;
import org.shortgrain.rulebook.Rulebook;
import org.shortgrain.rulebook.RulebookException;
import org.shortgrain.terms.OnDemand;

/** Which rulebook judges: the shipped one unless a folder is named. */
final class RulebookOption {

    static final String NAME = "--rulebook";

    private final Command command;
    private final Ahead ahead;
    private final Argument<Path> named;

    /**
     * The option, added to a command.
     *
     * @param command the command
     * @param ahead   the shipped rulebook
     */
    RulebookOption(Command command, Ahead ahead) {
        this.command = command;
        this.ahead = ahead;
        named = command.option(NAME, "DIR", Path.class,
                "An edited rulebook. A rulebook is code: its rules can do on this computer whatever you can.");
    }

    /** {@return whether a folder is named} */
    boolean isNamed() {
        return named.isStated();
    }

    /** {@return rules and tables, loaded once and only if they are asked for} */
    Supplier<Knowledge> once() {
        return new OnDemand<>(this::knowledge);
    }

    /** {@return rules and tables} */
    Knowledge knowledge() {
        if (!named.isStated()) {
            return ahead.shipped();
        }
        Path folder = named.get();
        command.messages().println("shortgrain: " + Rulebook.WARNING);
        try {
            return Knowledge.of(Rulebook.from(folder));
        } catch (RulebookException faulty) {
            throw new CommandFailure(ExitCode.INPUT_INVALID, "the rulebook in " + folder + " has faults:\n"
                    + faulty.problems().stream().map(String::valueOf).collect(Collectors.joining("\n")));
        } catch (RulebookTableException faulty) {
            throw new CommandFailure(ExitCode.INPUT_INVALID, "the tables of the rulebook in " + folder
                    + " have faults:\n" + faulty.getMessage());
        }
    }
}
