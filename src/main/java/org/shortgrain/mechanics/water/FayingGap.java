package org.shortgrain.mechanics.water;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Extremes;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/**
 * A gap between joined faces: it draws water to a height of {@code h = 2 gamma cos(theta)/(rho g w)}, and gravity does not
 * drain it. Faces are taken to wet fully (theta = 0), the worst.
 *
 * <p>Range of validity: parallel faces, gap narrow against the capillary length (2.7 mm for water), no sealant. Source:
 * height of rise after Jurin (from memory); TO 1-1-700, 10.5 (read), warns of the entry into the tightest joints.
 *
 * @param gap    width of the gap w (m), above 0
 * @param liquid what is drawn in
 */
public record FayingGap(Given gap, Liquid liquid) {

    /** Refuses a gap without width. */
    public FayingGap {
        if (!(gap.value().low() > 0)) {
            throw new IllegalArgumentException("no gap: " + gap.value() + " m");
        }
    }

    /** {@return the height to which it draws water, {@code water.capillary-rise} (m)} */
    public Computed rise() {
        Band rise = Extremes.of(v -> new Capillarity(v[1], v[2], Liquid.GRAVITY).riseInGap(v[0], 0), gap.value(),
                liquid.tension().value(), liquid.density().value());
        double length = new Capillarity(liquid.tension().value().value(), liquid.density().value().value(),
                Liquid.GRAVITY).length();
        List<Input> inputs = new ArrayList<>(List.of(gap.as("w", "width of the gap", SiUnit.METRE)));
        inputs.addAll(liquid.inputs());
        return new Computed("water.capillary-rise", "Height to which the gap draws water against gravity", SiUnit.METRE,
                rise, "h = 2 gamma cos(theta)/(rho g w), theta = 0", inputs, List.of(), "limits of every input",
                new Validity(gap.value().high() < length, "Parallel faces that wet fully, gap narrower than the capillary"
                        + " length."), List.of(Sources.JURIN, Sources.WATER, Sources.CAPILLARY_ENTRY),
                List.of("A drain does nothing for such a gap: it is sealed, or opened wide."), List.of());
    }
}
