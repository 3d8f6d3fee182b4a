package org.shortgrain.remedy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.assessment.PlaceStress;
import org.shortgrain.assessment.Reviewer;
import org.shortgrain.assessment.Trials;
import org.shortgrain.assessment.Wording;
import org.shortgrain.part.reader.EditableDescription;

/**
 * The strut fitting of the samples with numbers that hand calculations start from: 20 MPa of residual stress at either place at
 * most, an own threshold along ST, and the fit and the gap under test. 7075: 71.0 GPa, 0.33, 23.4e-6/K; 15-5PH: 196.5 GPa,
 * 0.27, 11.2e-6/K (physical.csv).
 *
 * @param trials who reviews
 * @param trial  the fitting as it is
 */
record Fitting(Trials trials, Trials.Trial trial) {

    static final int LUG = 0;
    static final int SEAT = 1;
    private static final Reviewer REVIEWER = new Reviewer(Knowledge.shipped(), Wording.shipped(), "test");
    private static final String BUSH = "      bush: {min: 16.028 mm, max: 16.046 mm}\n";
    private static final String GAP = "      - {gap: {max: 0.20 mm}, span: 70 mm, thickness: 12 mm, width: 40 mm, held: cantilever,"
            + " shim: none}\n";

    /** The fitting with a threshold (MPa), and lines of YAML in place of those of the bush and of the gap. */
    static Fitting of(double threshold, String bush, String gap) {
        String measured = "    residual_stress: {value: 10 MPa, kind: measured, method: \"hole drilling\", uncertainty: 10 MPa, ref:"
                + " \"test\"}\n";
        String text = sample().replace("  ref: \"drawing note 1\"\n", "  ref: \"drawing note 1\"\n  user_threshold: [{direction: ST,"
                + " stress: " + threshold + " MPa}]\n").replace("    restraint: held\n", "    restraint: held\n" + measured)
                .replace(BUSH, bush).replace(GAP, gap);
        Trials trials = new Trials(REVIEWER);
        return new Fitting(trials, trials.of(EditableDescription.of(text).orElseThrow()).orElseThrow());
    }

    static Fitting withBush(double threshold, String bush) {
        return of(threshold, bush, GAP);
    }

    static Fitting withGaps(double threshold, String gaps) {
        return of(threshold, BUSH, gaps);
    }

    private static String sample() {
        try {
            return Files.readString(Path.of("sample-reviews", "strut-end-fitting.yaml"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    Subject subject() {
        return new Subject(trials, trial, trials.material(trial));
    }

    Proposals fits() {
        return FitChanges.of(subject(), LUG, subject().features().get(LUG));
    }

    Proposals gaps() {
        return GapChanges.of(subject(), SEAT, subject().features().get(SEAT));
    }

    EditableDescription after(Candidate change) {
        return trial.part().with(change.write().apply(trial.part()));
    }

    PlaceStress stress(EditableDescription part, int place) {
        return trials.stressAt(part, place).orElseThrow();
    }

    /** Upper end of the utilisation along ST in a whole review of a description. */
    double reviewed(EditableDescription part, int place) {
        return trials.of(part).orElseThrow().review().features().get(place).directions().get(0).utilisation().orElseThrow().high();
    }
}
