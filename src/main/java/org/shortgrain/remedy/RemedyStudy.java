package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntConsumer;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.shortgrain.assessment.Reviewer;
import org.shortgrain.assessment.Trials;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.JsonPatch;
import org.shortgrain.review.Factor;
import org.shortgrain.review.FactorJudgement;
import org.shortgrain.review.FactorState;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Grade;
import org.shortgrain.review.Question;
import org.shortgrain.review.Remedies;
import org.shortgrain.review.Remedy;
import org.shortgrain.review.ReportNumber;
import org.shortgrain.review.Review;
import org.shortgrain.review.Verdict;

/**
 * Tries changes on a part and ranks those that help.
 *
 * <p>Every change is made on a copy of the description, read and reviewed like a file. What is searched:
 * <ol>
 * <li>Every single change.
 * <li>Where none clears the part, pairs and then triples of changes that help by themselves, by branch and bound: only those
 * whose members between them clear, each alone, every objection that some single change clears, each member adding one; and
 * none that holds a pair which clears.
 * <li>Where that leaves an objection in every case, every pair that can be made together and was not tried yet, whether or
 * not its members help by themselves, up to {@value #MOST_PAIRS}; those whose members leave fewest objections first. Of these
 * are kept those that leave no objection, or clear one that neither member clears alone.
 * </ol>
 * Not searched: triples of which a member helps only together with the others, combinations of four and more, and pairs beyond
 * that number; the study says how many it left out. So where nothing is said to clear the part, no single change and no pair
 * does, but three changes that each help only together with the others might.
 *
 * <p>Ranking: objections left, whether the verdict is open, factors removed (one removed and one weakened above one removed),
 * conditions, envelope, mass, drawings and processes touched, strength of the evidence. The Pareto set over these is marked:
 * the order is a reading aid, not a score.
 */
public final class RemedyStudy {

    private static final int LARGEST = 3;
    /** Pairs that are tried beyond branch and bound: 200 reviews take about 1.5 s on two cores. */
    static final int MOST_PAIRS = 200;
    /** So many changes are shown beside those of the Pareto set. */
    private static final int MOST_SHOWN = 12;

    private final Trials trials;
    private final IntConsumer progress;
    private final int mostPairs;

    /**
     * Prepares a study.
     *
     * @param reviewer who reviews
     * @param progress told how many changes were tried so far; from several threads
     */
    public RemedyStudy(Reviewer reviewer, IntConsumer progress) {
        this(reviewer, progress, MOST_PAIRS);
    }

    RemedyStudy(Reviewer reviewer, IntConsumer progress, int mostPairs) {
        this.trials = new Trials(reviewer);
        this.progress = progress;
        this.mostPairs = mostPairs;
    }

    /** A change or several, with what came of it. */
    private record Tried(List<Candidate> changes, Trials.Trial trial, JsonPatch patch, Set<String> objections) {
    }

    /**
     * {@return what would clear a part}
     *
     * @param part  the description
     * @param input the file it was read from
     * @throws IllegalArgumentException if the reader refuses the description
     */
    public Remedies of(EditableDescription part, Review.InputId input) {
        Trials.Trial asIs = trials.of(part).orElseThrow(() -> new IllegalArgumentException("the description is refused"));
        Verdict before = trials.verdict(asIs);
        Proposals proposals = Candidates.of(trials, asIs);
        AtomicInteger count = new AtomicInteger();
        List<Tried> singles = tried(asIs, proposals.candidates().stream().map(List::of).toList(), count);
        List<Tried> all = new ArrayList<>(singles);
        List<Tried> useful = singles.stream().filter(one -> helps(asIs, one)).toList();
        boolean enough = singles.stream().anyMatch(this::clears);
        List<List<Candidate>> clearing = new ArrayList<>();
        for (int size = 2; size <= LARGEST && !enough; size++) {
            List<List<Candidate>> open = branches(asIs, useful, size).stream()
                    .filter(one -> clearing.stream().noneMatch(one::containsAll)).toList();
            List<Tried> made = tried(asIs, open, count);
            made.stream().filter(this::clears).forEach(one -> clearing.add(one.changes()));
            all.addAll(made);
        }
        List<String> missing = new ArrayList<>(proposals.missing());
        if (!enough && all.stream().noneMatch(one -> one.objections().isEmpty())) {
            everyPair(asIs, singles, all, count).ifPresent(missing::add);
        }
        List<Remedy> ranked = ranked(asIs, before, all.stream().filter(one -> helps(asIs, one)).toList());
        return new Remedies(asIs.review().part(), input, before, List.copyOf(objections(asIs)),
                (int) asIs.review().count(Grade.CONDITION), count.get(), ranked.stream().anyMatch(Remedy::clearsThePart),
                ranked, missing);
    }

