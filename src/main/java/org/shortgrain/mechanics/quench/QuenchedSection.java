package org.shortgrain.mechanics.quench;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The section as it went into the bath: the blank, or the rough-machined part with its allowance, never the finished
 * part.
 *
 * @param shape     its shape
 * @param thickness smallest dimension of the section or diameter, m; wall for a tube; empty when not known
 * @param width     other dimension of the section, m; empty when not known or not applicable
 */
public record QuenchedSection(Shape shape, OptionalDouble thickness, OptionalDouble width) {

    /** Width over thickness below which a section cools from all sides and is held from three: a compact bar. */
    public static final double COMPACT_BELOW = 1.5;
    /** Width over thickness from which the middle of a section behaves as a wide plate. */
    public static final double PLATE_FROM = 2.0;

    /** Refuses missing parts and lengths that are not positive. */
    public QuenchedSection {
        Objects.requireNonNull(shape, "shape");
        if (thickness.isPresent() && !(thickness.getAsDouble() > 0) || width.isPresent() && !(width.getAsDouble() > 0)) {
            throw new IllegalArgumentException("section " + thickness + " by " + width);
        }
    }

    /** Shape of the section. */
    public enum Shape {
        /** Plate, sheet, wide web or wide forging: cooled from two faces, unless a width says that it is compact. */
        PLATE,
        /** Rectangular bar, boss or blocky forging. */
        RECTANGULAR_BAR,
        /** Round bar. */
        ROUND_BAR,
        /** Tube or ring, wet inside and outside: its wall behaves as a plate. */
        TUBE,
        /** Not known: the worse of plate and bar counts. */
        UNKNOWN
    }

    /**
     * {@return a section of which only the thickness matters}
     *
     * @param shape     its shape
     * @param thickness its thickness or diameter, m
     */
    public static QuenchedSection of(Shape shape, double thickness) {
        return new QuenchedSection(shape, OptionalDouble.of(thickness), OptionalDouble.empty());
    }

    /** {@return width over thickness, at least one; empty when it is not known} */
    public OptionalDouble slenderness() {
        if (thickness.isEmpty() || width.isEmpty()) {
            return OptionalDouble.empty();
        }
        double ratio = width.getAsDouble() / thickness.getAsDouble();
        return OptionalDouble.of(Math.max(ratio, 1 / ratio));
    }

    /** {@return smallest dimension of the section, m; empty when the thickness is not known} */
    public OptionalDouble rulingThickness() {
        if (thickness.isEmpty() || width.isEmpty()) {
            return thickness;
        }
        return OptionalDouble.of(Math.min(thickness.getAsDouble(), width.getAsDouble()));
    }

    /** {@return whether the section may behave as a compact bar, held from three sides} */
    public boolean mayBeCompact() {
        return switch (shape) {
            case ROUND_BAR -> true;
            case TUBE -> false;
            case PLATE -> slenderness().isPresent() && slenderness().getAsDouble() < PLATE_FROM;
            case RECTANGULAR_BAR, UNKNOWN -> slenderness().isEmpty() || slenderness().getAsDouble() < PLATE_FROM;
        };
    }

    /** {@return whether the section may behave as a wide plate along its length} */
    public boolean mayBePlate() {
        return switch (shape) {
            case ROUND_BAR -> false;
            case TUBE -> true;
            case PLATE, RECTANGULAR_BAR, UNKNOWN -> slenderness().isEmpty()
                    || slenderness().getAsDouble() >= COMPACT_BELOW;
        };
    }

    /**
     * {@return whether the section may behave as a wide plate across its length} The stress across the width turns into
     * that of a plate sooner than the stress along: a two-dimensional check at width over thickness 1.47 gave the
     * plate's value, at 1 the bar's (own computation, cold water, 75 mm).
     */
    public boolean mayBePlateAcross() {
        return mayBePlate() || shape != Shape.ROUND_BAR && slenderness().getAsDouble() > 1;
    }
}
