package org.shortgrain.report.change;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shortgrain.report.change.Comparison.FindingChange;
import org.shortgrain.report.change.Comparison.NumberChange;
import org.shortgrain.review.Amount;
import org.shortgrain.review.Grade;
import org.shortgrain.terms.PlainText;

/** A comparison for a terminal. */
public final class ComparisonText {

    private static final int WIDTH = 110;
    private static final int INPUTS_SHOWN = 30;
    private static final MathContext FOUR_DIGITS = new MathContext(4);

    private ComparisonText() {
    }

    /**
     * {@return the comparison, each line ended by a line feed}
     *
     * @param comparison the comparison
     */
    public static String of(Comparison comparison) {
        List<String> lines = new ArrayList<>();
        lines.addAll(sides(comparison));
        lines.addAll(changes(comparison));
        lines.add(comparison.isSame() ? "Same." : comparison.isWorse() ? "Something got worse." : "Nothing got worse.");
        return lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    }

    private static List<String> sides(Comparison comparison) {
        Comparison.Side was = comparison.before();
        Comparison.Side is = comparison.after();
        List<String> lines = new ArrayList<>();
        lines.add("Before  " + PlainText.clean(was.part()) + ", reviewed " + was.date() + ": " + was.verdict().words());
        lines.add("After   " + PlainText.clean(is.part()) + ", reviewed " + is.date() + ": " + is.verdict().words());
        if (!was.rulebook().equals(is.rulebook())) {
            lines.add("Rulebook before " + was.rulebook());
            lines.add("Rulebook after  " + is.rulebook());
        }
        return lines;
    }

    /**
     * {@return what differs, in lines; empty if nothing does}
     *
     * @param comparison the comparison
     */
    public static List<String> changes(Comparison comparison) {
        List<String> lines = new ArrayList<>();
        block(lines, "Inputs", comparison.inputs().stream().limit(INPUTS_SHOWN)
                .map(one -> one.path() + ": " + one.before().orElse("(absent)") + " -> " + one.after().orElse("(absent)"))
                .toList());
        if (comparison.inputs().size() > INPUTS_SHOWN) {
            lines.add("  ... and " + (comparison.inputs().size() - INPUTS_SHOWN) + " more");
        }
        block(lines, "Factors", comparison.factors().stream().map(one -> one.feature() + " " + one.factor().word() + ": "
                + one.before().word() + " -> " + one.after().word()).toList());
        block(lines, "Findings", comparison.findings().stream().map(ComparisonText::finding).toList());
        block(lines, "Numbers beyond their band", comparison.numbers().stream()
                .filter(one -> one.isBeyondItsBand() || one.before().isEmpty() || one.after().isEmpty())
                .map(ComparisonText::number).toList());
        block(lines, "Numbers within their band", comparison.numbers().stream()
                .filter(one -> !one.isBeyondItsBand() && one.before().isPresent() && one.after().isPresent())
                .map(ComparisonText::number).toList());
        if (!comparison.texts().isEmpty()) {
            lines.addAll(PlainText.lines("Differ in words: ", "  ", String.join(", ", comparison.texts()), WIDTH));
        }
        return lines;
    }

    private static void block(List<String> lines, String title, List<String> items) {
        if (!items.isEmpty()) {
            lines.add(title);
            items.forEach(item -> lines.addAll(PlainText.lines("  ", "    ", item, WIDTH)));
        }
    }

    private static String finding(FindingChange one) {
        String numbers = one.before().equals(one.after()) || one.before().isEmpty() || one.after().isEmpty()
                ? one.after().or(one::before).orElse("") : one.before().get() + " -> " + one.after().get();
        String grades = one.was().equals(one.is()) || one.was().isEmpty() || one.is().isEmpty()
                ? one.is().or(one::was).map(Grade::word).orElse("") : one.was().get().word() + " -> " + one.is().get().word();
        return one.fate().words() + ": " + numbers + " " + grades + (one.decisive() ? " (decisive)" : "") + ", " + one.rule()
                + one.feature().map(id -> " at " + id).orElse("") + ": " + one.title();
    }

    private static String number(NumberChange one) {
        return one.id().map(id -> id + " ").orElse("") + one.what() + ": " + amount(one.before()) + " -> "
                + amount(one.after());
    }

    /**
     * {@return a number with its range and unit}
     *
     * @param amount the number; empty if it was not computed
     */
    public static String amount(Optional<Amount> amount) {
        return amount.map(one -> {
            String range = one.low() == one.high() ? "" : " (" + digits(one.low()) + " to " + digits(one.high()) + ")";
            return digits(one.value()) + range + (one.unit().equals("1") ? "" : " " + one.unit());
        }).orElse("not computed");
    }

    private static String digits(double value) {
        BigDecimal rounded = new BigDecimal(value).round(FOUR_DIGITS).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : Math.abs(rounded.precision() - rounded.scale()) > 6 ? rounded.toString()
                : rounded.toPlainString();
    }
}
