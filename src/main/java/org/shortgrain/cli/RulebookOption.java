package org.shortgrain.cli;

import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.reference.RulebookTableException;
import org.shortgrain.rulebook.Rulebook;
import org.shortgrain.rulebook.RulebookException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Which rulebook judges: the shipped one unless a folder is named. */
final class RulebookOption {

    static final String NAME = "--rulebook";

    private final Ahead ahead;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    @Option(names = NAME, paramLabel = "DIR", description = "An edited rulebook. A rulebook is code:"
            + " its rules can do on this computer whatever you can.")
    private Path folder;

    RulebookOption(Ahead ahead) {
        this.ahead = ahead;
    }

    /** {@return whether a folder is named} */
    boolean isNamed() {
        return folder != null;
    }

    /** {@return rules and tables, loaded once and only if they are asked for} */
    Supplier<Knowledge> once() {
        AtomicReference<Knowledge> loaded = new AtomicReference<>();
        return () -> loaded.updateAndGet(known -> known != null ? known : knowledge());
    }

    /** {@return rules and tables} */
    Knowledge knowledge() {
        if (folder == null) {
            return ahead.shipped();
        }
        command.commandLine().getErr().println("shortgrain: " + Rulebook.WARNING);
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
