package org.shortgrain.mechanics.machining;

/** How far the stress of a section changes when it is cut out of the blank. */
public enum Release {
    /** Not at all: the floor of a local pocket, groove or spot-face in a stiff part. */
    AS_IS("as it was in the blank"),
    /** Its mean is released, its bending is not: kept flat by clamps, ribs or the rest of the part. */
    HELD_FLAT("held flat"),
    /** Mean and bending are released. */
    FREE_TO_BOW("free to bow");

    private final String words;

    Release(String words) {
        this.words = words;
    }

    /** {@return the release in words} */
    public String words() {
        return words;
    }
}
