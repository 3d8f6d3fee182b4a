package org.shortgrain.reference;

import java.util.OptionalDouble;
import org.shortgrain.terms.Citation;

/**
 * Plane-strain fracture toughness, printed for information only.
 *
 * @param orientation S-L or T-L
 * @param average     average (Pa sqrt(m))
 * @param least       least value (Pa sqrt(m))
 * @param mayApply    whether the row only may apply
 * @param row         the row's key in words
 * @param citation    source
 * @param remark      remark of the row
 */
public record Toughness(String orientation, double average, OptionalDouble least, boolean mayApply, String row,
        Citation citation, String remark) {
}
