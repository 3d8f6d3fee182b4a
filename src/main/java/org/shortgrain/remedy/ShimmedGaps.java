package org.shortgrain.remedy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.shortgrain.part.ClampUp;
import org.shortgrain.part.Shim;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.JsonPatch;

/**
 * The gaps of a place with what is above a limit shimmed.
 *
 * @param path   place of the gaps in the description
 * @param limits the largest gap drawn up without shim, for each gap (m); 0 where a liquid shim fills any gap
 */
record ShimmedGaps(String path, List<Double> limits) {

    private static final double MILLI = 1e-3;
    /** Digits after the point of a millimetre: enough for a search. */
    private static final int DIGITS = 9;

    /** Copies the list. */
    ShimmedGaps {
        limits = List.copyOf(limits);
    }

    /** {@return the change; a solid shim that is stated stays where a gap is left for it} */
    JsonPatch change(EditableDescription now, List<ClampUp> stated) {
        Edits edits = new Edits(now);
        for (int k = 0; k < limits.size(); k++) {
            boolean solid = limits.get(k) > 0 && k < stated.size() && stated.get(k).shim().is(Shim.SOLID);
            edits.set(path + "/" + k + "/shim", solid ? "solid" : "liquid");
            edits.set(path + "/" + k + "/max_gap_without_shim", millimetres(limits.get(k)));
        }
        return edits.patch();
    }

    /** {@return what is done at a place, for a text} */
    String say(String id) {
        List<String> different = limits.stream().map(ShimmedGaps::millimetres).distinct().toList();
        if (different.size() > 1) {
            return "gaps at " + id + " above " + limits.stream().map(ShimmedGaps::millimetres).collect(Collectors.joining(", "))
                    + ", in the order of the description, shimmed before torque";
        }
        return limits.get(0) > 0 ? "gaps at " + id + " above " + different.get(0) + " shimmed before torque"
                : "every gap at " + id + " filled with liquid shim, cured before torque";
    }

    static String millimetres(double metres) {
        BigDecimal value = BigDecimal.valueOf(metres / MILLI).setScale(DIGITS, RoundingMode.HALF_UP).stripTrailingZeros();
        BigDecimal shown = value.scale() < 2 ? value.setScale(2) : value;
        return String.format(Locale.ROOT, "%s mm", shown.toPlainString());
    }
}
