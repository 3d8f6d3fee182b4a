package org.shortgrain.reference;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Function;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import org.shortgrain.terms.OnDemand;

/**
 * All reference tables of a rulebook, loaded and checked.
 *
 * <p>Loading is strict: a source that is not listed, a status that is no status word, a number out of range, a row that
 * stands twice, thickness bands that overlap, all these are faults, reported together with file and line.
 */
public final class ReferenceTables {
    private static final String BUILT_IN = "/rulebook/";

    private final Faults faults;
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
    private final OnDemand<AnswerTable> answers;
    private final OnDemand<FindingOut> findingOut;
    private final ProtectionCredits protectionCredits;
    private final OnDemand<RemedyCatalogue> remedies;
    private final TemperRules temperRules;
    private final Ageing ageing;
    private final TemperEvidence temperEvidence;
    private final SectionLimits sectionLimits;
    private final OnDemand<Substitutions> substitutions;
    private final GalvanicMembers galvanicMembers;
    private final QuenchTables quench;
    private final InspectionTable inspection;
    private final OnDemand<CrackTable> cracks;
    private final OnDemand<ExposureTable> exposures;

    private ReferenceTables(Function<String, InputStream> door, Sources sources, Faults faults) {
        this.faults = faults;
        this.sources = sources;
        Csv csv = new Csv(door, faults, sources);
        this.crosswalk = Crosswalk.read(csv);
        this.tempers = Tempers.read(csv);
        this.relief = ReliefDigits.read(csv);
        Alloys alloys = Alloys.read(csv);
        ProductForms forms = ProductForms.read(csv);
        Scope.Reader scopes = new Scope.Reader(alloys, forms);
        this.materials = MaterialTable.read(csv, alloys, forms, scopes, crosswalk, tempers, relief);
        this.zones = ZoneTable.read(csv);
        this.fluids = FluidTable.read(csv, alloys);
        this.operations = OperationTable.read(csv);
        this.routeOrder = RouteOrder.read(csv, operations, alloys);
        this.galvanic = GalvanicTable.read(csv);
        this.standIns = StandIns.read(csv);
        this.answers = new OnDemand<>(() -> AnswerTable.read(csv));
        this.findingOut = new OnDemand<>(() -> FindingOut.read(csv));
        this.protectionCredits = ProtectionCredits.read(csv);
        this.remedies = new OnDemand<>(() -> RemedyCatalogue.read(csv));
        this.temperRules = TemperRules.read(csv, scopes, materials, relief);
        this.ageing = Ageing.read(csv, scopes, forms);
        this.temperEvidence = TemperEvidence.read(csv, scopes, forms);
        this.sectionLimits = SectionLimits.read(csv, scopes, forms);
        this.substitutions = new OnDemand<>(() -> Substitutions.read(csv, materials));
        this.galvanicMembers = GalvanicMembers.read(csv, galvanic, alloys);
        this.quench = QuenchTables.read(csv);
        this.inspection = InspectionTable.read(csv);
        this.cracks = new OnDemand<>(() -> CrackTable.read(csv));
        this.exposures = new OnDemand<>(() -> ExposureTable.read(csv, fluids, alloys));
    }

    /**
     * {@return the tables behind a door, all read and checked}
     *
     * @param door opens a file of the rulebook by its name below the rulebook, such as {@code data/ratings.csv}; null
     *             where there is no such file
     * @throws RulebookTableException if the tables have faults
     */
    public static ReferenceTables load(Function<String, InputStream> door) {
        Faults faults = new Faults();
        ReferenceTables tables = new ReferenceTables(door, Sources.read(door, faults), faults);
        tables.readAll();
        return tables;
    }

    /**
     * {@return the tables that the tool ships with}
     *
     * <p>They are checked when the tool is built. What only questions, remedies, cracks that were found and own tests need
     * is therefore read when it is first asked for.
     */
    public static ReferenceTables builtIn() {
        URL documents = ReferenceTables.class.getResource(BUILT_IN + Sources.FILE);
        Function<String, InputStream> door = filesBeside(documents);
        Faults faults = new Faults();
        ReferenceTables tables = new ReferenceTables(door, Sources.compiled(door, faults), faults);
        faults.throwIfAny();
        return tables;
    }

    /**
     * {@return the tables of an edited rulebook, all read and checked}
     *
     * @param rulebook directory of the rulebook, the one that holds {@code sources.yaml}
     * @throws RulebookTableException if the tables have faults
     */
    public static ReferenceTables from(Path rulebook) {
        return load(name -> open(rulebook.resolve(name)));
    }

    /**
     * Reads what nobody has asked for yet, and checks all.
     *
     * @throws RulebookTableException if the tables have faults
     */
    public void readAll() {
        answers.get();
        findingOut.get();
        remedies.get();
        substitutions.get();
        cracks.get();
        exposures.get();
        faults.throwIfAny();
    }

    private <T> T asked(OnDemand<T> table) {
        T read = table.get();
        faults.throwIfAny();
        return read;
    }

    /** Opens shipped files from where one of them was found, without a search through the class path for each. */
    private static Function<String, InputStream> filesBeside(URL found) {
        try {
            if (found.openConnection() instanceof JarURLConnection connection) {
                JarFile archive = connection.getJarFile();
                String folder = connection.getEntryName().substring(0, connection.getEntryName().lastIndexOf('/') + 1);
                return name -> inArchive(archive, folder + name);
            }
            return name -> beside(found, name);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + found, e);
        }
    }

    private static InputStream inArchive(JarFile archive, String name) {
        try {
            ZipEntry entry = archive.getEntry(name);
            return entry == null ? null : archive.getInputStream(entry);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name, e);
        }
    }

    private static InputStream beside(URL found, String name) {
        try {
            return new URL(found, name).openStream();
        } catch (FileNotFoundException e) {
            return null;
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name, e);
        }
    }

    static InputStream open(Path file) {
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
        return asked(answers);
    }

    /** {@return the kinds of change that clear a finding} */
    public RemedyCatalogue remedies() {
        return asked(remedies);
    }

    /** {@return how an open datum is found out} */
    public FindingOut findingOut() {
        return asked(findingOut);
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
        return asked(substitutions);
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
        return asked(cracks);
    }

    /** {@return which test exposures stand for which fluids} */
    public ExposureTable exposures() {
        return asked(exposures);
    }
}
