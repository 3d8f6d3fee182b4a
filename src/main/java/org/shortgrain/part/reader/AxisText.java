package org.shortgrain.part.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shortgrain.part.Axis;

/** A direction in part axes, as a letter or as three numbers. */
final class AxisText {
    private static final int COMPONENTS = 3;
    private static final Map<String, Axis> NAMED = Map.of("X", new Axis(1, 0, 0, "X"), "Y", new Axis(0, 1, 0, "Y"), "Z",
            new Axis(0, 0, 1, "Z"), "+X", new Axis(1, 0, 0, "+X"), "+Y", new Axis(0, 1, 0, "+Y"), "+Z",
            new Axis(0, 0, 1, "+Z"), "-X", new Axis(-1, 0, 0, "-X"), "-Y", new Axis(0, -1, 0, "-Y"), "-Z",
            new Axis(0, 0, -1, "-Z"));

    private AxisText() {
    }

    static Optional<Axis> named(Spot spot) {
        Optional<Scalar> scalar = Scalar.of(spot);
        return scalar.isPresent() ? Optional.ofNullable(NAMED.get(scalar.get().text().strip())) : Optional.empty();
    }

    /** Whether a list gives one direction in numbers, and not several directions of which one holds. */
    static boolean isVector(Spot spot) {
        Optional<Scalar> first = spot.isList() && spot.size() > 0 ? Scalar.of(spot.item(0)) : Optional.empty();
        return first.isPresent() && first.get().looksLikeNumber();
    }

    static Optional<Axis> vector(Spot spot) {
        List<Scalar> numbers = new ArrayList<>();
        for (int i = 0; i < spot.size(); i++) {
            Scalar.of(spot.item(i)).filter(Scalar::isNumber).ifPresent(numbers::add);
        }
        if (spot.size() != COMPONENTS || numbers.size() != COMPONENTS) {
            return Optional.empty();
        }
        List<Double> v = numbers.stream().map(number -> Double.valueOf(number.text())).toList();
        double length = Math.hypot(Math.hypot(v.get(0), v.get(1)), v.get(2));
        return length > 0 ? Optional.of(new Axis(v.get(0) / length, v.get(1) / length, v.get(2) / length,
                numbers.stream().map(Scalar::text).toList().toString())) : Optional.empty();
    }
}
