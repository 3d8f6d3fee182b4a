package org.shortgrain.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A file that a command needs. */
final class InputFile {

    /** No report, key or review is larger (bytes); what is, was named by mistake. */
    private static final long LARGEST = 200_000_000;

    private InputFile() {
    }

    /**
     * {@return the bytes of a file}
     *
     * @param file the file
     * @param what what it is, for messages
     * @throws CommandFailure if it cannot be read
     */
    static byte[] read(Path file, String what) {
        if (!Files.exists(file)) {
            throw missing("there is no " + what + " " + file);
        }
        if (!Files.isRegularFile(file)) {
            throw missing(file + " is a directory or a device; name the file of the " + what);
        }
        try {
            if (Files.size(file) > LARGEST) {
                throw missing(file + " has more than " + LARGEST / 1_000_000 + " MB and can be no " + what);
            }
            return Files.readAllBytes(file);
        } catch (AccessDeniedException denied) {
            throw missing("the " + what + " " + file + " cannot be read: permission denied");
        } catch (IOException failing) {
            throw missing("the " + what + " " + file + " cannot be read: " + failing.getMessage());
        }
    }

    private static CommandFailure missing(String message) {
        return new CommandFailure(ExitCode.INPUT_MISSING, message);
    }
}
