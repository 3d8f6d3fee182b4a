package org.shortgrain.part;

/**
 * Form, sections and size.
 *
 * @param product form in which the material was made. Absent: judged as the worst form of the alloy
 * @param heatTreatThickness ruling section when quenched, or none where nothing is quenched. Absent: the quench
 *        stress is bounded
 * @param heatTreatWidth second dimension of that section
 * @param heatTreatShape shape when quenched
 * @param finishedThickness thinnest to thickest finished section
 * @param envelope what the neighbours leave room for
 * @param mass finished mass
 * @param diameter diameter of a round part
 * @param length length
 * @param width width
 * @param wall wall of a tube or vessel
 * @param origin where the group stands, and its reference
 */
public record Form(
        @Minimum(Minimum.Role.JUDGING)
        @Meaning("Form in which the material was made. Absent: judged as the worst form of the alloy.")
        Stated<Product> product,
        @Minimum(value = Minimum.Role.JUDGING, noneAnswers = true) @In(Dimension.LENGTH)
        @Limits(positive = true, usualMin = Limits.THIN, usualMax = Limits.THICK)
        @Meaning("Ruling section when quenched, or none where nothing is quenched. Absent: the quench stress is "
                + "bounded.")
        Stated<Range> heatTreatThickness,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Second dimension of that section.")
        Stated<Range> heatTreatWidth,
        @Meaning("Shape when quenched.") Stated<Shape> heatTreatShape,
        @In(Dimension.LENGTH) @Limits(positive = true, usualMin = Limits.THIN, usualMax = Limits.THICK)
        @Meaning("Thinnest to thickest finished section.") Stated<Range> finishedThickness,
        @Meaning("What the neighbours leave room for.") Stated<Envelope> envelope,
        @In(Dimension.MASS) @Limits(positive = true) @Meaning("Finished mass.") Stated<Range> mass,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Diameter of a round part.") Stated<Range> diameter,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Length.") Stated<Range> length,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Width.") Stated<Range> width,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Wall of a tube or vessel.") Stated<Range> wall,
        Origin origin) {
}
