package org.shortgrain.rulebook.facts;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.shortgrain.review.FactorState;
import org.shortgrain.terms.GrainDirection;

/**
 * The material as the tables know it; where the description leaves a choice, the most susceptible candidate.
 *
 * @param alloy         alloy as normalised; empty text if not stated
 * @param temper        temper or condition as normalised; empty text if not stated
 * @param family        material family; empty text if not known
 * @param stated        alloy and temper as the description has them, for texts
 * @param covered       whether the tables hold this alloy and temper
 * @param temperFacts   what the temper's digits say; empty for materials without such tempers
 * @param susceptible   by grain direction, whether the material is susceptible along it
 * @param level         by grain direction, the governing level: 4 the most resistant, 1 the least; no entry if unknown
 * @param yield         by grain direction, the lowest published minimum yield strength (Pa); no entry if unknown
 * @param leastStrength least tensile strength of the drawing's band (Pa); empty if not stated
 * @param mostStrength  greatest tensile strength of the drawing's band (Pa); empty if not stated
 */
public record Metal(String alloy, String temper, String family, String stated, boolean covered,
        Optional<Temper> temperFacts, Map<GrainDirection, FactorState> susceptible, Map<GrainDirection, Integer> level,
        Map<GrainDirection, Double> yield, OptionalDouble leastStrength, OptionalDouble mostStrength) {

    private static final double PASCAL_PER_MPA = 1e6;
    private static final double PASCAL_PER_KSI = 6.894757293168361e6;
    /** Least tensile strength in ksi, such as HT-180. */
    private static final Pattern HARDENED_TO = Pattern.compile("HT-?(\\d+)");
    /** Ageing temperature in degrees Fahrenheit, such as H1025, RH950, TH1050, CH900. */
    private static final Pattern AGED = Pattern.compile("[A-Z]*H(\\d+)");

    /** Copies the maps. */
    public Metal {
        susceptible = Map.copyOf(susceptible);
        level = Map.copyOf(level);
        yield = Map.copyOf(yield);
    }

    /**
     * What the digits of an aluminium temper say.
     *
     * @param family   temper without relief digits, such as T6, T73
     * @param overAged whether it is over-aged
     * @param complete whether it has all the digits that a review needs
     * @param relief   stress-relief digits, such as 51; empty text if none
     * @param byUser   whether the digits say that the user heat treated it
     */
    public record Temper(String family, boolean overAged, boolean complete, String relief, boolean byUser) {
    }

    /** {@return whether it is an aluminium alloy} */
    public boolean isAluminium() {
        return family.startsWith("aluminium");
    }

    /**
     * {@return whether it is a wrought aluminium alloy of a series}
     *
     * @param series first digit of the series, such as 7
     */
    public boolean isSeries(int series) {
        return family.equals("aluminium_" + series + "xxx");
    }

    /** {@return whether it is an aluminium alloy that is hardened by solution treatment, quench and ageing: 2xxx, 6xxx, 7xxx} */
    public boolean isHeatTreatable() {
        return isSeries(2) || isSeries(6) || isSeries(7);
    }

    /** {@return whether it is an aluminium alloy susceptible across the short grain; other metals are rated alike in all
     * directions} */
    public boolean isProneAcrossGrain() {
        return isAluminium() && isSusceptible(GrainDirection.ST);
    }

    /**
     * {@return whether it is a hardened or precipitation-hardened steel whose strength certainly reaches a limit}
     *
     * @param megapascal the limit (MPa)
     */
    public boolean isHardSteel(double megapascal) {
        return (isHardenableSteel() || isPhSteel()) && isAtLeast(megapascal);
    }

    /** {@return whether it is a low-alloy, martensitic or maraging steel that hardens to high strength} */
    public boolean isHardenableSteel() {
        return List.of("low_alloy_steel", "high_alloy_steel", "carbon_steel", "maraging_steel", "martensitic_steel")
                .contains(family);
    }

    /** {@return whether it is a precipitation-hardening stainless steel} */
    public boolean isPhSteel() {
        return family.equals("ph_steel");
    }

    /** {@return whether it is a steel of any kind} */
    public boolean isSteel() {
        return family.endsWith("_steel");
    }

    /** {@return whether it is an austenitic stainless steel} */
    public boolean isAusteniticStainless() {
        return family.equals("austenitic_steel");
    }

    /** {@return whether it is titanium or a titanium alloy} */
    public boolean isTitanium() {
        return family.equals("titanium");
    }

    /** {@return whether it is a magnesium alloy} */
    public boolean isMagnesium() {
        return family.equals("magnesium");
    }

    /** {@return whether it is copper or a copper alloy} */
    public boolean isCopper() {
        return family.equals("copper_alloy");
    }

    /** {@return whether it is a steel that rusts when bare: too little chromium to be passive} */
    public boolean isRusting() {
        return List.of("low_alloy_steel", "high_alloy_steel", "carbon_steel", "maraging_steel").contains(family);
    }

    /** {@return whether corrosion certainly runs along its grain in layers: 2xxx in T3 or T4, 7xxx in T6} */
    public boolean isExfoliating() {
        return isSeries(2) && isTemper("T3", "T4") || isSeries(7) && isTemper("T6");
    }

    /** {@return whether it certainly cannot be magnetised: no steel, or an austenitic one} */
    public boolean isNonMagnetic() {
        return !family.isEmpty() && (!isSteel() || isAusteniticStainless());
    }

    /** {@return whether it corrodes bare in moist air: aluminium, magnesium, rusting or martensitic steel} */
    public boolean needsFinish() {
        return isAluminium() || isMagnesium() || isRusting() || family.equals("martensitic_steel");
    }

    /**
     * {@return whether the alloy is one of some alloys}
     *
     * @param alloys designations as normalised
     */
    public boolean isAlloy(String... alloys) {
        return List.of(alloys).contains(alloy);
    }

    /**
     * {@return whether the temper belongs to one of some temper families}
     *
     * @param families tempers without relief digits, such as T6
     */
    public boolean isTemper(String... families) {
        return temperFacts.isPresent() && List.of(families).contains(temperFacts.get().family());
    }

    /** {@return whether the temper is over-aged} */
    public boolean isOverAged() {
        return temperFacts.isPresent() && temperFacts.get().overAged();
    }

    /** {@return whether the temper lacks digits that the review needs} */
    public boolean isTemperIncomplete() {
        return temper.isEmpty() || temperFacts.isPresent() && !temperFacts.get().complete();
    }

    /** {@return whether the temper's digits say that it was stretched, compressed or both} */
    public boolean isRelievedByTemper() {
        return temperFacts.isPresent() && !temperFacts.get().relief().isEmpty();
    }

    /** {@return the stress-relief digits of the temper; empty text if none} */
    public String reliefDigits() {
        return temperFacts.map(Temper::relief).orElse("");
    }

    /** {@return whether the temper is a heat-treated one by its digits and the mill made it} */
    public boolean isTemperByMill() {
        return temperFacts.isPresent() && !temperFacts.get().byUser();
    }

    /** {@return whether it is an aluminium alloy in an artificially aged temper: T6, T7, T8 or a variant} */
    public boolean isArtificiallyAged() {
        String digits = temperFacts.map(Temper::family).orElse("");
        return isAluminium() && (digits.startsWith("T6") || digits.startsWith("T7") || digits.startsWith("T8"));
    }

    /** {@return whether it is an aluminium alloy whose welds are no longer the rated metal by far: 7xxx, and 2xxx but 2219} */
    public boolean isWeldedPoorly() {
        return isSeries(7) || isSeries(2) && !isAlloy("2219");
    }

    /** {@return whether its temper is one that the mill promises by certificate: relieved, or over-aged} */
    public boolean isPromisedByMill() {
        return isRelievedByTemper() || isOverAged();
    }

    /** {@return whether neither a strength band nor a condition that names a strength is stated} */
    public boolean isStrengthOpen() {
        return mostStrength.isEmpty() && leastStrength.isEmpty() && byCondition().isEmpty();
    }

    /** {@return the strength as stated, for texts} */
    public String sayStrength() {
        return mostStrength.isPresent()
                ? String.format(Locale.ROOT, "strength up to %.0f MPa", mostStrength.getAsDouble() / PASCAL_PER_MPA)
                : "strength by its condition: " + temper;
    }

    /**
     * {@return whether it is an aged condition whose ageing temperature certainly lies below a limit}
     *
     * @param fahrenheit the limit (degF)
     */
    public boolean isAgedBelow(int fahrenheit) {
        Matcher aged = AGED.matcher(temper);
        return aged.matches() && Integer.parseInt(aged.group(1)) < fahrenheit;
    }

    /** {@return whether the condition is one of no ageing: annealed or solution treated} */
    public boolean isUnaged() {
        return List.of("annealed", "solution_treated").contains(temper);
    }

    /** {@return whether a semi-austenitic steel is in a condition that is stated and is not CH900} */
    public boolean isTransformed() {
        return AGED.matcher(temper).matches() && !temper.startsWith("CH");
    }

    private OptionalDouble byCondition() {
        Matcher hardened = HARDENED_TO.matcher(temper);
        return hardened.matches() ? OptionalDouble.of(Integer.parseInt(hardened.group(1)) * PASCAL_PER_KSI)
                : OptionalDouble.empty();
    }

    /** {@return whether it is a 2xxx alloy that was aged at room temperature only} */
    public boolean isNaturallyAged() {
        return isSeries(2) && isTemper("T3", "T31", "T36", "T361", "T37", "T39", "T4", "T42");
    }

    /** {@return whether the trade gave the alloy or this temper of it up for stress corrosion: 7079 and 2020 in any temper,
     * 7178 and 7001 in T6} */
    public boolean isGivenUp() {
        return isAlloy("7079", "2020") || isAlloy("7178", "7001") && isTemper("T6");
    }

    /** {@return alloy and temper as stated, for texts} */
    public String say() {
        return stated.isEmpty() ? "The material" : stated;
    }

    /**
     * {@return whether the material is susceptible along a direction}
     *
     * @param direction the direction
     */
    public boolean isSusceptible(GrainDirection direction) {
        return susceptible.get(direction) == FactorState.PRESENT;
    }

    /**
     * {@return the governing level along a direction; 0 if unknown}
     *
     * @param direction the direction
     */
    public int levelIn(GrainDirection direction) {
        return level.getOrDefault(direction, 0);
    }

    /**
     * {@return whether its tensile strength certainly reaches a limit somewhere in the band: the greatest of the drawing, or
     * the least, or the strength that the condition names}
     *
     * @param megapascal the limit (MPa)
     */
    public boolean isAtLeast(double megapascal) {
        return Stream.of(mostStrength, leastStrength, byCondition()).filter(OptionalDouble::isPresent)
                .anyMatch(strength -> strength.getAsDouble() >= megapascal * PASCAL_PER_MPA);
    }
}
