package org.shortgrain.assessment;

import java.util.Locale;
import java.util.Optional;
import org.shortgrain.mechanics.quench.FilmCoefficient;
import org.shortgrain.mechanics.quench.QuenchBaths;
import org.shortgrain.part.Range;
import org.shortgrain.part.RouteStep;

/**
 * The bath of a quench on the card, as far as the tables hold it.
 *
 * @param film        its film coefficient; empty where the medium is not stated or not in the tables
 * @param takenAsCold whether it is water of unknown temperature, which counts as cold
 */
public record CardQuench(Optional<FilmCoefficient> film, boolean takenAsCold) {

    private static final double PERCENT = 100;

    /**
     * {@return the bath of an operation}
     *
     * @param baths the baths on file
     * @param card  the operation that quenches
     */
    public static CardQuench of(QuenchBaths baths, RouteStep card) {
        String medium = card.medium().single().orElse("").toLowerCase(Locale.ROOT);
        if (medium.contains("water")) {
            Optional<Range> bath = card.temperature().single();
            return bath.map(range -> new CardQuench(baths.water(range.lowest()), false))
                    .orElseGet(() -> new CardQuench(Optional.of(baths.coldWater()), true));
        }
        if (medium.contains("glycol") || medium.contains("polymer") || medium.contains("pag")) {
            return new CardQuench(card.concentration().single().flatMap(share -> baths.glycol(share.lowest() * PERCENT)), false);
        }
        return new CardQuench(Optional.empty(), false);
    }
}
