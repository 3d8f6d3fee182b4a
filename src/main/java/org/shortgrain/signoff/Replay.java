package org.shortgrain.signoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shortgrain.report.change.Comparison;
import org.shortgrain.report.change.ComparisonText;
import org.shortgrain.review.Review;
import org.shortgrain.terms.PlainText;

/**
 * A review made again from the files in its report.
 *
 * @param recorded     the review that the report carries
 * @param edition      edition and hash of the rulebook that judged now
 * @param sameRulebook whether it is the rulebook that judged then
 * @param files        files of the rulebook that differ
 * @param comparison   the recorded review against the one made now; empty if none could be made
 * @param again        content hash of the review made now
 * @param problems     why no review could be made
 */
public record Replay(Review recorded, String edition, boolean sameRulebook, List<String> files,
        Optional<Comparison> comparison, String again, List<String> problems) {

    private static final int WIDTH = 110;
    private static final int FILES_SHOWN = 12;

    /** Copies the lists. */
    public Replay {
        files = List.copyOf(files);
        problems = List.copyOf(problems);
    }

    /** {@return whether the very review came out again} */
    public boolean isSame() {
        return sameRulebook && again.equals(recorded.contentHash());
    }

    /** {@return what came of it, for a terminal} */
    public String text() {
        List<String> lines = new ArrayList<>();
        if (isSame()) {
            lines.addAll(PlainText.lines("", "  ", "Replay: same. The attached description and rulebook " + edition
                    + " give the same review, content hash " + again + ".", WIDTH));
        } else if (comparison.isEmpty()) {
            lines.addAll(PlainText.lines("", "  ", "Replay: not possible. " + String.join("; ", problems), WIDTH));
        } else if (sameRulebook) {
            lines.add("Replay: DIFFERS. The attached description and the same rulebook give another review now.");
            lines.add("  recorded " + recorded.contentHash());
            lines.add("  now      " + again);
            ComparisonText.changes(comparison.get()).forEach(line -> lines.add("  " + line));
        } else {
            otherRulebook(lines);
        }
        return lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    }

    private void otherRulebook(List<String> lines) {
        lines.addAll(PlainText.lines("", "  ", "Replay: not with the rulebook that judged. The report names "
                + recorded.rulebook().edition() + " (" + recorded.rulebook().sha256() + "); at hand is " + edition
                + ". Name the folder of the former with --rulebook to make the review again.", WIDTH));
        if (!files.isEmpty()) {
            String shown = files.stream().limit(FILES_SHOWN).collect(Collectors.joining(", "));
            lines.addAll(PlainText.lines("  files of the rulebook that differ: ", "    ", shown
                    + (files.size() > FILES_SHOWN ? " and " + (files.size() - FILES_SHOWN) + " more" : ""), WIDTH));
        }
        lines.add("  what the rulebook at hand says of the attached description:");
        List<String> changes = ComparisonText.changes(comparison.orElseThrow());
        (changes.isEmpty() ? List.of("the same, in every finding and number") : changes)
                .forEach(line -> lines.add("    " + line));
    }
}
