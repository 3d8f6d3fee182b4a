package org.shortgrain.part.reader;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shortgrain.part.Crack;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Location;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.RouteStep;
import org.shortgrain.part.Service;
import org.shortgrain.part.Stated;
import org.shortgrain.part.TestData;

/** What one key says about another: names of features, and the fields without which no report is made. */
final class CrossChecks {
    private final Problems problems;

    CrossChecks(Problems problems) {
        this.problems = problems;
    }

    void check(PartDescription description) {
        List<String> ids = featureIds(Stated.items(description.features()));
        for (RouteStep step : Stated.items(description.route())) {
            named(Stated.items(step.at()), ids, step.at().at());
        }
        for (Crack crack : Stated.items(description.service().field(Service::cracks))) {
            named(crack.feature().candidates(), ids, crack.feature().at());
        }
        for (TestData data : Stated.items(description.testData())) {
            named(data.feature().candidates(), ids, data.feature().at());
        }
    }

    private List<String> featureIds(List<Feature> features) {
        Map<String, Integer> lines = new HashMap<>();
        List<String> ids = new ArrayList<>();
        for (Feature feature : features) {
            Optional<String> id = feature.id().single();
            if (id.isPresent()) {
                ids.add(id.get());
                Integer first = lines.putIfAbsent(id.get(), feature.id().at().line());
                if (first != null) {
                    problems.add(ProblemCode.DUPLICATE_FEATURE, feature.id().at(), Values.shown(id.get()), first);
                }
            }
        }
        return ids;
    }

    private void named(List<String> named, List<String> ids, Location at) {
        for (String id : named) {
            if (!ids.isEmpty() && !ids.contains(id)) {
                problems.add(ProblemCode.UNKNOWN_FEATURE, at, Values.shown(id), QuantityText.list(ids),
                        Nearest.advice(id, ids, "Describe the feature, or name one that is"));
            }
        }
    }
}
