package org.shortgrain.reference;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.shortgrain.mechanics.quench.FilmCoefficient;
import org.shortgrain.mechanics.quench.PropertyCurve;
import org.shortgrain.mechanics.quench.PublishedRelief;
import org.shortgrain.mechanics.quench.QuenchBaths;
import org.shortgrain.mechanics.quench.QuenchMaterial;
import org.shortgrain.mechanics.quench.RetainedShare;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/**
 * The tables that the quench computations need, read from {@code rules/data}: metals, baths and published relief.
 */
public final class QuenchTables {

    /** File names under {@code rules/data}. */
    private static final String MATERIALS = "quench-materials.csv";
    private static final String FILMS = "quench-films.csv";
    private static final String RELIEF = "stress-relief.csv";

    private static final double MPA = 1e6;
    private static final double KILOWATT = 1e3;
    private static final double MILLIMETRE = 1e-3;
    /** SI value of the units that the table of metals uses. */
    private static final Map<String, Double> UNITS = Map.of("", 1.0, "1", 1.0, "kg/m3", 1.0, "degC", 1.0, "W/mK", 1.0,
            "J/kgK", 1.0, "GPa", 1e9, "MPa", MPA, "1e-6/K", 1e-6);

    private final Map<String, QuenchMaterial> byAlloy = new LinkedHashMap<>();
    private final Map<String, QuenchMaterial> byFamily = new LinkedHashMap<>();
    private final Map<String, FilmCoefficient> films = new LinkedHashMap<>();
    private final QuenchBaths baths;
    private final PublishedRelief published;

    private QuenchTables(List<NamedCsvRecord> materials, List<NamedCsvRecord> filmRows, List<NamedCsvRecord> relief) {
        readMaterials(materials);
        Map<String, RetainedShare> shares = readShares(relief);
        this.published = published(shares, relief);
        this.baths = readBaths(filmRows, shares);
    }

