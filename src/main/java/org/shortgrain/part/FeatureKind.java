package org.shortgrain.part;

/** What kind of place it is. */
public enum FeatureKind implements Word {
    /** Groove. */
    GROOVE,
    /** Pocket. */
    POCKET,
    /** Bore of a lug. */
    LUG_BORE,
    /** Bolt or rivet hole. */
    BOLT_HOLE,
    /** Fillet radius. */
    FILLET,
    /** Web. */
    WEB,
    /** Edge of a flange. */
    FLANGE_EDGE,
    /** Tapped hole. */
    THREADED_HOLE,
    /** Face against another part. */
    FAYING_SURFACE,
    /** Flash line of a die forging. */
    FLASH_LINE,
    /** Weld metal. */
    WELD,
    /** Heat-affected zone of a weld. */
    WELD_HAZ,
    /** Bore other than of a lug. */
    BORE,
    /** Shaft. */
    SHAFT,
    /** Wall. */
    WALL,
    /** Thread on the outside. */
    EXTERNAL_THREAD,
    /** Shank of a bolt. */
    BOLT_SHANK,
    /** Ear or clevis arm. */
    EAR,
    /** Place not named. */
    GENERAL
}
