package org.shortgrain.part;

/** Whether an operation was done. */
public enum Done implements Word {
    /** Done. */
    YES,
    /** Not done. */
    NO,
    /** No record of it. */
    NOT_ON_RECORD
}
