package org.shortgrain.remedy;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.shortgrain.part.Form;
import org.shortgrain.part.Product;
import org.shortgrain.part.RouteStep;
import org.shortgrain.part.reader.DescriptionValue;
import org.shortgrain.reference.ReliefDigits;

/**
 * Cold compression of a forging between quench and ageing, where the card quenches it and relieves it by nothing, and the
 * tables say what the digits of the temper stand for and that the form carries them.
 *
 * @param after  place of the quench on the card
 * @param number its operation number
 * @param digits relief digits of the temper
 * @param action what they stand for
 */
record Compression(int after, String number, String digits, ReliefDigits.Action action) {

    /** The digits of compressing and of restriking in the finish die. */
    private static final Pattern RELIEVED = Pattern.compile("T\\d{1,2}(52|54)");
    private static final Set<String> RELIEFS = Set.of("stretch", "compress", "cold_die_set", "stress_relieve_mechanical",
            "uphill_quench");
    private static final Set<ReliefDigits.Verdict> CARRIED = Set.of(ReliefDigits.Verdict.USUAL, ReliefDigits.Verdict.EXPECTED,
            ReliefDigits.Verdict.POSSIBLE);
    private static final double PERCENT = 100;

    /**
     * {@return the compression that a temper asks the card for; empty where the card has a relief, or the tables do not cover it}
     *
     * @param subject the part
     * @param temper  the temper to reach
     */
    static Optional<Compression> of(Subject subject, String temper) {
        Matcher relieved = RELIEVED.matcher(temper);
        Optional<String> form = subject.part().form().field(Form::product).single().map(Product::word);
        List<RouteStep> route = subject.route();
        int quench = IntStream.range(0, route.size()).filter(i -> route.get(i).operation().is("quench")).reduce((a, b) -> b).orElse(-1);
        boolean open = quench >= 0 && route.stream().skip(quench).noneMatch(step -> step.operation().any(RELIEFS::contains));
        if (!relieved.matches() || form.isEmpty() || !open) {
            return Optional.empty();
        }
        String digits = relieved.group(1);
        boolean carried = subject.tables().reliefDigits().ruling(digits, form.get())
                .filter(ruling -> CARRIED.contains(ruling.verdict())).isPresent();
        return subject.tables().reliefDigits().action(digits).filter(action -> carried)
                .map(action -> new Compression(quench, route.get(quench).op().single().orElse("" + (quench + 1)), digits, action));
    }

    /**
     * Writes the operation behind the quench.
     *
     * @param edits where to; the operations before it still stand where the card has them
     */
    void write(Edits edits) {
        edits.add("/route/" + (after + 1), DescriptionValue.of("{op: " + Subject.quoted(number + "A") + ", do: "
                + (digits.equals("54") ? "cold_die_set" : "compress") + (set().isEmpty() ? "" : ", set: {min: \""
                + percent(action.setMin().orElseThrow()) + "\", max: \"" + percent(action.setMax().orElseThrow()) + "\"}") + "}"));
    }

    private String set() {
        return action.setMin().isPresent() && action.setMax().isPresent() ? String.format(Locale.ROOT, " to a set of %s to %s",
                percent(action.setMin().getAsDouble()), percent(action.setMax().getAsDouble())) : "";
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", share * PERCENT);
    }

    /** {@return what the engineer must know of it, a sentence} */
    String note() {
        return "Operation " + number + "A behind the quench, before ageing: " + action.action() + set() + " (digits " + digits
                + "); the dies, the set on record and the properties are to be shown.";
    }
}
