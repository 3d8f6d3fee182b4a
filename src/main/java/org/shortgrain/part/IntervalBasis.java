package org.shortgrain.part;

/** What an inspection interval rests on. */
public enum IntervalBasis implements Word {
    /** Growth of fatigue cracks. */
    FATIGUE,
    /** Growth of stress-corrosion cracks, measured in this material and environment. */
    CRACK_GROWTH_TEST,
    /** A programme against corrosion, by the calendar. */
    CALENDAR,
    /** What was found in service. */
    EXPERIENCE
}
