package org.shortgrain.remedy;

import java.util.Locale;
import java.util.Optional;
import org.shortgrain.assessment.Declared;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.fit.FitStress;
import org.shortgrain.mechanics.fit.InterferenceFit;
import org.shortgrain.mechanics.fit.Retention;
import org.shortgrain.part.Fit;
import org.shortgrain.part.Range;
import org.shortgrain.reference.StandIns;

/**
 * What a press fit must keep to hold, in the loosest pair at the loosest lasting temperature: the load that the description
 * states, by friction; where none is stated, an interference that the trade takes as the least.
 *
 * @param least    least interference of the loosest pair as assembled (m)
 * @param why      what that rests on, for the middle of a sentence
 * @param said     the same as a sentence
 * @param friction coefficient of friction
 * @param length   length of contact (m); empty if not stated
 */
record Hold(double least, String why, String said, Given friction, Optional<Given> length) {

    private static final double MICRO = 1e6;
    private static final double MILLI = 1e-3;

    /**
     * {@return what a fit must keep}
     *
     * @param standIns friction, and the interference that stands in for a load
     * @param fit      the fit as described
     * @param rings    the same as computed
     */
    static Hold of(StandIns standIns, Fit fit, InterferenceFit rings) {
        StandIns.StandIn mu = standIns.of("press_fit_friction");
        Given friction = Declared.standIn(mu);
        Optional<Given> length = Declared.of(fit.length());
        Optional<Double> load = fit.pushOutLoad().single().map(Range::highest);
        FitStress stress = new FitStress(rings);
        String when = String.format(Locale.ROOT, "at %.0f degC", stress.loosestTemperature().value().value());
        if (load.isPresent() && length.isPresent()) {
            String why = String.format(Locale.ROOT, "friction (%.2f over %.1f mm) is to hold %.0f N %s", mu.value(),
                    length.get().value().low() / MILLI, load.get(), when);
            return new Hold(new Retention(rings, friction, length.get()).leastInterference(load.get()), why,
                    "Sought so that " + why + "; " + mu.meaning() + ": " + mu.source().status().word() + "."
                            + (fit.installedWet().is(true) ? " It goes in wet here, which may hold less." : ""), friction, length);
        }
        StandIns.StandIn left = standIns.of("press_fit_left");
        String why = String.format(Locale.ROOT, "%.0f um (%s) are to be left %s", left.value() * MICRO,
                left.source().status().word(), when);
        String lacks = load.isPresent() ? "The length of the fit is not stated, so that the load that it must hold is held against"
                + " nothing" : "No load that friction must hold (push_out_load) is stated";
        return new Hold(left.value() + stress.lostWhenLoosest(), why, lacks + ": " + why + " instead.", friction, length);
    }

    /** {@return the push-out force of the loosest pair when loosest (N); empty without a length} */
    Optional<Double> force(InterferenceFit rings) {
        return length.map(known -> new Retention(rings, friction, known).force().value().low());
    }
}