    /** Adds the pairs that do together what neither does alone. Returns what was left out, if anything was. */
    private Optional<String> everyPair(Trials.Trial asIs, List<Tried> singles, List<Tried> all, AtomicInteger count) {
        List<List<Candidate>> pairs = pairs(singles, all);
        List<List<Candidate>> open = pairs.stream().limit(mostPairs).toList();
        tried(asIs, open, count).stream().filter(one -> one.objections().isEmpty() || together(asIs, singles, one))
                .forEach(all::add);
        return pairs.size() == open.size() ? Optional.empty() : Optional.of(String.format(Locale.ROOT, "A pair of changes that clears"
                + " the part, among the %d of %d tried; the others were not tried.", open.size(), pairs.size()));
    }

    private List<Tried> tried(Trials.Trial asIs, Collection<List<Candidate>> combinations, AtomicInteger count) {
        return combinations.parallelStream().flatMap(changes -> {
            Optional<Tried> one = tried(asIs, changes);
            progress.accept(count.incrementAndGet());
            return one.stream();
        }).toList();
    }

    /** Empty where a change has nothing to change, or the reader refuses what comes of it. */
    private Optional<Tried> tried(Trials.Trial asIs, List<Candidate> changes) {
        EditableDescription now = asIs.part();
        JsonPatch patch = JsonPatch.NOTHING;
        for (Candidate change : changes) {
            JsonPatch next = change.write().apply(now);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            now = now.with(next);
            patch = patch.then(next);
        }
        JsonPatch whole = patch;
        return trials.of(now).map(trial -> new Tried(changes, trial, whole, objections(trial)));
    }

    private boolean clears(Tried one) {
        Verdict verdict = trials.verdict(one.trial());
        return verdict == Verdict.NO_OBJECTION || verdict == Verdict.NO_OBJECTION_SUBJECT_TO_CONDITIONS;
    }

    /** Whether something goes: an objection, a condition, or a factor at a place. */
    private static boolean helps(Trials.Trial asIs, Tried one) {
        Set<String> gone = findings(asIs, Grade.OBJECTION, Grade.CONDITION);
        gone.removeAll(findings(one.trial(), Grade.OBJECTION, Grade.CONDITION));
        return !gone.isEmpty() && one.objections().size() <= objections(asIs).size();
    }

    private static List<List<Candidate>> branches(Trials.Trial asIs, List<Tried> useful, int size) {
        Set<String> reachable = new HashSet<>();
        useful.forEach(one -> reachable.addAll(cleared(asIs, List.of(one))));
        List<List<Candidate>> found = new ArrayList<>();
        branch(asIs, useful, 0, size, List.of(), reachable, found);
        return found;
    }

    private static void branch(Trials.Trial asIs, List<Tried> useful, int from, int size, List<Tried> taken,
            Set<String> reachable, List<List<Candidate>> found) {
        if (taken.size() == size) {
            if (cleared(asIs, taken).containsAll(reachable)) {
                found.add(taken.stream().map(one -> one.changes().get(0)).toList());
            }
            return;
        }
        for (int i = from; i < useful.size(); i++) {
            Candidate next = useful.get(i).changes().get(0);
            boolean adds = taken.isEmpty() || !cleared(asIs, taken).containsAll(cleared(asIs, List.of(useful.get(i))));
            if (adds && taken.stream().noneMatch(one -> one.changes().get(0).excludes(next))) {
                List<Tried> more = new ArrayList<>(taken);
                more.add(useful.get(i));
                branch(asIs, useful, i + 1, size, more, reachable, found);
            }
        }
    }

