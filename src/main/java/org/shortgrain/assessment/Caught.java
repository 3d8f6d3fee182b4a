package org.shortgrain.assessment;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.water.DrainHole;
import org.shortgrain.mechanics.water.Hole;
import org.shortgrain.mechanics.water.Hollow;
import org.shortgrain.mechanics.water.Rest;
import org.shortgrain.mechanics.water.StandingWater;
import org.shortgrain.part.Drainage;

/**
 * What a hollow catches, or keeps with its drain holes, written down.
 *
 * @param water  the computation
 * @param depth  greatest depth (m)
 * @param volume greatest volume (m3)
 * @param words  both in words, with the attitude and the numbers of the calculations
 */
record Caught(StandingWater water, Computed depth, Computed volume, String words) {

    private static final double MM = 1e3;
    private static final double ML = 1e6;

    /**
     * The water of a hollow, which takes long to compute.
     *
     * @param depth  greatest depth (m)
     * @param volume greatest volume (m3)
     * @param worst  the attitude in which most stays
     */
    record Pooled(Computed depth, Computed volume, Rest worst) {

        static Pooled of(StandingWater water) {
            return new Pooled(water.depth(), water.volume(), water.worst());
        }
    }

    /**
     * {@return what a hollow catches or keeps}
     *
     * @param site   the place
     * @param hollow its hollow
     * @param shape  the shape of it
     * @param holes  the holes that count
     */
    static Caught of(Site site, HollowReading hollow, Hollow shape, List<Hole> holes) {
        StandingWater water = new StandingWater(shape, hollow.rests(), holes);
        Pooled pooled = site.waters().of(water);
        String words = String.format(Locale.ROOT, "%s mm deep, %s mL, %s (%s, %s)", text(pooled.depth().value(), MM, "%.1f"),
                text(pooled.volume().value(), ML, "%.3g"), pooled.worst().name() + tilt(hollow, pooled.worst()),
                write(site, pooled.depth()), write(site, pooled.volume()));
        return new Caught(water, pooled.depth(), pooled.volume(), words);
    }

    /** The mechanics know an attitude by its name; where it stands is known here. */
    private static String write(Site site, Computed computed) {
        String attitudes = site.feature().drainage().field(Drainage::attitude).at().path();
        return site.write(computed.withOrigins(input -> HollowReading.key(input.origin())
                .map(key -> attitudes + "/" + key).orElse(input.origin())));
    }

    private static String text(Band band, double scale, String format) {
        String high = band.high() == 0 ? "0" : String.format(Locale.ROOT, format, band.high() * scale);
        return band.isExact() ? high : "up to " + high;
    }

    private static String tilt(HollowReading hollow, Rest rest) {
        if (!hollow.declared()) {
            return ", the worst, since no attitude is declared";
        }
        return String.format(Locale.ROOT, ", pitch %.1f deg, roll %.1f deg",
                Math.toDegrees(rest.tilts().get(0).pitch()), Math.toDegrees(rest.tilts().get(0).roll()));
    }

    /** {@return whether more than a film stands at the least} */
    boolean standsAtLeast() {
        return depth.value().low() > DrainHole.film();
    }

    /** {@return whether no more than a film stands at the most} */
    boolean isFilmAtMost() {
        return depth.value().high() <= DrainHole.film();
    }

    /** {@return area of the floor (m2); empty for a hollow on its side, which has none} */
    Optional<Given> plan() {
        return water.hollow().plan().map(area -> new Given(area, "length x width", Optional.empty()));
    }

    /** {@return the limit between a film and standing water, in words} */
    static String limit() {
        return String.format(Locale.ROOT, "up to %.1f mm counts as a film", DrainHole.film() * MM);
    }
}
