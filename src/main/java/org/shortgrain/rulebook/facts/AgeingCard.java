package org.shortgrain.rulebook.facts;

import java.util.List;
import java.util.stream.Collectors;

/**
 * The card of an aluminium part: when it is rough, freshly quenched and aged.
 *
 * @param route the card
 */
public record AgeingCard(Route route) {

    /** {@return whether the part is roughed before its last quench} */
    public boolean isRoughedBeforeQuench() {
        return route.lastQuench().filter(quench -> route.hasBefore(quench, "rough_machine")).isPresent();
    }

    /**
     * {@return whether a step straightens artificially aged aluminium for good: it comes after the ageing, or the card
     * neither ages nor quenches before it, and no heat treatment or mechanical relief follows}
     *
     * @param step the step
     */
    public boolean isStraightenedAged(Step step) {
        boolean aged = route.hasBefore(step, "age") || !route.hasBefore(step, "quench", "kind:solution_treatment", "heat_treat");
        return step.does("straighten") && aged
                && !route.hasAfter(step, "age", "heat_treat", "kind:solution_treatment", "kind:mechanical_relief");
    }

    /**
     * {@return whether a step comes between quench and ageing and nothing keeps the metal cold until then}
     *
     * @param step the step
     */
    public boolean isFreshlyQuenched(Step step) {
        return route.lastBefore(step, "quench")
                .filter(quench -> route.after(quench).stream().filter(one -> one.position() < step.position())
                        .noneMatch(one -> one.is("age", "refrigerate")))
                .isPresent();
    }

    /**
     * {@return whether the card ages, states every temperature of it, and none reaches a limit}
     *
     * @param limit temperature (degC)
     */
    public boolean isAgedBelow(double limit) {
        List<Step> ages = route.all("age");
        return !ages.isEmpty() && ages.stream().allMatch(age -> age.hottest() < limit);
    }

    /** {@return the ageing temperatures as stated, for texts} */
    public String say() {
        return route.all("age").stream().map(age -> age.label() + ": " + age.sayTemperature())
                .collect(Collectors.joining("; "));
    }
}
