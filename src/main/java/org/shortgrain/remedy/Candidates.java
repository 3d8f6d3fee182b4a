package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.shortgrain.assessment.Trials;
import org.shortgrain.mechanics.water.DrainHole;
import org.shortgrain.part.Drainage;
import org.shortgrain.part.Environment;
import org.shortgrain.part.Feature;
import org.shortgrain.part.FeatureKind;
import org.shortgrain.part.Fit;
import org.shortgrain.part.FitKind;
import org.shortgrain.part.Form;
import org.shortgrain.part.Material;
import org.shortgrain.part.Opening;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Product;
import org.shortgrain.part.Range;
import org.shortgrain.part.RouteStep;
import org.shortgrain.part.reader.DescriptionValue;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.JsonPatch;
import org.shortgrain.reference.MaterialAnswer;
import org.shortgrain.reference.PhysicalData;
import org.shortgrain.reference.ReferenceTables;
import org.shortgrain.reference.RemedyCatalogue;
import org.shortgrain.reference.SccLevel;
import org.shortgrain.reference.SectionLimits;
import org.shortgrain.reference.Substitutions;
import org.shortgrain.review.RouteLine;
import org.shortgrain.terms.GrainDirection;

/**
 * The changes that may be tried on a part: every row of the catalogue whose precondition holds, at every place where it
 * applies. Nothing is proposed that the tables do not cover.
 */
final class Candidates {

    private static final Set<FitKind> PRESSED = EnumSet.of(FitKind.PRESS_BUSHING, FitKind.SHRINK_BUSHING,
            FitKind.EXPANDED_BUSHING, FitKind.PRESS_PIN, FitKind.INTERFERENCE_FASTENER);
    private static final Set<FeatureKind> BORES = EnumSet.of(FeatureKind.LUG_BORE, FeatureKind.BOLT_HOLE, FeatureKind.BORE,
            FeatureKind.THREADED_HOLE, FeatureKind.EAR);
    /** Temperature of the shop (degC), at which limits are measured. */
    private static final double SHOP = 20;
    /** Least thickness of a shim (m): common practice. */
    private static final String SHIMMED_ABOVE = "0.05 mm";
    private static final String FROM_QUENCH = "2 mm";
    private static final Set<String> CUTS = Set.of("finish_machine", "rough_machine", "machine");
    private static final double MICRO = 1e6;
    private static final double MILLI = 1e-3;

    private final Trials trials;
    private final Trials.Trial trial;
    private final PartDescription part;
    private final RemedyCatalogue catalogue;
    private final ReferenceTables tables;
    private final MaterialAnswer metal;
    private final List<Candidate> found = new ArrayList<>();

    private Candidates(Trials trials, Trials.Trial trial) {
        this.trials = trials;
        this.trial = trial;
        this.part = trial.description();
        this.tables = trials.tables();
        this.catalogue = tables.remedies();
        this.metal = trials.material(trial);
    }

    /**
     * {@return the changes to try, in the order of the catalogue}
     *
     * @param trials who reviews
     * @param trial  the part as it is
     */
    static List<Candidate> of(Trials trials, Trials.Trial trial) {
        Candidates candidates = new Candidates(trials, trial);
        candidates.metal();
        candidates.relievedStock();
        candidates.roughFirst();
        candidates.cardOrder();
        List<Feature> features = candidates.part.features().candidates().stream().flatMap(List::stream).toList();
        for (int i = 0; i < features.size(); i++) {
            candidates.at("/features/" + i, features.get(i));
        }
        candidates.wetInstallation(features);
        candidates.finish();
        return List.copyOf(candidates.found);
    }

