package org.shortgrain.mechanics.fit;

import java.util.List;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/**
 * Diametral interference of a fit as assembled, before any change of temperature: the inner part's diameter less the
 * hole's. Negative means clearance.
 *
 * <p>No loss for flattened asperities is taken off: published allowances differ by a factor of about three, and for
 * stress corrosion none is the upper bound.
 */
public sealed interface Interference {

    /** {@return the nominal diameter of the interface (m)} */
    double diameter();

    /** {@return the diametral interference with its range (m)} */
    Band diametral();

    /** {@return how the interference follows from the inputs} */
    String equation();

    /** {@return the numbers it follows from} */
    List<Input> inputs();

    /** {@return what makes the rings a screen rather than a model of this fit; empty for plain rings} */
    default Optional<String> caution() {
        return Optional.empty();
    }

    /**
     * From the limits of size of hole and inner part: delta_max = d_max - D_min, delta_min = d_min - D_max.
     * Source: Brown, Marks' Calculations for Machine Design, 2005, eqs 3.17 and 3.18, there halved to radial (read).
     *
     * @param hole  diameter of the hole (m)
     * @param inner outside diameter of the bush or pin (m)
     */
    record FromLimits(Given hole, Given inner) implements Interference {

        @Override
        public double diameter() {
            return hole.value().value();
        }

        @Override
        public Band diametral() {
            Band d = inner.value();
            Band h = hole.value();
            return new Band(d.value() - h.value(), d.low() - h.high(), d.high() - h.low());
        }

        @Override
        public String equation() {
            return "delta = d_inner - D_hole";
        }

        @Override
        public List<Input> inputs() {
            return List.of(hole.as("D_hole", "diameter of the hole", SiUnit.METRE),
                    inner.as("d_inner", "outside diameter of the inner part", SiUnit.METRE));
        }
    }

    /**
     * From driving a taper home: delta = advance x taper on diameter. Serves taper pins, taper-seated fasteners
     * (advance: head protrusion pulled in) and tapered pipe threads (advance beyond hand tight).
     *
     * @param at      diameter of the interface at the section judged (m)
     * @param advance axial advance after first contact (m)
     * @param taper   change of diameter per length (dimensionless), such as 1/48 or 1/16
     */
    record FromTaper(Given at, Given advance, Given taper) implements Interference {

        /** Refuses a negative taper or advance. */
        public FromTaper {
            if (advance.value().low() < 0 || taper.value().low() < 0) {
                throw new IllegalArgumentException("taper and advance must not be negative");
            }
        }

        @Override
        public double diameter() {
            return at.value().value();
        }

        @Override
        public Band diametral() {
            Band a = advance.value();
            Band c = taper.value();
            return new Band(a.value() * c.value(), a.low() * c.low(), a.high() * c.high());
        }

        @Override
        public String equation() {
            return "delta = advance x taper";
        }

        @Override
        public List<Input> inputs() {
            return List.of(at.as("d", "diameter of the interface", SiUnit.METRE),
                    advance.as("advance", "axial advance after first contact", SiUnit.METRE),
                    taper.as("taper", "change of diameter per length", SiUnit.ONE));
        }

        @Override
        public Optional<String> caution() {
            return Optional.of("Screen: the taper is taken as a straight ring at the section judged, in contact all round.");
        }
    }

    /**
     * Wedging of a solid insert or stud in its thread: its thread interference is treated like that of a smooth bush.
     * No published closed form was found; the screen is meant to err on the high side.
     *
     * @param thread   major diameter of the outer thread (m)
     * @param wedging  diametral interference of the thread (m)
     */
    record OfThread(Given thread, Given wedging) implements Interference {

        @Override
        public double diameter() {
            return thread.value().value();
        }

        @Override
        public Band diametral() {
            return wedging.value();
        }

        @Override
        public String equation() {
            return "delta = interference of the thread";
        }

        @Override
        public List<Input> inputs() {
            return List.of(thread.as("d", "major diameter of the outer thread", SiUnit.METRE),
                    wedging.as("delta", "diametral interference of the thread", SiUnit.METRE));
        }

        @Override
        public Optional<String> caution() {
            return Optional.of("Screen: the thread is taken as a smooth bush of its major diameter; notches and locking"
                    + " keys are not in it.");
        }
    }

    /**
     * Stated as such on the drawing, or measured.
     *
     * @param at     diameter of the interface (m)
     * @param stated diametral interference (m)
     */
    record Stated(Given at, Given stated) implements Interference {

        @Override
        public double diameter() {
            return at.value().value();
        }

        @Override
        public Band diametral() {
            return stated.value();
        }

        @Override
        public String equation() {
            return "delta as stated";
        }

        @Override
        public List<Input> inputs() {
            return List.of(at.as("d", "diameter of the interface", SiUnit.METRE),
                    stated.as("delta", "diametral interference", SiUnit.METRE));
        }
    }
}
