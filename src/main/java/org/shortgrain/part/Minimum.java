package org.shortgrain.part;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A key of the minimum set: absent or unknown, it leads to a question. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Minimum {
    /** {@return what the absence holds back} */
    Role value();

    /** {@return whether {@code none} answers it: no fit, no lasting load, nothing quenched} */
    boolean noneAnswers() default false;

    /** What a minimum field is needed for. */
    enum Role {
        /** Without it the report cannot be tied to a part, a drawing or a card: caps sign-off. */
        IDENTITY,
        /** Without it a factor may be judged wrongly: may change the verdict. */
        JUDGING,
        /** Without it no report is made at all. */
        REFUSED
    }
}
