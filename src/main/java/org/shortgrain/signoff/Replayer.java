package org.shortgrain.signoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.assessment.Reviewer;
import org.shortgrain.assessment.Wording;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Problem;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.report.change.Comparer;
import org.shortgrain.report.json.ReviewJson;
import org.shortgrain.review.Review;
import org.shortgrain.rulebook.RuleFailedException;

/** Makes a review again from the description that its report carries, with a rulebook at hand. */
public final class Replayer {

    private final Knowledge knowledge;
    private final Reviewer reviewer;

    /**
     * Makes a replayer.
     *
     * @param knowledge   the rulebook at hand, with its tables
     * @param wording     cautions, in the words of the templates
     * @param toolVersion version of the tool
     */
    public Replayer(Knowledge knowledge, Wording wording, String toolVersion) {
        this.knowledge = knowledge;
        this.reviewer = new Reviewer(knowledge, wording, toolVersion);
    }

    /**
     * {@return whether the rulebook at hand is the one that judged}
     *
     * @param recorded a review
     */
    public boolean isRulebookOf(Review recorded) {
        return recorded.rulebook().sha256().equals(knowledge.rulebook().sha256());
    }

    /**
     * {@return the description that a report carries}
     *
     * @param report the bytes of the report
     * @throws NotAReportException if it is none of ours
     */
    public static Optional<byte[]> description(byte[] report) throws NotAReportException {
        return ReportFile.of(report).description();
    }

    /**
     * {@return the review of a report, made again}
     *
     * @param report the bytes of the report
     * @throws NotAReportException if it is none of ours
     */
    public Replay replay(byte[] report) throws NotAReportException {
        ReportFile file = ReportFile.of(report);
        Review recorded = file.review();
        Optional<byte[]> description = file.description();
        if (description.isEmpty()) {
            return replay(file, Optional.empty(), List.of("the report does not carry its description"));
        }
        try {
            Review again = review(recorded, recorded.input().file(), description.get());
            return replay(file, Optional.of(again), List.of());
        } catch (UnreadableDescriptionException unreadable) {
            return replay(file, Optional.empty(), List.of("this version cannot read the attached description: "
                    + unreadable.getMessage()));
        }
    }

    /**
     * {@return the review of a description with the rulebook at hand, under the date and decisions of an earlier review}
     *
     * @param recorded    the earlier review
     * @param name        file name of the description
     * @param description its bytes
     * @throws UnreadableDescriptionException if it cannot be read or judged
     */
    public Review review(Review recorded, String name, byte[] description) throws UnreadableDescriptionException {
        Reading reading = new PartReader(knowledge.vocabularies()).read(name, description);
        if (!(reading instanceof Reading.Read read)) {
            throw new UnreadableDescriptionException(Problem.text(((Reading.Refused) reading).problems()));
        }
        try {
            Review again = reviewer.review(read, new Review.InputId(name, read.source().sha256()), recorded.date());
            return ReviewJson.sealed(recorded.dispositions().isEmpty() ? again
                    : again.withDispositions(recorded.dispositions()));
        } catch (RuleFailedException failed) {
            throw new UnreadableDescriptionException(failed.getMessage());
        }
    }

    private Replay replay(ReportFile file, Optional<Review> again, List<String> problems) {
        Review recorded = file.review();
        boolean same = isRulebookOf(recorded);
        return new Replay(recorded, knowledge.rulebook().edition() + " (" + knowledge.rulebook().sha256() + ")", same,
                same ? List.of() : differing(file.manifest().orElse(""), knowledge.rulebook().files().manifest()),
                again.map(review -> Comparer.compare(recorded, review)), again.map(Review::contentHash).orElse(""), problems);
    }

    /** Files whose hash differs between two manifests, each with what happened to it. */
    private static List<String> differing(String recorded, String atHand) {
        Map<String, String> then = hashes(recorded);
        Map<String, String> now = hashes(atHand);
        TreeSet<String> names = new TreeSet<>(then.keySet());
        names.addAll(now.keySet());
        List<String> differing = new ArrayList<>();
        for (String name : names) {
            if (!then.containsKey(name)) {
                differing.add(name + " (added)");
            } else if (!now.containsKey(name)) {
                differing.add(name + " (gone)");
            } else if (!then.get(name).equals(now.get(name))) {
                differing.add(name);
            }
        }
        return differing;
    }

    private static Map<String, String> hashes(String manifest) {
        Map<String, String> hashes = new LinkedHashMap<>();
        manifest.lines().map(line -> line.split(" {2}", 2)).filter(parts -> parts.length == 2)
                .forEach(parts -> hashes.put(parts[1], parts[0]));
        return hashes;
    }

    /** A description that cannot be reviewed with the rulebook at hand; the message says why. */
    public static final class UnreadableDescriptionException extends Exception {
        private static final long serialVersionUID = 1L;

        UnreadableDescriptionException(String message) {
            super(message);
        }
    }
}
