package org.shortgrain.part.reader;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.shortgrain.part.Location;
import org.shortgrain.part.Withdrawal;

/**
 * Reads which issues of reports were withdrawn, from the file that is kept beside them.
 *
 * <pre>{@code
 * withdrawn:
 *   - {content: 9eaf3cbc168122de, reason: "drawing revision D", by: "A. Reviewer", date: 2026-02-03, superseded_by: "issue 2"}
 * }</pre>
 */
public final class WithdrawalReader {

    private static final List<String> KEYS = List.of("content", "reason", "by", "date", "superseded_by");
    private static final String FORM = "a list of withdrawn issues, each with " + String.join(", ", KEYS);
    /** The foot of each page prints so many digits of the content hash; fewer could mean two issues. */
    private static final Pattern HASH = Pattern.compile("[0-9a-f]{16,64}");

    private WithdrawalReader() {
    }

    /**
     * What came of reading the file.
     *
     * @param withdrawals the withdrawn issues
     * @param problems    what stands against the file; empty if it was read
     */
    public record Outcome(List<Withdrawal> withdrawals, List<Problem> problems) {
        /** Copies the lists. */
        public Outcome {
            withdrawals = List.copyOf(withdrawals);
            problems = List.copyOf(problems);
        }
    }

    /**
     * {@return the withdrawals in a file, or what stands against it}
     *
     * @param name  name of the file, for messages
     * @param bytes its content
     */
    public static Outcome read(String name, byte[] bytes) {
        Problems problems = new Problems(name);
        SmallFile file = new SmallFile(problems);
        Optional<Spot> root = file.group(bytes, "the key withdrawn");
        root.ifPresent(spot -> file.refuseOthers(spot, List.of("schema", "withdrawn")));
        List<Withdrawal> all = root.flatMap(spot -> spot.entry("withdrawn"))
                .map(list -> file.items(list, FORM, item -> withdrawal(item, file))).orElse(List.of());
        return new Outcome(problems.refuse() ? List.of() : all, problems.refuse() ? problems.inFileOrder() : List.of());
    }

    private static Optional<Withdrawal> withdrawal(Spot item, SmallFile file) {
        file.refuseOthers(item, KEYS);
        Optional<String> hash = file.needed(item, "content", "the content hash at the foot of each page of the issue");
        Optional<String> reason = file.needed(item, "reason", "why it was withdrawn");
        Optional<String> by = file.needed(item, "by", "who withdrew it");
        Optional<String> date = file.neededDate(item, "date", "when it was withdrawn");
        Optional<String> next = file.text(item, "superseded_by");
        if (hash.isPresent() && !HASH.matcher(hash.get()).matches()) {
            file.add(ProblemCode.NOT_A_HASH, item.entry("content").orElse(item).at(), Values.shown(hash.get()));
            return Optional.empty();
        }
        if (hash.isEmpty() || reason.isEmpty() || by.isEmpty() || date.isEmpty()) {
            return Optional.empty();
        }
        Location at = item.at();
        return Optional.of(new Withdrawal(hash.get(), reason.get(), by.get(), date.get(), next, at));
    }
}