    /** All pairs that can be made together and were not tried, those whose members leave fewest objections first. */
    private static List<List<Candidate>> pairs(List<Tried> singles, List<Tried> tried) {
        Set<List<Candidate>> known = new HashSet<>();
        tried.forEach(one -> known.add(one.changes()));
        List<List<Tried>> pairs = new ArrayList<>();
        for (int i = 0; i < singles.size(); i++) {
            for (int k = i + 1; k < singles.size(); k++) {
                pairs.add(List.of(singles.get(i), singles.get(k)));
            }
        }
        return pairs.stream()
                .sorted(Comparator.comparingInt(pair -> pair.stream().mapToInt(one -> one.objections().size()).sum()))
                .map(pair -> pair.stream().map(one -> one.changes().get(0)).toList())
                .filter(pair -> !pair.get(0).excludes(pair.get(1)) && !known.contains(pair)).toList();
    }

    /** Whether a pair clears an objection that neither of its members clears alone. */
    private static boolean together(Trials.Trial asIs, List<Tried> singles, Tried pair) {
        Set<String> gone = cleared(asIs, List.of(pair));
        gone.removeAll(cleared(asIs, singles.stream().filter(one -> pair.changes().containsAll(one.changes())).toList()));
        return !gone.isEmpty();
    }

    private static Set<String> cleared(Trials.Trial asIs, List<Tried> taken) {
        Set<String> cleared = new HashSet<>();
        for (Tried one : taken) {
            Set<String> gone = objections(asIs);
            gone.removeAll(one.objections());
            cleared.addAll(gone);
        }
        return cleared;
    }

    private static Set<String> objections(Trials.Trial trial) {
        return findings(trial, Grade.OBJECTION);
    }

    private static Set<String> findings(Trials.Trial trial, Grade... grades) {
        Set<String> said = new TreeSet<>();
        trial.review().findings().stream().filter(one -> Set.of(grades).contains(one.grade()))
                .forEach(one -> said.add(say(one)));
        return said;
    }

    private static String say(Finding finding) {
        return finding.grade().word() + " " + finding.rule() + finding.feature().map(id -> " at " + id).orElse("") + ": "
                + finding.title();
    }

    private List<Remedy> ranked(Trials.Trial asIs, Verdict before, List<Tried> all) {
        List<Remedy> remedies = all.parallelStream().map(one -> remedy(asIs, one)).sorted(ORDER).toList();
        List<Remedy> shown = new ArrayList<>();
        for (Remedy one : remedies) {
            boolean best = remedies.stream().noneMatch(other -> dominates(other, one));
            if (best || shown.size() < MOST_SHOWN) {
                shown.add(one.numbered(ReportNumber.of('R', shown.size() + 1), best));
            }
        }
        return shown;
    }

    private static final Comparator<Remedy> ORDER = Comparator.comparingInt((Remedy one) -> one.objections().size())
            .thenComparing(one -> one.verdict() == Verdict.CANNOT_BE_JUDGED)
            .thenComparingInt(one -> -(2 * one.removed().size() + one.weakened().size()))
            .thenComparingInt(Remedy::conditions).thenComparing(one -> !one.fits()).thenComparingDouble(Remedy::mass)
            .thenComparingInt(one -> one.drawings() + one.processes()).thenComparingInt(one -> -one.firmness())
            .thenComparing(one -> String.join("; ", one.changes()));

    private static boolean dominates(Remedy other, Remedy one) {
        double[] a = axes(other);
        double[] b = axes(one);
        boolean better = false;
        for (int i = 0; i < a.length; i++) {
            if (a[i] > b[i]) {
                return false;
            }
            better |= a[i] < b[i];
        }
        return better;
    }

