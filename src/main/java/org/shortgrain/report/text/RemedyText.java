package org.shortgrain.report.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.shortgrain.review.Factor;
import org.shortgrain.review.Remedies;
import org.shortgrain.review.Remedy;
import org.shortgrain.terms.PlainText;

/** A study of remedies for a terminal: the changes that help, the best first, with what each costs and leaves open. */
public final class RemedyText {

    private static final int WIDTH = 96;
    private static final String INDENT = "      ";

    private final List<String> lines = new ArrayList<>();

    private RemedyText() {
    }

    /**
     * {@return the study, each line ended by a line feed}
     *
     * @param study   the study
     * @param patches whether the change of each is shown as a JSON Patch
     */
    public static String of(Remedies study, boolean patches) {
        RemedyText text = new RemedyText();
        text.head(study);
        study.remedies().forEach(one -> text.remedy(one, patches));
        study.missing().forEach(said -> text.add("", "  ", "Sought without result: " + said));
        return text.lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    }

    private void head(Remedies study) {
        add("", "  ", study.part().number() + ", " + study.part().name());
        lines.add("As described: " + study.verdict().words() + ", " + counted(study.objections().size(), "objection") + ", "
                + counted(study.conditions(), "condition"));
        study.objections().forEach(one -> add("  ", "    ", one));
        add("", "  ", counted(study.tried(), "change") + " tried, each reviewed in full. " + outcome(study));
        lines.add("");
    }

    private static String outcome(Remedies study) {
        if (study.remedies().isEmpty()) {
            return "None of them helps.";
        }
        return study.cleared() ? "The best first; * marks those that no other beats in everything."
                : "None of them makes sign-off possible. The closest first; * marks those that no other beats in everything.";
    }

    private void remedy(Remedy one, boolean patches) {
        add(one.id() + (one.pareto() ? "* " : "  "), INDENT, String.join("; and ", one.changes()));
        add(INDENT, INDENT + "  ", one.verdict().words() + ", " + counted(one.objections().size(), "objection") + ", "
                + counted(one.conditions(), "condition") + one.utilisation().stream()
                        .mapToObj(used -> String.format(Locale.ROOT, ", greatest utilisation %.2f", used))
                        .collect(Collectors.joining()));
        said("removes", factors(one.removed()));
        said("weakens", factors(one.weakened()));
        one.raises().forEach(raised -> said("RAISES", raised));
        one.objections().stream().filter(left -> !one.raises().contains(left)).forEach(left -> said("leaves", left));
        one.leavesOpen().forEach(open -> said("leaves open", open));
        if (one.mass() != 1 || one.strength() != 1) {
            said("costs", String.format(Locale.ROOT, "strength kept %.0f %%, mass x %.3f%s%s", one.strength() * 100, one.mass(),
                    one.addedMass().stream().mapToObj(kg -> String.format(Locale.ROOT, " (%+.3f kg)", kg))
                            .collect(Collectors.joining()), one.fits() ? "" : ", LEAVES the envelope"));
        }
        said("touches", counted(one.drawings(), "drawing") + ", " + (one.processes() == 1 ? "1 process"
                : one.processes() + " processes") + "; to agree: " + String.join(", ", one.agree()));
        said("qualify again", String.join("; ", one.requalify()));
        one.notes().forEach(note -> said("note", note));
        if (patches) {
            lines.add(INDENT + "change:");
            one.patch().json().lines().forEach(line -> lines.add(INDENT + PlainText.clean(line)));
        }
        lines.add("");
    }

    private void said(String what, String text) {
        if (!text.isEmpty()) {
            add(INDENT + what + ": ", INDENT + "  ", text);
        }
    }

    private static String factors(Set<Factor> factors) {
        return factors.stream().sorted().map(Factor::word).collect(Collectors.joining(", "));
    }

    private static String counted(int count, String noun) {
        return (count == 0 ? "no" : String.valueOf(count)) + " " + noun + (count == 1 ? "" : "s");
    }

    private void add(String first, String indent, String text) {
        lines.addAll(PlainText.lines(first, indent, text, WIDTH));
    }
}
