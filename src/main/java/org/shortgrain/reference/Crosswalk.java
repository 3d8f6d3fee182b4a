package org.shortgrain.reference;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.shortgrain.terms.Citation;

/** The rating schemes, their words with definitions, and the common scale that the words are mapped to. */
public final class Crosswalk {
    private static final double MPA = 1e6;
    private static final double PERCENT = 0.01;

    private final Map<String, Scheme> schemes = new LinkedHashMap<>();
    private final Map<String, Word> words = new LinkedHashMap<>();
    private final Map<SccLevel, Typical> typical = new LinkedHashMap<>();

    private Crosswalk() {
    }

    /**
     * A rating scheme.
     *
     * @param id     key
     * @param title  title
     * @param rates  what it rates
     * @param source source
     */
    public record Scheme(String id, String title, String rates, Citation source) {
    }

    /**
     * A word of a scheme.
     *
     * @param scheme         key of the scheme
     * @param word           the word
     * @param worst          lower end on the common scale
     * @param best           upper end on the common scale
     * @param worstDirection whether the scheme classes a material by its worst direction
     * @param shareOfYield   share of the minimum yield strength up to which no cracking is expected, if the scheme
     *                       names one
     * @param floor          stress below which that share does not fall (Pa), if the scheme names one
     * @param meaning        definition, restated
     * @param source         source
     */
    public record Word(String scheme, String word, SccLevel worst, SccLevel best, boolean worstDirection,
            OptionalDouble shareOfYield, OptionalDouble floor, String meaning, Citation source) {
    }

    /**
     * What materials of a level commonly show in the ST direction.
     *
     * @param low      lower end (Pa)
     * @param high     upper end (Pa)
     * @param families material families for which it was found
     * @param meaning  the level in words
     * @param source   source
     */
    public record Typical(double low, double high, Set<String> families, String meaning, Citation source) {

        /** Copies the set. */
        public Typical {
            families = Set.copyOf(families);
        }
    }

    static Crosswalk read(Csv csv) {
        Crosswalk crosswalk = new Crosswalk();
        for (Row row : csv.read("data/schemes.csv", "scheme", "title", "rates", "source", "clause", "status")) {
            String id = row.required("scheme");
            if (crosswalk.schemes.put(id, new Scheme(id, row.required("title"), row.required("rates"),
                    row.citation())) != null) {
                row.fault("scheme " + id + " stands twice");
            }
        }
        for (Row row : csv.read("data/crosswalk.csv", "scheme", "word", "level_worst", "level_best", "scope",
                "share_of_yield_percent", "floor_MPa", "meaning", "source", "clause", "status")) {
            crosswalk.addWord(row);
        }
        for (Row row : csv.read("data/levels.csv", "level", "meaning", "st_stress_low_MPa", "st_stress_high_MPa",
                "families", "source", "clause", "status")) {
            SccLevel level = SccLevel.of((int) row.requiredNumber("level", 1, 4, 1));
            Typical before = crosswalk.typical.put(level, new Typical(row.requiredNumber("st_stress_low_MPa", 1, 1000,
                    MPA), row.requiredNumber("st_stress_high_MPa", 1, 1000, MPA), row.set("families"),
                    row.required("meaning"), row.citation()));
            if (before != null) {
                row.fault("the level stands twice");
            }
        }
        return crosswalk;
    }

    private void addWord(Row row) {
        String scheme = row.oneOf("scheme", schemes.keySet());
        String word = row.required("word");
        SccLevel worst = SccLevel.of((int) row.requiredNumber("level_worst", 1, 4, 1));
        SccLevel best = SccLevel.of((int) row.requiredNumber("level_best", 1, 4, 1));
        if (worst.compareTo(best) > 0) {
            row.fault("level_worst lies above level_best");
        }
        boolean worstDirection = row.oneOf("scope", Set.of("direction", "worst_direction")).equals("worst_direction");
        Word entry = new Word(scheme, word, worst, best, worstDirection,
                row.number("share_of_yield_percent", 1, 100, PERCENT), row.number("floor_MPa", 1, 1000, MPA),
                row.required("meaning"), row.citation());
        if (words.put(key(scheme, word), entry) != null) {
            row.fault("the word stands twice");
        }
    }

    private static String key(String scheme, String word) {
        return scheme + '\n' + word;
    }

    /**
     * {@return a word of a scheme}
     *
     * @param scheme key of the scheme
     * @param word   the word
     */
    public Optional<Word> find(String scheme, String word) {
        return Optional.ofNullable(words.get(key(scheme, word)));
    }

    /**
     * {@return a scheme}
     *
     * @param id key
     */
    public Optional<Scheme> scheme(String id) {
        return Optional.ofNullable(schemes.get(id));
    }

    /** {@return all schemes} */
    public Set<String> schemes() {
        return Collections.unmodifiableSet(schemes.keySet());
    }

    /** {@return all words of all schemes} */
    public List<Word> words() {
        return List.copyOf(words.values());
    }

    /**
     * {@return what materials of a level commonly show}
     *
     * @param level level
     */
    public Optional<Typical> typical(SccLevel level) {
        return Optional.ofNullable(typical.get(level));
    }
}
