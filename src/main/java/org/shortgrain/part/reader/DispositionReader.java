package org.shortgrain.part.reader;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shortgrain.part.Decision;
import org.shortgrain.part.Disposition;
import org.shortgrain.part.Location;

/**
 * Reads what people decided on the findings of a review, from the file that they keep beside the description.
 *
 * <pre>{@code
 * part: {number: "EX-1001-1", revision: "C"}
 * findings:
 *   F-01:
 *     rule: STRESS-03          # with feature: tells whether F-01 is still the finding that was decided on
 *     feature: GROOVE
 *     disposition: route_change
 *     reason: "Rough machine before heat treatment; RC-1001 revision 5"
 *     by: "A. Reviewer, M&P"
 * }</pre>
 */
public final class DispositionReader {

    private static final List<String> TOP = List.of("schema", "part", "findings");
    private static final List<String> PART = List.of("number", "revision");
    private static final List<String> KEYS = List.of("rule", "feature", "disposition", "reason", "by", "decided", "owner",
            "due", "closure_evidence", "closed_by", "closed_on");
    private static final String FORM = "a group for each finding, such as F-01: {rule: ..., disposition: ..., reason: ...,"
            + " by: ...}";
    private static final String WORDS = Arrays.stream(Decision.values()).map(Decision::word)
            .collect(Collectors.joining(", "));

    private DispositionReader() {
    }

    /** What came of reading the file. */
    public sealed interface Outcome {
    }

    /**
     * The file was read.
     *
     * @param part         number of the part that it is about
     * @param revision     its revision; empty if not said
     * @param dispositions each decision with its place in the file
     */
    public record Read(String part, Optional<String> revision, Map<Disposition, Location> dispositions)
            implements Outcome {
    }

    /**
     * The file was not read.
     *
     * @param problems why, in the order of the file
     */
    public record Refused(List<Problem> problems) implements Outcome {
        /** Copies the list. */
        public Refused {
            problems = List.copyOf(problems);
        }
    }

    /**
     * {@return the decisions in a file, or what stands against it}
     *
     * @param name  name of the file, for messages
     * @param bytes its content
     */
    public static Outcome read(String name, byte[] bytes) {
        Problems problems = new Problems(name);
        SmallFile file = new SmallFile(problems);
        Map<Disposition, Location> all = new LinkedHashMap<>();
        Optional<Spot> root = file.group(bytes, "the keys part and findings");
        Optional<String> part = Optional.empty();
        Optional<String> revision = Optional.empty();
        if (root.isPresent()) {
            file.refuseOthers(root.get(), TOP);
            Optional<Spot> group = root.get().entry("part").filter(spot -> file.isGroup(spot, "number and revision"));
            if (root.get().entry("part").isEmpty()) {
                file.add(ProblemCode.MISSING_FIELD, root.get().at(), "part", "missing",
                        "part: {number: ..., revision: ...}, so that no decision is taken for one on another part");
            }
            group.ifPresent(spot -> file.refuseOthers(spot, PART));
            part = group.flatMap(spot -> file.needed(spot, "number", "the number of the part decided on"));
            revision = group.flatMap(spot -> file.text(spot, "revision"));
            root.get().entry("findings").filter(spot -> file.isGroup(spot, FORM)).ifPresent(findings ->
                    findings.entries().forEach((id, spot) -> {
                        if (file.isGroup(spot, FORM)) {
                            disposition(id, spot, file).ifPresent(one -> all.put(one, spot.atKey()));
                        }
                    }));
        }
        return problems.refuse() ? new Refused(problems.inFileOrder()) : new Read(part.orElse(""), revision, all);
    }

    private static Optional<Disposition> disposition(String id, Spot spot, SmallFile file) {
        file.refuseOthers(spot, KEYS);
        Optional<String> word = file.needed(spot, "disposition", "what was decided, one of " + WORDS);
        Optional<Decision> decision = word.flatMap(Decision::of);
        if (word.isPresent() && decision.isEmpty()) {
            List<String> words = Arrays.stream(Decision.values()).map(Decision::word).toList();
            file.add(ProblemCode.UNKNOWN_WORD, spot.entry("disposition").orElse(spot).at(), Values.shown(word.get()), WORDS,
                    Nearest.advice(word.get(), words, "Choose the word that fits best; the reason says the rest"));
        }
        Optional<String> reason = file.needed(spot, "reason", "why it was decided so; nothing is decided without a reason");
        Optional<String> by = file.needed(spot, "by", "the name of whoever decided");
        Optional<String> evidence = file.text(spot, "closure_evidence");
        Optional<String> closedBy = file.text(spot, "closed_by");
        Optional<String> closedOn = file.date(spot, "closed_on");
        if (evidence.isEmpty() && (closedBy.isPresent() || closedOn.isPresent())) {
            file.add(ProblemCode.MISSING_FIELD, spot.atKey(), "closure_evidence", "missing",
                    "what shows that it is done, since it is called closed");
        }
        if (decision.isEmpty() || reason.isEmpty() || by.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Disposition(id, file.text(spot, "rule"), file.text(spot, "feature"), decision.get(),
                reason.get(), by.get(), file.date(spot, "decided"), file.text(spot, "owner"), file.date(spot, "due"),
                evidence.map(text -> new Disposition.Closure(text, closedBy, closedOn))));
    }
}
