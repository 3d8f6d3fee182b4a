package org.shortgrain.remedy;

import java.util.List;
import org.shortgrain.assessment.Trials;
import org.shortgrain.part.Feature;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.RouteStep;
import org.shortgrain.part.Stated;
import org.shortgrain.reference.MaterialAnswer;
import org.shortgrain.reference.ReferenceTables;
import org.shortgrain.reference.RemedyCatalogue;

/**
 * The part that changes are sought for.
 *
 * @param trials who reviews
 * @param trial  the part as it is, reviewed
 * @param metal  what the tables hold on its metal
 */
record Subject(Trials trials, Trials.Trial trial, MaterialAnswer metal) {

    PartDescription part() {
        return trial.description();
    }

    ReferenceTables tables() {
        return trials.tables();
    }

    RemedyCatalogue.Kind kind(String key) {
        return tables().remedies().of(key);
    }

    List<RouteStep> route() {
        return Stated.items(part().route());
    }

    List<Feature> features() {
        return Stated.items(part().features());
    }

    /** The name of a place; its path where it has none. */
    static String id(String path, Feature feature) {
        return feature.id().single().orElse(path);
    }

    /** Text as a YAML scalar that stays text. */
    static String quoted(String text) {
        return '"' + text + '"';
    }
}
