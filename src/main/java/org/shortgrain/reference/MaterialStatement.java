package org.shortgrain.reference;

import java.util.OptionalDouble;
import org.shortgrain.terms.Citation;

/**
 * Something that a document says of a material in words.
 *
 * @param kind           what kind of statement: text, temperature limit, limit, exemption, caution, service, claim,
 *                       note or gap
 * @param statement      what it says
 * @param aboveCelsius   temperature above which it bears (degC)
 * @param limitThickness thickness that it sets as a limit (m)
 * @param mayApply       whether it only may apply
 * @param row            the row's key in words
 * @param citation       source
 * @param confidence     how sure a row from memory is; empty for others
 * @param remark         remark of the row
 */
public record MaterialStatement(String kind, String statement, OptionalDouble aboveCelsius,
        OptionalDouble limitThickness, boolean mayApply, String row, Citation citation, String confidence,
        String remark) {
}
