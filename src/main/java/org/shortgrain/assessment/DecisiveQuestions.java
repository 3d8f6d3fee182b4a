package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.reference.AnswerTable;
import org.shortgrain.reference.FindingOut;
import org.shortgrain.review.Answer;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Grade;
import org.shortgrain.review.Question;
import org.shortgrain.review.ReportNumber;
import org.shortgrain.review.Review;
import org.shortgrain.review.Verdict;

/**
 * Which open questions can change the verdict, and what each answer would do.
 *
 * <p>The part is reviewed with everything answered at its worst, with everything answered at its best, and with each single
 * answer alone. Where all agree with the review as it stands, no question caps the verdict. Otherwise the part cannot be
 * judged. A question is decisive where its answer changes the verdict while the others are open, at their worst, or at their
 * best. What does not do so is tried further: with up to {@value #FEW} questions open, in every combination of the worst and
 * the best answer to the others, so that none is left out that some of them makes matter. With more, in pairs at their worst
 * while the others are at their best: a question that matters only where two others lie in a certain way can then be left out
 * until one of them is answered. Where nothing of this tells, all are decisive: a part that cannot be judged always names a
 * question. What the tables hold no admissible answer for cannot be tried and is decisive.
 *
 * <p>That the ends speak for what lies between them rests on the sides of the answers: worst counts against a part, whatever
 * else is answered. Of alternatives that is not known, so each of them is tried at both ends.
 *
 * <p>An objection stands whatever is open. Its questions are tried only where the best answers would lift it, which happens
 * where it rests on a stand-in.
 *
 * <p>What an answer is said to lead to is the {@link #verdict} of the description with that answer: the same that a review of
 * it draws.
 */
final class DecisiveQuestions {

    /** An answer may open further questions, such as how a bush is fitted: so often those are answered too. */
    private static final int ROUNDS = 6;
    /** So many questions are tried in every combination: 32 reviews, about as many as the single answers take. */
    private static final int FEW = 5;

    private final Trials trials;
    private final AdmissibleAnswers answers;
    private final FindingOut findingOut;

    DecisiveQuestions(Trials trials) {
        this.trials = trials;
        this.answers = new AdmissibleAnswers(trials);
        this.findingOut = trials.reviewer().knowledge().tables().findingOut();
    }

    /** One answer to one question, with the part so described. */
    private record Case(Question question, AdmissibleAnswers.Possible answer, Trials.Trial trial) {
    }

    /**
     * {@return the review with its questions decided and its verdict drawn}
     *
     * @param open the review, in which every open question counts as decisive
     * @param part the description that it is of
     */
    Review decided(Review open, EditableDescription part) {
        Trials.Trial trial = trials.of(part).orElseThrow(() -> new IllegalStateException("read once, and not again"));
        Verdict verdict = verdict(trial);
        Set<String> decisive = decisive(trial, verdict);
        List<Case> cases = trial.asked().stream().filter(one -> decisive.contains(key(one)) || answers.areStated(one, trial))
                .flatMap(one -> cases(trial, one)).toList();
        List<Verdict> promised = cases.parallelStream().map(one -> verdict(one.trial())).toList();
        Map<String, List<Answer>> told = new LinkedHashMap<>();
        for (int i = 0; i < cases.size(); i++) {
            Case one = cases.get(i);
            told.computeIfAbsent(key(one.question()), key -> new ArrayList<>()).add(new Answer(one.answer().words(),
                    promised.get(i), effect(trial.review(), one.trial(), promised.get(i)), one.answer().patch()));
        }
        return assembled(open, verdict, decisive, told);
    }

    /** Questions asked twice with the same words about the same place are one. */
    private static String key(Question question) {
        return question.rule().orElse("") + '\n' + question.at().path() + '\n' + question.text();
    }

    private Stream<Case> cases(Trials.Trial trial, Question question) {
        return answers.to(question, trial, trial.part()).stream().flatMap(answer -> trials
                .of(trial.part().with(answer.patch())).map(tried -> new Case(question, answer, tried)).stream());
    }

    /**
     * {@return the verdict of a description, with its questions decided}
     *
     * @param trial the description
     */
    Verdict verdict(Trials.Trial trial) {
        if (trial.free() == Verdict.OBJECTION || trial.asked().isEmpty()) {
            return trial.free();
        }
        boolean tried = trial.asked().stream().noneMatch(one -> answers.to(one, trial, trial.part()).isEmpty());
        return tried && endsAgree(trial, trial.free()) && trial.asked().parallelStream().flatMap(one -> cases(trial, one))
                .allMatch(one -> one.trial().free() == trial.free() && (!isBetween(one, trial) || endsAgree(one.trial(), trial.free())))
                ? trial.free() : Verdict.CANNOT_BE_JUDGED;
    }

    /**
     * Whether the ends do not speak for an answer. Of answers in a table it is known which is the worst and which the best
     * whatever else is answered; of alternatives and of answers in between it is not.
     */
    private boolean isBetween(Case one, Trials.Trial trial) {
        return one.answer().side() == AnswerTable.Side.OTHER || answers.areStated(one.question(), trial);
    }

