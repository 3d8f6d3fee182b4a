package org.shortgrain.part.reader;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Dates of ISO 8601: a year, a month or a day. */
final class Dates {
    /** The form alone; whether the day exists is asked of the calendar. */
    static final String FORM = "[0-9]{4}(-[0-9]{2}(-[0-9]{2})?)?";
    private static final Pattern DATE = Pattern.compile("([0-9]{4})(?:-([0-9]{2})(?:-([0-9]{2}))?)?");

    private Dates() {
    }

    static boolean isDate(String text) {
        Matcher parts = DATE.matcher(text);
        if (!parts.matches()) {
            return false;
        }
        try {
            LocalDate.of(Integer.parseInt(parts.group(1)), number(parts.group(2)), number(parts.group(3)));
            return true;
        } catch (DateTimeException e) {
            return false;
        }
    }

    /** A part that is left out stands for any, so for the first. */
    private static int number(String part) {
        return part == null ? 1 : Integer.parseInt(part);
    }
}
