package org.shortgrain.review;

/** What the review says of the part as described. The tool never approves; a person decides. */
public enum Verdict {
    /** Sign-off stops: the three factors meet, or a rule that stops sign-off is broken. */
    OBJECTION,
    /** A datum that can change the verdict is missing or contradictory. */
    CANNOT_BE_JUDGED,
    /** Sign-off is possible once the listed actions are done. */
    NO_OBJECTION_SUBJECT_TO_CONDITIONS,
    /** No rule of the rulebook objected to what was declared. */
    NO_OBJECTION;

    /** {@return the verdict in words} */
    public String words() {
        return name().replace('_', ' ');
    }
}
