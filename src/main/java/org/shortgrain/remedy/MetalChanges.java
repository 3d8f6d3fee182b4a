package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Form;
import org.shortgrain.part.Product;
import org.shortgrain.part.RouteStep;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.JsonPatch;
import org.shortgrain.reference.MaterialAnswer;
import org.shortgrain.reference.MaterialQuery;
import org.shortgrain.reference.SccLevel;
import org.shortgrain.reference.SectionLimits;
import org.shortgrain.reference.Substitutions;
import org.shortgrain.terms.GrainDirection;

/** Another temper or alloy that the tables rate and print at the thickness of the stock, with what it costs in section. */
final class MetalChanges {

    private static final double MILLI = 1e-3;

    private final Subject subject;
    private final List<Candidate> found = new ArrayList<>();

    private MetalChanges(Subject subject) {
        this.subject = subject;
    }

    static Proposals of(Subject subject) {
        MetalChanges changes = new MetalChanges(subject);
        changes.metal();
        changes.relievedStock();
        return Proposals.of(changes.found);
    }

    private void metal() {
        String alloy = subject.metal().alloy().map(one -> one.name()).orElse("");
        String temper = subject.metal().temper().normal();
        Optional<Product> product = subject.part().form().field(Form::product).single();
        for (Substitutions.Substitution one : subject.tables().substitutions().from(alloy)) {
            boolean fits = sameTemper(one.fromTemper(), temper) && product.map(Product::word).filter(one.toForm()::equals)
                    .isPresent();
            Optional<MaterialAnswer> to = fits ? covered(one.toAlloy(), one.toTemper()) : Optional.empty();
            to.ifPresent(answer -> metal(one, alloy, answer));
        }
    }

    /** A temper with other relief digits is the same metal: the substitution is from its base. */
    private static boolean sameTemper(String from, String stated) {
        return stated.equals(from) || stated.startsWith(from) && stated.substring(from.length()).matches("5\\d{1,2}");
    }

    private void metal(Substitutions.Substitution one, String alloy, MaterialAnswer to) {
        Optional<Resized> price = Resized.of(subject.part(), subject.metal(), to);
        if (price.isEmpty()) {
            return;
        }
        List<String> notes = new ArrayList<>();
        notes.add("Strength: " + price.get().governs() + ".");
        notes.addAll(price.get().lines());
        available(to).forEach(limit -> notes.add(String.format(Locale.ROOT, "Printed minima up to %.0f mm (%s).",
                limit.thickness() / MILLI, limit.row())));
        if (!one.remark().isEmpty()) {
            notes.add(one.remark());
        }
        boolean other = !one.toAlloy().equals(alloy);
        notes.add("Proof of the old temper is taken out: conductivity, hardness and certificate are to be had anew.");
        if (price.get().ratio() > 1 && subject.features().stream()
                .anyMatch(place -> place.clampUp().isKnown())) {
            notes.add("Strips that clamp-up bends are thickened with the section, since thicker is stiffer.");
        }
        found.add(new Candidate(subject.kind("material"), one.toAlloy() + "-" + one.toTemper() + " instead of "
                + alloy + "-" + subject.metal().temper().normal(), Optional.empty(), price, notes,
                now -> remade(now, one.toAlloy(), one.toTemper(), other, price.get())));
    }

    private JsonPatch remade(EditableDescription now, String alloy, String temper, boolean other, Resized price) {
        Edits edits = new Edits(now).set("/material/alloy", Subject.quoted(alloy)).set("/material/temper", Subject.quoted(temper));
        for (String stale : List.of("/evidence/conductivity", "/evidence/hardness", "/evidence/yield_strength",
                "/evidence/certificate", "/evidence/scc_test")) {
            edits.setIfThere(stale, "unknown");
        }
        if (other) {
            edits.setIfThere("/material/procurement_spec", "unknown");
        }
        List<RouteStep> route = subject.route();
        for (int i = 0; i < route.size(); i++) {
            String step = "/route/" + i;
            if (route.get(i).operation().is("age")) {
                edits.setIfThere(step + "/steps", "unknown");
            }
            if (route.get(i).operation().is("conductivity")) {
                edits.setIfThere(step + "/limit", "unknown");
            }
        }
        if (price.ratio() > 1) {
            thicken(edits, price);
        }
        return edits.patch();
    }

    private void thicken(Edits edits, Resized price) {
        List<Feature> features = subject.features();
        for (int i = 0; i < features.size(); i++) {
            var gaps = features.get(i).clampUp().candidates().stream().flatMap(List::stream).toList();
            for (int k = 0; k < gaps.size(); k++) {
                String place = "/features/" + i + "/clamp_up/" + k + "/thickness";
                gaps.get(k).thickness().single().ifPresent(range -> edits.setIfThere(place,
                        Subject.quoted(price.scaled(range.highest()))));
            }
        }
    }

    /** Rated in every direction that is pulled, and printed at the thickness of the stock. */
    private Optional<MaterialAnswer> covered(String alloy, String temper) {
        var query = subject.metal().query();
        MaterialAnswer to = subject.tables().materials().lookUp(new MaterialQuery(Optional.of(alloy),
                Optional.empty(), Optional.of(temper), query.productForm(), query.thickness(), query.sectionArea(),
                query.widthToThickness(), query.minUts(), query.maxUts()));
        boolean rated = to.in(GrainDirection.ST).level().level() != SccLevel.UNKNOWN;
        boolean thin = query.thickness().isEmpty() || available(to).stream()
                .allMatch(limit -> query.thickness().getAsDouble() <= limit.thickness());
        return rated && thin ? Optional.of(to) : Optional.empty();
    }

    private List<SectionLimits.Limit> available(MaterialAnswer to) {
        return subject.tables().sectionLimits().greatest(to);
    }

    private void relievedStock() {
        String temper = subject.metal().temper().normal();
        boolean quenched = subject.route().stream().anyMatch(step -> step.operation().is("quench"));
        if (!temper.matches("T\\d{1,2}") || quenched || subject.metal().alloy().isEmpty()) {
            return;
        }
        for (String named : subject.tables().materials().namedTempers(subject.metal().alloy().get())) {
            if (named.matches(temper + "5[124]\\d?")) {
                covered(subject.metal().alloy().get().name(), named).ifPresent(to -> found.add(new Candidate(
                        subject.kind("relieved_stock"), named + " stock instead of " + temper, Optional.empty(),
                        Optional.empty(), List.of(), now -> new Edits(now).set("/material/temper", Subject.quoted(named)).patch())));
            }
        }
    }
}
