package org.shortgrain.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.shortgrain.assessment.DecisionCheck;
import org.shortgrain.part.reader.DispositionReader;
import org.shortgrain.part.reader.Problem;
import org.shortgrain.review.Review;

/**
 * What people decided on the findings of a part: the file named with {@code --dispositions}, else
 * {@code PART.findings.yaml}, else {@code findings.yaml} beside the description where it is about this part.
 */
final class DispositionFile {

    private static final String SHARED = "findings.yaml";

    private DispositionFile() {
    }

    /**
     * {@return a review with the decisions that were taken on it}
     *
     * @param review the review
     * @param part   its description
     * @param named  the file that the user named
     * @throws CommandFailure if the file has faults or does not fit the review
     */
    static Review decided(Review review, Path part, Optional<Path> named) {
        Optional<Path> file = named.isPresent() ? named : beside(part);
        if (file.isEmpty()) {
            return review;
        }
        String name = file.get().toString();
        DispositionReader.Outcome outcome = DispositionReader.read(name, InputFile.read(file.get(), "file of decisions"));
        if (outcome instanceof DispositionReader.Refused refused) {
            throw new CommandFailure(ExitCode.INPUT_INVALID, Problem.text(refused.problems()));
        }
        DispositionReader.Read read = (DispositionReader.Read) outcome;
        boolean aboutAnother = !read.part().equals(review.part().number());
        if (named.isEmpty() && aboutAnother && file.get().endsWith(SHARED)) {
            return review;
        }
        List<Problem> problems = new DecisionCheck(review).problems(name, read);
        if (!problems.isEmpty()) {
            throw new CommandFailure(ExitCode.INPUT_INVALID, Problem.text(problems));
        }
        return read.dispositions().isEmpty() ? review
                : review.withDispositions(List.copyOf(read.dispositions().keySet()));
    }

    private static Optional<Path> beside(Path part) {
        String own = part.getFileName().toString().replaceFirst("\\.ya?ml$", "") + "." + SHARED;
        for (Path file : List.of(part.resolveSibling(own), part.resolveSibling(SHARED))) {
            if (Files.exists(file)) {
                return Optional.of(file);
            }
        }
        return Optional.empty();
    }
}
