package org.shortgrain.rulebook.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.part.ClampUp;
import org.shortgrain.part.Concentration;
import org.shortgrain.part.Drainage;
import org.shortgrain.part.Fastener;
import org.shortgrain.part.Feature;
import org.shortgrain.part.FeatureKind;
import org.shortgrain.part.Fit;
import org.shortgrain.part.FitKind;
import org.shortgrain.part.Form;
import org.shortgrain.part.Load;
import org.shortgrain.part.LoadSource;
import org.shortgrain.part.Location;
import org.shortgrain.part.Neighbour;
import org.shortgrain.part.Provenance;
import org.shortgrain.part.Range;
import org.shortgrain.part.ResidualState;
import org.shortgrain.part.ResidualStress;
import org.shortgrain.part.Stated;
import org.shortgrain.part.Surface;
import org.shortgrain.review.FactorJudgement;
import org.shortgrain.review.FactorState;
import org.shortgrain.terms.GrainDirection;

/**
 * A place on the part, with what holds there: its own statements first, those of the part where it has none.
 *
 * @param part        the part
 * @param feature     what is stated of the place
 * @param id          its name
 * @param directions  grain directions in which lasting tension may act; all of them if none is stated
 * @param zone        zone of the place
 * @param material    the material factor here
 * @param stress      the stress factor here
 * @param environment the environment factor here
 * @param tensions    sustained tension by direction, the most utilised first
 * @param computed    what was computed here
 */
