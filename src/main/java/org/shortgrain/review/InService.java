package org.shortgrain.review;

import java.util.List;
import java.util.stream.Stream;
import org.shortgrain.terms.Citation;

/**
 * What the review says of a part in service: cracks that were found, own tests, and when to look.
 *
 * @param cracks    cracks that were found, in the order of the description
 * @param schedules when to look at each place where a crack may grow
 * @param tests     own stress and time results
 */
public record InService(List<CrackFound> cracks, List<InspectionSchedule> schedules, List<OwnTests> tests) {

    /** Nothing of service. */
    public static final InService NONE = new InService(List.of(), List.of(), List.of());

    /** Copies the lists. */
    public InService {
        cracks = List.copyOf(cracks);
        schedules = List.copyOf(schedules);
        tests = List.copyOf(tests);
    }

    /** {@return the documents that the cracks cite} */
    public List<Citation> citations() {
        return cracks.stream().flatMap(crack -> Stream.concat(crack.alternatives().stream().map(CrackFound.Alternative::source),
                Stream.concat(crack.onPart().stream(), crack.onSisters().stream()).map(CrackFound.Check::source))).toList();
    }

    /** {@return whether there is nothing in it} */
    public boolean isEmpty() {
        return cracks.isEmpty() && schedules.isEmpty() && tests.isEmpty();
    }
}
