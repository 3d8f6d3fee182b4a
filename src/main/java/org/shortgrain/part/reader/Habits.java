package org.shortgrain.part.reader;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Ways in which people write quantities that are not read, since they are ambiguous, and what to write instead. */
final class Habits {
    private static final List<Habit> KNOWN = List.of(
            new Habit("[0-9][,'\u2019][0-9]|[0-9]+ [0-9]",
                    "Write decimals with a point and thousands without separator, such as \"0.5 %1$s\" or \"1000 "
                            + "%1$s\""),
            new Habit("[0-9] ?/ ?[0-9]", "Write fractions as decimals, such as \"0.375 %1$s\""),
            new Habit("[0-9][eE][-+]?[0-9]", "Write the number out, without exponent"),
            new Habit("(^|[^0-9])\\.[0-9]", "Write a zero before the point, such as \"0.5 %1$s\""),
            new Habit("[0-9] ?[^0-9]{0,4}(-|\u2013|to|\u2026|\\.\\.) ?[0-9]|\u00b1|\\+/?-|[<>~\u2264\u2265]|max|min",
                    "Write limits as {min: 1 %1$s, max: 2 %1$s}, or one of the two"));

    private record Habit(Pattern sign, String advice) {
        Habit(String sign, String advice) {
            this(Pattern.compile(sign), advice);
        }
    }

    private Habits() {
    }

    static Optional<String> advice(String text, String unit) {
        return KNOWN.stream().filter(habit -> habit.sign().matcher(text).find())
                .map(habit -> habit.advice().formatted(unit)).findFirst();
    }
}
