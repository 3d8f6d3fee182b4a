package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import org.shortgrain.part.reader.Alternatives;
import org.shortgrain.part.reader.DescriptionValue;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.JsonPatch;
import org.shortgrain.part.reader.MinimumSet;
import org.shortgrain.reference.AnswerTable;
import org.shortgrain.review.Grade;
import org.shortgrain.review.Question;

/**
 * Values of which one holds, as answers: each written in the place of all of them.
 *
 * <p>Which is the worst is found by review: each is put in alone, everything else as it stands. Verdict, objections,
 * conditions, susceptibility of the material and further questions count in this order; alternatives that are alike in all
 * of them keep the order in which they stand.
 */
final class StatedAlternatives {

    private final Trials trials;
    private final MinimumSet minimum = new MinimumSet();
    private final Map<Trials.Trial, Set<String>> places = Collections.synchronizedMap(new IdentityHashMap<>());

    StatedAlternatives(Trials trials) {
        this.trials = trials;
    }

    /**
     * {@return whether the key that a question is about holds alternatives}
     *
     * @param question the question
     * @param trial    the description that it is asked of
     */
    boolean standAt(Question question, Trials.Trial trial) {
        String path = question.at().path();
        return list(path, trial.part()).isPresent() && places(trial).contains(path);
    }

    private Set<String> places(Trials.Trial trial) {
        return places.computeIfAbsent(trial, one -> minimum.open(one.description()).alternatives().stream()
                .map(Alternatives::at).map(at -> at.path()).collect(Collectors.toUnmodifiableSet()));
    }

    /**
     * {@return the alternatives as answers, the worst first; none where another answer has taken the place of them}
     *
     * @param question the question
     * @param trial    the description that it is asked of
     * @param part     the same, with what was answered before
     */
    List<AdmissibleAnswers.Possible> to(Question question, Trials.Trial trial, EditableDescription part) {
        Optional<String> list = list(question.at().path(), part);
        if (list.isEmpty()) {
            return List.of();
        }
        List<Alternative> ordered = ordered(read(question.at().path(), list.get(), trial, part));
        List<AdmissibleAnswers.Possible> possible = new ArrayList<>();
        for (int i = 0; i < ordered.size(); i++) {
            AnswerTable.Side side = i == 0 ? AnswerTable.Side.WORST
                    : i == ordered.size() - 1 ? AnswerTable.Side.BEST : AnswerTable.Side.OTHER;
            possible.add(new AdmissibleAnswers.Possible(ordered.get(i).words(), side, ordered.get(i).patch()));
        }
        return possible;
    }

    /** Where the list stands: at the key, or in the long form below it; empty if there is none. */
    private static Optional<String> list(String path, EditableDescription part) {
        return List.of(path, path + "/value").stream()
                .filter(place -> part.at(place).filter(value -> value.items().size() > 1).isPresent()).findFirst();
    }

    private record Alternative(String words, JsonPatch patch, Optional<Trials.Trial> alone) {
    }

    private List<Alternative> read(String path, String list, Trials.Trial trial, EditableDescription part) {
        String key = path.replaceFirst("(/\\d+)+$", "").replaceFirst(".*/", "").replace('_', ' ');
        List<Alternative> read = new ArrayList<>();
        List<DescriptionValue> items = part.at(list).orElseThrow().items().stream().distinct().toList();
        for (DescriptionValue item : items) {
            DescriptionValue bare = list.equals(path) ? item : item.entries().getOrDefault("value", item);
            String said = bare.isGroup() ? "no. " + (items.indexOf(item) + 1) + " of those stated, " + words(bare) : words(bare);
            JsonPatch patch = part.setting(list, bare);
            read.add(new Alternative("the " + key + " is " + said, patch, trials.of(trial.part().with(patch))));
        }
        return read;
    }

    private static String words(DescriptionValue value) {
        if (!value.isGroup()) {
            return value.items().isEmpty() ? value.text().replace('_', ' ')
                    : value.items().stream().map(StatedAlternatives::words).collect(Collectors.joining(", "));
        }
        return value.entries().entrySet().stream().filter(entry -> !entry.getKey().equals("ref"))
                .map(entry -> entry.getKey().replace('_', ' ') + ' ' + words(entry.getValue())).collect(Collectors.joining(", "));
    }

    private List<Alternative> ordered(List<Alternative> read) {
        return read.stream().sorted(by(one -> one.free().ordinal())
                .thenComparing(by(one -> -(int) one.review().count(Grade.OBJECTION)))
                .thenComparing(by(one -> -(int) one.review().count(Grade.CONDITION)))
                .thenComparing(by(one -> MaterialReading.resistance(trials.material(one))))
                .thenComparing(by(one -> -one.asked().size()))).toList();
    }

    /** What the reader refuses comes last: nothing is known of it. */
    private static Comparator<Alternative> by(ToIntFunction<Trials.Trial> weight) {
        return Comparator.comparingInt(one -> one.alone().map(weight::applyAsInt).orElse(Integer.MAX_VALUE));
    }
}
