package org.shortgrain.rulebook.facts;

import org.shortgrain.part.Form;
import org.shortgrain.part.Product;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;

/**
 * What the part is cut from: form and sections.
 *
 * @param form what is stated of them
 */
public record Stock(Stated<Form> form) {

    /** Thickness from which roughing before the heat treatment is the habit of the trade (m). */
    private static final double WORTH_ROUGHING = 0.038;
    /** Thickness above which plate is expected to carry relief digits: 0.25 in (m). */
    private static final double THIN_PLATE = 0.00635;
    /** Thickness above which bar, extrusion and hand forging are expected to: 1 in (m). */
    private static final double THIN_STOCK = 0.0254;
    private static final double MILLIMETRES = 1000;

    /**
     * {@return whether the form certainly is one of some forms}
     *
     * @param products the forms
     */
    public boolean is(Product... products) {
        return product().isOneOf(products);
    }

    private Stated<Product> product() {
        return form.field(Form::product);
    }

    /** {@return the section at quench} */
    Stated<Range> sectionAtQuench() {
        return form.field(Form::heatTreatThickness);
    }

    /** {@return the greatest section at quench as stated (m); 0 if not stated} */
    public double atQuench() {
        return Range.greatest(sectionAtQuench()).orElse(0);
    }

    /** {@return whether it is cut from stock that a mill delivers in its final temper: sheet, plate, bar, extrusion, tube} */
    public boolean isMillProduct() {
        return is(Product.SHEET, Product.PLATE, Product.BAR_ROLLED, Product.BAR_COLD_FINISHED, Product.EXTRUSION,
                Product.TUBE);
    }

    /** {@return whether metal flow shaped it, so that its outline does not tell its grain: a forging or an extrusion} */
    public boolean isFlowShaped() {
        return is(Product.DIE_FORGING, Product.HAND_FORGING, Product.FORGING, Product.RING_ROLLED) || is(Product.EXTRUSION);
    }

    /** {@return whether it is cut from solid bar or forging} */
    public boolean isSolidStock() {
        return is(Product.BAR_ROLLED, Product.BAR_COLD_FINISHED, Product.HAND_FORGING, Product.DIE_FORGING,
                Product.FORGING);
    }

    /** {@return whether it is a bar that may be worked alike both ways across: not stated to be more than twice as wide as
     * thick} */
    public boolean isSquarishBar() {
        double width = Range.least(form.field(Form::heatTreatWidth)).orElse(0);
        return is(Product.BAR_ROLLED, Product.BAR_COLD_FINISHED) && width <= 2 * atQuench();
    }

    /** {@return whether it is quenched at 38 mm or more and at least twice its thinnest finished section: where roughing
     * before the heat treatment is the habit of the trade} */
    public boolean isQuenchedFarTooThick() {
        double thinnest = Range.least(finished()).orElse(Double.NaN);
        return atQuench() >= WORTH_ROUGHING && atQuench() >= 2 * thinnest;
    }

    /**
     * {@return whether stress-relief digits are those of another form: 510 and 511 are for what is extruded or drawn,
     * 54 for what has a die, 51 and 52 not for castings, 52 not for what is rolled thin or extruded (by ANSI H35.1 as
     * MIL-HDBK-5J Table 3.1.2 has it, secondary)}
     *
     * @param digits the digits; empty text if none
     */
    public boolean hasReliefOfAnotherForm(String digits) {
        if (!product().isKnown()) {
            return false;
        }
        return switch (digits) {
            case "510", "511" -> !is(Product.EXTRUSION, Product.TUBE);
            case "54" -> !is(Product.DIE_FORGING, Product.FORGING);
            case "52" -> is(Product.SHEET, Product.BAR_ROLLED, Product.BAR_COLD_FINISHED, Product.EXTRUSION,
                    Product.CASTING);
            default -> false;
        };
    }

    /** {@return the thickest finished section (mm); NaN if not stated, which no comparison but {@code >=} holds for} */
    public double thickest() {
        return Range.greatest(finished()).orElse(Double.NaN) * MILLIMETRES;
    }

    private Stated<Range> finished() {
        return form.field(Form::finishedThickness);
    }

    /** {@return length as stated (m); NaN if not stated, which no comparison holds for} */
    public double length() {
        return Range.greatest(form.field(Form::length)).orElse(Double.NaN);
    }

    /** {@return whether it is thick enough for its form to be expected with relief digits: plate above 0.25 in, hand forging,
     * bar or extrusion above 1 in (MIL-HDBK-5J Table 3.1.2, secondary, and habit of the trade)} */
    public boolean isThick() {
        return is(Product.PLATE) && atQuench() > THIN_PLATE
                || is(Product.HAND_FORGING, Product.BAR_ROLLED, Product.BAR_COLD_FINISHED, Product.EXTRUSION)
                        && atQuench() > THIN_STOCK;
    }
}
