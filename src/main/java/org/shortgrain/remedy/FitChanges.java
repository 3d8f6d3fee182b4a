package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.part.Environment;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Fit;
import org.shortgrain.part.FitKind;
import org.shortgrain.part.Range;
import org.shortgrain.reference.MaterialQuery;
import org.shortgrain.reference.PhysicalData;

/** Another fit of a bush or pin that is pressed in. */
final class FitChanges {

    private static final Set<FitKind> PRESSED = EnumSet.of(FitKind.PRESS_BUSHING, FitKind.SHRINK_BUSHING,
            FitKind.EXPANDED_BUSHING, FitKind.PRESS_PIN, FitKind.INTERFERENCE_FASTENER);
    /** Temperature of the shop (degC), at which limits are measured. */
    private static final double SHOP = 20;
    private static final double MICRO = 1e6;
    private static final double MILLI = 1e-3;

    private final Subject subject;
    private final List<Candidate> found = new ArrayList<>();

    private FitChanges(Subject subject) {
        this.subject = subject;
    }

    static Proposals of(Subject subject, String path, Feature feature) {
        FitChanges changes = new FitChanges(subject);
        feature.fit().single().filter(FitChanges::pressed).ifPresent(fit -> changes.fit(path, Subject.id(path, feature), fit));
        return Proposals.of(changes.found);
    }

    /** Whether interference holds it. */
    static boolean pressed(Fit fit) {
        return fit.kind().any(PRESSED::contains);
    }

    private void fit(String path, String id, Fit fit) {
        found.add(new Candidate(subject.kind("clearance_fit"), "bush of " + id + " with clearance, held by a flange or bond",
                Optional.of(id), Optional.empty(), List.of("Friction holds nothing then: show how the bush is kept."),
                now -> {
                    Edits edits = new Edits(now).set(path + "/fit/kind", "clearance");
                    for (String limit : List.of("hole", "bush", "interference")) {
                        edits.removeIfThere(path + "/fit/" + limit);
                    }
                    return edits.patch();
                }));
        Optional<Range> hole = fit.hole().single();
        Optional<Range> bush = fit.bush().single();
        if (hole.isPresent() && bush.isPresent()) {
            lightFit(path, id, fit, hole.get(), bush.get());
        }
    }

    /** The lightest fit that still touches at the highest temperature, with the tolerances as they are. */
    private void lightFit(String path, String id, Fit fit, Range hole, Range bush) {
        double warm = subject.part().environment().field(Environment::temperature).single().map(Range::highest).orElse(SHOP);
        Optional<Double> own = subject.metal().physical().expansion().map(PhysicalData.Value::value);
        Optional<Double> other = fit.bushMaterial().single().flatMap(this::expansion);
        if (own.isEmpty() || other.isEmpty()) {
            return;
        }
        double loosens = Math.max(0, (own.get() - other.get()) * hole.highest() * Math.max(0, warm - SHOP));
        double least = hole.highest() + loosens;
        double most = least + (bush.highest() - bush.lowest());
        if (most >= bush.highest()) {
            return;
        }
        found.add(new Candidate(subject.kind("light_fit"), String.format(Locale.ROOT, "bush of %s %.3f to %.3f mm, so that"
                + " interference is %.0f um at most and none is left at %.0f degC", id, least / MILLI, most / MILLI,
                (most - hole.lowest()) * MICRO, warm), Optional.of(id), Optional.empty(),
                List.of("At the highest temperature the loosest pair just touches: friction may hold nothing there."),
                now -> new Edits(now).set(path + "/fit/bush", String.format(Locale.ROOT, "{min: %.4f mm, max: %.4f mm}",
                        least / MILLI, most / MILLI)).patch()));
    }

    private Optional<Double> expansion(String name) {
        int blank = name.indexOf(' ');
        String alloy = blank < 0 ? name : name.substring(0, blank);
        return subject.tables().materials().lookUp(MaterialQuery.ofAlloy(alloy)).physical().expansion()
                .map(PhysicalData.Value::value);
    }
}
