package org.shortgrain.mechanics.clampup;

import java.util.List;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/** What fills a gap before the fasteners are drawn up, and so how much of the gap is left to be pulled shut. */
public sealed interface Shim {

    /**
     * {@return the gap that is left to be pulled shut (m)}
     *
     * @param gap the gap between the parts as they lie (m)
     */
    Band left(Band gap);

    /** {@return the numbers of the shim} */
    List<Input> inputs();

    /** {@return what was assumed of the shim} */
    String note();

    /** No shim: the whole gap is pulled shut. */
    record None() implements Shim {

        @Override
        public Band left(Band gap) {
            return gap;
        }

        @Override
        public List<Input> inputs() {
            return List.of();
        }

        @Override
        public String note() {
            return "No shim: the whole gap is pulled shut.";
        }
    }

    /**
     * A solid shim; what it does not fill is pulled shut.
     *
     * @param thickness thickness of the shim (m)
     */
    record Solid(Given thickness) implements Shim {

        @Override
        public Band left(Band gap) {
            Band t = thickness.value();
            return new Band(Math.max(0, gap.value() - t.value()), Math.max(0, gap.low() - t.high()),
                    Math.max(0, gap.high() - t.low()));
        }

        @Override
        public List<Input> inputs() {
            return List.of(thickness.as("s", "thickness of the shim", SiUnit.METRE));
        }

        @Override
        public String note() {
            return "Solid shim: only the gap that it does not fill is pulled shut.";
        }
    }

    /**
     * A shim is fitted, liquid or solid, wherever the gap is above a stated limit; up to the limit the gap is pulled
     * shut.
     *
     * @param largest largest gap that the drawing lets be drawn up without shim (m); 0 for a liquid shim that fills any
     *                gap and cures before the fasteners are torqued
     */
    record WhereAbove(Given largest) implements Shim {

        @Override
        public Band left(Band gap) {
            Band limit = largest.value();
            return new Band(Math.min(gap.value(), limit.value()), Math.min(gap.low(), limit.low()),
                    Math.min(gap.high(), limit.high()));
        }

        @Override
        public List<Input> inputs() {
            return List.of(largest.as("g_max", "largest gap drawn up without shim", SiUnit.METRE));
        }

        @Override
        public String note() {
            return "Shimmed above the stated limit: a gap up to the limit is pulled shut.";
        }
    }
}
