package org.shortgrain.part.reader;

/**
 * The catalogue of what can be wrong with an input, each with the words for what was found, what was expected and what
 * to do. Placeholders are filled with the values of a {@link Problem}.
 */
public enum ProblemCode {
    /** No file of that name. */
    MISSING_FILE("there is no such file", "a part description in YAML",
            "Check the path; \"shortgrain start\" writes a blank description"),
    /** A directory or a device. */
    NOT_A_FILE("this is a directory or a device", "a file that holds a part description",
            "Name the file itself"),
    /** No permission, or the disk fails. */
    UNREADABLE("the file cannot be read (%1$s)", "a file that you may read", "Check its permissions"),
    /** Far larger than any description. */
    TOO_LARGE("the file has more than %1$s bytes", "the description of one part, some kilobytes",
            "Check that this is the right file"),
    /** Nothing but blanks and comments. */
    EMPTY_FILE("the file holds no data", "a part description in YAML",
            "\"shortgrain start\" writes a blank description to fill in"),
    /** Another encoding. */
    NOT_UTF8("the byte 0x%1$s is not UTF-8 text", "text encoded in UTF-8",
            "Save the file with the encoding UTF-8 in your editor"),
    /** A control character. */
    CONTROL_CHARACTER("the character U+%1$s is a control character", "printable text", "Delete the character"),
    /** A tab where YAML wants spaces. */
    TAB("a tab character stands where YAML takes only spaces", "spaces", "Replace the tab by spaces"),
    /** Malformed YAML. */
    NOT_YAML("this is not well-formed YAML: %1$s", "one key and value a line, groups indented by spaces",
            "Look at the quotes, brackets, colons and indentation of this line and the one above"),
    /** Two documents in one file. */
    SECOND_DOCUMENT("a second document begins here", "one part a file", "Give each part its own file"),
    /** Many aliases, or nested ones. */
    TOO_MANY_ALIASES("the file uses too many YAML aliases (*name)", "at most %1$s uses of aliases for groups and lists",
            "Write the values out"),
    /** Nested beyond reason. */
    TOO_DEEP("groups or lists are nested more than %1$s deep", "a part description, at most some ten levels deep",
            "Look for brackets that are not closed"),
    /** An alias inside its own anchor. */
    SELF_REFERENCE("this value contains itself through a YAML alias", "values that end", "Write the value out"),
    /** The same key twice. */
    DUPLICATE_KEY("the key \"%1$s\" stands here for the second time; the first is in line %2$s", "each key once",
            "Delete one of the two, or join them"),
    /** A list or group as key. */
    KEY_NOT_TEXT("a list or a group stands where a key is expected", "a word as key",
            "Put quotes around text that begins with a bracket"),
    /** A YAML tag. */
    TAG("the YAML tag %1$s is not read", "plain values", "Delete the tag"),
    /** Text or a list at the top. */
    NOT_A_DESCRIPTION("the file holds %1$s",
            "a part description: keys such as part, material, form, route and features",
            "\"shortgrain start\" writes a blank description to fill in"),
    /** A version that this reader does not know. */
    SCHEMA_VERSION("%1$s", "schema: 1, the only version of the form of a description", "Write schema: 1"),
    /** A key that is not in the form. */
    UNKNOWN_KEY("the key \"%1$s\" is not known here", "%2$s", "%3$s"),
    /** A key without value. */
    EMPTY_VALUE("there is no value", "%1$s", "Write unknown if it is stated nowhere, none if there is none, or take "
            + "the key out if you have not looked"),
    /** A list where text stands, or the other way round. */
    WRONG_KIND("%1$s stands here", "%2$s", "%3$s"),
    /** A number without unit. */
    BARE_NUMBER("the number %1$s has no unit", "a %2$s with its unit (%3$s)", "Write for example \"%1$s %4$s\""),
    /** A unit that is not in the table. */
    UNKNOWN_UNIT("\"%1$s\" has the unknown unit \"%2$s\"", "a %3$s in one of the units %4$s", "%5$s"),
    /** A unit of something else. */
    WRONG_DIMENSION("\"%1$s\" is a %2$s", "a %3$s in one of the units %4$s", "Look at the unit, or at the key"),
    /** Neither number and unit, nor a state. */
    NOT_A_QUANTITY("\"%1$s\" is no number with a unit", "a %2$s in one of the units %3$s", "%4$s"),
    /** Text that is no number. */
    NOT_A_NUMBER("\"%1$s\" is no plain number", "a number such as 1.8", "%2$s"),
    /** Text that is no date. */
    NOT_A_DATE("\"%1$s\" is no date", "a date in the form 2026-01-15, or 2026-01 or 2026 where no more is known",
            "Write year, month and day with hyphens"),
    /** Text that is no truth value. */
    NOT_TRUE_OR_FALSE("\"%1$s\" stands here", "true, false, none or unknown", "%2$s"),
    /** Beyond the limits of the key. */
    OUT_OF_RANGE("\"%1$s\" is out of range", "%2$s", "Look at the point and the unit"),
    /** Lower limit above the upper. */
    CROSSED_LIMITS("the lower limit \"%1$s\" is above the upper limit \"%2$s\"", "min below max", "Exchange the two"),
    /** A range without limits. */
    NO_LIMITS("the range has neither min nor max", "{min: ..., max: ...} with one limit at least",
            "Write the limits, or unknown in place of the range"),
    /** Not a word of the list. */
    UNKNOWN_WORD("the word \"%1$s\" is not known here", "one of %2$s", "%3$s"),
    /** Yes, no, n/a in place of an answer. */
    UNCLEAR_ANSWER("\"%1$s\" leaves open what is meant", "%2$s, none or unknown",
            "Write none if there is none, unknown if it is stated nowhere; "
                    + "put quotes around it if it is the very text"),
    /** None or unknown beside values. */
    STATE_IN_LIST("the word %1$s stands beside other values", "a list of values, or the word alone",
            "Write the word in place of the list, or leave it out of the list"),
    /** Three numbers are no direction. */
    NOT_AN_AXIS("%1$s is no direction",
            "X, Y, Z, -X, -Y, -Z or three numbers that are not all zero, such as [0, 0.34, 0.94]",
            "Give the direction in the axes of the part"),
    /** A field without which no report is made. */
    MISSING_FIELD("%1$s is %2$s", "%3$s", "Write it in"),
    /** Two features of one name. */
    DUPLICATE_FEATURE("the feature id \"%1$s\" is used twice; the first is in line %2$s",
            "a name of its own for each feature", "Rename one of the two"),
    /** A decision on a finding that is not there. */
    UNKNOWN_FINDING("%1$s is no finding or question of this review", "%2$s",
            "If the finding was cleared, take its decision out; it stays in the earlier issue of the report"),
    /** A decision on a finding whose number another one bears now. */
    OTHER_FINDING("%1$s was decided on as %2$s, and is now %3$s", "a decision on the finding that bears the number",
            "%4$s"),
    /** Decisions on another part. */
    OTHER_PART("these are decisions on %1$s", "decisions on the part that is reviewed, %2$s",
            "Name the right file with --dispositions, or keep one for each part as PART.findings.yaml"),
    /** No digits of a content hash. */
    NOT_A_HASH("\"%1$s\" is no content hash", "16 to 64 hexadecimal digits, as at the foot of each page of the report",
            "Copy them from the report, in quotes"),
    /** Text with characters that cannot be printed. */
    UNPRINTABLE_TEXT("the text holds a character that cannot be printed (U+%1$s)", "printable text",
            "Delete the character"),

