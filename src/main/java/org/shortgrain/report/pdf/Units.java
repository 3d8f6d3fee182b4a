package org.shortgrain.report.pdf;

/** In which units the report prints numbers. */
public enum Units {
    /** SI: MPa, mm, degC. */
    SI,
    /** US customary: ksi, in, degF. */
    US,
    /** SI with US customary behind it. */
    BOTH
}
