package org.shortgrain.part;

import java.util.List;

/**
 * Alloy, temper and how they are ordered.
 *
 * @param alloy registered designation, such as 7075, 4340, 17-4PH, Ti-6Al-4V. Unknown: the worst of the family, if
 *        one is given
 * @param temper final temper or condition with all digits, such as T7351 or H1025. Unknown: the most susceptible
 *        temper of the alloy
 * @param family material family, used as the worst of the family when the alloy is unknown
 * @param temperAsProcured temper in which the material is bought, where it is heat treated again
 * @param procurementSpec specification it is bought to
 * @param specClass type or class in that specification
 * @param uns UNS number
 * @param clad cladding, or none
 * @param strength tensile strength band of the drawing (steels, PH steels, titanium)
 * @param hardness hardness with its scale, such as 40 HRC
 * @param heat heat number
 * @param lot lot number
 * @param userThreshold own stress-corrosion thresholds by direction, with their report
 * @param remarks anything a reader should know
 * @param origin where the group stands, and its reference
 */
public record Material(
        @Minimum(Minimum.Role.JUDGING)
        @Meaning("Registered designation, such as 7075, 4340, 17-4PH, Ti-6Al-4V. Unknown: the worst of the family, "
                + "if one is given.")
        Stated<String> alloy,
        @Minimum(Minimum.Role.JUDGING)
        @Meaning("Final temper or condition with all digits, such as T7351 or H1025. Unknown: the most susceptible "
                + "temper of the alloy.")
        Stated<String> temper,
        @Vocabulary(Vocabulary.List.FAMILIES)
        @Meaning("Material family, used as the worst of the family when the alloy is unknown.") Stated<String> family,
        @Meaning("Temper in which the material is bought, where it is heat treated again.")
        Stated<String> temperAsProcured,
        @Meaning("Specification it is bought to.") Stated<String> procurementSpec,
        @Verbatim @Meaning("Type or class in that specification.") Stated<String> specClass,
        @Meaning("UNS number.") Stated<String> uns,
        @Meaning("Cladding, or none.") Stated<Clad> clad,
        @In(Dimension.STRESS) @Limits(positive = true)
        @Meaning("Tensile strength band of the drawing (steels, PH steels, titanium).") Stated<Range> strength,
        @Meaning("Hardness with its scale, such as 40 HRC.") Stated<String> hardness,
        @Verbatim @Meaning("Heat number.") Stated<String> heat,
        @Verbatim @Meaning("Lot number.") Stated<String> lot,
        @Meaning("Own stress-corrosion thresholds by direction, with their report.")
        Stated<List<UserThreshold>> userThreshold,
        @Meaning("Anything a reader should know.") Stated<String> remarks,
        Origin origin) {
}
