package org.shortgrain.part;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Text whose words are data of the rulebook, not of the code. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Vocabulary {
    /** {@return which list of words} */
    List value();

    /** The lists of words that live in {@code rules/data}. */
    enum List {
        /** Operations of a route card, with aliases. */
        OPERATIONS,
        /** Zones of an aircraft, ship or structure. */
        ZONES,
        /** Fluids that wet a part. */
        FLUIDS,
        /** Material families. */
        FAMILIES
    }
}
