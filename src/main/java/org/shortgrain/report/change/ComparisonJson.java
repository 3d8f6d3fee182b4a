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
        JsonOut out = new JsonOut();
        out.text("format", FORMAT).whole("version", VERSION);
        side(out, "before", comparison.before());
        side(out, "after", comparison.after());
        out.truth("same", comparison.isSame()).truth("worse", comparison.isWorse());
        out.list("inputs");
        for (Comparison.InputChange one : comparison.inputs()) {
            out.item().text("path", one.path()).text("before", one.before()).text("after", one.after()).end();
        }
        out.end().list("factors");
        for (Comparison.FactorChange one : comparison.factors()) {
            out.item().text("feature", one.feature()).text("factor", one.factor().word())
                    .text("before", one.before().word()).text("after", one.after().word()).end();
        }
        out.end().list("findings");
        for (Comparison.FindingChange one : comparison.findings()) {
            out.item().text("fate", one.fate().word()).text("rule", one.rule()).text("feature", one.feature())
                    .text("idBefore", one.before()).text("idAfter", one.after())
                    .text("gradeBefore", one.was().map(Grade::word)).text("gradeAfter", one.is().map(Grade::word))
                    .truth("decisive", one.decisive()).text("title", one.title()).truth("worse", one.isWorse()).end();
        }
        out.end().list("numbers");
        for (Comparison.NumberChange one : comparison.numbers()) {
            out.item().text("what", one.what()).text("calculation", one.id());
            amount(out, "before", one.before());
            amount(out, "after", one.after());
            out.truth("beyondItsBand", one.isBeyondItsBand()).truth("worse", one.isWorse()).end();
        }
        return out.end().texts("texts", comparison.texts()).bytes();
    }

    private static void side(JsonOut out, String key, Comparison.Side side) {
        out.object(key).text("part", side.part()).text("date", side.date()).text("contentHash", side.contentHash())
                .text("input", side.input()).text("rulebook", side.rulebook()).text("verdict", side.verdict().name()).end();
    }

    private static void amount(JsonOut out, String key, Optional<Amount> amount) {
        amount.ifPresent(one -> out.object(key).text("unit", one.unit()).number("value", one.value())
                .number("low", one.low()).number("high", one.high()).end());
    }
}
