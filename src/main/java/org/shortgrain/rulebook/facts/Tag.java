package org.shortgrain.rulebook.facts;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import org.shortgrain.part.Phase;
import org.shortgrain.part.Purpose;

/**
 * What a part must have for a rule to be asked: the words of a rule's {@code @applies}.
 *
 * <p>A rule whose tag does not hold is listed as not applicable, with the tag's reason. What is not stated counts as
 * held, so that a rule is never left out for want of a statement.
 */
public enum Tag {
    /** Aluminium alloys. */
    ALUMINIUM("the material is not an aluminium alloy", part -> part.metal().isAluminium()),
    /** Heat-treated aluminium alloys of the 2xxx and 7xxx series. */
    HARDENED_ALUMINIUM("the material is no 2xxx, 6xxx or 7xxx aluminium alloy",
            part -> part.metal().isHeatTreatable()),
    /** Steels that harden to high strength. */
    HARDENABLE_STEEL("the material is no steel that hardens to high strength",
            part -> part.metal().isHardenableSteel() || part.metal().isPhSteel()),
    /** Precipitation-hardening stainless steels. */
    PH_STEEL("the material is no precipitation-hardening stainless steel", part -> part.metal().isPhSteel()),
    /** Austenitic stainless steels. */
    AUSTENITIC_STAINLESS("the material is no austenitic stainless steel",
            part -> part.metal().isAusteniticStainless()),
    /** Titanium and its alloys. */
    TITANIUM("the material is not titanium", part -> part.metal().isTitanium()),
    /** Magnesium alloys. */
    MAGNESIUM("the material is not magnesium", part -> part.metal().isMagnesium()),
    /** Copper and its alloys. */
    COPPER("the material is not copper", part -> part.metal().isCopper()),
    /** Forgings. */
    FORGING("the part is not a forging", part -> !part.product().isKnown() || part.isForging()),
    /** A card is stated. */
    ROUTE("no route is stated", part -> part.route().stated()),
    /** A heat treatment is on the card. */
    HEAT_TREATMENT("no heat treatment is on the card", part -> !part.route().ofKind("heat_treatment").isEmpty()),
    /** A weld is on the card. */
    WELD("no weld is on the card", part -> part.route().has("weld", "braze")),
    /** Shot peening is on the card or stated. */
    PEENING("no shot peening is on the card", part -> part.route().has("shot_peen", "peen_form")),
    /** An electroplating is on the card. */
    PLATING("no plating is on the card", part -> part.route().has("plate", "galvanize")),
    /** Overhaul or repair operations are on the card. */
    REWORK("no overhaul or repair operation is on the card",
            part -> part.route().steps().stream().anyMatch(step -> step.stated().phase().isOneOf(Phase.OVERHAUL,
                    Phase.REPAIR))),
    /** The review comes before metal is cut. */
    BEFORE_RELEASE("the review does not come before release", Part::isBeforeRelease),
    /** The part is in service. */
    IN_SERVICE("the part is not reviewed in service", part -> part.purpose() == Purpose.IN_SERVICE);

    private final String otherwise;
    private final Predicate<Part> holds;

    Tag(String otherwise, Predicate<Part> holds) {
        this.otherwise = otherwise;
        this.holds = holds;
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
        return unknownMetal || holds.test(part) ? Optional.empty() : Optional.of(otherwise);
    }

    private boolean isAboutMetal() {
        return ordinal() <= COPPER.ordinal();
    }
}
