package org.shortgrain.reference;

/** A datum that is missing from the question and on which the answer depends. */
public enum OpenDatum {
    /** Alloy unknown: the worst of the family is taken. */
    ALLOY("alloy"),
    /** Temper not stated or not readable. */
    TEMPER("temper or condition"),
    /** Digits of the temper are missing. */
    TEMPER_DIGITS("all digits of the temper"),
    /** Heat treated by the user: a row for mill product holds only with proof of the temper. */
    TEMPER_PROOF("proof of the temper, since the user heat treated it"),
    /** Product form not stated. */
    PRODUCT_FORM("product form"),
    /** Thickness at heat treatment not stated. */
    THICKNESS("thickness at heat treatment"),
    /** Width of a bar not stated: up to twice its thickness, LT is ST. */
    WIDTH("width of the bar"),
    /** Tensile strength not stated. */
    STRENGTH("greatest tensile strength");

    private final String word;

    OpenDatum(String word) {
        this.word = word;
    }

    /** {@return what is missing, in words} */
    public String word() {
        return word;
    }
}
