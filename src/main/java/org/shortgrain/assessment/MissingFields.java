package org.shortgrain.assessment;

import java.util.List;
import java.util.Optional;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Minimum;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.reader.MinimumSet;
import org.shortgrain.part.reader.Missing;
import org.shortgrain.review.Factor;
import org.shortgrain.review.Question;

/** Turns the fields of the minimum set that hold no answer into questions. */
final class MissingFields {

    private MissingFields() {
    }

    /**
     * Asks for every field of the minimum set that is absent or unknown.
     *
     * @param minimum     the fields of the minimum set
     * @param description the description
     * @param ledger      where the questions go
     */
    static void ask(MinimumSet minimum, PartDescription description, Ledger ledger) {
        List<Feature> features = description.features().candidates().stream().flatMap(List::stream).toList();
        for (Missing missing : minimum.of(description)) {
            if (missing.role() != Minimum.Role.REFUSED) {
                ledger.ask(question(missing, features));
            }
        }
    }

    private static Ledger.Asked question(Missing missing, List<Feature> features) {
        String[] keys = missing.at().path().substring(1).split("/");
        Optional<String> feature = keys[0].equals("features") && keys.length > 1
                ? Optional.of(name(features, Integer.parseInt(keys[1]))) : Optional.empty();
        String what = keys[keys.length - 1].replace('_', ' ');
        String where = feature.isPresent() || keys.length == 1 ? "" : " (" + keys[0].replace('_', ' ') + ")";
        String state = switch (missing.state()) {
            case ABSENT -> "is not in the description";
            case UNKNOWN -> "is stated as unknown";
            case NONE -> "is stated as none, which is no answer here";
        };
        Question.Role role = missing.role() == Minimum.Role.IDENTITY ? Question.Role.IDENTITY : Question.Role.JUDGING;
        return new Ledger.Asked(Optional.empty(), role, factor(keys, role), feature,
                "The entry \"" + what + "\"" + where + " " + state + ".", missing.meaning(), Optional.empty(), missing.at());
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
            case "environment" -> Factor.ENVIRONMENT;
            case "features" -> last.equals("drainage") ? Factor.ENVIRONMENT
                    : last.equals("stress_direction") ? Factor.MATERIAL : Factor.STRESS;
            default -> Factor.STRESS;
        };
    }
}
