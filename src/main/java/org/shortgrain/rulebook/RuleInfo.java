package org.shortgrain.rulebook;

import java.util.Comparator;
import java.util.List;
import org.shortgrain.review.Factor;
import org.shortgrain.review.Grade;
import org.shortgrain.terms.Citation;

/**
 * What stands on a rule.
 *
 * @param id       subject and number, such as STRESS-03
 * @param title    one line
 * @param factor   the factor it is about
 * @param grade    the grade written on it; see {@link #effectiveGrade()}
 * @param applies  what a part must have for the rule to be asked; empty if it is asked of every part
 * @param sources  where it comes from; at least one
 * @param why      what happens if nobody acts
 * @param remedies what would mend it, in order of preference; at least one
 * @param subsumes rules with the same cause that it stands for
 * @param file     the file it stands in, such as {@code stress.drl}
 */
public record RuleInfo(String id, String title, Factor factor, Grade grade, List<String> applies,
        List<Citation> sources, String why, List<String> remedies, List<String> subsumes, String file) {

    /** By subject, then by number. */
    public static final Comparator<RuleInfo> ORDER = Comparator.comparing(RuleInfo::subject)
            .thenComparingInt(RuleInfo::number).thenComparing(RuleInfo::id);

    /** Copies the lists. */
    public RuleInfo {
        applies = List.copyOf(applies);
        sources = List.copyOf(sources);
        remedies = List.copyOf(remedies);
        subsumes = List.copyOf(subsumes);
    }

    /** {@return whether every source must be confirmed before a verdict rests on the rule} */
    public boolean needsConfirmation() {
        return sources.stream().allMatch(source -> source.status().needsConfirmation());
    }

    /** {@return the grade of its findings: an objection that nobody has read a source for is a condition} */
    public Grade effectiveGrade() {
        return grade == Grade.OBJECTION && needsConfirmation() ? Grade.CONDITION : grade;
    }

    /** {@return the subject, the part of the id before the number} */
    public String subject() {
        return id.substring(0, id.lastIndexOf('-'));
    }

    private int number() {
        return Integer.parseInt(id.substring(id.lastIndexOf('-') + 1));
    }
}
