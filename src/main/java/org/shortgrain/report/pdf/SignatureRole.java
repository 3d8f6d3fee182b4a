package org.shortgrain.report.pdf;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Who signs a report, in the order of signing, each in the field that the report holds ready. */
public enum SignatureRole {
    /** Ran the review and owns the description. */
    PREPARED("sigPrepared", Signing.ROLE_PREPARED, Signing.MEANING_PREPARED),
    /** Another person, who read the description against the drawing. */
    CHECKED("sigChecked", Signing.ROLE_CHECKED, Signing.MEANING_CHECKED),
    /** Materials and processes. */
    MP_REVIEW("sigMpReview", Signing.ROLE_MP_REVIEW, Signing.MEANING_MP_REVIEW),
    /** Stress, where a number decides. */
    STRESS_REVIEW("sigStressReview", Signing.ROLE_STRESS_REVIEW, Signing.MEANING_STRESS_REVIEW),
    /** Quality, where route or evidence decides. */
    QUALITY("sigQuality", Signing.ROLE_QUALITY, Signing.MEANING_QUALITY),
    /** The design authority. */
    APPROVED("sigApproved", Signing.ROLE_DESIGN_AUTHORITY, Signing.MEANING_DESIGN_AUTHORITY);

    private final String field;
    private final Signing title;
    private final Signing meaning;

    SignatureRole(String field, Signing title, Signing meaning) {
        this.field = field;
        this.title = title;
        this.meaning = meaning;
    }

    /**
     * {@return the role that signs in a field}
     *
     * @param field name of a signature field
     */
    public static Optional<SignatureRole> ofField(String field) {
        return Arrays.stream(values()).filter(role -> role.field.equals(field)).findFirst();
    }

    /** {@return the word of the command line} */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** {@return name of the signature field} */
    public String field() {
        return field;
    }

    /**
     * {@return the role in the words of the report}
     *
     * @param wording words of the report
     */
    public String title(Wording wording) {
        return wording.words(title);
    }

    /**
     * {@return what signing in this role states}
     *
     * @param wording words of the report
     */
    public String meaning(Wording wording) {
        return wording.words(meaning);
    }

    @Override
    public String toString() {
        return word();
    }
}
