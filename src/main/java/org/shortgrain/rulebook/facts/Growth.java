package org.shortgrain.rulebook.facts;

import java.util.Locale;
import org.shortgrain.mechanics.crack.InspectionInterval;

/**
 * How a crack at a place grows between what is found and what is critical, against the plan of inspection.
 *
 * @param place    the place
 * @param method   the method, in words
 * @param found    depth of the crack that is found (m)
 * @param critical critical depth (m)
 * @param first    time to the first look
 * @param repeat   time between looks
 */
public record Growth(Place place, String method, double found, double critical, InspectionInterval first,
        InspectionInterval repeat) {

    private static final double DAY = 86_400;
    private static final double YEAR = 365.25;
    private static final double MILLIMETRES = 1000;
    /** An interval as declared may be longer by this than one as computed: a day in a year. */
    private static final double SAME = 1 + 1 / YEAR;

    /** {@return whether a crack grows from what is found to what is critical faster than anybody inspects} */
    public boolean isTooFast() {
        return repeat instanceof InspectionInterval.TooFast;
    }

    /** {@return whether the crack that is found is critical already} */
    public boolean isFoundTooLate() {
        return repeat instanceof InspectionInterval.AlreadyCritical;
    }

    /** {@return whether the growth of the crack sets the interval, and not the calendar} */
    public boolean isByGrowth() {
        return repeat instanceof InspectionInterval.ByGrowth;
    }

    /** {@return whether the declared interval certainly is longer than the computed one} */
    public boolean isRepeatTooLong() {
        return !repeat.isNotInspectable() && place.part().plan().yearsBetween() * YEAR > repeatDays() * SAME;
    }

    /** {@return whether the declared first look certainly comes later than computed} */
    public boolean isFirstTooLate() {
        return !first.isNotInspectable() && first instanceof InspectionInterval.ByGrowth
                && place.part().plan().yearsToFirst() * YEAR > firstDays() * SAME;
    }

    /** {@return the interval that growth and practice allow (days); 0 if none} */
    public double repeatDays() {
        return repeat.length() / DAY;
    }

    /** {@return the time to the first look that growth and practice allow (days); 0 if none} */
    public double firstDays() {
        return first.length() / DAY;
    }

    /** {@return the time from what is found to what is critical, in words} */
    public String sayWindow() {
        if (isFoundTooLate()) {
            return "no time";
        }
        return repeat.window().isPresent() ? days(repeat.window().getAsDouble()) : "no growth as far as K_ISCC tells";
    }

    /** {@return the crack, in words} */
    public String say() {
        return String.format(Locale.ROOT, "%s finds %.1f mm, critical are %.1f mm: %s", method, found * MILLIMETRES,
                critical * MILLIMETRES, sayWindow());
    }

    /** {@return the interval, in words} */
    public String sayRepeat() {
        return String.format(Locale.ROOT, "%.0f days", repeatDays());
    }

    /** {@return the time to the first look, in words} */
    public String sayFirst() {
        return String.format(Locale.ROOT, "%.0f days", firstDays());
    }

    private static String days(double seconds) {
        return String.format(Locale.ROOT, "%.3g days", seconds / DAY);
    }
}
