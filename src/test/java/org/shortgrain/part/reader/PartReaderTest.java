package org.shortgrain.part.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.shortgrain.part.Axis;
import org.shortgrain.part.ClampUp;
import org.shortgrain.part.DirectionWord;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Fit;
import org.shortgrain.part.FitKind;
import org.shortgrain.part.Fluid;
import org.shortgrain.part.Load;
import org.shortgrain.part.LoadSource;
import org.shortgrain.part.Location;
import org.shortgrain.part.Material;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Product;
import org.shortgrain.part.Provenance;
import org.shortgrain.part.Range;
import org.shortgrain.part.ResidualStress;
import org.shortgrain.part.RouteStep;
import org.shortgrain.part.Stated;
import org.shortgrain.part.StressDirection;

class PartReaderTest {
    private static final PartDescription WHOLE = Read.description(Read.file(Read.WHOLE_FORM));

    private static Feature feature(int index) {
        return WHOLE.features().single().orElseThrow().get(index);
    }

    private static RouteStep step(int index) {
        return WHOLE.route().single().orElseThrow().get(index);
    }

    private static <R> Stated<R> material(String yaml, Function<Material, Stated<R>> field) {
        return Read.lines("material: {" + yaml + "}\n").material().field(field);
    }

    @Test
    void theFourStatesAreKeptApart() {
        assertEquals(Optional.of("7075"), material("alloy: 7075", m -> m.alloy()).single());
        assertTrue(material("clad: none", m -> m.clad()).isNone());
        assertInstanceOf(Stated.Unknown.class, material("temper: unknown", m -> m.temper()));
        assertInstanceOf(Stated.Absent.class, material("temper: T6", m -> m.alloy()));
    }

    @Test
    void aStateIsReadInAnyCaseAndInQuotes() {
        assertTrue(material("clad: \"None\"", m -> m.clad()).isNone());
        assertInstanceOf(Stated.Unknown.class, material("temper: UNKNOWN", m -> m.temper()));
    }

    @Test
    void aStateOfAGroupIsTheStateOfItsKeys() {
        assertInstanceOf(Stated.Unknown.class, Read.lines("form: unknown\n").form().field(form -> form.mass()));
        assertInstanceOf(Stated.Absent.class, Read.lines("").form().field(form -> form.mass()));
    }

    @Test
    void whatYamlTakesForANumberABooleanOrADateIsTextWhereTextIsMeant() {
        assertEquals(Optional.of("NO"), WHOLE.part().field(part -> part.revision()).single());
        assertEquals(Optional.of("3"), WHOLE.drawing().field(drawing -> drawing.revision()).single());
        assertEquals(Optional.of("12E5"), WHOLE.material().field(material -> material.heat()).single());
        assertEquals(Optional.of("007"), WHOLE.material().field(material -> material.lot()).single());
        assertEquals(Optional.of("2026-01-15"), WHOLE.review().field(review -> review.date()).single());
        assertEquals(Optional.of("1998-05"), WHOLE.service().field(service -> service.entered()).single());
        assertEquals(Optional.of(List.of("001", "1e5", "0042")), WHOLE.part().field(part -> part.serials()).single());
    }

    @Test
    void aQuantityKeepsItsTextAndIsInSi() {
        Range gap = feature(0).clampUp().single().orElseThrow().get(0).gap().single().orElseThrow();
        assertTrue(gap.min().isEmpty());
        assertEquals(0.25e-3, gap.highest());
        Range strength = WHOLE.material().field(material -> material.strength()).single().orElseThrow();
        assertEquals("510 MPa - 83 ksi", strength.entered());
        assertEquals(Provenance.Kind.TYPICAL, known(WHOLE.material().field(m -> m.strength())).provenance().kind());
        Range smallest = WHOLE.inspection().field(inspection -> inspection.detectable()).single().orElseThrow();
        assertEquals(0.001524, smallest.lowest());
        assertEquals(0.8, WHOLE.environment().field(e -> e.humidity()).single().orElseThrow().relative().orElseThrow()
                .lowest());
    }

    @Test
    void aScalarMayBeLongWithItsProvenance() {
        Provenance temper = known(WHOLE.material().field(material -> material.temper())).provenance();
        assertEquals(Provenance.Kind.INFERRED, temper.kind());
        assertEquals(Optional.of("from the age step"), temper.ref());
        Provenance conductivity = known(WHOLE.evidence().field(evidence -> evidence.conductivity())).provenance();
        assertEquals(Optional.of(Provenance.Scope.LOT), conductivity.scope());
    }

    @Test
    void noneMayCarryAProvenance() {
        Stated<List<ClampUp>> clampUp = feature(2).clampUp();
        Provenance provenance = assertInstanceOf(Stated.None.class, clampUp).provenance();
        assertEquals(Provenance.Kind.SPECIFIED, provenance.kind());
        assertEquals(Optional.of("assembly drawing note 3"), provenance.ref());
    }

    @Test
    void aGroupWithItsOwnValueAndKindIsNotTakenForALongScalar() {
        ResidualStress measured = feature(0).residualStress().single().orElseThrow();
        assertTrue(measured.kind().is(Provenance.Kind.MEASURED));
        assertEquals(60e6, measured.value().single().orElseThrow().middle());
        assertEquals(Optional.of("hole drilling"), measured.method().single());
        assertTrue(feature(1).residualStress().isNone());
        Fit fit = feature(1).fit().single().orElseThrow();
        assertTrue(fit.kind().is(FitKind.PRESS_BUSHING));
    }

