package org.shortgrain.assessment;

import java.util.List;
import org.shortgrain.rulebook.Applicability;
import org.shortgrain.rulebook.Outcome;
import org.shortgrain.rulebook.Rulebook;

/**
 * What the rules are asked about one part.
 *
 * @param facts         part, route and its steps, places, couples, remarks of the tables, and the order of operations
 * @param applicability which rules need to be asked of this part
 * @param features      names of the places, in the order of the description
 */
public record Matter(List<Object> facts, Applicability applicability, List<String> features) {

    /** Copies the lists. */
    public Matter {
        facts = List.copyOf(facts);
        features = List.copyOf(features);
    }

    /**
     * {@return what the rules say}
     *
     * @param rulebook the rules
     */
    public Outcome ask(Rulebook rulebook) {
        return rulebook.judge(facts, applicability, features);
    }
}
