package org.shortgrain.assessment;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Location;
import org.shortgrain.part.Minimum;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Stated;
import org.shortgrain.part.reader.Alternatives;
import org.shortgrain.part.reader.Groups;
import org.shortgrain.part.reader.MinimumSet;
import org.shortgrain.part.reader.Missing;
import org.shortgrain.review.Factor;
import org.shortgrain.review.Question;

/** Turns what the description leaves open into questions: fields of the minimum set without an answer, and alternatives. */
final class MissingFields {

    private MissingFields() {
    }

    /** What is said of alternatives until one of them is settled: see {@link org.shortgrain.part.Stated}. */
    private static final String MEANWHILE = "of materials the most susceptible counts; elsewhere what is true of every"
            + " alternative counts as stated, what is true of one of them as possible";

    /**
     * Asks for every field of the minimum set that is absent or unknown, and which of several values holds.
     *
     * @param minimum     what a description leaves open
     * @param description the description
     * @param ledger      where the questions go
     */
    static void ask(MinimumSet minimum, PartDescription description, Ledger ledger) {
        List<Feature> features = Stated.items(description.features());
        MinimumSet.Open open = minimum.open(description);
        for (Missing missing : open.missing()) {
            if (missing.role() != Minimum.Role.REFUSED) {
                ledger.ask(question(missing, features));
            }
        }
        for (Alternatives several : open.alternatives()) {
            Entry entry = Entry.at(several.at(), features);
            Question.Role role = several.role() == Minimum.Role.JUDGING ? Question.Role.JUDGING : Question.Role.IDENTITY;
            ledger.ask(new Ledger.Asked(Optional.empty(), role, factor(entry.keys(), role), entry.feature(),
                    entry.say() + " holds " + several.values().size() + " alternatives" + listed(several.values()) + ".",
                    several.meaning(), Optional.of(MEANWHILE), several.at()));
        }
    }

    /** Groups are too long to be listed. */
    private static String listed(List<?> values) {
        return values.stream().anyMatch(Groups::isGroup) ? ""
                : ": " + values.stream().map(StatedLines::text).collect(Collectors.joining(" or "));
    }

    /**
     * A key in words.
     *
     * @param keys    keys and numbers that lead to it
     * @param feature the place it belongs to; empty for the whole part
     * @param say     the key, and the group that it belongs to
     */
    private record Entry(String[] keys, Optional<String> feature, String say) {

        static Entry at(Location at, List<Feature> features) {
            String[] keys = at.path().substring(1).split("/");
            Optional<String> feature = keys[0].equals("features") && keys.length > 1
                    ? Optional.of(name(features, Integer.parseInt(keys[1]))) : Optional.empty();
            String what = Arrays.stream(keys).filter(key -> !key.matches("\\d+")).reduce(keys[0], (a, b) -> b);
            String where = feature.isPresent() || keys.length == 1 ? "" : " (" + keys[0].replace('_', ' ') + ")";
            return new Entry(keys, feature, "The entry \"" + what.replace('_', ' ') + "\"" + where);
        }
    }

    private static Ledger.Asked question(Missing missing, List<Feature> features) {
        Entry entry = Entry.at(missing.at(), features);
        String state = switch (missing.state()) {
            case ABSENT -> "is not in the description";
            case UNKNOWN -> "is stated as unknown";
            case NONE -> "is stated as none, which is no answer here";
        };
        Question.Role role = missing.role() == Minimum.Role.IDENTITY ? Question.Role.IDENTITY : Question.Role.JUDGING;
        return new Ledger.Asked(Optional.empty(), role, factor(entry.keys(), role), entry.feature(),
                entry.say() + " " + state + ".", missing.meaning(), Optional.empty(), missing.at());
    }

    /** A feature without a name is named by its number. */
    static String name(List<Feature> features, int index) {
        Optional<String> stated = index < features.size() ? features.get(index).id().single() : Optional.empty();
        return stated.orElse("feature " + (index + 1));
    }

    private static Factor factor(String[] keys, Question.Role role) {
        if (role == Question.Role.IDENTITY) {
            return Factor.RECORD;
        }
        String last = keys[keys.length - 1];
        return switch (keys[0]) {
            case "material", "form", "grain" -> Factor.MATERIAL;
            case "environment", "surface", "sealant", "neighbours" -> Factor.ENVIRONMENT;
            case "features" -> List.of(keys).contains("drainage") ? Factor.ENVIRONMENT
                    : last.equals("stress_direction") ? Factor.MATERIAL : Factor.STRESS;
            default -> Factor.STRESS;
        };
    }
}
