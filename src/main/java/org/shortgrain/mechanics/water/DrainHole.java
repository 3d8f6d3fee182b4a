package org.shortgrain.mechanics.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Computed.Step;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Extremes;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/**
 * A round drain hole: what surface tension holds back over it, and whether dirt and paint close it.
 *
 * <p>A drop as wide as the hole holds a head of {@code h = 4 gamma/(rho g d)}: below that head nothing starts to drip. The
 * least size of the trade, 9.525 mm (0.375 in, MIL-STD-1568C 5.2.2.3, read), is a limit against clogging as much as against
 * surface tension; over it 3.1 mm of water stay, which is what counts here as a film and not as standing water.
 *
 * <p>Range of validity: hole in a thin sheet, clean wetted rim, water. A tube, a burr or grease holds more.
 *
 * @param diameter diameter d (m), above 0
 * @param liquid   what is to drain
 */
public record DrainHole(Given diameter, Liquid liquid) {

    /** Least diameter of a drain hole unless a smaller one is accepted in writing (m): 0.375 in, MIL-STD-1568C 5.2.2.3. */
    public static final double LEAST = 9.525e-3;
    /** What a metric drill may fall short of it (m): own reading, so that 9.5 mm passes. */
    public static final double METRIC_ALLOWANCE = 0.05e-3;

    /** Refuses a hole without size. */
    public DrainHole {
        if (!(diameter.value().low() > 0)) {
            throw new IllegalArgumentException("no hole: diameter " + diameter.value() + " m");
        }
    }

    /**
     * {@return the depth of water that the least hole of the trade leaves by surface tension alone (m): up to this it is a
     * film, above it water stands}
     *
     * <p>Why there: a floor that is drained as the standard asks keeps so much, 3.1 mm, and no better drain is asked for
     * anywhere; a lower limit would call every drained floor undrained. It is a limit between two states of wetness and not
     * between wet and dry: a place with a film is dry only where its zone is controlled and no fluid wets it, and there
     * nothing makes the film. Whatever wets the place from outside counts by itself. Own convention, derived from the
     * least size of MIL-STD-1568C 5.2.2.3 (read).
     */
    public static double film() {
        return new Capillarity(Liquid.WATER.tension().value().value(), Liquid.WATER.density().value().value(),
                Liquid.GRAVITY).holdUp(LEAST - METRIC_ALLOWANCE);
    }

    /** {@return whether the hole is at least as wide as the trade asks, at its smallest} */
    public boolean isWideEnough() {
        return diameter.value().low() >= LEAST - METRIC_ALLOWANCE;
    }

    /** {@return area of the hole (m2)} */
    public Band area() {
        return Extremes.of(v -> Math.PI * v[0] * v[0] / 4, diameter.value());
    }

    /** {@return the head that surface tension holds back over the hole, {@code water.hold-up} (m)} */
    public Computed holdUp() {
        List<Input> inputs = new ArrayList<>(List.of(diameter.as("d", "diameter of the drain hole", SiUnit.METRE)));
        inputs.addAll(liquid.inputs());
        return new Computed("water.hold-up", "Head of water held back over a drain hole by surface tension", SiUnit.METRE,
                head(), "h = 4 gamma/(rho g d)", inputs, steps(), "limits of every input",
                new Validity(true, "Hole in a thin sheet with a clean wetted rim; a tube or a greasy rim holds more."),
                List.of(Sources.HOLD_UP, Sources.WATER, Sources.LEAST_DRAIN), notes(), List.of());
    }

    /** {@return the head that surface tension holds back (m)} */
    public Band head() {
        return Extremes.of(v -> new Capillarity(v[1], v[2], Liquid.GRAVITY).holdUp(v[0]), diameter.value(),
                liquid.tension().value(), liquid.density().value());
    }

    /**
     * {@return the water that stays over a level floor because of surface tension, {@code water.residue} (m3): not more
     * than the hollow holds}
     *
     * @param plan  area of the floor (m2)
     * @param holds what the hollow holds (m3)
     */
    public Computed residue(Given plan, Given holds) {
        Band left = Extremes.of(v -> Math.min(v[4], v[3] * new Capillarity(v[1], v[2], Liquid.GRAVITY).holdUp(v[0])),
                diameter.value(), liquid.tension().value(), liquid.density().value(), plan.value(), holds.value());
        List<Input> inputs = new ArrayList<>(List.of(plan.as("A", "area of the floor", SiUnit.SQUARE_METRE),
                holds.as("V", "what the hollow holds", SiUnit.CUBIC_METRE),
                diameter.as("d", "diameter of the drain hole", SiUnit.METRE)));
        inputs.addAll(liquid.inputs());
        return new Computed("water.residue", "Water left on a level floor by surface tension, at most", SiUnit.CUBIC_METRE,
                left, "V_left = min(V, A h), h = 4 gamma/(rho g d)", inputs, steps(), "limits of every input",
                new Validity(true, "Level floor; a slope towards the hole leaves less."),
                List.of(Sources.HOLD_UP, Sources.WATER), List.of(), List.of());
    }

    private List<Step> steps() {
        Capillarity best = new Capillarity(liquid.tension().value().value(), liquid.density().value().value(),
                Liquid.GRAVITY);
        return List.of(new Step("l_c", "capillary length", SiUnit.METRE, Band.exact(best.length())),
                new Step("Bo", "Bond number of the hole", SiUnit.ONE,
                        Extremes.of(v -> best.bond(v[0]), diameter.value())),
                new Step("d/d_min", "diameter over the least one, " + LEAST * 1e3 + " mm", SiUnit.ONE,
                        diameter.value().times(1 / LEAST)),
                new Step("h", "head held back", SiUnit.METRE, head()));
    }

    private List<String> notes() {
        if (isWideEnough()) {
            return List.of("Not below the least drain hole of the trade.");
        }
        return List.of(String.format(Locale.ROOT, "Below %.3f mm, the least drain hole of the trade: dirt, paint and"
                + " sealant close it besides.", LEAST * 1e3));
    }
}
