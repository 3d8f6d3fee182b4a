package org.shortgrain.part;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The dimension of a quantity; the reader refuses any other unit. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface In {
    /** {@return the dimension} */
    Dimension value();
}