    private boolean endsAgree(Trials.Trial trial, Verdict free) {
        return List.of(AnswerTable.Side.WORST, AnswerTable.Side.BEST).parallelStream().allMatch(side -> furthest(trial, side)
                .filter(end -> end.asked().isEmpty() && end.free() == free).isPresent());
    }

    /** The part with every open question answered at one side; empty if an answer is refused by the reader. */
    Optional<Trials.Trial> furthest(Trials.Trial trial, AnswerTable.Side side) {
        Trials.Trial now = trial;
        for (int round = 0; round < ROUNDS && !now.asked().isEmpty(); round++) {
            EditableDescription part = now.part();
            for (Question question : next(now)) {
                part = with(part, question, now, side);
            }
            if (part == now.part()) {
                return Optional.of(now);
            }
            Optional<Trials.Trial> next = trials.of(part);
            if (next.isEmpty()) {
                return next;
            }
            now = next.get();
        }
        return Optional.of(now);
    }

    /** Which alternative holds comes before what is asked inside them. */
    private List<Question> next(Trials.Trial trial) {
        List<Question> alternatives = trial.asked().stream().filter(one -> answers.areStated(one, trial)).toList();
        return alternatives.isEmpty() ? trial.asked() : alternatives;
    }

    private List<Question> inOrder(Trials.Trial trial) {
        return trial.asked().stream().sorted(Comparator.comparing(one -> !answers.areStated(one, trial))).toList();
    }

    private Set<String> decisive(Trials.Trial trial, Verdict verdict) {
        if (verdict == Verdict.OBJECTION) {
            return lifting(trial);
        }
        if (verdict != Verdict.CANNOT_BE_JUDGED) {
            return Set.of();
        }
        Map<String, Boolean> turns = new LinkedHashMap<>();
        List<Question> asked = trial.asked();
        List<Boolean> each = asked.parallelStream().map(one -> turns(trial, one)).toList();
        for (int i = 0; i < asked.size(); i++) {
            turns.merge(key(asked.get(i)), each.get(i), Boolean::logicalOr);
        }
        Set<String> found = turns.entrySet().stream().filter(Map.Entry::getValue).map(Map.Entry::getKey)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        if (found.size() < turns.size()) {
            found.addAll(asked.size() <= FEW ? combined(trial) : found.isEmpty() ? pairs(trial)
                    : joined(trial, List.copyOf(found)));
        }
        return found.isEmpty() ? turns.keySet() : found;
    }

    /** Questions whose answer changes the verdict in some combination of the worst and best answers to the others. */
    private Set<String> combined(Trials.Trial trial) {
        List<Question> asked = inOrder(trial);
        List<List<End>> ends = IntStream.range(0, 1 << asked.size()).parallel().mapToObj(best -> ends(trial, asked, best)).toList();
        Set<String> found = new LinkedHashSet<>();
        for (int question = 0; question < asked.size(); question++) {
            int bit = 1 << question;
            if (IntStream.range(0, ends.size()).anyMatch(best -> (best & bit) == 0 && !ends.get(best).isEmpty()
                    && !ends.get(best | bit).isEmpty() && !ends.get(best).equals(ends.get(best | bit)))) {
                found.add(key(asked.get(question)));
            }
        }
        return found;
    }

    /** What a combination comes to, what it opens answered at the worst and at the best; empty if the reader refuses it. */
    private List<End> ends(Trials.Trial trial, List<Question> asked, int best) {
        EditableDescription part = trial.part();
        for (int i = 0; i < asked.size(); i++) {
            AnswerTable.Side side = (best >> i & 1) == 1 ? AnswerTable.Side.BEST : AnswerTable.Side.WORST;
            part = with(part, asked.get(i), trial, side);
        }
        return trials.of(part).stream().flatMap(one -> Stream.of(AnswerTable.Side.WORST, AnswerTable.Side.BEST)
                .flatMap(side -> end(one, side).stream())).toList();
    }

    private EditableDescription with(EditableDescription part, Question question, Trials.Trial trial, AnswerTable.Side side) {
        return AdmissibleAnswers.furthest(answers.to(question, trial, part), side).map(one -> part.with(one.patch()))
                .orElse(part);
    }

