package org.shortgrain.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.IVersionProvider;

/** Entry point of the command line. */
public final class Main {

    /** The commands, in the order of the help. */
    private static final List<String> COMMANDS = List.of(ReviewCommand.NAME, RemediesCommand.NAME, MaterialCommand.NAME,
            RulesCommand.NAME, StartCommand.NAME, SchemaCommand.NAME, SignCommand.NAME, VerifyCommand.NAME, CompareCommand.NAME);

    /**
     * Runs a command and ends the process with its exit code.
     *
     * @param arguments the command line
     */
    public static void main(String[] arguments) {
        System.setProperty("java.awt.headless", "true");
        // picocli: no look for another language's closures through every library, no converters of types not used here
        System.setProperty("picocli.disable.closures", "true");
        System.setProperty("picocli.converters.excludes", "java\\.(sql|time|net|math)\\..*");
        PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, false, StandardCharsets.UTF_8);
        int code = run(out, err, arguments);
        out.flush();
        err.flush();
        System.exit(code);
    }

    /**
     * {@return the exit code of a command}
     *
     * @param out       where results go
     * @param err       where messages go
     * @param arguments the command line
     */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        Ahead ahead = Ahead.of(arguments);
        CommandSpec tool = Command.described(CommandSpec.create(), "shortgrain",
                "Judges whether a metallic part can fail by stress-corrosion cracking.", "",
                "Exit codes: 0 sign-off possible; 1 objection; 2 wrong usage; 3 cannot be judged;",
                "4 verification failed; 65 description invalid; 66 description missing;",
                "70 internal error; 74 cannot write.");
        for (String name : asked(arguments)) {
            tool.addSubcommand(name, command(name, ahead).spec());
        }
        CommandLine line = new CommandLine(tool);
        line.setOut(out).setErr(err).setCaseInsensitiveEnumValuesAllowed(true);
        line.setParameterExceptionHandler(Main::wrongUsage);
        line.setExecutionExceptionHandler(Main::failed);
        if (arguments.length == 0) {
            line.usage(out);
            return ExitCode.USAGE.code();
        }
        return line.execute(arguments);
    }

    /** The command that is asked for, where its name stands first: reading off the others would delay it. Else all. */
    private static List<String> asked(String... arguments) {
        return arguments.length > 0 && COMMANDS.contains(arguments[0]) ? List.of(arguments[0]) : COMMANDS;
    }

    private static Command command(String name, Ahead ahead) {
        return switch (name) {
            case ReviewCommand.NAME -> new ReviewCommand(ahead);
            case RemediesCommand.NAME -> new RemediesCommand(ahead);
            case MaterialCommand.NAME -> new MaterialCommand(ahead);
            case RulesCommand.NAME -> new RulesCommand(ahead);
            case StartCommand.NAME -> new StartCommand();
            case SchemaCommand.NAME -> new SchemaCommand();
            case SignCommand.NAME -> new SignCommand();
            case VerifyCommand.NAME -> new VerifyCommand(ahead);
            case CompareCommand.NAME -> new CompareCommand(ahead);
            default -> throw new IllegalArgumentException(name);
        };
    }

    private static int wrongUsage(CommandLine.ParameterException wrong, String... arguments) {
        CommandLine command = wrong.getCommandLine();
        PrintWriter err = command.getErr();
        err.println("shortgrain: " + wrong.getMessage());
        CommandLine.UnmatchedArgumentException.printSuggestions(wrong, err);
        err.println("Try: " + command.getCommandSpec().qualifiedName() + " --help");
        return ExitCode.USAGE.code();
    }

    /** A fault of the tool: one line for the user, the trace in a file for whoever mends it. */
    private static int failed(Exception fault, CommandLine command, CommandLine.ParseResult parsed) {
        if (fault instanceof CommandFailure known) {
            command.getErr().println("shortgrain: " + known.getMessage());
            return known.code().code();
        }
        command.getErr().println("shortgrain: a fault of the tool: " + fault + trace(fault)
                + ". Please report it with the description, if you may pass it on.");
        return ExitCode.INTERNAL.code();
    }

    private static String trace(Exception fault) {
        StringWriter text = new StringWriter();
        fault.printStackTrace(new PrintWriter(text, true));
        try {
            Path file = Files.createTempFile("shortgrain-fault-", ".txt");
            Files.writeString(file, text.toString());
            return "; details are in " + file;
        } catch (IOException noPlace) {
            return "";
        }
    }

    /** The tool's version, as the build wrote it beside this class. */
    static final class Version implements IVersionProvider {

        @Override
        public String[] getVersion() {
            return new String[] {"shortgrain " + text()};
        }

        static String text() {
            try (InputStream in = Main.class.getResourceAsStream("version.txt")) {
                return new String(Objects.requireNonNull(in, "version.txt").readAllBytes(), StandardCharsets.UTF_8).strip();
            } catch (IOException e) {
                throw new UncheckedIOException("version.txt", e);
            }
        }
    }
}
