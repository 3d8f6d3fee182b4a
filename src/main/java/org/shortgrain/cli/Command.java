package org.shortgrain.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;

/**
 * A command of the tool: its name, its arguments and what it does. It declares its arguments as fields, each made by one of the
 * methods below, which tell the library of it. Annotations, the library's other way, cost a cold start 25 ms: the runtime makes
 * a class for each kind of them.
 */
abstract class Command implements Callable<Integer> {

    private final CommandSpec spec;

    /**
     * A command without arguments as yet.
     *
     * @param name        what it is called by
     * @param description what it does, for the help
     * @param footer      lines at the end of its help
     */
    Command(String name, String description, String... footer) {
        spec = described(CommandSpec.wrapWithoutInspection(this), name, description, footer);
    }

    /**
     * {@return a command of the library that can tell what it is, its help and its version}
     *
     * @param spec        the command
     * @param name        what it is called by
     * @param description what it does, for the help
     * @param footer      lines at the end of its help
     */
    static CommandSpec described(CommandSpec spec, String name, String description, String... footer) {
        spec.usageMessage().description(description).footer(footer);
        return spec.name(name).versionProvider(new Main.Version())
                .addOption(OptionSpec.builder("-h", "--help").usageHelp(true)
                        .description("Show this help message and exit.").build())
                .addOption(OptionSpec.builder("-V", "--version").versionHelp(true)
                        .description("Print version information and exit.").build());
    }

    /** {@return the command as the library knows it} */
    final CommandSpec spec() {
        return spec;
    }

    /** {@return where results go} */
    final PrintWriter console() {
        return spec.commandLine().getOut();
    }

    /** {@return where messages go} */
    final PrintWriter messages() {
        return spec.commandLine().getErr();
    }

    /**
     * {@return wrong usage of this command, to be thrown}
     *
     * @param message what is wrong and what to do
     */
    final ParameterException wrongUsage(String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    /**
     * {@return an option that is stated or not}
     *
     * @param name        its name with the dashes
     * @param description what it does, for the help
     */
    final Argument<Boolean> flag(String name, String description) {
        return added(OptionSpec.builder(name).type(boolean.class).description(description).build());
    }

    /**
     * {@return an option that takes a value}
     *
     * @param name        its name with the dashes
     * @param label       what the help calls the value
     * @param type        type of the value
     * @param description what it does, for the help
     * @param <T>         type of the value
     */
    final <T> Argument<T> option(String name, String label, Class<T> type, String description) {
        return added(named(name, label, description).type(type).build());
    }

    /**
     * {@return an option that has to be stated}
     *
     * @param name        its name with the dashes
     * @param label       what the help calls the value
     * @param type        type of the value
     * @param description what it does, for the help
     * @param <T>         type of the value
     */
    final <T> Argument<T> requiredOption(String name, String label, Class<T> type, String description) {
        return added(named(name, label, description).type(type).required(true).build());
    }

    /**
     * {@return an option that may be stated several times}
     *
     * @param name        its name with the dashes
     * @param label       what the help calls a value
     * @param type        type of a value
     * @param description what it does, for the help
     * @param <T>         type of a value
     */
    final <T> Argument<List<T>> repeatedOption(String name, String label, Class<T> type, String description) {
        return added(named(name, label, description).type(List.class).auxiliaryTypes(type).build());
    }

    /**
     * {@return an option that takes values with commas between them}
     *
     * @param name        its name with the dashes
     * @param label       what the help calls a value
     * @param type        type of a value
     * @param description what it does, for the help
     * @param <T>         type of a value
     */
    final <T> Argument<Set<T>> listOption(String name, String label, Class<T> type, String description) {
        return added(named(name, label, description).type(Set.class).auxiliaryTypes(type).splitRegex(",").build());
    }

    /**
     * {@return an argument that has to stand at the next place}
     *
     * @param label       what the help calls it
     * @param type        type of its value
     * @param description what it is, for the help
     * @param <T>         type of its value
     */
    final <T> Argument<T> operand(String label, Class<T> type, String description) {
        return added(next(label, "1", description).type(type).required(true).build());
    }

    /**
     * {@return an argument that may stand at the next place}
     *
     * @param label       what the help calls it
     * @param type        type of its value
     * @param description what it is, for the help
     * @param <T>         type of its value
     */
    final <T> Argument<T> optionalOperand(String label, Class<T> type, String description) {
        return added(next(label, "0..1", description).type(type).build());
    }

    /**
     * {@return arguments of one kind at all places that are left, at least one}
     *
     * @param label       what the help calls one
     * @param type        type of a value
     * @param description what they are, for the help
     * @param <T>         type of a value
     */
    final <T> Argument<List<T>> operands(String label, Class<T> type, String description) {
        return added(placed(label, "1..*", description).type(List.class).auxiliaryTypes(type).required(true).build());
    }

    private static OptionSpec.Builder named(String name, String label, String description) {
        return OptionSpec.builder(name).paramLabel(label).description(description);
    }

    private PositionalParamSpec.Builder next(String label, String arity, String description) {
        return placed(label, arity, description).index(Integer.toString(spec.positionalParameters().size()));
    }

    private static PositionalParamSpec.Builder placed(String label, String arity, String description) {
        return PositionalParamSpec.builder().paramLabel(label).arity(arity).description(description);
    }

    private <T> Argument<T> added(ArgSpec argument) {
        spec.add(argument);
        return new Argument<>(argument);
    }
}