    /**
     * {@return the tables that ship with the tool}
     *
     * @throws IllegalStateException if a table is missing or malformed
     */
    public static QuenchTables bundled() {
        try (InputStream materials = resource(MATERIALS); InputStream films = resource(FILMS);
                InputStream relief = resource(RELIEF)) {
            return read(materials, films, relief);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * {@return the tables in the given streams}
     *
     * @param materials metals, one property a row
     * @param films     film coefficients, one bath a row
     * @param relief    published shares left after relief, one treatment a row
     * @throws IllegalStateException if a table is malformed
     */
    public static QuenchTables read(InputStream materials, InputStream films, InputStream relief) {
        return new QuenchTables(rows(materials), rows(films), rows(relief));
    }

    /**
     * {@return the metal of an alloy, if a table stands for it}
     *
     * @param alloy alloy designation, such as {@code 7075}
     */
    public Optional<QuenchMaterial> material(String alloy) {
        return Optional.ofNullable(byAlloy.get(alloy));
    }

    /**
     * {@return the metal that stands in for an alloy of a family that has no table of its own}
     *
     * @param family family word, such as {@code aluminium_7xxx}
     */
    public Optional<QuenchMaterial> standInFor(String family) {
        return Optional.ofNullable(byFamily.get(family));
    }

    /** {@return the quench baths} */
    public QuenchBaths baths() {
        return baths;
    }

    /**
     * {@return the heating medium of an uphill quench}
     *
     * @param strong whether it is stronger than boiling water
     */
    public FilmCoefficient uphill(boolean strong) {
        return films.get(strong ? "uphill_strong" : "uphill_boiling_water");
    }

    /** {@return what published measurements found left after relief} */
    public PublishedRelief published() {
        return published;
    }

    private static InputStream resource(String name) {
        return Objects.requireNonNull(QuenchTables.class.getResourceAsStream("/rulebook/data/" + name),
                () -> "the table " + name + " is not on the class path");
    }

    private static List<NamedCsvRecord> rows(InputStream in) {
        return CsvReader.builder().ofNamedCsvRecord(in, StandardCharsets.UTF_8).stream().toList();
    }

    private void readMaterials(List<NamedCsvRecord> rows) {
        Map<String, Map<String, NamedCsvRecord>> metals = new LinkedHashMap<>();
        rows.forEach(row -> metals.computeIfAbsent(row.getField("material"), name -> new LinkedHashMap<>())
                .put(row.getField("property"), row));
        metals.forEach((name, properties) -> {
            QuenchMaterial metal = metal(name, properties);
            words(properties.get("alloys")).forEach(alloy -> byAlloy.put(alloy, metal));
            Optional.ofNullable(properties.get("stand_in_for"))
                    .ifPresent(row -> words(row).forEach(family -> byFamily.put(family, metal)));
        });
    }

    private static QuenchMaterial metal(String name, Map<String, NamedCsvRecord> properties) {
        return new QuenchMaterial(name, number(name, properties, "density"),
                number(name, properties, "poisson_ratio"), curve(name, properties, "conductivity"),
                curve(name, properties, "heat_capacity"), curve(name, properties, "youngs_modulus"),
                curve(name, properties, "expansion"), curve(name, properties, "w_yield"),
                curve(name, properties, "hardening"), curve(name, properties, "hardening_kept"),
                number(name, properties, "solution_temperature"), citation(properties.get("w_yield")));
    }

    private static List<String> words(NamedCsvRecord row) {
        return List.of(row.getField("values").split(" "));
    }

    private static NamedCsvRecord row(String metal, Map<String, NamedCsvRecord> properties, String property) {
        return Optional.ofNullable(properties.get(property)).orElseThrow(() -> new IllegalStateException(
                MATERIALS + ": metal " + metal + " has no row for " + property));
    }

    private static double number(String metal, Map<String, NamedCsvRecord> properties, String property) {
        NamedCsvRecord row = row(metal, properties, property);
        return Double.parseDouble(row.getField("values")) * unit(row);
    }

    private static PropertyCurve curve(String metal, Map<String, NamedCsvRecord> properties, String property) {
        NamedCsvRecord row = row(metal, properties, property);
        return points(row.getField("values")).times(unit(row));
    }

    private static double unit(NamedCsvRecord row) {
        return Optional.ofNullable(UNITS.get(row.getField("unit"))).orElseThrow(() -> new IllegalStateException(
                MATERIALS + ", line " + row.getStartingLineNumber() + ": unknown unit " + row.getField("unit")));
    }

    private static PropertyCurve points(String text) {
        double[][] pairs = Arrays.stream(text.split(" "))
                .map(point -> Arrays.stream(point.split(":")).mapToDouble(Double::parseDouble).toArray())
                .toArray(double[][]::new);
        return PropertyCurve.through(Arrays.stream(pairs).mapToDouble(p -> p[0]).toArray(),
                Arrays.stream(pairs).mapToDouble(p -> p[1]).toArray());
    }

    private QuenchBaths readBaths(List<NamedCsvRecord> rows, Map<String, RetainedShare> shares) {
        List<FilmCoefficient> water = new ArrayList<>();
        List<QuenchBaths.GlycolBath> glycol = new ArrayList<>();
        for (NamedCsvRecord row : rows) {
            FilmCoefficient film = film(row, shares);
            films.put(film.name(), film);
            switch (row.getField("medium")) {
                case "water" -> water.add(film);
                case "glycol" -> glycol.add(new QuenchBaths.GlycolBath(
                        Double.parseDouble(row.getField("concentration_percent")), film));
                case "uphill" -> { }
                default -> throw new IllegalStateException(FILMS + ", line " + row.getStartingLineNumber()
                        + ": unknown medium " + row.getField("medium"));
            }
        }
        return new QuenchBaths(water, glycol);
    }

    private static FilmCoefficient film(NamedCsvRecord row, Map<String, RetainedShare> shares) {
        String name = row.getField("film");
        RetainedShare share = share(shares, name);
        return new FilmCoefficient(name, Double.parseDouble(row.getField("bath_degC")),
                points(row.getField("film_coefficient_kW_m2K")).times(KILOWATT), share.high(), citation(row),
                share.source());
    }

    private static Map<String, RetainedShare> readShares(List<NamedCsvRecord> rows) {
        Map<String, RetainedShare> shares = new LinkedHashMap<>();
        rows.forEach(row -> shares.put(row.getField("key"), new RetainedShare(row.getField("treatment"),
                Double.parseDouble(row.getField("retained_low")), Double.parseDouble(row.getField("retained_high")),
                row.getField("at_least_MPa").isEmpty() ? 0 : Double.parseDouble(row.getField("at_least_MPa")) * MPA,
                citation(row))));
        return shares;
    }

    private static PublishedRelief published(Map<String, RetainedShare> shares, List<NamedCsvRecord> rows) {
        NamedCsvRecord reach = rows.stream().filter(row -> row.getField("key").equals("uphill_reach")).findFirst()
                .orElseThrow(() -> new IllegalStateException(RELIEF + " has no row for uphill_reach"));
        return new PublishedRelief(share(shares, "stretch"), share(shares, "compress_hand_forging"),
                share(shares, "compress_die_forging"), share(shares, "compress_light"),
                share(shares, "uphill_boiling_water"), share(shares, "uphill_strong"),
                new PublishedRelief.UphillReach(Double.parseDouble(reach.getField("reaches_mm")) * MILLIMETRE,
                        citation(reach)),
                share(shares, "ageing"), share(shares, "model"), share(shares, "upper_yield"));
    }

    private static RetainedShare share(Map<String, RetainedShare> shares, String key) {
        return Optional.ofNullable(shares.get(key))
                .orElseThrow(() -> new IllegalStateException(RELIEF + " has no row for " + key));
    }

    private static Citation citation(NamedCsvRecord row) {
        return new Citation(row.getField("source"), row.getField("clause"), SourceStatus.of(row.getField("status")));
    }
}
