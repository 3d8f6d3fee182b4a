package org.shortgrain.mechanics.machining;

import java.util.List;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.terms.Citation;

/**
 * All views of the stress in the blank that have to be considered, and what they rest on.
 *
 * @param lower    views at the favourable end of the published scatter
 * @param nominal  views of which the largest stress is the value
 * @param upper    views at the unfavourable end
 * @param validity whether the section and the quench lie where the views hold
 * @param basis    how the range was obtained
 * @param inputs   inputs beyond those of the case itself
 * @param sources  sources of the views
 * @param notes    what a reader should know of them
 */
record BlankViews(List<View> lower, List<View> nominal, List<View> upper,
        Computed.Validity validity, String basis, List<Computed.Input> inputs, List<Citation> sources,
        List<String> notes) {

    BlankViews {
        lower = List.copyOf(lower);
        nominal = List.copyOf(nominal);
        upper = List.copyOf(upper);
        inputs = List.copyOf(inputs);
        sources = List.copyOf(sources);
        notes = List.copyOf(notes);
    }
}
