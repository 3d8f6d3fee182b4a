package org.shortgrain.report.change;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.review.Amount;
import org.shortgrain.review.Factor;
import org.shortgrain.review.FactorState;
import org.shortgrain.review.Grade;
import org.shortgrain.review.Verdict;

/**
 * What differs between two reviews.
 *
 * @param before   the earlier review
 * @param after    the later one
 * @param inputs   values of the description that differ, by path
 * @param factors  factors whose state differs
 * @param findings findings and questions that came, went or changed their grade
 * @param numbers  computed numbers that differ
 * @param texts    parts of the review that differ in words alone
 */
public record Comparison(Side before, Side after, List<InputChange> inputs, List<FactorChange> factors,
        List<FindingChange> findings, List<NumberChange> numbers, List<String> texts) {

    /** Copies the lists. */
    public Comparison {
        inputs = List.copyOf(inputs);
        factors = List.copyOf(factors);
        findings = List.copyOf(findings);
        numbers = List.copyOf(numbers);
        texts = List.copyOf(texts);
    }

    /**
     * One of the two reviews.
     *
     * @param part        part number and revision
     * @param date        date of the review
     * @param contentHash its content hash
     * @param input       SHA-256 of the description
     * @param rulebook    edition and hash of the rulebook
     * @param verdict     its verdict
     */
    public record Side(String part, String date, String contentHash, String input, String rulebook, Verdict verdict) {
    }

    /**
     * A value of the description that differs.
     *
     * @param path   JSON pointer
     * @param before what was entered before; empty if nothing was
     * @param after  what is entered now; empty if nothing is
     */
    public record InputChange(String path, Optional<String> before, Optional<String> after) {
    }

    /**
     * A factor whose state differs.
     *
     * @param feature the feature
     * @param factor  the factor
     * @param before  its state before
     * @param after   its state now
     */
    public record FactorChange(String feature, Factor factor, FactorState before, FactorState after) {
    }

    /** What happened to a finding. */
    public enum Fate {
        /** It was not there before. */
        NEW("new"),
        /** Another finding with the same cause stood for it before; now it stands on its own. */
        UNFOLDED("stands on its own now"),
        /** It is there no longer. */
        CLEARED("cleared"),
        /** Another finding with the same cause stands for it now. */
        FOLDED("stands in another finding now"),
        /** Its grade is graver. */
        GRADE_UP("grade up"),
        /** Its grade is less grave. */
        GRADE_DOWN("grade down"),
        /** It is there no longer because its rule asks for a datum that is missing now. */
        NOT_EVALUABLE("no longer evaluable"),
        /** It is there no longer because the rulebook no longer has its rule. */
        RULE_RETIRED("rule retired"),
        /** It says something else. */
        REWORDED("says something else");

        private final String words;

        Fate(String words) {
            this.words = words;
        }

        /** {@return in words} */
        public String words() {
            return words;
        }

        /** {@return the word of the data} */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A finding or question that differs.
     *
     * @param fate     what happened to it
     * @param rule     its rule; a path for a question of the minimum set
     * @param feature  the feature it is about; empty for the whole part
     * @param before   its number in the earlier review
     * @param after    its number in the later one
     * @param was      its grade before
     * @param is       its grade now
     * @param decisive whether it is a question that can change the verdict now
     * @param title    what it is about
     */
    public record FindingChange(Fate fate, String rule, Optional<String> feature, Optional<String> before,
            Optional<String> after, Optional<Grade> was, Optional<Grade> is, boolean decisive, String title) {

        /** {@return whether the part is in a worse place by it} */
        public boolean isWorse() {
            boolean weighs = is.filter(grade -> grade == Grade.OBJECTION || grade == Grade.CONDITION).isPresent() || decisive;
            return fate == Fate.GRADE_UP || fate == Fate.NEW && weighs || fate == Fate.NOT_EVALUABLE;
        }
    }

    /**
     * A number that differs.
     *
     * @param what    what it is, with the feature
     * @param before  the earlier number with its range; empty if it was not computed
     * @param after   the later one; empty if it is not computed now
     * @param id      number of its calculation, in the later review where it is there; empty for a sum
     * @param burden  whether more of it is worse
     */
    public record NumberChange(String what, Optional<Amount> before, Optional<Amount> after, Optional<String> id,
            boolean burden) {

        /** {@return whether one of the two lies outside the range of the other} */
        public boolean isBeyondItsBand() {
            return before.isPresent() && after.isPresent()
                    && (isOutside(after.get().value(), before.get()) || isOutside(before.get().value(), after.get()));
        }

        private static boolean isOutside(double value, Amount band) {
            return value < band.low() || value > band.high();
        }

        /** {@return whether the part is in a worse place by it} */
        public boolean isWorse() {
            return burden && isBeyondItsBand() && after.get().value() > before.get().value();
        }
    }

    /** {@return whether nothing that is judged or computed differs, whatever the files are} */
    public boolean isSame() {
        return inputs.isEmpty() && factors.isEmpty() && findings.isEmpty() && numbers.isEmpty() && texts.isEmpty()
                && before.verdict() == after.verdict();
    }

    /** {@return whether anything got worse: verdict, a finding, or the use made of the threshold} */
    public boolean isWorse() {
        return after.verdict().compareTo(before.verdict()) < 0 || findings.stream().anyMatch(FindingChange::isWorse)
                || numbers.stream().anyMatch(NumberChange::isWorse);
    }
}