    private static double[] axes(Remedy one) {
        return new double[] {one.objections().size(), one.verdict() == Verdict.CANNOT_BE_JUDGED ? 1 : 0,
            -(2.0 * one.removed().size() + one.weakened().size()), one.conditions(), one.fits() ? 0 : 1, one.mass(),
            one.drawings() + one.processes(), -one.firmness()};
    }

    private Remedy remedy(Trials.Trial asIs, Tried one) {
        Set<String> before = findings(asIs, Grade.OBJECTION, Grade.CONDITION);
        Set<String> after = findings(one.trial(), Grade.OBJECTION, Grade.CONDITION);
        Verdict verdict = trials.verdict(one.trial());
        Optional<Resized> price = one.changes().stream().flatMap(change -> change.price().stream()).findFirst();
        return new Remedy("", one.changes().stream().map(Candidate::words).toList(), verdict,
                List.copyOf(one.objections()), (int) one.trial().review().count(Grade.CONDITION),
                utilisation(one.trial().review()), price.map(resized -> 1 / resized.ratio()).orElse(1.0),
                price.map(Resized::mass).orElse(1.0),
                price.map(resized -> resized.added(asIs.description())).orElse(OptionalDouble.of(0)),
                price.flatMap(Resized::fits).orElse(true), turned(asIs, one.trial(), FactorState.ABSENT),
                turned(asIs, one.trial(), FactorState.UNKNOWN), without(before, after), without(after, before),
                verdict == Verdict.CANNOT_BE_JUDGED ? one.trial().asked().stream().map(Question::text).distinct().toList()
                        : List.of(),
                one.changes().stream().mapToInt(change -> change.kind().drawings()).sum(),
                one.changes().stream().mapToInt(change -> change.kind().processes()).sum(),
                one.changes().stream().flatMap(change -> change.kind().agree().stream()).distinct().toList(),
                one.changes().stream().map(change -> change.kind().requalify()).distinct().toList(),
                one.changes().stream().flatMap(change -> change.notes().stream()).distinct().toList(),
                one.changes().stream().mapToInt(RemedyStudy::firmness).min().orElse(1), false, one.patch());
    }

    private static int firmness(Candidate change) {
        return switch (change.kind().source().status()) {
            case READ -> 5;
            case SECONDARY -> 4;
            case DERIVED -> 3;
            case COMMON_PRACTICE -> 2;
            case MEMORY -> 1;
        };
    }

    private static List<String> without(Set<String> these, Set<String> those) {
        return these.stream().filter(one -> !those.contains(one)).toList();
    }

    private static OptionalDouble utilisation(Review review) {
        return review.features().stream().flatMap(one -> one.directions().stream())
                .flatMap(one -> one.utilisation().stream()).mapToDouble(one -> one.high()).max();
    }

    /** Factors that were present at a place and are now in another state, over all places where two or three met. */
    private static Set<Factor> turned(Trials.Trial asIs, Trials.Trial now, FactorState state) {
        Set<Factor> turned = EnumSet.noneOf(Factor.class);
        for (FeatureReview place : asIs.review().features()) {
            Optional<FeatureReview> after = now.review().features().stream().filter(one -> one.id().equals(place.id())).findFirst();
            long present = place.factors().stream().filter(one -> one.state() == FactorState.PRESENT).count();
            if (after.isPresent() && present >= 2) {
                place.factors().stream().filter(one -> one.state() == FactorState.PRESENT).map(FactorJudgement::factor)
                        .filter(factor -> state(after.get(), factor) == state).forEach(turned::add);
            }
        }
        return turned;
    }

    private static FactorState state(FeatureReview place, Factor factor) {
        return Stream.of(place.material(), place.stress(), place.environment()).filter(one -> one.factor() == factor)
                .findFirst().map(FactorJudgement::state).orElse(FactorState.UNKNOWN);
    }
}
