package org.shortgrain.rulebook.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.shortgrain.part.Criticality;
import org.shortgrain.part.Drawing;
import org.shortgrain.part.Environment;
import org.shortgrain.part.Evidence;
import org.shortgrain.part.Fluid;
import org.shortgrain.part.Form;
import org.shortgrain.part.Grain;
import org.shortgrain.part.GrainBasis;
import org.shortgrain.part.Identity;
import org.shortgrain.part.Inspection;
import org.shortgrain.part.Material;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Planning;
import org.shortgrain.part.Product;
import org.shortgrain.part.Purpose;
import org.shortgrain.part.Range;
import org.shortgrain.part.Sealant;
import org.shortgrain.part.Service;
import org.shortgrain.part.Stated;
import org.shortgrain.part.Surface;
import org.shortgrain.review.FactorState;

/**
 * The part as a whole.
 *
 * @param description what is stated
 * @param metal       the material as the tables know it
 * @param route       the card as understood
 * @param zone        the zone as the tables know it
 */
public record Part(PartDescription description, Metal metal, Route route, Zone zone) {

    /** Thickness from which roughing before the heat treatment is the habit of the trade (m). */
    private static final double WORTH_ROUGHING = 0.038;
    /** Thickness above which plate is expected to carry relief digits: 0.25 in (m). */
    private static final double THIN_PLATE = 0.00635;
    /** Thickness above which bar, extrusion and hand forging are expected to: 1 in (m). */
    private static final double THIN_STOCK = 0.0254;
    private static final double MILLIMETRES = 1000;

    /** {@return why the part is reviewed; a design if not stated} */
    public Purpose purpose() {
        return description.review().field(review -> review.purpose()).single().orElse(Purpose.DESIGN);
    }

    /** {@return whether the review comes before metal is cut: a design or a supplier's check} */
    public boolean isBeforeRelease() {
        return purpose() == Purpose.DESIGN || purpose() == Purpose.SUPPLIER_PRECHECK;
    }

    /** {@return the identity} */
    public Stated<Identity> identity() {
        return description.part();
    }

    /** {@return whether the part may be safety critical: it is, or its criticality is not stated} */
    public boolean mayBeSafetyCritical() {
        return identity().field(Identity::criticality).mayBe(Criticality.SAFETY_CRITICAL);
    }

    /** {@return whether its function names something that pulls for long: a spring, a latch, rigging, an actuator} */
    public boolean isHeldByItsJob() {
        return Wording.names(identity().field(Identity::function), "spring", "latch", "rigging", "actuator", "preload");
    }

    /** {@return its function as stated, for texts} */
    public String sayFunction() {
        return Wording.say(identity().field(Identity::function));
    }

    /** {@return the drawing} */
    public Stated<Drawing> drawing() {
        return description.drawing();
    }

    /** {@return the card} */
    public Stated<Planning> planning() {
        return description.planning();
    }

    /** {@return alloy and temper as stated} */
    public Stated<Material> material() {
        return description.material();
    }

    /** {@return form and sections} */
    public Stated<Form> form() {
        return description.form();
    }

    /** {@return the product form} */
    public Stated<Product> product() {
        return form().field(Form::product);
    }

    /**
     * {@return whether the form certainly is one of some forms}
     *
     * @param products the forms
     */
    public boolean isForm(Product... products) {
        return product().surely(List.of(products)::contains);
    }

    /** {@return whether the form is a forging} */
    public boolean isForging() {
        return isForm(Product.DIE_FORGING, Product.HAND_FORGING, Product.FORGING, Product.RING_ROLLED);
    }

    /** {@return whether it is cut from stock that a mill delivers in its final temper: sheet, plate, bar, extrusion, tube} */
    public boolean isMillProduct() {
        return isForm(Product.SHEET, Product.PLATE, Product.BAR_ROLLED, Product.BAR_COLD_FINISHED, Product.EXTRUSION,
                Product.TUBE);
    }

    /** {@return the section at quench as stated, for texts} */
    public String saySection() {
        return form().field(Form::heatTreatThickness).single().map(Range::entered).orElse("not stated");
    }

    /** {@return the temperatures of service as stated, for texts} */
    public String sayTemperature() {
        return "temperature " + environment().field(Environment::temperature).single().map(Range::entered)
                .orElse("not stated");
    }

    /** {@return whether metal flow shaped it, so that its outline does not tell its grain: a forging or an extrusion} */
    public boolean isFlowShaped() {
        return isForging() || isForm(Product.EXTRUSION);
    }

    /** {@return whether it is cut from solid bar or forging} */
    public boolean isSolidStock() {
        return isForm(Product.BAR_ROLLED, Product.BAR_COLD_FINISHED, Product.HAND_FORGING, Product.DIE_FORGING,
                Product.FORGING);
    }

