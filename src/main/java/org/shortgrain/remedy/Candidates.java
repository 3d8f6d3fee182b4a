package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.assessment.Trials;
import org.shortgrain.part.Feature;

/**
 * The changes that may be tried on a part: every row of the catalogue whose precondition holds, at every place where it
 * applies. Nothing is proposed that the tables do not cover.
 */
final class Candidates {

    private Candidates() {
    }

    /**
     * {@return the changes to try, and what was sought and does not exist, in the order of the catalogue}
     *
     * @param trials who reviews
     * @param trial  the part as it is
     */
    static Proposals of(Trials trials, Trials.Trial trial) {
        Subject subject = new Subject(trials, trial, trials.material(trial));
        List<Proposals> all = new ArrayList<>(List.of(MetalChanges.of(subject), RouteChanges.of(subject)));
        List<Feature> features = subject.features();
        for (int i = 0; i < features.size(); i++) {
            String path = "/features/" + i;
            all.add(FitChanges.of(subject, i, features.get(i)));
            all.add(GapChanges.of(subject, i, features.get(i)));
            all.add(WaterChanges.of(subject, path, features.get(i)));
        }
        all.add(ProtectionChanges.of(subject));
        return Proposals.all(all);
    }
}
