package org.shortgrain.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Function;

/**
 * All reference tables of a rulebook, loaded and checked.
 *
 * <p>Loading is strict: a source that is not listed, a status that is no status word, a number out of range, a row that
 * stands twice, thickness bands that overlap, all these are faults, reported together with file and line.
 */
public final class ReferenceTables {
    private static final String BUILT_IN = "/rulebook/";

    private final Sources sources;
    private final Crosswalk crosswalk;
    private final Tempers tempers;
    private final ReliefDigits relief;
    private final MaterialTable materials;
    private final ZoneTable zones;
    private final FluidTable fluids;
    private final OperationTable operations;
    private final RouteOrder routeOrder;
    private final GalvanicTable galvanic;
    private final StandIns standIns;
    private final AnswerTable answers;
    private final FindingOut findingOut;
    private final ProtectionCredits protectionCredits;
    private final RemedyCatalogue remedies;
    private final TemperRules temperRules;
    private final Ageing ageing;
    private final TemperEvidence temperEvidence;
    private final SectionLimits sectionLimits;
    private final Substitutions substitutions;
    private final GalvanicMembers galvanicMembers;
    private final QuenchTables quench;
    private final InspectionTable inspection;
    private final CrackTable cracks;
    private final ExposureTable exposures;

    private ReferenceTables(Function<String, InputStream> door, Faults faults) {
        Csv csv = new Csv(door, faults);
        this.sources = Sources.read(door, faults);
        this.crosswalk = Crosswalk.read(csv, sources);
        this.tempers = Tempers.read(csv, sources);
        this.relief = ReliefDigits.read(csv, sources);
        this.materials = MaterialTable.read(csv, sources, crosswalk, tempers, relief);
        this.zones = ZoneTable.read(csv, sources);
        this.fluids = FluidTable.read(csv, sources, materials.alloys());
        this.operations = OperationTable.read(csv);
        this.routeOrder = RouteOrder.read(csv, sources, operations, materials.alloys());
        this.galvanic = GalvanicTable.read(csv, sources);
        this.standIns = StandIns.read(csv, sources);
        this.answers = AnswerTable.read(csv, sources);
        this.findingOut = FindingOut.read(csv, sources);
        this.protectionCredits = ProtectionCredits.read(csv, sources);
        this.remedies = RemedyCatalogue.read(csv, sources);
        this.temperRules = TemperRules.read(csv, sources, materials, relief);
        this.ageing = Ageing.read(csv, sources, materials);
        this.temperEvidence = TemperEvidence.read(csv, sources, materials.alloys(), materials.forms());
        this.sectionLimits = SectionLimits.read(csv, sources, materials.alloys(), materials.forms());
        this.substitutions = Substitutions.read(csv, sources, materials);
        this.galvanicMembers = GalvanicMembers.read(csv, sources, galvanic, materials.alloys());
        this.quench = QuenchTables.read(csv, sources);
        this.inspection = InspectionTable.read(csv, sources);
        this.cracks = CrackTable.read(csv, sources);
        this.exposures = ExposureTable.read(csv, sources, fluids, materials.alloys());
    }

    /**
     * {@return the tables behind a door}
     *
     * @param door opens a file of the rulebook by its name below the rulebook, such as {@code data/ratings.csv}; null
     *             where there is no such file
     * @throws RulebookTableException if the tables have faults
     */
    public static ReferenceTables load(Function<String, InputStream> door) {
        Faults faults = new Faults();
        ReferenceTables tables = new ReferenceTables(door, faults);
        faults.throwIfAny();
        return tables;
    }

    /** {@return the tables that the tool ships with} */
    public static ReferenceTables builtIn() {
        return load(name -> ReferenceTables.class.getResourceAsStream(BUILT_IN + name));
    }

    /**
     * {@return the tables of an edited rulebook}
     *
     * @param rulebook directory of the rulebook, the one that holds {@code sources.yaml}
     * @throws RulebookTableException if the tables have faults
     */
    public static ReferenceTables from(Path rulebook) {
        return load(name -> open(rulebook.resolve(name)));
    }

    private static InputStream open(Path file) {
        try {
            return Files.isRegularFile(file) ? Files.newInputStream(file) : null;
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file, e);
        }
    }

    /** {@return the documents} */
    public Sources sources() {
        return sources;
    }

    /** {@return the rating schemes and their common scale} */
    public Crosswalk crosswalk() {
        return crosswalk;
    }

    /** {@return the temper designations} */
    public Tempers tempers() {
        return tempers;
    }

    /** {@return the digits of mechanical stress relief} */
    public ReliefDigits reliefDigits() {
        return relief;
    }

    /** {@return the materials} */
    public MaterialTable materials() {
        return materials;
    }

    /** {@return the zones} */
    public ZoneTable zones() {
        return zones;
    }

    /** {@return the fluids} */
    public FluidTable fluids() {
        return fluids;
    }

    /** {@return the operations of a planning card} */
    public OperationTable operations() {
        return operations;
    }

    /** {@return the order of operations} */
    public RouteOrder routeOrder() {
        return routeOrder;
    }

    /** {@return the galvanic series} */
    public GalvanicTable galvanic() {
        return galvanic;
    }

    /** {@return the numbers that stand in for what is not stated} */
    public StandIns standIns() {
        return standIns;
    }

    /** {@return what may be answered to a question} */
    public AnswerTable answers() {
        return answers;
    }

    /** {@return the kinds of change that clear a finding} */
    public RemedyCatalogue remedies() {
        return remedies;
    }

    /** {@return how an open datum is found out} */
    public FindingOut findingOut() {
        return findingOut;
    }

    /** {@return what measures of protection are credited with} */
    public ProtectionCredits protectionCredits() {
        return protectionCredits;
    }

    /** {@return what tempers go with: alloys and forms} */
    public TemperRules temperRules() {
        return temperRules;
    }

    /** {@return ageing of aluminium} */
    public Ageing ageing() {
        return ageing;
    }

    /** {@return proof of a temper by conductivity, hardness and yield strength} */
    public TemperEvidence temperEvidence() {
        return temperEvidence;
    }

    /** {@return how thick a material can be had or heat treated} */
    public SectionLimits sectionLimits() {
        return sectionLimits;
    }

    /** {@return changes of alloy or temper that the trade makes} */
    public Substitutions substitutions() {
        return substitutions;
    }

    /** {@return where metals, platings and composites stand in the anodic index} */
    public GalvanicMembers galvanicMembers() {
        return galvanicMembers;
    }

    /** {@return metals, baths and published relief for the quench computations} */
    public QuenchTables quench() {
        return quench;
    }

    /** {@return what inspection finds, and how intervals are set} */
    public InspectionTable inspection() {
        return inspection;
    }

    /** {@return what may have made a crack, and what to look at next} */
    public CrackTable cracks() {
        return cracks;
    }

    /** {@return which test exposures stand for which fluids} */
    public ExposureTable exposures() {
        return exposures;
    }
}
