package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shortgrain.terms.GrainDirection;

/**
 * Look-up of materials.
 *
 * <p>Policy: a row speaks for the alloy, temper, form, thickness, strength and direction that it names and for no
 * other. Where several sources speak, the more conservative governs and all are shown. Where a datum is missing, the
 * worst row that may apply counts and the answer names the datum; such an answer never clears. Where nothing is found,
 * the level is unknown and near materials are named. A row from memory can raise a concern but never clears alone.
 */
public final class MaterialTable {
    private static final double KSI = 6894757.293168361;
    /** A bar up to this width over thickness has no LT direction apart from ST (MIL-HDBK-5J Table 3.1.2.3.1(a), d). */
    private static final double SQUARE_BAR = 2.0;
    /** A drawing in MPa may round a strength level in ksi down by this share: 1240 MPa stands for 180 ksi. */
    private static final double ROUNDED_KSI = 1e-3;
    private static final int MOST_NEIGHBOURS = 6;

    private final Alloys alloys;
    private final ProductForms forms;
    private final Tempers tempers;
    private final ReliefDigits relief;
    private final RatingTable ratings;
    private final StressTable stresses;
    private final StrengthTable strengths;
    private final PhysicalTable physical;
    private final StatementTable statements;
    private final FractureTable fracture;

    private MaterialTable(Alloys alloys, ProductForms forms, Tempers tempers, ReliefDigits relief,
            RatingTable ratings, StressTable stresses, StrengthTable strengths, PhysicalTable physical,
            StatementTable statements, FractureTable fracture) {
        this.alloys = alloys;
        this.forms = forms;
        this.tempers = tempers;
        this.relief = relief;
        this.ratings = ratings;
        this.stresses = stresses;
        this.strengths = strengths;
        this.physical = physical;
        this.statements = statements;
        this.fracture = fracture;
    }

    static MaterialTable read(Csv csv, Alloys alloys, ProductForms forms, Scope.Reader scopes, Crosswalk crosswalk,
            Tempers tempers, ReliefDigits relief) {
        return new MaterialTable(alloys, forms, tempers, relief,
                RatingTable.read(csv, scopes, crosswalk), StressTable.read(csv, scopes, crosswalk),
                StrengthTable.read(csv, scopes), PhysicalTable.read(csv, scopes),
                StatementTable.read(csv, scopes), FractureTable.read(csv, scopes));
    }

    /** {@return the materials by name} */
    public Alloys alloys() {
        return alloys;
    }

    /** {@return the product forms} */
    public ProductForms forms() {
        return forms;
    }

    RatingTable ratings() {
        return ratings;
    }

    StressTable stresses() {
        return stresses;
    }

    StrengthTable strengths() {
        return strengths;
    }

    PhysicalTable physical() {
        return physical;
    }

    StatementTable statements() {
        return statements;
    }

    FractureTable fracture() {
        return fracture;
    }

    /**
     * {@return what the tables hold about a material}
     *
     * @param query what is known of it
     */
    public MaterialAnswer lookUp(MaterialQuery query) {
        Named named = name(query);
        if (named.alloy().isEmpty()) {
            return new FamilyLookUp(this, query, named).answer();
        }
        Alloy alloy = named.alloy().get();
        Question q = question(query, alloy, named, false);
        List<String> notes = new ArrayList<>(named.notes());
        noteReading(alloy, q, notes);
        Map<GrainDirection, DirectionAnswer> directions = directions(alloy, q);
        List<Neighbour> neighbours = directions.get(GrainDirection.ST).level().level() == SccLevel.UNKNOWN
                ? Neighbours.of(this, alloy, MOST_NEIGHBOURS) : List.of();
        return new MaterialAnswer(query, named.alloy(), named.alias(), Optional.of(alloy.family()), q.temper(),
                directions, physical.answer(alloy, q), statements.answer(alloy, q), fracture.toughness(alloy, q),
                fracture.growth(alloy, q), neighbours, notes);
    }

    /** Whether any rating, stress or strength names this temper of the alloy itself, not just any temper. */
    boolean namesTemper(Alloy alloy, Temper temper) {
        return scopes(alloy).stream().anyMatch(s -> !s.tempers().isAny() && s.tempers().match(temper) != Match.NO);
    }

    /**
     * {@return the tempers and conditions of an alloy that a rating or a strength names, in the order of the tables}
     *
     * @param alloy the alloy
     */
    public List<String> namedTempers(Alloy alloy) {
        return scopes(alloy).stream().flatMap(scope -> scope.tempers().names().stream()).distinct().toList();
    }

    private List<Scope> scopes(Alloy alloy) {
        List<Scope> scopes = new ArrayList<>();
        ratings.of(alloy).forEach(r -> scopes.add(r.scope()));
        stresses.of(alloy).forEach(r -> scopes.add(r.scope()));
        strengths.of(alloy).forEach(r -> scopes.add(r.scope()));
        return scopes;
    }

