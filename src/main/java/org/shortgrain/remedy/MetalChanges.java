package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Form;
import org.shortgrain.part.Product;
import org.shortgrain.part.ResidualStress;
import org.shortgrain.part.RouteStep;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.JsonPatch;
import org.shortgrain.reference.Alloy;
import org.shortgrain.reference.Substitutions;
import org.shortgrain.review.FactorState;

/**
 * Another temper or alloy that the tables rate and print at the thickness that it needs, with what it costs in section.
 * What the tables of substitutions offer and the other tables do not cover is told, with the reason.
 */
final class MetalChanges {

    private static final double MILLI = 1e-3;

    private final Subject subject;
    private final String alloy;
    private final String temper;
    private final List<Candidate> found = new ArrayList<>();
    private final List<String> missing = new ArrayList<>();

    private MetalChanges(Subject subject) {
        this.subject = subject;
        this.alloy = subject.metal().alloy().map(Alloy::name).orElse("");
        this.temper = subject.metal().temper().normal();
    }

    static Proposals of(Subject subject) {
        MetalChanges changes = new MetalChanges(subject);
        changes.metal();
        changes.relievedStock();
        changes.compressed();
        return new Proposals(changes.found, changes.missing);
    }

    private void metal() {
        Optional<String> product = subject.part().form().field(Form::product).single().map(Product::word);
        List<Substitutions.Substitution> listed = subject.tables().substitutions().from(alloy);
        List<Substitutions.Substitution> fitting = listed.stream().filter(one -> sameTemper(one.fromTemper(), temper)
                && product.filter(one.toForm()::equals).isPresent()).toList();
        for (Substitutions.Substitution one : fitting) {
            NewMetal.Answer answer = NewMetal.of(subject, one.toAlloy(), one.toTemper());
            if (answer instanceof NewMetal.Answer.Covered covered) {
                metal(one, covered);
            } else if (answer instanceof NewMetal.Answer.NotCovered not) {
                missing.add(one.toAlloy() + "-" + one.toTemper() + " " + one.toForm().replace('_', ' ') + " within the tables: "
                        + not.why() + ".");
            }
        }
        if (fitting.isEmpty() && susceptible()) {
            missing.add(noSubstitution(listed, product));
        }
    }

    /** Whether the metal is a factor at some place, so that another one is sought at all. */
    private boolean susceptible() {
        return subject.trial().review().features().stream().anyMatch(place -> place.material().state() == FactorState.PRESENT);
    }

    private String noSubstitution(List<Substitutions.Substitution> listed, Optional<String> product) {
        String metal = (alloy.isEmpty() ? "this metal" : alloy + (temper.isEmpty() ? "" : "-" + temper))
                + product.map(form -> " " + form.replace('_', ' ')).orElse("");
        return "Another metal: the table of substitutions has none from " + metal + listed.stream()
                .min(Comparator.comparing((Substitutions.Substitution one) -> !product.filter(one.fromForm()::equals).isPresent())
                        .thenComparing(one -> !one.fromTemper().equals(temper))
                        .thenComparing(one -> !sameTemper(one.fromTemper(), temper)))
                .map(one -> "; the nearest that it has is from " + one.fromAlloy() + "-" + one.fromTemper() + " "
                        + one.fromForm().replace('_', ' ') + " to " + one.toAlloy() + "-" + one.toTemper()).orElse("") + ".";
    }

    /** A temper with other relief digits is the same metal: the substitution is from its base. */
    private static boolean sameTemper(String from, String stated) {
        return stated.equals(from) || stated.startsWith(from) && stated.substring(from.length()).matches("5\\d{1,2}");
    }

