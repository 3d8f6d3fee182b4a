package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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
        String by = one.by() + one.decided().map(date -> ", " + date).orElse("");
        return report.say(FollowUp.DECIDED, Text.of(word(one)), Text.of(one.reason()), Text.of(by));
    }

    /** {@return the decisions on some findings} */
    static List<Disposition> on(Report report, List<String> ids) {
        return ids.stream().flatMap(id -> report.review().disposition(id).stream()).toList();
    }

    /** {@return owner, then due date and decision, then closure: the cells of the table of actions} */
    static List<Block.Cell> cells(Report report, List<String> ids, Block.Cell room) {
        List<Disposition> decided = on(report, ids);
        return List.of(cell(decided, one -> one.owner().map(Text::of), room),
                cell(decided, one -> Optional.of(dueAndDecision(report, one, ids.size() > 1)), room),
                cell(decided, one -> one.closure().map(closure -> closed(report, closure)), room));
    }

    private static Block.Cell cell(List<Disposition> decided, Function<Disposition, Optional<Text>> said, Block.Cell room) {
        List<Text> texts = decided.stream().map(said).flatMap(Optional::stream).distinct().toList();
        return texts.isEmpty() ? room : new Block.Cell(texts);
    }

    private static Text dueAndDecision(Report report, Disposition one, boolean several) {
        Text decision = several ? report.say(FollowUp.DECISION_OF, Text.of(one.finding()), Text.of(word(one)))
                : Text.of(word(one));
        return one.due().map(date -> decision.plain("; ").then(report.say(FollowUp.DUE, Text.of(date)))).orElse(decision);
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
        return report.review().dispositions().stream().filter(Disposition::isOverruling)
                .map(one -> Block.Row.of(Block.Cell.of(one.by()), Block.Cell.of(report.links().toFinding(one.finding())),
                        Block.Cell.of(report.say(FollowUp.OVERRULED, Text.of(one.rule().orElse(one.finding())),
                                Text.of(one.reason()))),
                        Block.Cell.of(one.decided().orElse("")))).toList();
    }
}
