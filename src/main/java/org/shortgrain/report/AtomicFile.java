package org.shortgrain.report;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** A file that is there whole or not at all: written aside in the same folder, then moved into its place. */
public final class AtomicFile {

    private AtomicFile() {
    }

    /** Writes the content of a file. */
    @FunctionalInterface
    public interface Content {
        /**
         * Writes it.
         *
         * @param to where to; closed by the caller
         * @throws IOException if it cannot be written
         */
        void writeTo(OutputStream to) throws IOException;
    }

    /**
     * Writes a file, in place of one that may be there.
     *
     * @param file    the file; its folder is made if it is missing
     * @param content its content
     * @throws IOException if it cannot be written; what was there before is then still there
     */
    public static void write(Path file, Content content) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        Files.createDirectories(folder);
        // no temporary file of the runtime's: those are private to the owner, and a report is to be read by others
        Path aside = folder.resolve("." + file.getFileName() + "." + ProcessHandle.current().pid() + "-" + Thread.currentThread().getId()
                + ".part");
        try {
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(aside))) {
                content.writeTo(out);
            }
            move(aside, file);
        } finally {
            Files.deleteIfExists(aside);
        }
    }

    private static void move(Path aside, Path file) throws IOException {
        try {
            Files.move(aside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException notHere) {
            Files.move(aside, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
