package org.shortgrain.rulebook.facts;

import java.util.Locale;
import java.util.Optional;
import org.shortgrain.part.Purpose;

/**
 * What a part must have for a rule to be asked: the words of a rule's {@code @applies}.
 *
 * <p>A rule whose tag does not hold is listed as not applicable, with the tag's reason. What is not stated counts as
 * held, so that a rule is never left out for want of a statement.
 */
public enum Tag {
    /** Aluminium alloys. */
    ALUMINIUM("the material is not an aluminium alloy"),
    /** Heat-treated aluminium alloys of the 2xxx and 7xxx series. */
    HARDENED_ALUMINIUM("the material is no 2xxx, 6xxx or 7xxx aluminium alloy"),
    /** Steels that harden to high strength. */
    HARDENABLE_STEEL("the material is no steel that hardens to high strength"),
    /** Precipitation-hardening stainless steels. */
    PH_STEEL("the material is no precipitation-hardening stainless steel"),
    /** Austenitic stainless steels. */
    AUSTENITIC_STAINLESS("the material is no austenitic stainless steel"),
    /** Titanium and its alloys. */
    TITANIUM("the material is not titanium"),
    /** Magnesium alloys. */
    MAGNESIUM("the material is not magnesium"),
    /** Copper and its alloys. */
    COPPER("the material is not copper"),
    /** Forgings. */
    FORGING("the part is not a forging"),
    /** A card is stated. */
    ROUTE("no route is stated"),
    /** A heat treatment is on the card. */
    HEAT_TREATMENT("no heat treatment is on the card"),
    /** A weld is on the card. */
    WELD("no weld is on the card"),
    /** Shot peening is on the card or stated. */
    PEENING("no shot peening is on the card"),
    /** An electroplating is on the card. */
    PLATING("no plating is on the card"),
    /** Overhaul or repair operations are on the card. */
    REWORK("no overhaul or repair operation is on the card"),
    /** The review comes before metal is cut. */
    BEFORE_RELEASE("the review does not come before release"),
    /** The part is in service. */
    IN_SERVICE("the part is not reviewed in service");

    private final String otherwise;

    Tag(String otherwise) {
        this.otherwise = otherwise;
    }

    /** {@return the word used in {@code @applies}} */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * {@return why a rule with this tag is not asked of a part; empty if it is asked}
     *
     * @param part the part
     */
    public Optional<String> keepsOut(Part part) {
        boolean unknownMetal = part.metal().family().isEmpty() && isAboutMetal();
        return unknownMetal || holds(part) ? Optional.empty() : Optional.of(otherwise);
    }

    // a switch: a predicate at each constant has to be linked, which costs a cold start more than a millisecond
    private boolean holds(Part part) {
        Metal metal = part.metal();
        Route route = part.route();
        return switch (this) {
            case ALUMINIUM -> metal.isAluminium();
            case HARDENED_ALUMINIUM -> metal.isHeatTreatable();
            case HARDENABLE_STEEL -> metal.isHardenableSteel() || metal.isPhSteel();
            case PH_STEEL -> metal.isPhSteel();
            case AUSTENITIC_STAINLESS -> metal.isAusteniticStainless();
            case TITANIUM -> metal.isTitanium();
            case MAGNESIUM -> metal.isMagnesium();
            case COPPER -> metal.isCopper();
            case FORGING -> !part.product().isKnown() || part.isForging();
            case ROUTE -> route.stated();
            case HEAT_TREATMENT -> !route.ofKind("heat_treatment").isEmpty();
            case WELD -> route.has("weld", "braze");
            case PEENING -> route.has("shot_peen", "peen_form");
            case PLATING -> route.has("plate", "galvanize");
            case REWORK -> route.steps().stream().anyMatch(Step::isRework);
            case BEFORE_RELEASE -> part.isBeforeRelease();
            case IN_SERVICE -> part.purpose() == Purpose.IN_SERVICE;
        };
    }

    private boolean isAboutMetal() {
        return ordinal() <= COPPER.ordinal();
    }
}
