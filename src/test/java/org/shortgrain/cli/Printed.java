package org.shortgrain.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.shortgrain.report.json.ReviewJson;
import org.shortgrain.report.json.UnreadableReviewException;
import org.shortgrain.review.Review;

/**
 * A report as the command line writes it, with the review that it prints.
 *
 * @param pdf    the report
 * @param review the review, read back from the data beside it
 */
record Printed(byte[] pdf, Review review) {

    private static final Path SAMPLES = Path.of("sample-reviews");

    /** {@return the descriptions of the sample parts} */
    static List<Path> samples() {
        try (Stream<Path> files = Files.list(SAMPLES)) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * {@return the report of a part}
     *
     * @param part    its description
     * @param folder  where the report goes
     * @param options more of the command line
     */
    static Printed of(Path part, Path folder, String... options) throws IOException, UnreadableReviewException {
        List<String> arguments = new ArrayList<>(List.of("review", part.toString(), "--out", folder.toString()));
        arguments.addAll(List.of(options));
        PrintWriter nowhere = new PrintWriter(new StringWriter());
        Main.run(nowhere, nowhere, arguments.toArray(String[]::new));
        String name = part.getFileName().toString().replace(".yaml", ".review");
        return new Printed(Files.readAllBytes(folder.resolve(name + ".pdf")),
                ReviewJson.read(Files.readAllBytes(folder.resolve(name + ".json"))));
    }

    /**
     * {@return the report of the part that asks everything of the layout}
     *
     * @param folder  where its files go
     * @param options more of the command line
     */
    static Printed stress(Path folder, String... options) throws IOException, UnreadableReviewException {
        Path part = folder.resolve("stress.yaml");
        Files.writeString(part, StressPart.yaml());
        return of(part, folder, options);
    }
}
