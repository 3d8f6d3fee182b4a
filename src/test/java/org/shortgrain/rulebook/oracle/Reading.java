package org.shortgrain.rulebook.oracle;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.shortgrain.part.Environment;
import org.shortgrain.part.Feature;
import org.shortgrain.part.FeatureKind;
import org.shortgrain.part.Form;
import org.shortgrain.part.Material;
import org.shortgrain.part.Neighbour;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Product;
import org.shortgrain.part.Range;
import org.shortgrain.part.Sealant;
import org.shortgrain.part.Stated;
import org.shortgrain.part.Surface;

/** Questions that several rules of the oracle ask of a description, and the few table entries that its parts need. */
final class Reading {

    /** Wetness classes of the zones that generated parts live in, as the table of zones prints them. */
    private static final Map<String, Integer> WETNESS = Map.ofEntries(Map.entry("avionics_conditioned", 0),
            Map.entry("hangar_dry", 0), Map.entry("orbit_vacuum", 0), Map.entry("cabin_dry", 1), Map.entry("crown", 2),
            Map.entry("inland_temperate", 2), Map.entry("fuel_tank_ullage", 2), Map.entry("engine_bay_hot", 2),
            Map.entry("wing_external", 3), Map.entry("behind_lining", 3), Map.entry("exhaust_trail", 3),
            Map.entry("battery_bay", 3), Map.entry("wheel_well", 4), Map.entry("fuselage_bilge", 4),
            Map.entry("under_galley", 4), Map.entry("fuel_tank_bottom", 4), Map.entry("coastal_base", 4),
            Map.entry("airframe_interior", 4), Map.entry("deck_carrier", 5));
    private static final String STEEL = "4340";
    private static final Set<FeatureKind> HOLES = Set.of(FeatureKind.LUG_BORE, FeatureKind.BOLT_HOLE, FeatureKind.BORE,
            FeatureKind.THREADED_HOLE);

    private Reading() {
    }

    static String alloy(PartDescription part) {
        return part.material().field(Material::alloy).single().orElse("");
    }

    static String temper(PartDescription part) {
        return part.material().field(Material::temper).single().orElse("");
    }

    static boolean aluminium(PartDescription part) {
        return alloy(part).matches("[2-7]\\d{3}") && !alloy(part).equals(STEEL);
    }

    static boolean series(PartDescription part, String... series) {
        return aluminium(part) && List.of(series).contains(alloy(part).substring(0, 1));
    }

    static boolean titanium(PartDescription part) {
        return alloy(part).startsWith("Ti-");
    }

    /** Aluminium, and the only steel among the generated parts that rusts. */
    static boolean corrodesBare(PartDescription part) {
        return aluminium(part) || alloy(part).equals(STEEL);
    }

    static boolean product(PartDescription part, Product... products) {
        return part.form().field(Form::product).single().filter(List.of(products)::contains).isPresent();
    }

    /** Section at quench (mm); 0 if none is stated. */
    static double section(PartDescription part) {
        return part.form().field(Form::heatTreatThickness).single().map(range -> range.highest() * 1000).orElse(0.0);
    }

    static boolean hole(Feature feature) {
        return feature.what().single().filter(HOLES::contains).isPresent();
    }

    static boolean kind(Feature feature, FeatureKind kind) {
        return feature.what().single().filter(kind::equals).isPresent();
    }

    /** The zones of a place: its own, else those of the part. */
    static List<String> zones(PartDescription part, Feature feature) {
        return feature.zone().isKnown() ? feature.zone().single().orElseThrow() : zones(part);
    }

    static List<String> zones(PartDescription part) {
        return part.environment().field(Environment::zone).single().orElse(List.of());
    }

    /** Wetness class of the wettest zone; -1 if none is stated. */
    static int wetness(List<String> zones) {
        return zones.stream().mapToInt(WETNESS::get).max().orElse(-1);
    }

    static boolean maybeMoist(PartDescription part, Feature feature) {
        int wetness = wetness(zones(part, feature));
        return wetness < 0 || wetness >= 2;
    }

    static boolean moist(PartDescription part, Feature feature) {
        return wetness(zones(part, feature)) >= 2;
    }

    static boolean in(List<String> zones, String... wanted) {
        return zones.stream().anyMatch(List.of(wanted)::contains);
    }

    static boolean fluid(PartDescription part, String... fluids) {
        return part.environment().field(Environment::fluids).candidates().stream().flatMap(List::stream)
                .anyMatch(fluid -> fluid.name().single().filter(List.of(fluids)::contains).isPresent());
    }

    /** Highest temperature of service (degC); NaN if not stated. */
    static double hottest(PartDescription part) {
        return part.environment().field(Environment::temperature).single().map(Range::highest).orElse(Double.NaN);
    }

    static double coldest(PartDescription part) {
        return part.environment().field(Environment::temperature).single().map(Range::lowest).orElse(Double.NaN);
    }

    static <T> Stated<T> surface(PartDescription part, Feature feature, Function<Surface, Stated<T>> key) {
        Stated<T> here = feature.surface().field(key);
        return here instanceof Stated.Absent ? part.surface().field(key) : here;
    }

    /** Where what is stated of the surface at a place was stated. */
    static BiFunction<PartDescription, Feature, Stated<?>> made(Function<Surface, ? extends Stated<?>> key) {
        return (part, feature) -> {
            Stated<Object> here = feature.surface().field(surface -> widened(key.apply(surface)));
            return here instanceof Stated.Absent ? part.surface().field(surface -> widened(key.apply(surface))) : here;
        };
    }

    private static Stated<Object> widened(Stated<?> stated) {
        return stated.map(value -> (Object) value);
    }

    static <T> Stated<T> sealant(PartDescription part, Feature feature, Function<Sealant, Stated<T>> key) {
        Stated<T> here = feature.sealant().field(key);
        return here instanceof Stated.Absent ? part.sealant().field(key) : here;
    }

    static boolean says(Stated<String> text, String... words) {
        return text.single().map(String::toLowerCase)
                .filter(one -> List.of(words).stream().anyMatch(word -> one.contains(word.toLowerCase()))).isPresent();
    }

    /** Stated bare, or neither pretreated nor primed nor plated. */
    static boolean bare(PartDescription part, Feature feature) {
        boolean nothing = surface(part, feature, Surface::pretreatment).isNone()
                && surface(part, feature, Surface::primer).isNone()
                && surface(part, feature, Surface::plating).single().isEmpty();
        return nothing || surface(part, feature, Surface::bare).is(true);
    }

    static boolean unfinished(PartDescription part, Feature feature) {
        return surface(part, feature, Surface::pretreatment).isNone()
                && surface(part, feature, Surface::primer).isNone() && surface(part, feature, Surface::topcoat).isNone()
                && surface(part, feature, Surface::plating).single().isEmpty();
    }

    static List<Neighbour> neighbours(PartDescription part, Feature feature) {
        return java.util.stream.Stream.of(feature.neighbours(), part.neighbours())
                .flatMap(stated -> stated.candidates().stream()).flatMap(List::stream).toList();
    }
}
