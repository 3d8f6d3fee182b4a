package org.shortgrain.rulebook.oracle;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import org.shortgrain.part.Feature;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Stated;

/**
 * What some rules owe, written a second time in plain Java: from the title, the reason and the statement of each rule,
 * straight on the part description, without the facts that the rulebook reads.
 */
final class Oracle {

    /** Stands for the whole part where a place could be named. */
    static final String WHOLE_PART = "part";

    private final Map<String, BiFunction<PartDescription, List<Feature>, Set<String>>> rules = new LinkedHashMap<>();

    Oracle() {
        DrainageOracle.addTo(this);
        SealingOracle.addTo(this);
        FinishOracle.addTo(this);
        ExposureOracle.addTo(this);
        MetalOracle.addTo(this);
        RouteOracle.addTo(this);
    }

    /** {@return ids of the rules that it knows} */
    Set<String> rules() {
        return rules.keySet();
    }

    /**
     * {@return where a rule owes a finding or a question: ids of features, or {@link #WHOLE_PART}; empty if nowhere}
     *
     * @param rule id of the rule
     * @param part the part
     */
    Set<String> owes(String rule, PartDescription part) {
        List<Feature> features = part.features().candidates().stream().flatMap(List::stream).toList();
        return rules.get(rule).apply(part, features);
    }

    /** A rule about the whole part. */
    void whole(String id, Predicate<PartDescription> owes) {
        rules.put(id, (part, features) -> owes.test(part) ? Set.of(WHOLE_PART) : Set.of());
    }

    /** A rule about each place. */
    void each(String id, BiPredicate<PartDescription, Feature> owes) {
        owned(id, owes, (part, feature) -> feature.id());
    }

    /** A rule about the places that is said of the whole part, once. */
    void any(String id, BiPredicate<PartDescription, Feature> owes) {
        rules.put(id, (part, features) -> features.stream().anyMatch(feature -> owes.test(part, feature))
                ? Set.of(WHOLE_PART) : Set.of());
    }

    /** A rule about each place that is said of the whole part where the statement that decides was made of it. */
    void owned(String id, BiPredicate<PartDescription, Feature> owes,
            BiFunction<PartDescription, Feature, Stated<?>> statement) {
        rules.put(id, (part, features) -> {
            Set<String> places = new TreeSet<>();
            features.stream().filter(feature -> owes.test(part, feature)).forEach(feature -> {
                String at = statement.apply(part, feature).at().path();
                boolean here = at.startsWith(feature.origin().at().path() + "/");
                places.add(here ? feature.id().single().orElseThrow() : WHOLE_PART);
            });
            return places;
        });
    }
}