    /** {@return whether it is a bar that may be worked alike both ways across: not stated to be more than twice as wide as
     * thick} */
    public boolean isSquarishBar() {
        double width = form().field(Form::heatTreatWidth).candidates().stream().mapToDouble(Range::lowest).min().orElse(0);
        return isForm(Product.BAR_ROLLED, Product.BAR_COLD_FINISHED) && width <= 2 * sectionAtQuench();
    }

    /** {@return length as stated (m); NaN if not stated, which no comparison holds for} */
    public double length() {
        return form().field(Form::length).candidates().stream().mapToDouble(Range::highest).max().orElse(Double.NaN);
    }

    /**
     * {@return whether the grain directions certainly rest on one of some bases}
     *
     * @param bases the bases
     */
    public boolean isGrainBy(GrainBasis... bases) {
        return grain().field(Grain::basis).isOneOf(bases);
    }

    /** {@return where the grain runs out at the surface} */
    public Stated<List<String>> endGrain() {
        return grain().field(Grain::endGrainExposed);
    }

    /** {@return the parting plane of a die forging} */
    public Stated<String> partingLine() {
        return grain().field(Grain::partingLine);
    }

    /** {@return greatest tilt of the flow lines as stated (degrees); NaN if not stated} */
    public double grainTilt() {
        return Math.toDegrees(grain().field(Grain::tilt).candidates().stream().mapToDouble(Range::highest).max()
                .orElse(Double.NaN));
    }

    /** {@return the greatest section at quench as stated (m); 0 if not stated} */
    public double sectionAtQuench() {
        return form().field(Form::heatTreatThickness).candidates().stream().mapToDouble(range -> range.highest()).max()
                .orElse(0);
    }

    /** {@return whether it is quenched aluminium and nothing relieved it mechanically after the last quench: neither an
     * operation on the card nor, where the card has no quench, the digits of the temper} */
    public boolean isUnrelieved() {
                boolean relieved = route.lastQuench().map(quench -> route.hasAfter(quench, "kind:mechanical_relief"))
                .orElse(metal.isRelievedByTemper() || metal.temperFacts().isEmpty());
        return metal.isHeatTreatable() && !relieved;
    }

    /** {@return whether it is quenched at 38 mm or more and at least twice its thinnest finished section: where roughing
     * before the heat treatment is the habit of the trade} */
    public boolean isQuenchedFarTooThick() {
        double thinnest = form().field(Form::finishedThickness).candidates().stream().mapToDouble(Range::lowest).min()
                .orElse(Double.NaN);
        return sectionAtQuench() >= WORTH_ROUGHING && sectionAtQuench() >= 2 * thinnest;
    }

    /** {@return whether it is bought quenched, thick, and without relief digits: plate above 0.25 in, hand forging, bar or
     * extrusion above 1 in (where relief digits are expected, MIL-HDBK-5J Table 3.1.2, secondary)} */
    public boolean isThickStockUnrelieved() {
        boolean thick = isForm(Product.PLATE) && sectionAtQuench() > THIN_PLATE
                || isForm(Product.HAND_FORGING, Product.BAR_ROLLED, Product.BAR_COLD_FINISHED, Product.EXTRUSION)
                        && sectionAtQuench() > THIN_STOCK;
        return thick && isUnrelieved() && route.lastQuench().isEmpty();
    }

    /** {@return whether the stress-relief digits are those of another form: 510 and 511 are for what is extruded or drawn,
     * 54 for what has a die, 51 and 52 not for castings, 52 not for what is rolled thin or extruded (by ANSI H35.1 as
     * MIL-HDBK-5J Table 3.1.2 has it, secondary)} */
    public boolean isReliefOfAnotherForm() {
        if (!product().isKnown()) {
            return false;
        }
        return switch (metal.reliefDigits()) {
            case "510", "511" -> !isForm(Product.EXTRUSION, Product.TUBE);
            case "54" -> !isForm(Product.DIE_FORGING, Product.FORGING);
            case "52" -> isForm(Product.SHEET, Product.BAR_ROLLED, Product.BAR_COLD_FINISHED, Product.EXTRUSION,
                    Product.CASTING);
            default -> false;
        };
    }

    /** {@return whether the temper's digits claim a relief that a quench on the card undid and nothing did again} */
    public boolean isReliefLost() {
        return metal.isRelievedByTemper() && route.lastQuench().isPresent() && isUnrelieved();
    }

    /** {@return grain directions} */
    public Stated<Grain> grain() {
        return description.grain();
    }

    /** {@return whether the project uses the threshold in full, without a factor below 1} */
    public boolean isThresholdUsedInFull() {
        return description.review().field(review -> review.thresholdFactor()).surely(factor -> factor >= 1);
    }

