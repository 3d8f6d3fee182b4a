package org.shortgrain.mechanics.condensation;

import java.util.List;
import java.util.Locale;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Step;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Extremes;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/**
 * The dew point of air: metal colder than this gets wet, or white with frost below 0 degC.
 *
 * <p>{@code td = b x/(a - x)}, {@code x = ln(RH) + a t/(b + t)}, a = 17.62, b = 243.12 degC: the Magnus form over water
 * solved for the temperature. It rises with temperature and with humidity, so its extremes lie at the corners of the
 * ranges.
 *
 * @param air      temperature of the air (degC)
 * @param humidity its relative humidity as a share, above 0
 */
public record DewPoint(Given air, Given humidity) {

    /** Refuses air without vapour, which has no dew point, and more than saturated air. */
    public DewPoint {
        if (!(humidity.value().low() > 0 && humidity.value().high() <= 1)) {
            throw new IllegalArgumentException("relative humidity is a share above 0, up to 1: " + humidity.value());
        }
    }

    /** {@return the dew point, {@code condensation.dew-point} (degC)} */
    public Computed computed() {
        return new Computed("condensation.dew-point", "Dew point of the air", SiUnit.DEGREE_CELSIUS, dewPoint(),
                "td = b x/(a - x), x = ln(RH) + a t/(b + t), a = 17.62, b = 243.12 degC",
                List.of(air.as("t", "temperature of the air", SiUnit.DEGREE_CELSIUS),
                        humidity.as("RH", "relative humidity", SiUnit.ONE)),
                List.of(new Step("tf", "frost point, where it lies below 0 degC", SiUnit.DEGREE_CELSIUS, frostPoint())),
                "limits of temperature and humidity", validity(), List.of(Sources.MAGNUS_WATER, Sources.MAGNUS_ICE),
                List.of("The formula is up to 0.3 % low in pressure near 25 degC, which is 0.05 degC of dew point.",
                        "Salt on the metal takes up water well below saturation: a surface above the dew point is not"
                        + " dry for that."), List.of());
    }

    private Band dewPoint() {
        return Extremes.of(v -> new MoistAir(v[0], v[1]).dewPoint(), air.value(), humidity.value());
    }

    private Band frostPoint() {
        return Extremes.of(v -> new MoistAir(v[0], v[1]).frostPoint(), air.value(), humidity.value());
    }

    private Validity validity() {
        Saturation formula = Saturation.MAGNUS_WATER;
        boolean inside = formula.holdsAt(air.value().low()) && formula.holdsAt(air.value().high())
                && formula.holdsAt(dewPoint().low());
        return new Validity(inside, String.format(Locale.ROOT, "Magnus form over water: air and dew point from %.0f to"
                + " %.0f degC.", formula.coldest(), formula.warmest()));
    }
}
