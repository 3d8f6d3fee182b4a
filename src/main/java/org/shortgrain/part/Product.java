package org.shortgrain.part;

/** Form in which the material was made. */
public enum Product implements Word {
    /** Rolled, 6.3 mm and thicker. */
    PLATE,
    /** Rolled, thinner than plate. */
    SHEET,
    /** Forged in closed dies. */
    DIE_FORGING,
    /** Forged between open dies. */
    HAND_FORGING,
    /** Forged; die or hand not said. */
    FORGING,
    /** Pressed through a die. */
    EXTRUSION,
    /** Rolled bar or rod. */
    BAR_ROLLED,
    /** Cold-finished bar or rod. */
    BAR_COLD_FINISHED,
    /** Rolled ring. */
    RING_ROLLED,
    /** Tube. */
    TUBE,
    /** Casting. */
    CASTING,
    /** Wire. */
    WIRE,
    /** Bolt, screw, pin, nut. */
    FASTENER,
    /** Built layer by layer. */
    ADDITIVE,
    /** Formed pressure vessel. */
    PRESSURE_VESSEL,
    /** Seamless shell of a vessel. */
    SEAMLESS_SHELL,
    /** Welded from several pieces. */
    WELDMENT
}