public record Place(Part part, Feature feature, String id, Set<GrainDirection> directions, Zone zone,
        FactorJudgement material, FactorJudgement stress, FactorJudgement environment, List<Tension> tensions,
        List<Computed> computed) {

    /** Of the four levels of resistance the first two are susceptible. */
    private static final int LAST_SUSCEPTIBLE_LEVEL = 2;
    private static final double MILLIMETRES = 1000;
    /** 0.080 in (mm). */
    private static final double THIN_WEB = 2.032;
    private static final double LETTER_C_SHARE = 0.25;
    /** 14.5 ksi (Pa). */
    private static final double LETTER_C_LEAST = 14.5 * 6.894757293168361e6;
    private static final Set<FitKind> INTERFERENCE = Set.of(FitKind.PRESS_BUSHING, FitKind.SHRINK_BUSHING,
            FitKind.EXPANDED_BUSHING, FitKind.PRESS_PIN, FitKind.TAPER_PIN, FitKind.INTERFERENCE_FASTENER);

    /** Copies the collections. */
    public Place {
        directions = Set.copyOf(directions);
        tensions = List.copyOf(tensions);
        computed = List.copyOf(computed);
    }

    /** {@return the material of the part} */
    public Metal metal() {
        return part.metal();
    }

    /** {@return the card} */
    public Route route() {
        return part.route();
    }

    /** {@return where the place stands in the description} */
    public Location at() {
        return feature.origin().at();
    }

    /**
     * {@return whether the place certainly is of one of some kinds}
     *
     * @param kinds the kinds
     */
    public boolean is(FeatureKind... kinds) {
        return feature.what().isOneOf(kinds);
    }

    /** {@return whether the place is a hole of any kind} */
    public boolean isHole() {
        return is(FeatureKind.LUG_BORE, FeatureKind.BOLT_HOLE, FeatureKind.BORE, FeatureKind.THREADED_HOLE);
    }

    /**
     * {@return whether lasting tension may act along a grain direction here}
     *
     * @param direction the direction
     */
    public boolean mayPull(GrainDirection direction) {
        return directions.contains(direction);
    }

    /** {@return whether lasting tension may act across the short grain here} */
    public boolean mayPullShort() {
        return mayPull(GrainDirection.ST);
    }

    /** {@return whether the material is susceptible in a direction that may be pulled here} */
    public boolean isSusceptible() {
        return material.state() == FactorState.PRESENT;
    }

    /** {@return whether the material is resistant in every direction that may be pulled here} */
    public boolean isResistant() {
        return material.state() == FactorState.ABSENT;
    }

    /** {@return whether the upper end of the governing tension reaches the threshold itself, without the factor} */
    public boolean reachesThreshold() {
        return governing().filter(Tension::reachesThreshold).isPresent();
    }

    /** {@return whether it is an aluminium alloy susceptible across the short grain and that may be pulled here; other
     * metals are rated alike in all directions} */
    public boolean isShortGrainAtRisk() {
        return isAtRisk(GrainDirection.ST);
    }

    /** {@return whether it is an aluminium alloy susceptible along the long transverse grain and that may be pulled here} */
    public boolean isLongTransverseAtRisk() {
        return isAtRisk(GrainDirection.LT);
    }

    private boolean isAtRisk(GrainDirection direction) {
        return metal().isAluminium() && mayPull(direction) && metal().isSusceptible(direction);
    }

    /** {@return whether the tension across the short grain exceeds the project's factor times the level of letter C: 25 %
     * of the least yield strength or 14.5 ksi, whichever is higher (MIL-HDBK-5J Table 3.1.2.3.1(a), secondary)} */
    public boolean isAboveLetterC() {
        double yield = metal().yield().getOrDefault(GrainDirection.ST, 0.0);
        double level = Math.max(LETTER_C_SHARE * yield, LETTER_C_LEAST);
        return tension(GrainDirection.ST).filter(one -> one.high() > one.factor() * level).isPresent();
    }

    /** {@return whether lasting tension reaches the limit here} */
    public boolean isStressed() {
        return stress.state() == FactorState.PRESENT;
    }

    /** {@return whether the place can be wet} */
    public boolean isWet() {
        return environment.state() == FactorState.PRESENT;
    }

    /**
     * {@return whether the three factors have some states}
     *
     * @param material    state of the material factor
     * @param stress      state of the stress factor
     * @param environment state of the environment factor
     */
    public boolean hasFactors(FactorState material, FactorState stress, FactorState environment) {
        return this.material.state() == material && this.stress.state() == stress
                && this.environment.state() == environment;
    }

    /** {@return how many of the three factors have a state}
     *
     * @param state the state
     */
    public long count(FactorState state) {
        long count = 0;
        for (FactorJudgement one : List.of(material, stress, environment)) {
            count += one.state() == state ? 1 : 0;
        }
        return count;
    }

    /** {@return whether the three factors taken together say enough: all three are there, or two are and the third is shown
     * not to be} */
    public boolean isJudgedByFactors() {
        long present = count(FactorState.PRESENT);
        return present == 3 || present == 2 && count(FactorState.ABSENT) == 1;
    }

    /** {@return whether no factor clears the place, and what leaves it open is not in the description but in the tables: a
     * good rating that nobody here has read, or a tension of which no threshold is published} */
    public boolean isLeftOpenByTables() {
        boolean open = count(FactorState.ABSENT) == 0 && count(FactorState.UNKNOWN) > 0;
        return open && (isGoodByMemoryOnly() || isWithoutThreshold());
    }

    /** {@return whether every rating along what may be pulled is one of the two good ones, and none of them counts} */
    public boolean isGoodByMemoryOnly() {
        return material.state() == FactorState.UNKNOWN && metal().covered()
                && directions.stream().allMatch(direction -> metal().levelIn(direction) > LAST_SUSCEPTIBLE_LEVEL);
    }

    /** {@return whether tension along the governing direction is known, and no threshold of it} */
    public boolean isWithoutThreshold() {
        return stress.state() == FactorState.UNKNOWN
                && governing().filter(one -> one.high() > 0 && one.threshold().isEmpty()).isPresent();
    }

    /** {@return the most utilised tension; empty if none was computed} */
    public Optional<Tension> governing() {
        return tensions.isEmpty() ? Optional.empty() : Optional.of(tensions.get(0));
    }

    /**
     * {@return a computed number}
     *
     * @param id its id, such as {@code fit.bore-hoop}
     */
    public Optional<Computed> computed(String id) {
        for (Computed one : computed) {
            if (one.id().equals(id)) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }

    /**
     * {@return the upper end of a computed stress (MPa); 0 if it was not computed}
     *
     * @param id its id
     */
    public double megapascal(String id) {
        return computed(id).map(one -> one.value().high() / 1e6).orElse(0.0);
    }

    /** {@return the fit} */
    public Stated<Fit> fit() {
        return feature.fit();
    }

    /**
     * {@return whether there certainly is a fit of one of some kinds}
     *
     * @param kinds the kinds
     */
    public boolean isFit(FitKind... kinds) {
        return fitKind().isOneOf(kinds);
    }

    /** {@return whether there certainly is an interference fit} */
    public boolean isPressed() {
        return fitKind().surely(INTERFERENCE::contains);
    }

    private Stated<FitKind> fitKind() {
        return fit().field(Fit::kind);
    }

    /** {@return whether the place is a detail that assembly loads: a hole, a thread, a shaft or a joined face} */
    public boolean isLoadedDetail() {
        return isHole() || is(FeatureKind.FAYING_SURFACE, FeatureKind.EXTERNAL_THREAD, FeatureKind.SHAFT);
    }

    /** {@return whether the place is cut locally, so that the metal beside it holds the stress: groove, pocket, fillet or
     * hole} */
    public boolean isLocalCut() {
        return isHole() || is(FeatureKind.GROOVE, FeatureKind.POCKET, FeatureKind.FILLET);
    }

    /** {@return whether lasting loads are stated and all of them are those of flight} */
    public boolean carriesFlightLoadsOnly() {
        for (Load load : loads()) {
            if (!load.source().is(LoadSource.ONE_G_FLIGHT)) {
                return false;
            }
        }
        return !loads().isEmpty();
    }

    /** {@return whether compression is stated at the surface here and no measurement stands behind it} */
    public boolean claimsCompression() {
        Stated<ResidualStress> residual = feature.residualStress();
        boolean measured = residual.field(ResidualStress::kind).is(Provenance.Kind.MEASURED)
                || residual.field(ResidualStress::method).isKnown();
        boolean compressed = residual.field(ResidualStress::state).is(ResidualState.COMPRESSIVE)
                || Range.greatest(residual.field(ResidualStress::value)).orElse(0) < 0;
        return compressed && !measured;
    }

    /** {@return the hole here and what sits in it} */
    public Bore bore() {
        return new Bore(this);
    }

    /** {@return how the surface here lies in the section that was quenched} */
    public Quenched quenched() {
        return new Quenched(this);
    }

    /** {@return whether lasting tension acts here, or nobody knows that it does not} */
    public boolean mayBeStressed() {
        return stress.state() != FactorState.ABSENT;
    }

    /** {@return the utilisation of the governing tension; NaN if there is none, which no comparison but {@code >=} holds for} */
    public double utilisation() {
        return tensions.isEmpty() ? Double.NaN : tensions.get(0).utilisation().orElse(Double.NaN);
    }

    /**
     * {@return the tension along a direction; empty if none was computed}
     *
     * @param direction the direction
     */
    public Optional<Tension> tension(GrainDirection direction) {
        for (Tension one : tensions) {
            if (one.direction() == direction) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }

    /**
     * {@return the upper end of a computed stress over the lowest limit along a direction that may be pulled, the greatest if
     * it was computed several times; NaN if there is none}
     *
     * @param ids ids of the computed stress, the one to be preferred first
     */
    public double shareOfLimit(String... ids) {
        OptionalDouble limit = OptionalDouble.empty();
        for (Tension one : tensions) {
            if (one.threshold().isPresent()) {
                limit = OptionalDouble.of(Math.min(limit.orElse(Double.POSITIVE_INFINITY),
                        one.threshold().getAsDouble() * one.factor()));
            }
        }
        return greatest(ids) / limit.orElse(Double.NaN);
    }

    private double greatest(String... ids) {
        for (String id : ids) {
            if (computed(id).isPresent()) {
                return greatest(id);
            }
        }
        return Double.NaN;
    }

    private double greatest(String id) {
        double greatest = Double.NEGATIVE_INFINITY;
        for (Computed one : computed) {
            greatest = one.id().equals(id) ? Math.max(greatest, one.value().high()) : greatest;
        }
        return greatest;
    }

    /** {@return whether the grain certainly runs out at the surface here} */
    public boolean isEndGrainExposed() {
        return Stated.items(part.endGrain()).contains(id);
    }

    /**
     * {@return whether a lasting load of one of some sources is stated here}
     *
     * @param sources the sources
     */
    public boolean hasLoad(LoadSource... sources) {
        List<LoadSource> wanted = List.of(sources);
        return loads().stream().anyMatch(load -> load.source().any(wanted::contains));
    }

    /** {@return gaps pulled shut here} */
    public List<ClampUp> clampUps() {
        return Stated.items(feature.clampUp());
    }

    /** {@return the greatest finished section here, or of the part (mm); NaN if not stated, which no comparison holds for} */
    public double finishedSection() {
        Stated<Range> own = feature.sectionFinished();
        Stated<Range> stated = own.isKnown() ? own : part.form().field(Form::finishedThickness);
        return Range.greatest(stated).orElse(Double.NaN) * MILLIMETRES;
    }

    /**
     * {@return whether a metal is stated to touch the part here: as a neighbour, a bush, a fastener, or as their coating}
     *
     * @param metal word that material or coating contains
     */
    public boolean touches(String metal) {
        boolean neighbour = neighbours().stream().anyMatch(one -> Wording.names(one.material(), metal)
                || Wording.names(one.coating(), metal));
        boolean fastener = fasteners().stream().anyMatch(one -> Wording.names(one.material(), metal)
                || Wording.names(one.plating(), metal));
        return neighbour || fastener || Wording.names(fit().field(Fit::bushMaterial), metal)
                || Wording.names(fit().field(Fit::bushCoating), metal);
    }

    /** {@return whether the loss of an important part starts here for certain: the place is critical, or the part is safety
     * critical or primary structure and nothing is said of the place} */
    public boolean isCritical() {
        Stated<Boolean> own = feature.critical();
        return own.isKnown() ? own.is(true) : part.isImportant();
    }

    /** {@return whether it is a web thinner than 0.080 in with no short grain run out, which MIL-STD-1568C 5.2.3.1.4 (read)
     * spares from peening} */
    public boolean isThinWeb() {
        return is(FeatureKind.WEB, FeatureKind.WALL) && finishedSection() < THIN_WEB && !isEndGrainExposed();
    }

    /** {@return the radius of the notch or fillet here (mm); NaN if not stated} */
    public double radius() {
        return Range.least(feature.stressConcentration().field(Concentration::radius)).orElse(Double.NaN) * MILLIMETRES;
    }

    /** {@return the gaps that assembly pulls shut here} */
    public Gaps gaps() {
        return new Gaps(clampUps(), fasteners());
    }

    /** {@return the fasteners through this place, for questions about all of them} */
    public Fastened fastened() {
        return new Fastened(fasteners());
    }

    /** {@return lasting loads here} */
    public List<Load> loads() {
        return Stated.items(feature.loads());
    }

    /** {@return whether short-lived loads are named here that the sum does not count} */
    public boolean hasShortLoads() {
        return loads().stream().anyMatch(load -> load.transientLoads().isKnown());
    }

    /** {@return fasteners here} */
    public List<Fastener> fasteners() {
        return Stated.items(feature.fasteners());
    }

    /** {@return drainage} */
    public Stated<Drainage> drainage() {
        return feature.drainage();
    }

    /** {@return the hollow at this place, as it stands to water} */
    public Cavity cavity() {
        return new Cavity(drainage());
    }

    /** {@return the water computed to stay here with its drain holes as they lie} */
    public Standing standing() {
        return new Standing(computed("water.standing-depth"), computed("water.standing-volume"));
    }

    /** {@return whether water is caught here for certain: an open cup in a zone that is moist, or not stated} */
    public boolean trapsWater() {
        return zone.mayBeMoist() && cavity().isCup() && !cavity().isStatedToStayEmpty();
    }

    /** {@return whether sealant or inhibitor is put on where a drain hole is, and nobody looks at the hole after it} */
    public boolean mayPlugDrain() {
        return cavity().isDrilled() && route().sealsOverDrain(id);
    }

    /** {@return the finish that holds here} */
    public Finish finish() {
        return Finish.of(feature.surface()).over(part.finish());
    }

    /** {@return the sealing that holds here} */
    public Sealing sealing() {
        return Sealing.of(feature.sealant()).over(part.sealing());
    }

    /** {@return what is joined on here} */
    public Joint joint() {
        return new Joint(this);
    }

    /**
     * {@return the place, if a statement that holds here was made of it; empty if it was made of the whole part}
     *
     * @param where where the statement stands in the description
     */
    public Optional<String> owner(Location where) {
        return where.path().startsWith(at().path() + "/") ? Optional.of(id) : Optional.empty();
    }

    /**
     * {@return the place, if a statement that holds here was made of it; empty if it was made of the whole part}
     *
     * @param stated the statement
     */
    public Optional<String> owner(Stated<?> stated) {
        return owner(stated.at());
    }

    /** {@return what kind of place it is, in words for texts} */
    public String word() {
        return feature.what().single().map(kind -> kind.word().replace('_', ' ')).orElse("place");
    }

    /** {@return neighbours of the place, and those of the part} */
    public List<Neighbour> neighbours() {
        List<Neighbour> all = new ArrayList<>(Stated.items(feature.neighbours()));
        all.addAll(Stated.items(part.description().neighbours()));
        return all;
    }

    /**
     * {@return what is stated of the surface: here first, then of the part}
     *
     * @param <T>   type of the value
     * @param field field of the surface
     */
    public <T> Stated<T> surface(java.util.function.Function<Surface, Stated<T>> field) {
        return feature.surface().field(field).orIfAbsent(part.surface().field(field));
    }

    /** {@return whether the surface is bare here for certain: stated so, or listed among the bare areas} */
    public boolean isBare() {
        boolean listed = Stated.items(part.surface().field(Surface::areasBare)).contains(id);
        Finish finish = finish();
        boolean nothing = finish.pretreatment().isNone() && finish.primer().isNone() && !finish.plating().isKnown();
        return surface(Surface::bare).is(true) || listed || nothing;
    }

    /** {@return whether the place certainly is cut on the card} */
    public boolean isMachined() {
        return route().ofKind("machining").stream().anyMatch(step -> step.features().contains(id));
    }

    /** {@return whether the place is shot peened for certain} */
    public boolean isPeened() {
        boolean own = !Stated.items(feature.surface().field(Surface::peened)).isEmpty();
        List<String> areas = part.peenedAreas();
        return own || areas.contains(id) || areas.contains("all") || route().hasAt(id, "shot_peen");
    }

    /** {@return depth of metal cut here after the last quench, as stated on the card (m); 0 if not stated} */
    public double cutDepth() {
        return route().cutAfterQuench(id).stream().flatMap(step -> step.stated().removes().candidates().stream())
                .mapToDouble(range -> range.highest()).sum();
    }
}