    /** Questions that matter only together with one that matters alone: loads where the place may be wet. */
    private Set<String> joined(Trials.Trial trial, List<String> decisive) {
        List<Question> known = trial.asked().stream().filter(one -> decisive.contains(key(one))).toList();
        return trial.asked().parallelStream().filter(one -> !decisive.contains(key(one))).filter(one -> known.stream()
                .anyMatch(other -> both(trial, other, one).isPresent() && !both(trial, other, other)
                        .flatMap(alone -> end(alone, AnswerTable.Side.BEST)).equals(both(trial, other, one)
                                .flatMap(two -> end(two, AnswerTable.Side.BEST)))))
                .map(DecisiveQuestions::key).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** An objection that the best answers lift rests on stand-ins: then every question that lifts it is worth an answer. */
    private Set<String> lifting(Trials.Trial trial) {
        boolean stands = trial.asked().isEmpty() || furthest(trial, AnswerTable.Side.BEST)
                .filter(best -> best.free() == Verdict.OBJECTION).isPresent();
        if (stands) {
            return Set.of();
        }
        Set<String> alone = trial.asked().stream().flatMap(one -> cases(trial, one))
                .filter(one -> one.trial().free() != Verdict.OBJECTION).map(one -> key(one.question()))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        return alone.isEmpty() ? trial.asked().stream().map(DecisiveQuestions::key)
                .collect(Collectors.toCollection(LinkedHashSet::new)) : alone;
    }

    /** Whether an answer alone, or with the others at either end, gives another verdict; true where none can be tried. */
    private boolean turns(Trials.Trial trial, Question question) {
        List<Case> own = cases(trial, question).toList();
        return own.isEmpty() || own.stream().anyMatch(one -> one.trial().free() != trial.free())
                || Stream.of(AnswerTable.Side.WORST, AnswerTable.Side.BEST).anyMatch(side -> {
                    Optional<End> end = end(trial, side);
                    return own.stream().anyMatch(one -> !end(one.trial(), side).equals(end));
                });
    }

    /** The verdict at one end, and whether something stays open there. */
    private record End(Verdict free, boolean open) {
    }

    private Optional<End> end(Trials.Trial trial, AnswerTable.Side side) {
        return furthest(trial, side).map(one -> new End(one.free(), !one.asked().isEmpty()));
    }

    /** Questions that change the verdict two at a time, both at their worst with all others at their best. */
    private Set<String> pairs(Trials.Trial trial) {
        Optional<End> best = end(trial, AnswerTable.Side.BEST);
        List<Question> asked = trial.asked();
        Set<String> found = new LinkedHashSet<>();
        for (int i = 0; i < asked.size(); i++) {
            for (int k = i + 1; k < asked.size(); k++) {
                Optional<Trials.Trial> both = both(trial, asked.get(i), asked.get(k));
                if (both.isPresent() && !end(both.get(), AnswerTable.Side.BEST).equals(best)) {
                    found.add(key(asked.get(i)));
                    found.add(key(asked.get(k)));
                }
            }
        }
        return found;
    }

    private Optional<Trials.Trial> both(Trials.Trial trial, Question one, Question other) {
        EditableDescription part = trial.part();
        for (Question question : List.of(one, other)) {
            part = with(part, question, trial, AnswerTable.Side.WORST);
        }
        return trials.of(part);
    }

    private Review assembled(Review open, Verdict verdict, Set<String> decisive, Map<String, List<Answer>> told) {
        Comparator<Question> order = Comparator.comparing((Question one) -> one.role() == Question.Role.IDENTITY)
                .thenComparing(one -> !decisive.contains(key(one)))
                .thenComparingInt(one -> findingOut.of(one.at().path()).effort());
        List<Question> questions = new ArrayList<>();
        for (Question one : open.questions().stream().sorted(order).toList()) {
            questions.add(one.decided(ReportNumber.of('Q', questions.size() + 1),
                    decisive.contains(key(one)), told.getOrDefault(key(one), List.of()),
                    one.role() == Question.Role.JUDGING ? findingOut.of(one.at().path()).how() : ""));
        }
        return open.judged(verdict, VerdictRule.of(verdict, open.findings(), questions).because(), questions);
    }

    /** What an answer adds and takes away among objections and conditions, and where the verdict still hangs. */
    private String effect(Review open, Trials.Trial tried, Verdict promise) {
        List<String> effects = new ArrayList<>();
        said(tried.review(), open).map(added -> "raises " + added).ifPresent(effects::add);
        said(open, tried.review()).map(gone -> "clears " + gone).ifPresent(effects::add);
        if (promise == Verdict.CANNOT_BE_JUDGED) {
            effects.add(hangs(tried));
        }
        return String.join("; ", effects);
    }

    private String hangs(Trials.Trial trial) {
        Optional<Verdict> worst = furthest(trial, AnswerTable.Side.WORST).map(Trials.Trial::free);
        Optional<Verdict> best = furthest(trial, AnswerTable.Side.BEST).map(Trials.Trial::free);
        if (worst.isEmpty() || best.isEmpty() || worst.equals(best)) {
            return "other questions stay open";
        }
        return "the other questions then decide between " + best.get().words() + " and " + worst.get().words();
    }

    private static Optional<String> said(Review has, Review lacks) {
        Set<String> known = lacks.findings().stream().filter(DecisiveQuestions::counts).map(DecisiveQuestions::say)
                .collect(Collectors.toSet());
        String text = has.findings().stream().filter(DecisiveQuestions::counts).map(DecisiveQuestions::say)
                .filter(said -> !known.contains(said)).distinct().collect(Collectors.joining(", "));
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    private static boolean counts(Finding finding) {
        return EnumSet.of(Grade.OBJECTION, Grade.CONDITION).contains(finding.grade());
    }

    private static String say(Finding finding) {
        return finding.grade().word() + " " + finding.rule() + finding.feature().map(id -> " at " + id).orElse("");
    }
}
