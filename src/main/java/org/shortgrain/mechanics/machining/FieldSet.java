package org.shortgrain.mechanics.machining;

import java.util.List;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.terms.Citation;

/**
 * All views of the stress in the blank that have to be considered, and what they rest on.
 *
 * @param lower    views of which the smallest stress is the lower end of the range
 * @param nominal  views of which the largest stress is the value
 * @param upper    views of which the largest stress is the upper end
 * @param atLeast  stress that is always taken to remain, Pa; zero where there is none
 * @param validity whether the section and the quench lie where the views hold
 * @param basis    how the range was obtained
 * @param inputs   inputs beyond those of the case itself
 * @param sources  sources of the views
 * @param notes    what a reader should know of them
 */
record FieldSet(List<ResidualField> lower, List<ResidualField> nominal, List<ResidualField> upper, double atLeast,
        Computed.Validity validity, String basis, List<Computed.Input> inputs, List<Citation> sources,
        List<String> notes) {

    FieldSet {
        lower = List.copyOf(lower);
        nominal = List.copyOf(nominal);
        upper = List.copyOf(upper);
        inputs = List.copyOf(inputs);
        sources = List.copyOf(sources);
        notes = List.copyOf(notes);
    }
}