    @Test
    void aListWhereOneValueIsExpectedMeansOneOfThese() {
        Stated<Product> product = WHOLE.form().field(form -> form.product());
        assertEquals(List.of(Product.DIE_FORGING, Product.PLATE), product.candidates());
        assertTrue(product.mayBe(Product.PLATE));
        assertFalse(product.is(Product.PLATE));
        assertEquals(2, feature(2).stressDirection().candidates().size());
    }

    @Test
    void oneValueWhereAListIsExpectedIsAListOfOne() {
        assertEquals(1, feature(0).clampUp().single().orElseThrow().size());
        assertEquals(Optional.of(List.of("bilge")), feature(0).zone().single());
        assertEquals(Optional.of(List.of("LUG-A")), step(8).at().single());
    }

    @Test
    void theMainKeyMayStandForItsGroup() {
        Fluid rain = WHOLE.environment().field(environment -> environment.fluids()).single().orElseThrow().get(0);
        assertEquals(Optional.of("rain"), rain.name().single());
        assertEquals(List.of(FitKind.ORDINARY, FitKind.TAPER_PIN), feature(2).fit().field(Fit::kind).candidates());
        assertEquals(Optional.of(2.1), feature(1).stressConcentration().field(c -> c.kt()).single());
    }

    @Test
    void referencesOfListItemsAreJoined() {
        Stated<List<String>> zone = WHOLE.environment().field(environment -> environment.zone());
        assertEquals(Optional.of(List.of("wheel_well", "exterior_lower")), zone.single());
        assertEquals(Optional.of("zone drawing"), known(zone).provenance().ref());
        assertEquals(Optional.of("sheet 2"), feature(0).origin().ref());
    }

    @Test
    void aDirectionIsAWordOrAnAxis() {
        assertTrue(feature(0).stressDirection().is(new StressDirection.Named(DirectionWord.ST)));
        StressDirection.Along along = assertInstanceOf(StressDirection.Along.class,
                feature(1).stressDirection().single().orElseThrow());
        Axis axis = along.axis();
        // unit length to within the rounding of three squares
        assertEquals(1, Math.sqrt(axis.x() * axis.x() + axis.y() * axis.y() + axis.z() * axis.z()), 1e-15);
        assertEquals(new Axis(0, 0.6, 0.8, "[0, 3, 4]"), WHOLE.grain().field(grain -> grain.st()).single().orElseThrow());
    }

    @Test
    void aShareIsANumberOrPerCentAndSpellingsOfBothShoresAreRead() {
        Load pressure = feature(0).loads().single().orElseThrow().get(1);
        assertTrue(pressure.source().is(LoadSource.PRESSURISATION));
        assertEquals(Optional.of(0.3), pressure.shareOfLife().single());
        assertEquals(Optional.of("anodize"), step(6).operation().single());
    }

    @Test
    void anOperationThatNoListKnowsIsKeptAsItStands() {
        assertEquals(Optional.of("frobnicate"), step(9).operation().single());
    }

    @Test
    void everyValueKnowsItsPlace() {
        assertEquals(new Location("/part/revision", 7, 13), WHOLE.part().field(part -> part.revision()).at());
        assertEquals(new Location("/route/3/op", 62, 10), step(3).op().at());
        assertEquals(new Location("/route", 58, 1), WHOLE.route().at(), "a list below its key is shown at its key");
        assertEquals(new Location("/features/1/drainage", 124, 15), feature(1).drainage().at());
        assertEquals(new Location("/features/1/place", 109, 5), feature(1).place().at(),
                "an absent key is shown where its group stands");
    }

    @Test
    void theBytesAreKeptAndNamedByTheirHash() throws Exception {
        byte[] bytes = "schema: 1\npart: {number: EX-1}\n".getBytes(StandardCharsets.UTF_8);
        Reading.Read read = assertInstanceOf(Reading.Read.class, new PartReader(new FewWords()).read("a.yaml", bytes));
        // sha256sum of the same 31 bytes
        assertEquals("19d0d6e985b0184b15660ca1de5e4a6ac9b6b0ba7ec301ffc0412c2d37ae65aa", read.source().sha256());
        assertEquals("a.yaml", read.source().name());
        assertEquals(new String(bytes, StandardCharsets.UTF_8), new String(read.source().bytes(), StandardCharsets.UTF_8));
    }

    @Test
    void thePathsOfTheFileAreListedInItsOrder() {
        Reading.Read read = assertInstanceOf(Reading.Read.class,
                Read.text("schema: 1\npart: {number: 1}\nenvironment: {fluids: [rain]}\n"));
        assertEquals(List.of("/part", "/part/number", "/environment", "/environment/fluids", "/environment/fluids/0",
                "/environment/fluids/0/name"), read.paths());
    }

    @Test
    void everyKeyOfTheFormStandsInTheTestFile() throws Exception {
        String text = Files.readString(Read.WHOLE_FORM);
        List<String> unused = new ArrayList<>();
        RecordForms.read().values().forEach(fields -> fields.keys().forEach(key -> {
            if (!text.matches("(?s).*\\b" + key + ":.*")) {
                unused.add(key);
            }
        }));
        assertEquals(List.of(), unused);
    }

    private static <T> Stated.Known<T> known(Stated<T> stated) {
        return (Stated.Known<T>) stated;
    }
}
