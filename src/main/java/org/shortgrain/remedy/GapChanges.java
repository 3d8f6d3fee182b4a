package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shortgrain.part.Feature;

/** Gaps that are pulled shut, shimmed instead. */
final class GapChanges {

    /** Least thickness of a shim: common practice. */
    private static final String SHIMMED_ABOVE = "0.05 mm";

    private final Subject subject;
    private final List<Candidate> found = new ArrayList<>();

    private GapChanges(Subject subject) {
        this.subject = subject;
    }

    static Proposals of(Subject subject, String path, Feature feature) {
        GapChanges changes = new GapChanges(subject);
        int gaps = feature.clampUp().candidates().stream().mapToInt(List::size).max().orElse(0);
        if (gaps > 0) {
            changes.shim(path, Subject.id(path, feature), gaps);
        }
        return Proposals.of(changes.found);
    }

    private void shim(String path, String id, int gaps) {
        found.add(new Candidate(subject.kind("shim"), "gaps at " + id + " above " + SHIMMED_ABOVE + " shimmed before torque",
                Optional.of(id), Optional.empty(), List.of("Measure the gap with the joint closed by hand, before torque."),
                now -> {
                    Edits edits = new Edits(now);
                    for (int k = 0; k < gaps; k++) {
                        edits.set(path + "/clamp_up/" + k + "/shim", "liquid");
                        edits.set(path + "/clamp_up/" + k + "/max_gap_without_shim", SHIMMED_ABOVE);
                    }
                    return edits.patch();
                }));
    }
}