    /** {@return whether MIL-STD-1568C 5.2.3.1.4 (read) asks for peening of a part of this form where its short-transverse
     * threshold is low: a forging, plate or extrusion of aluminium} */
    public boolean isPeenedByStandard() {
        return metal.isAluminium() && (isForging() || isForm(Product.PLATE, Product.EXTRUSION));
    }

    /** {@return whether own stress-corrosion thresholds are stated} */
    public boolean hasOwnThresholds() {
        return material().field(Material::userThreshold).isKnown();
    }

    /** {@return whether it is safety critical or primary structure for certain} */
    public boolean isImportant() {
        return identity().field(Identity::criticality).isOneOf(Criticality.SAFETY_CRITICAL, Criticality.PRIMARY);
    }

    /** {@return the thickest finished section (mm); NaN if not stated, which no comparison but {@code >=} holds for} */
    public double thickest() {
        return form().field(Form::finishedThickness).candidates().stream().mapToDouble(Range::highest).max()
                .orElse(Double.NaN) * MILLIMETRES;
    }

    /** {@return whether cadmium is on it for certain: as its plating, or by an operation on the card} */
    public boolean isCadmiumPlated() {
        boolean stated = surface().field(Surface::plating).surely(plating -> Wording.names(plating.kind(), "cadmium"));
        return stated || route.all("plate").stream().anyMatch(step -> step.mentions("cadmium", "QQ-P-416"));
    }

    /** {@return whether conductivity, or both hardness and yield strength, are not stated: what shows an over-aged temper} */
    public boolean isTemperUnproven() {
        boolean strength = evidence().field(Evidence::hardness).isKnown() || evidence().field(Evidence::yield).isKnown();
        return !evidence().field(Evidence::conductivity).isKnown() || !strength;
    }

    /** {@return whether it is a safety-critical die forging for certain} */
    public boolean isCriticalForging() {
        return isDieForged() && isSafetyCritical();
    }

    /** {@return whether it is forged in a die for certain} */
    public boolean isDieForged() {
        return isForm(Product.DIE_FORGING);
    }

    /** {@return whether it is safety critical for certain} */
    public boolean isSafetyCritical() {
        return identity().field(Identity::criticality).is(Criticality.SAFETY_CRITICAL);
    }

    /** {@return whether it is made from forging or plate for certain} */
    public boolean isForgingOrPlate() {
        return isForging() || isForm(Product.PLATE);
    }

    /** {@return whether neither a report nor an operation shows the grain flow} */
    public boolean isGrainFlowUnproven() {
        return !evidence().field(Evidence::grainFlowEtch).isKnown() && !route.has("macro_etch");
    }

    /** {@return whether no peening record is stated} */
    public boolean isPeeningUnproven() {
        return !evidence().field(Evidence::almen).isKnown();
    }

    /** {@return whether it is stated that there is no bake chart} */
    public boolean isWithoutBakeChart() {
        return evidence().field(Evidence::bakeChart).isNone();
    }

    /** {@return whether nothing is stated of a bake chart} */
    public boolean isBakeChartOpen() {
        return evidence().field(Evidence::bakeChart).isMissing();
    }

    /** {@return whether it is stated that there is no certificate} */
    public boolean isWithoutCertificate() {
        return evidence().field(Evidence::certificate).isNone();
    }

    /** {@return whether a crack inspection is on the card} */
    public boolean hasCrackInspection() {
        return !route.ofKind("surface_ndt").isEmpty();
    }

    /** {@return whether no record of an inspection is stated} */
    public boolean isInspectionUnproven() {
        return !evidence().field(Evidence::ndt).isKnown();
    }

    /** {@return whether it is stated that there is no first article} */
    public boolean isWithoutFirstArticle() {
        return evidence().field(Evidence::firstArticle).isNone();
    }

    /** {@return whether a sustained-load test of the plated lot is stated} */
    public boolean hasEmbrittlementTest() {
        return evidence().field(Evidence::embrittlementTest).isKnown();
    }

    /** {@return whether some areas are stated to be peened} */
    public boolean namesPeenedAreas() {
        return surface().field(Surface::peened).any(areas -> !areas.isEmpty());
    }

    /** {@return surface treatment of the part} */
    public Stated<Surface> surface() {
        return description.surface();
    }

    /** {@return the finish of the part as a whole} */
    public Finish finish() {
        return new Finish(surface().field(Surface::pretreatment), surface().field(Surface::primer),
                surface().field(Surface::topcoat), surface().field(Surface::plating), surface().field(Surface::cpc),
                surface().field(Surface::touchUp), surface().field(Surface::fayingSurfacesPrimed));
    }

