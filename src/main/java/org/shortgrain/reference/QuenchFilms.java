package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shortgrain.mechanics.quench.FilmCoefficient;
import org.shortgrain.mechanics.quench.QuenchBaths;
import org.shortgrain.mechanics.quench.RetainedShare;

/**
 * The quench baths and the heating media of an uphill quench.
 *
 * @param baths  the quench baths
 * @param uphill heating media of an uphill quench, by their key
 */
record QuenchFilms(QuenchBaths baths, Map<String, FilmCoefficient> uphill) {

    private static final String FILE = "data/quench-films.csv";
    private static final Set<String> MEDIA = Set.of("water", "glycol", "uphill");
    private static final double KILOWATT = 1e3;

    static QuenchFilms read(Csv csv, ReliefShares shares) {
        List<FilmCoefficient> water = new ArrayList<>();
        List<QuenchBaths.GlycolBath> glycol = new ArrayList<>();
        Map<String, FilmCoefficient> uphill = new LinkedHashMap<>();
        for (Row row : csv.read(FILE, "film", "medium", "bath_degC", "concentration_percent",
                "film_coefficient_kW_m2K", "basis", "source", "clause", "status")) {
            FilmCoefficient film = film(row, shares);
            switch (row.oneOf("medium", MEDIA)) {
                case "water" -> water.add(film);
                case "glycol" -> glycol.add(new QuenchBaths.GlycolBath(
                        row.requiredNumber("concentration_percent", 0, 100, 1), film));
                default -> uphill.put(film.name(), film);
            }
        }
        if (water.isEmpty()) {
            csv.faults().add(FILE, "has no water bath, the cold one of which is the reference");
            water.add(ReliefShares.nothing());
        }
        for (String key : List.of(key(true), key(false))) {
            if (!uphill.containsKey(key)) {
                csv.faults().add(FILE, "has no row for " + key);
            }
        }
        return new QuenchFilms(new QuenchBaths(water, glycol), uphill);
    }

    FilmCoefficient uphill(boolean strong) {
        return uphill.get(key(strong));
    }

    private static String key(boolean strong) {
        return strong ? "uphill_strong" : "uphill_boiling_water";
    }

    private static FilmCoefficient film(Row row, ReliefShares shares) {
        RetainedShare share = shares.of(row.required("film"));
        row.required("basis");
        return new FilmCoefficient(row.text("film"), row.requiredNumber("bath_degC", -200, 300, 1),
                CurveField.read(row, "film_coefficient_kW_m2K", KILOWATT), Math.min(1, share.high()),
                row.citation(), share.source());
    }
}
