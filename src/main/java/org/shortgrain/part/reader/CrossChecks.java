package org.shortgrain.part.reader;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Location;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.RouteStep;
import org.shortgrain.part.Stated;

/** What one key says about another: names of features, and the fields without which no report is made. */
final class CrossChecks {
    private final Problems problems;

    CrossChecks(Problems problems) {
        this.problems = problems;
    }

    void check(PartDescription description) {
        List<Feature> features = all(description.features());
        List<String> ids = featureIds(features);
        for (RouteStep step : all(description.route())) {
            all(step.at()).forEach(id -> named(id, ids, step.at().at()));
        }
        description.service().field(service -> service.cracks()).candidates().stream().flatMap(List::stream)
                .forEach(crack -> crack.feature().candidates().forEach(id -> named(id, ids, crack.feature().at())));
        all(description.testData()).forEach(
                data -> data.feature().candidates().forEach(id -> named(id, ids, data.feature().at())));
    }

    private static <T> List<T> all(Stated<List<T>> stated) {
        return stated.candidates().stream().flatMap(List::stream).toList();
    }

    private List<String> featureIds(List<Feature> features) {
        Map<String, Integer> lines = new HashMap<>();
        List<String> ids = new ArrayList<>();
        for (Feature feature : features) {
            feature.id().single().ifPresent(id -> {
                ids.add(id);
                Integer first = lines.putIfAbsent(id, feature.id().at().line());
                if (first != null) {
                    problems.add(ProblemCode.DUPLICATE_FEATURE, feature.id().at(), Values.shown(id), first);
                }
            });
        }
        return ids;
    }

    private void named(String id, List<String> ids, Location at) {
        if (!ids.isEmpty() && !ids.contains(id)) {
            problems.add(ProblemCode.UNKNOWN_FEATURE, at, Values.shown(id), QuantityText.list(ids),
                    Nearest.advice(id, ids, "Describe the feature, or name one that is"));
        }
    }
}
