package org.shortgrain.rulebook.facts;

/**
 * The card of a steel part: when it is hard, charged with hydrogen, relieved and baked.
 *
 * @param route the card
 */
public record SteelCard(Route route) {

    /**
     * {@return whether steel is hard before a step: it is hardened or tempered earlier on the card, or nowhere on it}
     *
     * @param step the step
     */
    public boolean isHardBefore(Step step) {
        return route.hasBefore(step, "harden", "temper", "heat_treat") || !route.hasAfter(step, "harden", "heat_treat");
    }

    /**
     * {@return whether a step straightens hardened steel for good: no hardening follows}
     *
     * @param step the step
     */
    public boolean isStraightenedHard(Step step) {
        return step.does("straighten") && !route.hasAfter(step, "harden", "heat_treat");
    }

    /**
     * {@return whether a bath that charges steel with hydrogen follows a step without a stress relief in between}
     *
     * @param step the step
     */
    public boolean isChargedUnrelieved(Step step) {
        return route.after(step).stream().filter(later -> later.isKind("hydrogen_charging"))
                .anyMatch(bath -> route.after(step).stream().filter(one -> one.position() < bath.position())
                        .noneMatch(one -> one.is("stress_relieve", "temper")));
    }

    /**
     * {@return whether a bake follows a step before the next bath that charges steel with hydrogen}
     *
     * @param step the step
     */
    public boolean isBakedAfter(Step step) {
        return route.after(step).stream().filter(later -> later.isAny("bake", "kind:hydrogen_charging")).findFirst()
                .filter(next -> next.is("bake")).isPresent();
    }

    /**
     * {@return whether a step heats steel close to the temperature of a tempering before it, or above}
     *
     * @param step   the step
     * @param margin how close (degC)
     */
    public boolean isNearTempering(Step step, double margin) {
        return route.before(step).stream().filter(earlier -> earlier.is("temper"))
                .anyMatch(temper -> step.hottest() > temper.hottest() - margin);
    }
}