    /** {@return whether paint or inhibitor certainly covers the part} */
    public boolean isCovered() {
        return finish().primer().isKnown() || finish().topcoat().isKnown() || finish().inhibitor().isKnown();
    }

    /** {@return whether the part certainly is one whose loss matters little: secondary, or carrying no load that matters} */
    public boolean isMinor() {
        return identity().field(Identity::criticality).isOneOf(Criticality.SECONDARY, Criticality.NON_STRUCTURAL);
    }

    /** {@return whether the sheet or plate certainly is clad} */
    public boolean isClad() {
        return material().field(Material::clad).isKnown();
    }

    /** {@return whether the finish system of the programme certainly is not called out} */
    public boolean isFinishSystemLeftOut() {
        return surface().field(Surface::completeFinishSystem).is(false);
    }

    /** {@return whether a face for an electrical bond certainly is left bare} */
    public boolean hasBareBond() {
        return surface().field(Surface::areasBare).any(areas -> areas.stream()
                .anyMatch(area -> Wording.contains(area, "bond", "earth", "ground")));
    }

    /** {@return layers of the finish that a complete card does not apply, in words; empty if the card is not complete} */
    public List<String> layersOffCard() {
        List<String> layers = new ArrayList<>();
        if (route.complete() && !route.has("finish")) {
            if (finish().isAnodized() && !route.has("anodize", "hard_anodize")) {
                layers.add("anodize");
            }
            if (finish().primer().isKnown() && !route.has("prime")) {
                layers.add("primer");
            }
            if (finish().topcoat().isKnown() && !route.has("topcoat")) {
                layers.add("topcoat");
            }
        }
        return layers;
    }

    /** {@return whether nothing is stated of neighbours, neither of the part nor of any place} */
    public boolean areNeighboursOpen() {
        return description.neighbours().isMissing() && description.features().candidates().stream()
                .flatMap(List::stream).allMatch(feature -> feature.neighbours().isMissing());
    }

    /** {@return the sealing of the part as a whole} */
    public Sealing sealing() {
        return new Sealing(sealant().field(Sealant::faying), sealant().field(Sealant::fillet),
                sealant().field(Sealant::fastenersWet), sealant().field(Sealant::gapFill),
                sealant().field(Sealant::cureBeforeTorque));
    }

    /** {@return sealing of the part} */
    public Stated<Sealant> sealant() {
        return description.sealant();
    }

    /** {@return where the part lives} */
    public Stated<Environment> environment() {
        return description.environment();
    }

    /**
     * {@return whether a fluid of the list wets the part for certain}
     *
     * @param fluids words of the fluid list
     */
    public boolean isWettedBy(String... fluids) {
        return environment().field(Environment::fluids).candidates().stream().flatMap(List::stream)
                .anyMatch(fluid -> fluid.name().any(List.of(fluids)::contains));
    }

    /** {@return what is stated of the fluids and storage that the part meets} */
    public Exposure exposure() {
        return new Exposure(environment());
    }

    /** {@return the fluids that wet the part, for texts} */
    public String sayFluids() {
        Stated<List<Fluid>> fluids = environment().field(Environment::fluids);
        if (!fluids.isKnown()) {
            return fluids.isNone() ? "fluids: none" : "fluids: not stated";
        }
        return "fluids: " + fluids.candidates().stream().flatMap(List::stream)
                .map(fluid -> String.join(" or ", fluid.name().candidates()).replace('_', ' '))
                .collect(Collectors.joining(", "));
    }

    /** {@return the highest temperature as stated (degC); minus infinity if not stated} */
    public double hottest() {
        return environment().field(Environment::temperature).candidates().stream().mapToDouble(range -> range.highest())
                .max().orElse(Double.NEGATIVE_INFINITY);
    }

    /** {@return the lowest temperature as stated (degC); plus infinity if not stated} */
    public double coldest() {
        return environment().field(Environment::temperature).candidates().stream().mapToDouble(range -> range.lowest())
                .min().orElse(Double.POSITIVE_INFINITY);
    }

    /** {@return drawing, card, and who asks and decides} */
    public Papers papers() {
        return new Papers(this);
    }

    /** {@return service so far, and what was found} */
    public ServiceRecord history() {
        return new ServiceRecord(service());
    }

    /** {@return inspection in service as planned} */
    public InspectionPlan plan() {
        return new InspectionPlan(inspection());
    }

    /** {@return inspection in service} */
    public Stated<Inspection> inspection() {
        return description.inspection();
    }

    /** {@return evidence} */
    public Stated<Evidence> evidence() {
        return description.evidence();
    }

    /** {@return service so far} */
    public Stated<Service> service() {
        return description.service();
    }

    /**
     * {@return the state of a factor in words for texts}
     *
     * @param state the state
     */
    public static String say(FactorState state) {
        return state.word();
    }
}
