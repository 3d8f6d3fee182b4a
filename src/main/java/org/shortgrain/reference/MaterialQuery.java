package org.shortgrain.reference;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known of the material when the tables are asked. Anything may be missing; then the worst that fits counts,
 * and the answer says which datum is open.
 *
 * @param alloy            designation as the drawing gives it
 * @param family           family, used when the alloy is unknown
 * @param temper           final temper or condition as the drawing gives it
 * @param productForm      product form, a word of the part description such as {@code die_forging}
 * @param thickness        thickness (ruling section) when heat treated (m)
 * @param sectionArea      area of the cross section when heat treated (m2); missing, the lowest of the rows for several
 *                         areas counts, and nothing is left open: each row tells the area that it holds for
 * @param widthToThickness width over thickness of a bar; up to 2, and when unknown, any transverse stress counts as ST
 * @param minUts           least tensile strength that the drawing allows (Pa)
 * @param maxUts           greatest tensile strength that the drawing allows (Pa)
 */
public record MaterialQuery(Optional<String> alloy, Optional<String> family, Optional<String> temper,
        Optional<String> productForm, OptionalDouble thickness, OptionalDouble sectionArea,
        OptionalDouble widthToThickness, OptionalDouble minUts, OptionalDouble maxUts) {

    /** Refuses missing parts and sizes that are not positive. */
    public MaterialQuery {
        Objects.requireNonNull(alloy, "alloy");
        Objects.requireNonNull(family, "family");
        Objects.requireNonNull(temper, "temper");
        Objects.requireNonNull(productForm, "productForm");
        requirePositive("thickness", thickness);
        requirePositive("sectionArea", sectionArea);
        requirePositive("widthToThickness", widthToThickness);
        requirePositive("minUts", minUts);
        requirePositive("maxUts", maxUts);
    }

    private static void requirePositive(String name, OptionalDouble size) {
        if (size.isPresent() && !(size.getAsDouble() > 0)) {
            throw new IllegalArgumentException(name + " must be positive, is " + size.getAsDouble());
        }
    }

    private static final MaterialQuery NOTHING = new MaterialQuery(Optional.empty(), Optional.empty(),
            Optional.empty(), Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
            OptionalDouble.empty(), OptionalDouble.empty());

    /**
     * {@return a question about an alloy, all else open}
     *
     * @param alloy designation, with or without a temper behind a hyphen
     */
    public static MaterialQuery ofAlloy(String alloy) {
        return new MaterialQuery(Optional.of(alloy), NOTHING.family, NOTHING.temper, NOTHING.productForm,
                NOTHING.thickness, NOTHING.sectionArea, NOTHING.widthToThickness, NOTHING.minUts, NOTHING.maxUts);
    }

    /**
     * {@return a question about a family, the alloy unknown}
     *
     * @param family family, such as {@code aluminium_7xxx}
     */
    public static MaterialQuery ofFamily(String family) {
        return new MaterialQuery(Optional.empty(), Optional.of(family), NOTHING.temper, NOTHING.productForm,
                NOTHING.thickness, NOTHING.sectionArea, NOTHING.widthToThickness, NOTHING.minUts, NOTHING.maxUts);
    }

    /**
     * {@return this question for an alloy}
     *
     * @param name the alloy; takes the place of a family
     */
    public MaterialQuery alloy(String name) {
        return new MaterialQuery(Optional.of(name), Optional.empty(), temper, productForm, thickness, sectionArea,
                widthToThickness, minUts, maxUts);
    }

    /**
     * {@return this question for a temper}
     *
     * @param text temper or condition
     */
    public MaterialQuery temper(String text) {
        return new MaterialQuery(alloy, family, Optional.of(text), productForm, thickness, sectionArea,
                widthToThickness, minUts, maxUts);
    }

    /**
     * {@return this question for a product form}
     *
     * @param word product form
     */
    public MaterialQuery form(String word) {
        return new MaterialQuery(alloy, family, temper, Optional.of(word), thickness, sectionArea, widthToThickness,
                minUts, maxUts);
    }

    /**
     * {@return this question for a thickness}
     *
     * @param metres thickness when heat treated (m)
     */
    public MaterialQuery thickness(double metres) {
        return new MaterialQuery(alloy, family, temper, productForm, OptionalDouble.of(metres), sectionArea,
                widthToThickness, minUts, maxUts);
    }

    /**
     * {@return this question for a section area}
     *
     * @param squareMetres area of the cross section (m2)
     */
    public MaterialQuery sectionArea(double squareMetres) {
        return new MaterialQuery(alloy, family, temper, productForm, thickness, OptionalDouble.of(squareMetres),
                widthToThickness, minUts, maxUts);
    }

    /**
     * {@return this question for a strength band}
     *
     * @param min least tensile strength (Pa)
     * @param max greatest tensile strength (Pa)
     */
    public MaterialQuery strength(double min, double max) {
        return new MaterialQuery(alloy, family, temper, productForm, thickness, sectionArea, widthToThickness,
                OptionalDouble.of(min), OptionalDouble.of(max));
    }
}
