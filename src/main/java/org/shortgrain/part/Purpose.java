package org.shortgrain.part;

/** Why the part is reviewed. */
public enum Purpose implements Word {
    /** A design before release. */
    DESIGN,
    /** A supplier checks before planning release; loads and neighbours may be missing. */
    SUPPLIER_PRECHECK,
    /** An auditor samples released work. */
    AUDIT,
    /** A departure is to be decided. */
    CONCESSION_SUPPORT,
    /** A part in service, with or without a crack. */
    IN_SERVICE
}
