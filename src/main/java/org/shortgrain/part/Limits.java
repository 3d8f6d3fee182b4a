package org.shortgrain.part;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Limits of a number in the SI unit of its dimension (temperatures in degC). Outside them the reader refuses the value;
 * outside the usual range it warns, since an inch was often meant as a millimetre or the other way round.
 *
 * <p>A limit that is left out is that of the {@link Dimension}.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Limits {
    /** Sections and fits below this (m) are rare; inches read as millimetres mostly fall below it. */
    double THIN = 0.5e-3;
    /** Sections and fits above this (m) are rare; millimetres read as inches mostly lie above it. */
    double THICK = 0.5;

    /** {@return the least value; NaN: that of the dimension} */
    double min() default Double.NaN;

    /** {@return the greatest value; NaN: that of the dimension} */
    double max() default Double.NaN;

    /** {@return whether the value must be greater than zero} */
    boolean positive() default false;

    /** {@return below this a warning is given} */
    double usualMin() default Double.NEGATIVE_INFINITY;

    /** {@return above this a warning is given} */
    double usualMax() default Double.POSITIVE_INFINITY;
}
