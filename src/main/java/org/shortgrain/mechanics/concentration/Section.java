package org.shortgrain.mechanics.concentration;

/** Section whose nominal stress a concentration factor multiplies. */
public enum Section {
    /** The full section, as if there were no hole or notch. */
    GROSS("gross"),
    /** What the hole, notch or step leaves. */
    NET("net");

    private final String word;

    Section(String word) {
        this.word = word;
    }

    /** {@return the word for it in reports} */
    public String word() {
        return word;
    }
}