    Map<GrainDirection, DirectionAnswer> directions(Alloy alloy, Question q) {
        Map<GrainDirection, LevelAnswer> levels = ratings.answers(alloy, q);
        Map<GrainDirection, StrengthAnswer> minima = strengths.answers(alloy, strengthQuestion(alloy, q));
        List<StressTable.Found> found = stresses.find(alloy, q);
        Map<GrainDirection, DirectionAnswer> answers = new EnumMap<>(GrainDirection.class);
        for (GrainDirection direction : GrainDirection.values()) {
            LevelAnswer level = levels.get(direction);
            StrengthAnswer strength = minima.get(direction);
            answers.put(direction, new DirectionAnswer(direction, level,
                    stresses.answer(alloy, q, direction, found, level, strength), strength));
        }
        return answers;
    }

    /** The material that the query names, and the temper that may stand in the same field. */
    record Named(Optional<Alloy> alloy, Optional<String> alias, Optional<String> temper, List<String> notes) {
    }

    private Named name(MaterialQuery query) {
        String text = query.alloy().map(String::strip).orElse("");
        if (text.isEmpty() || text.equalsIgnoreCase("unknown")) {
            return new Named(Optional.empty(), Optional.empty(), query.temper(), List.of());
        }
        Optional<Alloy> alloy = alloys.find(text);
        if (alloy.isPresent()) {
            return new Named(alloy, alloy.get().name().equals(text) ? Optional.empty() : Optional.of(text),
                    query.temper(), List.of());
        }
        Optional<Alloys.WithTemper> split = Alloys.split(text);
        if (split.isPresent() && alloys.find(split.get().alloy()).isPresent()) {
            String behind = split.get().temper();
            boolean other = query.temper().isPresent() && !query.temper().get().equalsIgnoreCase(behind);
            List<String> notes = other
                    ? List.of("the alloy field carries temper " + behind + ", the temper field "
                            + query.temper().get() + "; the temper field is read")
                    : List.of();
            return new Named(alloys.find(split.get().alloy()), Optional.of(text),
                    query.temper().or(() -> Optional.of(behind)), notes);
        }
        return new Named(Optional.empty(), Optional.of(text), query.temper(), List.of());
    }

    Question question(MaterialQuery query, Alloy alloy, Named named, boolean alloyOpen) {
        Temper temper = tempers.read(named.temper(), Optional.of(alloy.family()));
        Optional<String> form = query.productForm().filter(forms.words()::contains);
        if (temper instanceof Temper.HeatTreated t && t.relief().isEmpty() && t.open() == Temper.OpenDigits.NONE
                && form.map(relief::digitsExpected).orElse(true) && tempers.takesRelief(t)) {
            temper = t.withReliefOpen();
        }
        OptionalDouble least = query.minUts();
        if (temper instanceof Temper.HardenedTo hardened && least.isEmpty()) {
            least = OptionalDouble.of(hardened.ksi() * KSI);
        }
        boolean mayBeBar = form.isEmpty() || form.get().startsWith("bar_");
        boolean transverseIsSt = mayBeBar && query.widthToThickness().orElse(SQUARE_BAR) <= SQUARE_BAR;
        return new Question(temper, form, forms, query.thickness(), query.sectionArea(), least, query.maxUts(),
                transverseIsSt, transverseIsSt && query.widthToThickness().isEmpty(), alloyOpen);
    }

    /** Steel described by strength alone reads the highest published strength level that its minimum reaches. */
    private Question strengthQuestion(Alloy alloy, Question q) {
        boolean byStrength = q.temper() instanceof Temper.NotStated
                || q.temper().normal().equals("quenched_and_tempered");
        if (!byStrength || q.minUts().isEmpty()) {
            return q;
        }
        int reached = 0;
        for (int ksi : strengths.strengthLevels(alloy)) {
            if (ksi * KSI <= q.minUts().getAsDouble() * (1 + ROUNDED_KSI)) {
                reached = ksi;
            }
        }
        return reached == 0 ? q : q.withTemper(new Temper.HardenedTo("", "HT-" + reached, reached));
    }

    private void noteReading(Alloy alloy, Question q, List<String> notes) {
        if (q.temper() instanceof Temper.HeatTreated t) {
            t.formerName().ifPresent(name -> notes.add(name + " is an old name of " + t.normal()));
            if (t.state() == Temper.State.UNLISTED) {
                notes.add(t.normal() + " is not in the list of tempers");
            }
        }
        if (q.temper() instanceof Temper.Unreadable u) {
            notes.add(u.reason());
        }
        q.form().flatMap(forms::remark).ifPresent(notes::add);
        if (q.transverseIsSt() && q.form().isPresent() && alloy.family().startsWith("aluminium")) {
            notes.add("bar up to twice as wide as thick, or of unknown width: LT is read as ST");
        }
    }
}