    private void metal(Substitutions.Substitution one, NewMetal.Answer.Covered to) {
        List<String> notes = new ArrayList<>();
        notes.add("Strength: " + to.price().governs() + ".");
        notes.addAll(to.price().lines());
        notes.addAll(to.section().notes());
        Optional<Compression> compression = Compression.of(subject, one.toTemper());
        compression.map(Compression::note).ifPresent(notes::add);
        notes.addAll(EdgeDistances.notes(subject.part(), to.section().ratio()));
        subject.tables().sectionLimits().greatest(to.metal()).forEach(limit -> notes.add(String.format(Locale.ROOT,
                "Printed minima up to %.0f mm (%s).", limit.thickness() / MILLI, limit.row())));
        if (!one.remark().isEmpty()) {
            notes.add(sentence(one.remark()));
        }
        boolean other = !one.toAlloy().equals(alloy);
        notes.add("Proof of the old temper is taken out: conductivity, hardness and certificate are to be had anew.");
        if (measured()) {
            notes.add("The residual stress that was measured is taken out: it was that of the old metal and section.");
        }
        found.add(new Candidate(subject.kind("material"), one.toAlloy() + "-" + one.toTemper() + " instead of "
                + alloy + "-" + temper, Optional.empty(), Optional.of(to.price()), notes,
                now -> remade(now, one.toAlloy(), one.toTemper(), other, to)));
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + (words.endsWith(".") ? "" : ".");
    }

    private boolean measured() {
        return subject.features().stream().anyMatch(place -> place.residualStress().field(ResidualStress::value).isKnown());
    }

    private JsonPatch remade(EditableDescription now, String toAlloy, String toTemper, boolean other, NewMetal.Answer.Covered to) {
        Edits edits = new Edits(now).set("/material/alloy", Subject.quoted(toAlloy)).set("/material/temper", Subject.quoted(toTemper));
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
        Compression.of(subject, toTemper).ifPresent(compression -> compression.write(edits));
        List<Feature> features = subject.features();
        for (int i = 0; i < features.size(); i++) {
            if (features.get(i).residualStress().field(ResidualStress::value).isKnown()) {
                edits.set("/features/" + i + "/residual_stress", "unknown");
            }
        }
        to.section().write(edits);
        subject.part().form().field(Form::mass).single().filter(mass -> to.price().mass() != 1).ifPresent(mass -> edits.setIfThere(
                "/form/mass", String.format(Locale.ROOT, "{value: \"%.3f kg\", kind: assumed}", mass.highest() * to.price().mass())));
        return edits.patch();
    }

    private void relievedStock() {
        boolean quenched = subject.route().stream().anyMatch(step -> step.operation().is("quench"));
        if (!temper.matches("T\\d{1,2}") || quenched || subject.metal().alloy().isEmpty()) {
            return;
        }
        for (String named : subject.tables().materials().namedTempers(subject.metal().alloy().get())) {
            if (named.matches(temper + "5[124]\\d?")
                    && NewMetal.of(subject, alloy, named) instanceof NewMetal.Answer.Covered to) {
                found.add(new Candidate(subject.kind("relieved_stock"), named + " stock instead of " + temper, Optional.empty(),
                        Optional.of(to.price()), to.section().notes(), now -> {
                            Edits edits = new Edits(now).set("/material/temper", Subject.quoted(named));
                            to.section().write(edits);
                            return edits.patch();
                        }));
            }
        }
    }

    /** A forging that the card quenches and does not relieve: the same alloy and temper, compressed cold. */
    private void compressed() {
        if (!temper.matches("T\\d{1,2}") || subject.metal().alloy().isEmpty()) {
            return;
        }
        for (String named : subject.tables().materials().namedTempers(subject.metal().alloy().get())) {
            Optional<Compression> compression = named.startsWith(temper) && named.length() == temper.length() + 2
                    ? Compression.of(subject, named) : Optional.empty();
            compression.ifPresent(one -> compressed(named, one));
        }
    }

    private void compressed(String named, Compression compression) {
        NewMetal.Answer answer = NewMetal.of(subject, alloy, named);
        if (answer instanceof NewMetal.Answer.NotCovered not) {
            missing.add("Cold compression to " + alloy + "-" + named + " within the tables: " + not.why() + ".");
        } else if (answer instanceof NewMetal.Answer.Covered to) {
            List<String> notes = new ArrayList<>(List.of(compression.note(), "Strength: " + to.price().governs() + "."));
            notes.addAll(to.section().notes());
            found.add(new Candidate(subject.kind("compress"), "cold compression between quench and ageing, " + alloy + "-" + named
                    + " instead of " + alloy + "-" + temper, Optional.empty(), Optional.of(to.price()), notes, now -> {
                        Edits edits = new Edits(now).set("/material/temper", Subject.quoted(named))
                                .setIfThere("/evidence/certificate", "unknown");
                        compression.write(edits);
                        to.section().write(edits);
                        return edits.patch();
                    }));
        }
    }
}
