package org.shortgrain.mechanics.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.mechanics.Given;

/**
 * Values by own arithmetic. The pairs stand for 7075-T651 and T7351 plate, 1 to 2 in: Ftu 77 and 69 ksi, Fty 67 and
 * 57 ksi along LT (memory); ratios do not depend on the unit.
 */
class ResizingTest {

    private static Given of(double value) {
        return Given.exact(value, "test");
    }

    private static Resizing resizing(SizingMode mode, StrengthChange... strengths) {
        return new Resizing(mode, List.of(strengths), of(2800), of(2800));
    }

    private static StrengthChange ultimate() {
        return new StrengthChange("Ftu", of(77), of(69));
    }

    private static StrengthChange atYield() {
        return new StrengthChange("Fty", of(67), of(57));
    }

    @ParameterizedTest
    @CsvSource({"THICKNESS, 1.115942, 1.115942", "BENDING_WIDTH_KEPT, 1.056382, 1.056382",
        "BENDING_HEIGHT_KEPT, 1.115942, 1.115942", "BENDING_IN_PROPORTION, 1.037243, 1.075873", "STIFFNESS, 1, 1"})
    void scaleAndMassWhereUltimateStrengthGoverns(SizingMode mode, double scale, double mass) {
        assertEquals(scale, resizing(mode, ultimate()).dimensionScale().value().value(), 5e-7);
        assertEquals(mass, resizing(mode, ultimate()).massRatio().value().value(), 5e-7);
    }

    @ParameterizedTest
    @CsvSource({"THICKNESS, 1.175439", "BENDING_WIDTH_KEPT, 1.084176", "BENDING_IN_PROPORTION, 1.113781"})
    void massWhereYieldStrengthGoverns(SizingMode mode, double mass) {
        assertEquals(mass, resizing(mode, atYield()).massRatio().value().value(), 5e-7);
    }

    @Test
    void theStrengthThatFallsMostGoverns() {
        Resizing resizing = resizing(SizingMode.THICKNESS, ultimate(), atYield());
        assertEquals("Fty", resizing.governing().name());
        assertEquals(67.0 / 57, resizing.dimensionScale().value().value(), 1e-12);
    }

    @Test
    void theUpperEndIsThatOfTheStrengthThatMayFallMost() {
        StrengthChange uncertain = new StrengthChange("permitted sustained stress", of(77), Given.limits(60, 84, "test"));
        Resizing resizing = resizing(SizingMode.THICKNESS, atYield(), uncertain);
        assertEquals("Fty", resizing.governing().name());
        assertEquals(77.0 / 60, resizing.dimensionScale().value().high(), 1e-12);
    }

    @Test
    void aDenserMetalCostsMassInProportion() {
        Resizing denser = new Resizing(SizingMode.STIFFNESS, List.of(ultimate()), of(2800), of(2828));
        assertEquals(1.01, denser.massRatio().value().value(), 1e-12);
    }

    @Test
    void strengthsWithLimitsGiveAScaleWithLimits() {
        StrengthChange change = new StrengthChange("Ftu", Given.limits(75, 79, "test"), Given.limits(68, 70, "test"));
        assertEquals(79.0 / 68, resizing(SizingMode.THICKNESS, change).dimensionScale().value().high(), 1e-12);
        assertEquals(75.0 / 70, resizing(SizingMode.THICKNESS, change).dimensionScale().value().low(), 1e-12);
    }

    @Test
    void theNewSizeMustFitIntoTheRoomThatIsLeft() {
        Resizing thicker = resizing(SizingMode.THICKNESS, ultimate());
        assertEquals(0.0111594, thicker.newDimension(of(0.010)).value().value(), 5e-8);
        assertTrue(thicker.fitsInto(of(0.010), of(0.0112)));
        assertFalse(thicker.fitsInto(of(0.010), of(0.0111)));
    }

    @Test
    void whatMustBeCheckedAfterThickeningIsSaid() {
        assertTrue(resizing(SizingMode.THICKNESS, ultimate()).dimensionScale().notes().stream()
                .anyMatch(n -> n.contains("pull-down stress rises with thickness")));
    }

    @Test
    void noStrengthAtAllIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> resizing(SizingMode.THICKNESS));
    }
}
