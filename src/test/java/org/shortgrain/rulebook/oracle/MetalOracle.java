package org.shortgrain.rulebook.oracle;

import static org.shortgrain.rulebook.oracle.Reading.alloy;
import static org.shortgrain.rulebook.oracle.Reading.aluminium;
import static org.shortgrain.rulebook.oracle.Reading.hottest;
import static org.shortgrain.rulebook.oracle.Reading.product;
import static org.shortgrain.rulebook.oracle.Reading.section;
import static org.shortgrain.rulebook.oracle.Reading.series;
import static org.shortgrain.rulebook.oracle.Reading.temper;

import java.util.List;
import java.util.Set;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Fit;
import org.shortgrain.part.FitKind;
import org.shortgrain.part.FitRole;
import org.shortgrain.part.Form;
import org.shortgrain.part.Load;
import org.shortgrain.part.LoadSource;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Product;
import org.shortgrain.part.Purpose;
import org.shortgrain.part.ReviewRequest;

/** Alloy, temper, form, loads and fits. */
final class MetalOracle {

    private static final Set<FitKind> TIGHT = Set.of(FitKind.PRESS_BUSHING, FitKind.TAPER_PIN,
            FitKind.INTERFERENCE_FASTENER);

    private MetalOracle() {
    }

    static void addTo(Oracle oracle) {
        oracle.whole("MATERIAL-07", part -> givenUp(part) && beforeRelease(part));
        oracle.whole("MATERIAL-08", part -> givenUp(part) && !beforeRelease(part));
        oracle.whole("MATERIAL-10", part -> aluminium(part) && product(part, Product.SHEET) && section(part) >= 6.35);
        oracle.whole("MATERIAL-11", part -> List.of("5083", "5086", "5456").contains(alloy(part))
                && hottest(part) > 66);
        oracle.whole("MATERIAL-12", part -> List.of("5083H32", "5086H34", "5456H36")
                .contains(alloy(part) + temper(part)));
        oracle.whole("MATERIAL-17", part -> series(part, "7") && hottest(part) > 100);
        oracle.whole("STRESS-08", MetalOracle::hasDigitsOfAnotherForm);
        oracle.each("STRESS-20", (part, at) -> !loads(at).isEmpty()
                && loads(at).stream().allMatch(load -> load.source().is(LoadSource.ONE_G_FLIGHT)));
        oracle.whole("STRESS-21", part -> part.review().field(ReviewRequest::thresholdFactor).is(1.0));
        oracle.each("FIT-04", (part, at) -> pulls(at) && at.fit().field(Fit::kind).is(FitKind.TAPER_PIN));
        oracle.each("FIT-08", (part, at) -> pulls(at) && at.fit().field(Fit::kind).is(FitKind.TAPER_THREAD));
        // width of the metal round the hole below 1.6 hole diameters
        oracle.each("FIT-10", (part, at) -> pulls(at) && at.fit().field(Fit::kind).single().filter(TIGHT::contains)
                .isPresent() && at.fit().field(Fit::outerWidth).single().orElseThrow().lowest()
                        < 1.6 * at.fit().field(Fit::hole).single().orElseThrow().highest());
    }

    private static boolean givenUp(PartDescription part) {
        return alloy(part).equals("7079") || alloy(part).equals("7178") && temper(part).equals("T6");
    }

    private static boolean beforeRelease(PartDescription part) {
        Purpose purpose = part.review().field(ReviewRequest::purpose).single().orElse(Purpose.DESIGN);
        return purpose == Purpose.DESIGN || purpose == Purpose.SUPPLIER_PRECHECK;
    }

    /** 511 belongs to what is extruded or drawn, 52 not to what is rolled thin or extruded, 54 to what has a die. */
    private static boolean hasDigitsOfAnotherForm(PartDescription part) {
        boolean stated = part.form().field(Form::product).isKnown();
        return stated && switch (temper(part)) {
            case "T73511" -> !product(part, Product.EXTRUSION, Product.TUBE);
            case "T7352" -> product(part, Product.SHEET, Product.BAR_ROLLED, Product.EXTRUSION);
            case "T7354" -> !product(part, Product.DIE_FORGING);
            default -> false;
        };
    }

    private static List<Load> loads(Feature at) {
        return at.loads().single().orElse(List.of());
    }

    /** The part is the outer member: it is pulled. */
    private static boolean pulls(Feature at) {
        return !at.fit().field(Fit::role).is(FitRole.INNER);
    }
}
