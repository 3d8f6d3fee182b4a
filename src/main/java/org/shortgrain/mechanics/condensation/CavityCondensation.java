package org.shortgrain.mechanics.condensation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Computed.Step;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Extremes;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/**
 * Water that the air in a hollow gives off when it is cooled: {@code m = V max(0, rho1 - rho_sat(t2))}.
 *
 * <p>rho1 is the vapour in the air as it was taken in, at t1 and its humidity; rho_sat is the most that the same volume
 * holds at t2, over ice below 0 degC. The volume stays, so that the pressure of the vapour falls with the temperature
 * before anything condenses: the first dew comes a little below the dew point of the open air.
 *
 * <p>In a sealed hollow this happens once and the water dries up again when it warms. A hollow that breathes takes in new
 * air with every cycle: {@code m_year = N m} if all of the air is changed each time and nothing dries or runs out, an
 * upper bound. Range of validity: temperatures of the Magnus forms. Source: own derivation from the vapour pressures of
 * WMO-No. 8 (secondary over water, from memory over ice).
 *
 * @param volume   inner volume V (m3)
 * @param air      temperature t1 of the air when it is taken in (degC)
 * @param humidity its relative humidity as a share, 0 to 1
 * @param coldest  coldest temperature t2 of the wall (degC)
 */
public record CavityCondensation(Given volume, Given air, Given humidity, Given coldest) {

    private static final double SOLVER_ACCURACY = 1e-10;
    private static final int MOST_EVALUATIONS = 200;

    /** Refuses a negative volume. */
    public CavityCondensation {
        if (!(volume.value().low() >= 0)) {
            throw new IllegalArgumentException("a volume is not negative: " + volume.value());
        }
    }

    /** {@return the water of one cooling, {@code condensation.per-cycle} (kg)} */
    public Computed perCycle() {
        return new Computed("condensation.per-cycle", "Water that condenses in one cooling, at most", SiUnit.KILOGRAM,
                mass(), "m = V max(0, rho(t1, RH) - rho_sat(t2)), rho = 2.16679e-3 e/T", inputs(), steps(),
                "limits of every input", validity(),
                List.of(Sources.CAVITY, Sources.MAGNUS_WATER, Sources.MAGNUS_ICE), notes(), List.of());
    }

    /**
     * {@return the water of a year, {@code condensation.per-year} (kg in a year)}
     *
     * @param cycles coolings in a year, each after a full change of air
     */
    public Computed perYear(Given cycles) {
        Band cycle = mass();
        Band year = Extremes.of(v -> v[0] * v[1], cycle, cycles.value());
        List<Input> inputs = new ArrayList<>(inputs());
        inputs.add(cycles.as("N", "coolings in a year, each after a full change of air", SiUnit.ONE));
        List<Step> steps = new ArrayList<>(steps());
        steps.add(new Step("m", "water of one cooling", SiUnit.KILOGRAM, cycle));
        return new Computed("condensation.per-year", "Water that condenses in a year in a hollow that breathes, at most",
                SiUnit.KILOGRAM, year, "m_year = N m", inputs, steps, "limits of every input", validity(),
                List.of(Sources.BREATHING, Sources.CAVITY, Sources.MAGNUS_WATER, Sources.MAGNUS_ICE), notes(), List.of());
    }

    /** {@return whether water can condense: the vapour taken in can be more than the coldest air holds} */
    public boolean mayCondense() {
        return mass().high() > 0;
    }

    /** {@return whether what condenses can freeze} */
    public boolean mayFreeze() {
        return mayCondense() && coldest.value().low() < 0;
    }

    /**
     * {@return the temperature at which the first water condenses in the closed volume (degC), at the best estimates:
     * there the vapour pressure, fallen with the temperature, meets that of saturation; empty for dry air}
     */
    public OptionalDouble firstDew() {
        MoistAir in = new MoistAir(air.value().value(), humidity.value().value());
        if (in.humidity() == 0) {
            return OptionalDouble.empty();
        }
        double warm = in.celsius();
        double cold = Saturation.MAGNUS_ICE.coldest();
        if (warm <= cold || excess(in, cold) <= 0) {
            return OptionalDouble.empty();
        }
        if (excess(in, warm) >= 0) {
            return OptionalDouble.of(warm);
        }
        return OptionalDouble.of(new BracketingNthOrderBrentSolver(SOLVER_ACCURACY, 5)
                .solve(MOST_EVALUATIONS, t -> excess(in, t), cold, warm));
    }

    private static double excess(MoistAir in, double celsius) {
        return in.vapourDensity() - MoistAir.saturatedDensity(celsius);
    }

    /** Rises with volume, air temperature and humidity and falls with the coldest temperature: extremes at corners. */
    private Band mass() {
        return Extremes.of(v -> v[0] * Math.max(0, new MoistAir(v[1], v[2]).vapourDensity()
                - MoistAir.saturatedDensity(v[3])), volume.value(), air.value(), humidity.value(), coldest.value());
    }

    private List<Input> inputs() {
        return List.of(volume.as("V", "inner volume", SiUnit.CUBIC_METRE),
                air.as("t1", "temperature of the air when it is taken in", SiUnit.DEGREE_CELSIUS),
                humidity.as("RH", "its relative humidity", SiUnit.ONE),
                coldest.as("t2", "coldest temperature of the wall", SiUnit.DEGREE_CELSIUS));
    }

    private List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        steps.add(new Step("rho1", "vapour taken in", SiUnit.KILOGRAM_PER_CUBIC_METRE,
                Extremes.of(v -> new MoistAir(v[0], v[1]).vapourDensity(), air.value(), humidity.value())));
        steps.add(new Step("rho_sat", "most vapour that the coldest air holds", SiUnit.KILOGRAM_PER_CUBIC_METRE,
                Extremes.of(v -> MoistAir.saturatedDensity(v[0]), coldest.value())));
        firstDew().ifPresent(celsius -> steps.add(new Step("t_dew", "temperature of the first dew in the closed volume",
                SiUnit.DEGREE_CELSIUS, Band.exact(celsius))));
        return steps;
    }

    private Validity validity() {
        boolean warm = Saturation.MAGNUS_WATER.holdsAt(air.value().low())
                && Saturation.MAGNUS_WATER.holdsAt(air.value().high());
        boolean cold = Saturation.of(coldest.value().low()).holdsAt(coldest.value().low())
                && Saturation.of(coldest.value().high()).holdsAt(coldest.value().high());
        return new Validity(warm && cold, String.format(Locale.ROOT, "Magnus forms: air from %.0f to %.0f degC, coldest wall"
                + " from %.0f degC.", Saturation.MAGNUS_WATER.coldest(), Saturation.MAGNUS_WATER.warmest(),
                Saturation.MAGNUS_ICE.coldest()));
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add("Nothing dries and nothing runs out: an upper bound.");
        if (!mayCondense()) {
            notes.add("The coldest wall stays above the first dew: nothing condenses.");
        } else if (mayFreeze()) {
            notes.add("It comes as frost, or freezes, and wets the wall when it thaws.");
        }
        return notes;
    }
}
