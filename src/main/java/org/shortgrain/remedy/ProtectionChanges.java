package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shortgrain.part.Feature;

/** Joints put in wet and sealed, and a whole finish. */
final class ProtectionChanges {

    private final Subject subject;
    private final List<Candidate> found = new ArrayList<>();

    private ProtectionChanges(Subject subject) {
        this.subject = subject;
    }

    static Proposals of(Subject subject) {
        ProtectionChanges changes = new ProtectionChanges(subject);
        changes.wetInstallation(subject.features());
        changes.finish();
        return Proposals.of(changes.found);
    }

    private void wetInstallation(List<Feature> features) {
        found.add(new Candidate(subject.kind("wet_installation"), "fasteners and bushes put in wet, faces and fillets sealed",
                Optional.empty(), Optional.empty(), List.of(), now -> {
                    Edits edits = new Edits(now).set("/sealant/fasteners_wet", "true");
                    for (String joint : List.of("faying", "fillet")) {
                        if (now.at("/sealant/" + joint).filter(one -> !List.of("none", "unknown").contains(one.text())).isEmpty()) {
                            edits.set("/sealant/" + joint, "\"sealed, compound to be named\"");
                        }
                    }
                    for (int i = 0; i < features.size(); i++) {
                        if (features.get(i).fit().any(FitChanges::pressed)) {
                            edits.set("/features/" + i + "/fit/installed_wet", "true");
                        }
                    }
                    return edits.patch();
                }));
    }

    private void finish() {
        found.add(new Candidate(subject.kind("finish"), "primer and topcoat everywhere, no area left bare", Optional.empty(),
                Optional.empty(), List.of("A coating delays attack; it takes no factor away."), now -> {
                    Edits edits = new Edits(now).set("/surface/areas_bare", "none");
                    for (String coat : List.of("primer", "topcoat")) {
                        if (now.at("/surface/" + coat).filter(one -> !List.of("none", "unknown").contains(one.text())).isEmpty()) {
                            edits.set("/surface/" + coat, "\"" + coat + ", specification to be named\"");
                        }
                    }
                    List<Feature> features = subject.features();
                    for (int i = 0; i < features.size(); i++) {
                        edits.setIfThere("/features/" + i + "/surface/bare", "false");
                    }
                    return edits.patch();
                }));
    }
}
