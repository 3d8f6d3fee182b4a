package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.part.Disposition;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Text;

/** What people decided on findings, for the cells of the report. */
final class Decisions {

    private Decisions() {
    }

    /** {@return the word of a decision as it is read} */
    static String word(Disposition one) {
        return one.decision().word().replace('_', ' ');
    }

    /** {@return a decision with its reason and whoever took it} */
    static Text sentence(Report report, Disposition one) {
        String by = one.by() + (one.decided().isPresent() ? ", " + one.decided().get() : "");
        return report.say(FollowUp.DECIDED, Text.of(word(one)), Text.of(one.reason()), Text.of(by));
    }

    /** {@return the decisions on some findings} */
    static List<Disposition> on(Report report, List<String> ids) {
        List<Disposition> decided = new ArrayList<>();
        for (String id : ids) {
            Optional<Disposition> one = report.review().disposition(id);
            if (one.isPresent()) {
                decided.add(one.get());
            }
        }
        return decided;
    }

    /** {@return owner, then due date and decision, then closure: the cells of the table of actions} */
    static List<Block.Cell> cells(Report report, List<String> ids, Block.Cell room) {
        Set<Text> owners = new LinkedHashSet<>();
        Set<Text> decisions = new LinkedHashSet<>();
        Set<Text> closures = new LinkedHashSet<>();
        for (Disposition one : on(report, ids)) {
            if (one.owner().isPresent()) {
                owners.add(Text.of(one.owner().get()));
            }
            decisions.add(dueAndDecision(report, one, ids.size() > 1));
            if (one.closure().isPresent()) {
                closures.add(closed(report, one.closure().get()));
            }
        }
        return List.of(cell(owners, room), cell(decisions, room), cell(closures, room));
    }

    private static Block.Cell cell(Set<Text> texts, Block.Cell room) {
        return texts.isEmpty() ? room : new Block.Cell(List.copyOf(texts));
    }

    private static Text dueAndDecision(Report report, Disposition one, boolean several) {
        Text decision = several ? report.say(FollowUp.DECISION_OF, Text.of(one.finding()), Text.of(word(one)))
                : Text.of(word(one));
        return one.due().isEmpty() ? decision
                : decision.plain("; ").then(report.say(FollowUp.DUE, Text.of(one.due().get())));
    }

    private static Text closed(Report report, Disposition.Closure closure) {
        List<String> who = new ArrayList<>();
        closure.by().ifPresent(who::add);
        closure.on().ifPresent(who::add);
        return who.isEmpty() ? Text.of(closure.evidence())
                : report.say(FollowUp.CLOSED, Text.of(String.join(", ", who)), Text.of(closure.evidence()));
    }

    /** {@return a row of the diverging opinions for each rule that was overruled} */
    static List<Block.Row> overruling(Report report) {
        List<Block.Row> rows = new ArrayList<>();
        for (Disposition one : report.review().dispositions()) {
            if (one.isOverruling()) {
                rows.add(Block.Row.of(Block.Cell.of(one.by()), Block.Cell.of(report.links().toFinding(one.finding())),
                        Block.Cell.of(report.say(FollowUp.OVERRULED, Text.of(one.rule().orElse(one.finding())),
                                Text.of(one.reason()))),
                        Block.Cell.of(one.decided().orElse(""))));
            }
        }
        return rows;
    }
}
