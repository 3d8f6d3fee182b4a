package org.shortgrain.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** Runs the command line inside the test, for tests of other packages too. */
public final class CommandRun {

    private CommandRun() {
    }

    /** What a command said. */
    public record Ran(int code, String out, String err) {
    }

    /** Runs a command. */
    public static Ran run(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] words = java.util.Arrays.stream(arguments).map(String::valueOf).toArray(String[]::new);
        int code = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
        return new Ran(code, out.toString(), err.toString());
    }
}
