package org.shortgrain.mechanics.quench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * The baths of which the film coefficient is on file.
 *
 * @param water  water baths, by rising temperature
 * @param glycol polyalkylene-glycol baths, by rising concentration
 */
public record QuenchBaths(List<FilmCoefficient> water, List<GlycolBath> glycol) {

    /** Below this water is ice, degC. */
    private static final double FREEZING = 0;

    /** Copies and sorts the lists, and refuses an empty list of water baths. */
    public QuenchBaths {
        water = sorted(water, (a, b) -> Double.compare(a.bathTemperature(), b.bathTemperature()));
        glycol = sorted(glycol, (a, b) -> Double.compare(a.percent(), b.percent()));
        if (water.isEmpty()) {
            throw new IllegalArgumentException("no water bath");
        }
    }

    private static <T> List<T> sorted(List<T> baths, Comparator<T> order) {
        List<T> sorted = new ArrayList<>(baths);
        sorted.sort(order);
        return List.copyOf(sorted);
    }

    /**
     * A polymer bath.
     *
     * @param percent concentration, per cent by volume
     * @param film    its film coefficient
     */
    public record GlycolBath(double percent, FilmCoefficient film) {
    }

    /** {@return the coldest water bath on file, the quench that leaves the highest stress} */
    public FilmCoefficient coldWater() {
        return water.get(0);
    }

    /**
     * {@return water at a temperature, weighted linearly between the baths on file; for colder water the coldest bath}
     *
     * @param celsius bath temperature, degC; the answer is empty outside the range of liquid water and of the table
     */
    public Optional<FilmCoefficient> water(double celsius) {
        if (celsius < coldWater().bathTemperature()) {
            return celsius < FREEZING ? Optional.empty() : Optional.of(coldWater());
        }
        return between(water, FilmCoefficient::bathTemperature, f -> f, celsius,
                String.format(Locale.ROOT, "water%.0f", celsius));
    }

    /**
     * {@return polyalkylene glycol at a concentration, weighted linearly between the baths on file}
     *
     * @param percent concentration, per cent; the answer is empty outside the range of the table
     */
    public Optional<FilmCoefficient> glycol(double percent) {
        return between(glycol, GlycolBath::percent, GlycolBath::film, percent,
                String.format(Locale.ROOT, "pag%.0f", percent));
    }

    private static <T> Optional<FilmCoefficient> between(List<T> baths, ToDoubleFunction<T> key,
            Function<T, FilmCoefficient> film, double wanted, String name) {
        for (int i = 0; i < baths.size(); i++) {
            double here = key.applyAsDouble(baths.get(i));
            if (here == wanted) {
                return Optional.of(film.apply(baths.get(i)));
            }
            if (here > wanted) {
                if (i == 0) {
                    return Optional.empty();
                }
                double before = key.applyAsDouble(baths.get(i - 1));
                return Optional.of(film.apply(baths.get(i - 1)).towards(film.apply(baths.get(i)),
                        (wanted - before) / (here - before), name));
            }
        }
        return Optional.empty();
    }
}
