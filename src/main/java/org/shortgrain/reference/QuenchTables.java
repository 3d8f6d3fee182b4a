package org.shortgrain.reference;

import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.shortgrain.mechanics.quench.FilmCoefficient;
import org.shortgrain.mechanics.quench.PublishedRelief;
import org.shortgrain.mechanics.quench.QuenchBaths;
import org.shortgrain.mechanics.quench.QuenchMaterial;

/** What the quench computations need: metals, baths and what publications found left after relief. */
public final class QuenchTables {

    private final Map<String, QuenchMaterial> byAlloy = new LinkedHashMap<>();
    private final Map<String, QuenchMaterial> byFamily = new LinkedHashMap<>();
    private final QuenchFilms films;
    private final PublishedRelief published;

    private QuenchTables(Csv csv) {
        for (QuenchMetals.Metal metal : QuenchMetals.read(csv)) {
            for (String alloy : metal.alloys()) {
                byAlloy.put(alloy, metal.material());
            }
            for (String family : metal.families()) {
                byFamily.put(family, metal.material());
            }
        }
        ReliefShares shares = ReliefShares.read(csv);
        this.films = QuenchFilms.read(csv, shares);
        this.published = shares.published();
    }

    static QuenchTables read(Csv csv) {
        return new QuenchTables(csv);
    }

    /**
     * {@return the tables that the tool ships with}
     *
     * @throws RulebookTableException if the tables have faults
     */
    public static QuenchTables bundled() {
        return load(name -> QuenchTables.class.getResourceAsStream("/rulebook/" + name));
    }

    /**
     * {@return the tables behind a door}
     *
     * @param door opens a file of the rulebook by its name below the rulebook, such as {@code data/quench-films.csv}; null
     *             where there is no such file
     * @throws RulebookTableException if the tables have faults
     */
    public static QuenchTables load(Function<String, InputStream> door) {
        Faults faults = new Faults();
        QuenchTables tables = new QuenchTables(new Csv(door, faults, Sources.read(door, faults)));
        faults.throwIfAny();
        return tables;
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
        return films.baths();
    }

    /**
     * {@return the heating medium of an uphill quench}
     *
     * @param strong whether it is stronger than boiling water
     */
    public FilmCoefficient uphill(boolean strong) {
        return films.uphill(strong);
    }

    /** {@return what published measurements found left after relief} */
    public PublishedRelief published() {
        return published;
    }
}
