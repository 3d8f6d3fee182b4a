package org.shortgrain.rulebook.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

    /** {@return what it is cut from} */
    public Stock stock() {
        return new Stock(form());
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
        return product().isOneOf(products);
    }

    /** {@return whether the form is a forging} */
    public boolean isForging() {
        return isForm(Product.DIE_FORGING, Product.HAND_FORGING, Product.FORGING, Product.RING_ROLLED);
    }

    /** {@return the section at quench as stated, for texts} */
    public String saySection() {
        return stock().sectionAtQuench().single().map(Range::entered).orElse("not stated");
    }

    /** {@return the temperatures of service as stated, for texts} */
    public String sayTemperature() {
        return "temperature " + temperature().single().map(Range::entered).orElse("not stated");
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
        return Math.toDegrees(Range.greatest(grain().field(Grain::tilt)).orElse(Double.NaN));
    }

    /** {@return the greatest section at quench as stated (m); 0 if not stated} */
    public double sectionAtQuench() {
        return stock().atQuench();
    }

    /** {@return whether it is quenched aluminium and nothing relieved it mechanically after the last quench: neither an
     * operation on the card nor, where the card has no quench, the digits of the temper} */
    public boolean isUnrelieved() {
        Optional<Step> quench = route.lastQuench();
        boolean relieved = quench.isPresent() ? route.hasAfter(quench.get(), "kind:mechanical_relief")
                : metal.isRelievedByTemper() || metal.temperFacts().isEmpty();
        return metal.isHeatTreatable() && !relieved;
    }

    /** {@return whether it is bought quenched, thick, and nothing says that the mill relieved it} */
    public boolean isThickStockUnrelieved() {
        return stock().isThick() && isUnrelieved() && route.lastQuench().isEmpty();
    }

    /** {@return whether the stress-relief digits are those of another form} */
    public boolean isReliefOfAnotherForm() {
        return stock().hasReliefOfAnotherForm(metal.reliefDigits());
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
        return criticality().isOneOf(Criticality.SAFETY_CRITICAL, Criticality.PRIMARY);
    }

    private Stated<Criticality> criticality() {
        return identity().field(Identity::criticality);
    }

    /** {@return whether cadmium is on it for certain: as its plating, or by an operation on the card} */
    public boolean isCadmiumPlated() {
        boolean stated = surface().field(Surface::plating).surely(plating -> Wording.names(plating.kind(), "cadmium"));
        return stated || route.all("plate").stream().anyMatch(step -> step.mentions("cadmium", "QQ-P-416"));
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
        return criticality().is(Criticality.SAFETY_CRITICAL);
    }

    /** {@return whether it is made from forging or plate for certain} */
    public boolean isForgingOrPlate() {
        return isForging() || isForm(Product.PLATE);
    }

    /** {@return whether a crack inspection is on the card} */
    public boolean hasCrackInspection() {
        return !route.ofKind("surface_ndt").isEmpty();
    }

    /** {@return whether some areas are stated to be peened} */
    public boolean namesPeenedAreas() {
        return !peenedAreas().isEmpty();
    }

    /** {@return the areas that are stated to be peened} */
    List<String> peenedAreas() {
        return Stated.items(surface().field(Surface::peened));
    }

    /** {@return surface treatment of the part} */
    public Stated<Surface> surface() {
        return description.surface();
    }

    /** {@return the finish of the part as a whole} */
    public Finish finish() {
        return Finish.of(surface());
    }

    /** {@return whether paint or inhibitor certainly covers the part} */
    public boolean isCovered() {
        return finish().primer().isKnown() || finish().topcoat().isKnown() || finish().inhibitor().isKnown();
    }

    /** {@return whether the part certainly is one whose loss matters little: secondary, or carrying no load that matters} */
    public boolean isMinor() {
        return criticality().isOneOf(Criticality.SECONDARY, Criticality.NON_STRUCTURAL);
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
        for (String area : Stated.items(surface().field(Surface::areasBare))) {
            if (Wording.contains(area, "bond", "earth", "ground")) {
                return true;
            }
        }
        return false;
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
        return description.neighbours().isMissing() && Stated.items(description.features()).stream()
                .allMatch(feature -> feature.neighbours().isMissing());
    }

    /** {@return the sealing of the part as a whole} */
    public Sealing sealing() {
        return Sealing.of(sealant());
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
        List<String> wanted = List.of(fluids);
        for (Fluid fluid : Stated.items(fluids())) {
            if (fluid.name().any(wanted::contains)) {
                return true;
            }
        }
        return false;
    }

    private Stated<List<Fluid>> fluids() {
        return environment().field(Environment::fluids);
    }

    /** {@return what is stated of the fluids and storage that the part meets} */
    public Exposure exposure() {
        return new Exposure(environment());
    }

    /** {@return the fluids that wet the part, for texts} */
    public String sayFluids() {
        Stated<List<Fluid>> fluids = fluids();
        if (!fluids.isKnown()) {
            return fluids.isNone() ? "fluids: none" : "fluids: not stated";
        }
        return "fluids: " + Stated.items(fluids).stream()
                .map(fluid -> String.join(" or ", fluid.name().candidates()).replace('_', ' '))
                .collect(Collectors.joining(", "));
    }

    /** {@return the highest temperature as stated (degC); minus infinity if not stated} */
    public double hottest() {
        return Range.greatest(temperature()).orElse(Double.NEGATIVE_INFINITY);
    }

    /** {@return the lowest temperature as stated (degC); plus infinity if not stated} */
    public double coldest() {
        return Range.least(temperature()).orElse(Double.POSITIVE_INFINITY);
    }

    private Stated<Range> temperature() {
        return environment().field(Environment::temperature);
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

    /** {@return what is proved by measurement or record} */
    public Proof proof() {
        return new Proof(evidence());
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