    /** A route row or a crack names a feature that is not described. */
    UNKNOWN_FEATURE(true, "no feature has the id \"%1$s\"", "one of %2$s", "%3$s"),
    /** Inch or millimetre? */
    UNUSUAL(true, "\"%1$s\" is unusual", "usually %2$s to %3$s", "Check the unit; the value is used as it stands"),
    /** Version not said. */
    NO_SCHEMA_VERSION(true, "the key schema is missing", "schema: 1", "Write schema: 1 as the first key; 1 is taken");

    private final boolean warning;
    private final String found;
    private final String expected;
    private final String advice;

    ProblemCode(String found, String expected, String advice) {
        this(false, found, expected, advice);
    }

    ProblemCode(boolean warning, String found, String expected, String advice) {
        this.warning = warning;
        this.found = found;
        this.expected = expected;
        this.advice = advice;
    }

    /** {@return whether the description is read all the same} */
    public boolean isWarning() {
        return warning;
    }

    /** {@return whether there was nothing to read: the file is missing, no file, or not readable} */
    public boolean isInputMissing() {
        return this == MISSING_FILE || this == NOT_A_FILE || this == UNREADABLE;
    }

    String found(Object... values) {
        return found.formatted(values);
    }

    String expected(Object... values) {
        return expected.formatted(values);
    }

    String advice(Object... values) {
        return advice.formatted(values);
    }
}
