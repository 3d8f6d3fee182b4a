package org.shortgrain.part;

import java.util.List;
import org.shortgrain.terms.GrainDirection;

/**
 * Own stress and time results.
 *
 * @param feature feature they hold for
 * @param direction grain direction
 * @param exposure exposure, such as ASTM G44
 * @param alloy alloy tested
 * @param temper temper tested
 * @param product form tested
 * @param points results
 * @param origin where the group stands, and its reference
 */
public record TestData(
        @Meaning("Feature they hold for.") Stated<String> feature,
        @Meaning("Grain direction.") Stated<GrainDirection> direction,
        @Meaning("Exposure, such as ASTM G44.") Stated<String> exposure,
        @Meaning("Alloy tested.") Stated<String> alloy,
        @Meaning("Temper tested.") Stated<String> temper,
        @Meaning("Form tested.") Stated<Product> product,
        @Meaning("Results.") Stated<List<TestPoint>> points,
        Origin origin) {
}