    private void metal() {
        String alloy = metal.alloy().map(one -> one.name()).orElse("");
        String temper = metal.temper().normal();
        Optional<Product> product = part.form().field(Form::product).single();
        for (Substitutions.Substitution one : tables.substitutions().from(alloy)) {
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
        Optional<Resized> price = Resized.of(part, metal, to);
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
        if (price.get().ratio() > 1 && part.features().candidates().stream().flatMap(List::stream)
                .anyMatch(place -> place.clampUp().isKnown())) {
            notes.add("Strips that clamp-up bends are thickened with the section, since thicker is stiffer.");
        }
        found.add(new Candidate(catalogue.of("material"), one.toAlloy() + "-" + one.toTemper() + " instead of "
                + alloy + "-" + metal.temper().normal(), Optional.empty(), price, notes,
                now -> remade(now, one.toAlloy(), one.toTemper(), other, price.get())));
    }

    private JsonPatch remade(EditableDescription now, String alloy, String temper, boolean other, Resized price) {
        Edits edits = new Edits(now).set("/material/alloy", quoted(alloy)).set("/material/temper", quoted(temper));
        for (String stale : List.of("/evidence/conductivity", "/evidence/hardness", "/evidence/yield_strength",
                "/evidence/certificate", "/evidence/scc_test")) {
            edits.setIfThere(stale, "unknown");
        }
        if (other) {
            edits.setIfThere("/material/procurement_spec", "unknown");
        }
        List<RouteStep> route = steps();
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
        List<Feature> features = part.features().candidates().stream().flatMap(List::stream).toList();
        for (int i = 0; i < features.size(); i++) {
            var gaps = features.get(i).clampUp().candidates().stream().flatMap(List::stream).toList();
            for (int k = 0; k < gaps.size(); k++) {
                String place = "/features/" + i + "/clamp_up/" + k + "/thickness";
                gaps.get(k).thickness().single().ifPresent(range -> edits.setIfThere(place,
                        quoted(price.scaled(range.highest()))));
            }
        }
    }

    /** Rated in every direction that is pulled, and printed at the thickness of the stock. */
    private Optional<MaterialAnswer> covered(String alloy, String temper) {
        var query = metal.query();
        MaterialAnswer to = tables.materials().lookUp(new org.shortgrain.reference.MaterialQuery(Optional.of(alloy),
                Optional.empty(), Optional.of(temper), query.productForm(), query.thickness(), query.sectionArea(),
                query.widthToThickness(), query.minUts(), query.maxUts()));
        boolean rated = to.in(GrainDirection.ST).level().level() != SccLevel.UNKNOWN;
        boolean thin = query.thickness().isEmpty() || available(to).stream()
                .allMatch(limit -> query.thickness().getAsDouble() <= limit.thickness());
        return rated && thin ? Optional.of(to) : Optional.empty();
    }

    private List<SectionLimits.Limit> available(MaterialAnswer to) {
        return tables.sectionLimits().greatest(to);
    }

    private void relievedStock() {
        String temper = metal.temper().normal();
        boolean quenched = steps().stream().anyMatch(step -> step.operation().is("quench"));
        if (!temper.matches("T\\d{1,2}") || quenched || metal.alloy().isEmpty()) {
            return;
        }
        for (String named : tables.materials().namedTempers(metal.alloy().get())) {
            if (named.matches(temper + "5[124]\\d?")) {
                covered(metal.alloy().get().name(), named).ifPresent(to -> found.add(new Candidate(
                        catalogue.of("relieved_stock"), named + " stock instead of " + temper, Optional.empty(),
                        Optional.empty(), List.of(), now -> new Edits(now).set("/material/temper", quoted(named)).patch())));
            }
        }
    }

    /** The first rough cut after the quench goes before the solution treatment; a skin is left to finish afterwards. */
    private void roughFirst() {
        List<RouteStep> route = steps();
        int heat = first(route, "solution_heat_treat", "harden", "quench");
        int quench = first(route, "quench");
        int age = first(route, "age", "temper");
        List<Integer> after = IntStream.range(Math.max(quench, 0), route.size())
                .filter(i -> CUTS.contains(route.get(i).operation().single().orElse(""))).boxed().toList();
        if (heat < 0 || quench < 0 || after.isEmpty()) {
            return;
        }
        int cut = after.get(0);
        List<Feature> features = part.features().candidates().stream().flatMap(List::stream).toList();
        List<String> notes = new ArrayList<>();
        notes.add("An allowance of " + FROM_QUENCH + " a side is left for after the heat treatment, less than a fifth of the"
                + " rough section, so that the finished face stays in the compressed skin (residual.allowance < 0.2).");
        notes.add("The rough part may bow in the quench: straighten before ageing, or leave stock; the bow of the section"
                + " is in the calculations of the new review.");
        notes.add("Proposed card: rough machining moves from operation " + route.get(cut).op().single().orElse("" + (cut + 1))
                + " to before " + route.get(heat).op().single().orElse("" + (heat + 1)) + "; finish machining with "
                + FROM_QUENCH + " follows " + (age < 0 ? "the quench" : "ageing") + ".");
        found.add(new Candidate(catalogue.of("rough_first"), "rough machine before the heat treatment, finish "
                + FROM_QUENCH + " afterwards", Optional.empty(), Optional.empty(), notes, now -> {
                    Edits edits = new Edits(now);
                    edits.add("/route/" + heat, DescriptionValue.of("{op: \"" + route.get(heat).op().single().orElse("0")
                            + "A\", do: rough_machine, removes: \"" + removed(route.get(cut)) + "\"}"));
                    for (int at : after) {
                        edits.set("/route/" + (at + 1) + "/removes", FROM_QUENCH);
                    }
                    for (int i = 0; i < features.size(); i++) {
                        edits.set("/features/" + i + "/as_quenched_depth", FROM_QUENCH);
                        int place = i;
                        features.get(i).sectionFinished().single().ifPresent(range -> edits.set("/features/" + place
                                + "/section_as_quenched", String.format(Locale.ROOT, "%.3f mm",
                                        (range.highest() + 2 * 2 * MILLI) / MILLI)));
                    }
                    return edits.patch();
                }));
    }

    private static String removed(RouteStep cut) {
        return cut.removes().single().map(Range::entered).orElse("unknown");
    }

    private static int first(List<RouteStep> route, String... operations) {
        for (int i = 0; i < route.size(); i++) {
            if (Set.of(operations).contains(route.get(i).operation().single().orElse(""))) {
                return i;
            }
        }
        return -1;
    }

    private void cardOrder() {
        List<RouteLine> lines = trial.review().route();
        if (IntStream.range(0, lines.size()).allMatch(i -> lines.get(i).proposed() == i)) {
            return;
        }
        List<Integer> order = IntStream.range(0, lines.size()).boxed()
                .sorted(java.util.Comparator.comparingInt(i -> lines.get(i).proposed())).toList();
        String words = String.join(", ", order.stream().map(i -> lines.get(i).op() + " " + lines.get(i).operation()).toList());
        found.add(new Candidate(catalogue.of("card_order"), "the card in the order " + words, Optional.empty(),
                Optional.empty(), List.of(), now -> now.at("/route").filter(route -> route.items().size() == lines.size())
                        .map(route -> new Edits(now).set("/route", DescriptionValue.of("[" + String.join(", ",
                                order.stream().map(i -> route.items().get(i).json()).toList()) + "]")).patch())
                        .orElse(JsonPatch.NOTHING)));
    }

    private void at(String path, Feature feature) {
        String id = feature.id().single().orElse(path);
        feature.fit().single().filter(fit -> fit.kind().any(PRESSED::contains)).ifPresent(fit -> fit(path, id, fit));
        int gaps = feature.clampUp().candidates().stream().mapToInt(List::size).max().orElse(0);
        if (gaps > 0) {
            shim(path, id, gaps);
        }
        feature.drainage().single().ifPresent(drainage -> water(path + "/drainage", id, drainage,
                feature.what().any(BORES::contains)));
    }

    private void fit(String path, String id, Fit fit) {
        found.add(new Candidate(catalogue.of("clearance_fit"), "bush of " + id + " with clearance, held by a flange or bond",
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
        double warm = part.environment().field(Environment::temperature).single().map(Range::highest).orElse(SHOP);
        Optional<Double> own = metal.physical().expansion().map(PhysicalData.Value::value);
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
        found.add(new Candidate(catalogue.of("light_fit"), String.format(Locale.ROOT, "bush of %s %.3f to %.3f mm, so that"
                + " interference is %.0f um at most and none is left at %.0f degC", id, least / MILLI, most / MILLI,
                (most - hole.lowest()) * MICRO, warm), Optional.of(id), Optional.empty(),
                List.of("At the highest temperature the loosest pair just touches: friction may hold nothing there."),
                now -> new Edits(now).set(path + "/fit/bush", String.format(Locale.ROOT, "{min: %.4f mm, max: %.4f mm}",
                        least / MILLI, most / MILLI)).patch()));
    }

    private Optional<Double> expansion(String name) {
        int blank = name.indexOf(' ');
        String alloy = blank < 0 ? name : name.substring(0, blank);
        return tables.materials().lookUp(org.shortgrain.reference.MaterialQuery.ofAlloy(alloy)).physical().expansion()
                .map(PhysicalData.Value::value);
    }

    private void shim(String path, String id, int gaps) {
        found.add(new Candidate(catalogue.of("shim"), "gaps at " + id + " above " + SHIMMED_ABOVE + " shimmed before torque",
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

    /** A bore is no hollow to be drained by another hole: it is turned or filled. */
    private void water(String path, String id, Drainage drainage, boolean bore) {
        boolean cup = drainage.holdsWater().is(true) || drainage.opening().isOneOf(Opening.UP, Opening.SIDE, Opening.CLOSED);
        if (!cup) {
            return;
        }
        String least = String.format(Locale.ROOT, "%.3f mm", DrainHole.LEAST / MILLI);
        String wetted = "Water still comes where the zone is wet: draining shortens the wetness, it does not make the place dry.";
        if (!bore) {
            found.add(drained(path, id, least, wetted));
        }
        found.add(new Candidate(catalogue.of("turn"), id + " turned so that it opens down", Optional.of(id), Optional.empty(),
                List.of(wetted), now -> new Edits(now).removeIfThere(path + "/holds_water").set(path + "/opening", "down").patch()));
        found.add(new Candidate(catalogue.of("fill"), id + " filled with sealant bonded to a primed wall", Optional.of(id),
                Optional.empty(), List.of("Water behind a bond that fails is not seen: inspect it."),
                now -> new Edits(now).removeIfThere(path + "/holds_water").set(path + "/filled_with", "sealant")
                        .set(path + "/filling_bonded", "true").patch()));
    }

    private Candidate drained(String path, String id, String least, String wetted) {
        return new Candidate(catalogue.of("drain"), "drain hole of " + least + " at the lowest point of " + id
                + ", vented, with the way out going on", Optional.of(id), Optional.empty(), List.of(wetted,
                        "What stays behind the hole is in the calculations of the new review."),
                now -> new Edits(now).removeIfThere(path + "/holds_water").set(path + "/drain_holes", "[{diameter: " + least
                        + ", at_lowest_point: true, path_continues: true}]").set(path + "/vented", "true").patch());
    }

    private void wetInstallation(List<Feature> features) {
        found.add(new Candidate(catalogue.of("wet_installation"), "fasteners and bushes put in wet, faces and fillets sealed",
                Optional.empty(), Optional.empty(), List.of(), now -> {
                    Edits edits = new Edits(now).set("/sealant/fasteners_wet", "true");
                    for (String joint : List.of("faying", "fillet")) {
                        if (now.at("/sealant/" + joint).filter(one -> !List.of("none", "unknown").contains(one.text())).isEmpty()) {
                            edits.set("/sealant/" + joint, "\"sealed, compound to be named\"");
                        }
                    }
                    for (int i = 0; i < features.size(); i++) {
                        if (features.get(i).fit().field(Fit::kind).any(PRESSED::contains)) {
                            edits.set("/features/" + i + "/fit/installed_wet", "true");
                        }
                    }
                    return edits.patch();
                }));
    }

    private void finish() {
        found.add(new Candidate(catalogue.of("finish"), "primer and topcoat everywhere, no area left bare", Optional.empty(),
                Optional.empty(), List.of("A coating delays attack; it takes no factor away."), now -> {
                    Edits edits = new Edits(now).set("/surface/areas_bare", "none");
                    for (String coat : List.of("primer", "topcoat")) {
                        if (now.at("/surface/" + coat).filter(one -> !List.of("none", "unknown").contains(one.text())).isEmpty()) {
                            edits.set("/surface/" + coat, "\"" + coat + ", specification to be named\"");
                        }
                    }
                    List<Feature> features = part.features().candidates().stream().flatMap(List::stream).toList();
                    for (int i = 0; i < features.size(); i++) {
                        edits.setIfThere("/features/" + i + "/surface/bare", "false");
                    }
                    return edits.patch();
                }));
    }

    private List<RouteStep> steps() {
        return part.route().candidates().stream().flatMap(List::stream).toList();
    }

    private static String quoted(String text) {
        return '"' + text + '"';
    }
}
