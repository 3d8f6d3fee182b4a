package org.shortgrain.report.pdf;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shortgrain.part.Unit;
import org.shortgrain.review.StatedLine;

/** The description's values by their place in the file. */
final class StatedValues {

    private static final Pattern QUANTITY = Pattern.compile("([-+]?[0-9]*\\.?[0-9]+)\\s*(\\D.*)");
    private static final Pattern FEATURE_ID = Pattern.compile("/features/[0-9]+/id");
    private static final List<String> NO_VALUE = List.of("none", "unknown");

    private final Map<String, StatedLine> byPath = new LinkedHashMap<>();

    StatedValues(List<StatedLine> lines) {
        for (StatedLine line : lines) {
            byPath.putIfAbsent(line.path(), line);
        }
    }

    /** {@return the value as entered, also none and unknown; empty if the key is absent} */
    Optional<String> entered(String path) {
        StatedLine line = byPath.get(path);
        return line == null ? Optional.empty() : Optional.of(line.value());
    }

    /** {@return whether a value, not none and not unknown, is declared} */
    boolean isValue(String path) {
        StatedLine line = byPath.get(path);
        return line != null && !NO_VALUE.contains(line.value());
    }

    /** {@return a quantity in SI units; empty for a range, a word, or an absent key} */
    Optional<Double> quantity(String path) {
        Matcher matcher = QUANTITY.matcher(entered(path).orElse(""));
        if (!matcher.matches()) {
            return Optional.empty();
        }
        Optional<Unit> unit = Unit.of(matcher.group(2).strip());
        return unit.isEmpty() ? Optional.empty() : Optional.of(unit.get().toSi(new BigDecimal(matcher.group(1))));
    }

    /** {@return the lines at or below a place, in the order of the description} */
    List<StatedLine> under(String path) {
        List<StatedLine> under = new ArrayList<>();
        String below = path + "/";
        for (StatedLine line : byPath.values()) {
            if (line.path().equals(path) || line.path().startsWith(below)) {
                under.add(line);
            }
        }
        return under;
    }

    /** {@return the place to link to for a place that a rule names: itself, else the first value below it} */
    Optional<String> nearest(String path) {
        if (byPath.containsKey(path)) {
            return Optional.of(path);
        }
        String below = path + "/";
        for (String known : byPath.keySet()) {
            if (known.startsWith(below)) {
                return Optional.of(known);
            }
        }
        return Optional.empty();
    }

    /** {@return the place of the feature of that name} */
    Optional<String> feature(String id) {
        for (StatedLine line : byPath.values()) {
            if (line.value().equals(id) && FEATURE_ID.matcher(line.path()).matches()) {
                return Optional.of(line.path().substring(0, line.path().length() - "/id".length()));
            }
        }
        return Optional.empty();
    }
}
