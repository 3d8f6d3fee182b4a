package org.shortgrain.part;

/** Shape when heat treated. */
public enum Shape implements Word {
    /** Flat, much wider than thick. */
    PLATE,
    /** Round or compact bar. */
    CYLINDER,
    /** Hollow. */
    TUBE
}
