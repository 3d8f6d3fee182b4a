package org.shortgrain.part;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Text that is copied letter for letter from a title block or card, so that words such as {@code NO} or {@code -} are
 * names here and no answers. Elsewhere the reader refuses them and asks for {@code none} or {@code unknown}.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Verbatim {
}
