package org.shortgrain.report.change;

import java.util.Optional;
import org.shortgrain.report.json.JsonOut;
import org.shortgrain.review.Amount;
import org.shortgrain.review.Grade;

/** A comparison as data: {@code shortgrain-comparison}, version 1. The same comparison gives the same bytes. */
public final class ComparisonJson {

    /** The value of the key {@code format}. */
    public static final String FORMAT = "shortgrain-comparison";
    private static final int VERSION = 1;

    private ComparisonJson() {
    }

    /**
     * {@return the bytes of a comparison, UTF-8}
     *
     * @param comparison the comparison
     */
    public static byte[] bytes(Comparison comparison) {
        return JsonOut.bytes(out -> {
            out.text("format", FORMAT).whole("version", VERSION);
            side(out, "before", comparison.before());
            side(out, "after", comparison.after());
            out.truth("same", comparison.isSame()).truth("worse", comparison.isWorse());
            out.objects("inputs", comparison.inputs(), one -> out.text("path", one.path()).text("before", one.before())
                    .text("after", one.after()));
            out.objects("factors", comparison.factors(), one -> out.text("feature", one.feature())
                    .text("factor", one.factor().word()).text("before", one.before().word()).text("after", one.after().word()));
            out.objects("findings", comparison.findings(), one -> out.text("fate", one.fate().word()).text("rule", one.rule())
                    .text("feature", one.feature()).text("idBefore", one.before()).text("idAfter", one.after())
                    .text("gradeBefore", one.was().map(Grade::word)).text("gradeAfter", one.is().map(Grade::word))
                    .truth("decisive", one.decisive()).text("title", one.title()).truth("worse", one.isWorse()));
            out.objects("numbers", comparison.numbers(), one -> {
                out.text("what", one.what()).text("calculation", one.id());
                amount(out, "before", one.before());
                amount(out, "after", one.after());
                out.truth("beyondItsBand", one.isBeyondItsBand()).truth("worse", one.isWorse());
            });
            out.texts("texts", comparison.texts());
        });
    }

    private static void side(JsonOut out, String key, Comparison.Side side) {
        out.object(key, () -> out.text("part", side.part()).text("date", side.date()).text("contentHash", side.contentHash())
                .text("input", side.input()).text("rulebook", side.rulebook()).text("verdict", side.verdict().name()));
    }

    private static void amount(JsonOut out, String key, Optional<Amount> amount) {
        amount.ifPresent(one -> out.object(key, () -> out.text("unit", one.unit()).number("value", one.value())
                .number("low", one.low()).number("high", one.high())));
    }
}
