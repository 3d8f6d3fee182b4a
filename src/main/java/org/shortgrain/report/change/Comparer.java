package org.shortgrain.report.change;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shortgrain.mechanics.Band;
import org.shortgrain.report.change.Comparison.FactorChange;
import org.shortgrain.report.change.Comparison.Fate;
import org.shortgrain.report.change.Comparison.FindingChange;
import org.shortgrain.report.change.Comparison.InputChange;
import org.shortgrain.report.change.Comparison.NumberChange;
import org.shortgrain.report.json.ReviewJson;
import org.shortgrain.report.json.UnreadableReviewException;
import org.shortgrain.review.Amount;
import org.shortgrain.review.Calculation;
import org.shortgrain.review.DirectionReview;
import org.shortgrain.review.FactorJudgement;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Grade;
import org.shortgrain.review.Review;
import org.shortgrain.review.RuleUse;
import org.shortgrain.review.StatedLine;

/**
 * Holds two reviews against each other.
 *
 * <p>A finding is the same in both when rule and feature are the same; its number counts within one review only. Numbers
 * are compared as they are written, with six significant digits. What stands twice is told apart by its order.
 */
public final class Comparer {

    private final Review before;
    private final Review after;

    private Comparer(Review before, Review after) {
        this.before = before;
        this.after = after;
    }

    /**
     * {@return what differs}
     *
     * @param before the earlier review
     * @param after  the later one
     */
    public static Comparison compare(Review before, Review after) {
        return new Comparer(asWritten(before), asWritten(after)).compared();
    }

    private static Review asWritten(Review review) {
        try {
            return ReviewJson.read(ReviewJson.bytes(review.contentHash().isEmpty() ? ReviewJson.sealed(review) : review));
        } catch (UnreadableReviewException impossible) {
            throw new IllegalStateException("a review that was written cannot be read", impossible);
        }
    }

    private Comparison compared() {
        return new Comparison(side(before), side(after), inputs(), factors(), findings(), numbers(), texts());
    }

    private static Comparison.Side side(Review review) {
        String revision = review.part().revision();
        return new Comparison.Side(review.part().number() + (revision.isEmpty() ? "" : " revision " + revision), review.date(),
                review.contentHash(), review.input().sha256(), review.rulebook().edition() + ", "
                        + review.rulebook().sha256(), review.verdict());
    }

    /** Items of two lists side by side, by a key; what bears the same key is paired in its order. */
    private record Pair<T>(Optional<T> before, Optional<T> after) {
    }

    private static <T> Map<String, Pair<T>> paired(Collection<T> before, Collection<T> after, Function<T, String> key) {
        Map<String, T> left = numbered(before, key);
        Map<String, T> right = numbered(after, key);
        Set<String> keys = new LinkedHashSet<>(right.keySet());
        keys.addAll(left.keySet());
        Map<String, Pair<T>> pairs = new LinkedHashMap<>();
        keys.forEach(one -> pairs.put(one, new Pair<>(Optional.ofNullable(left.get(one)), Optional.ofNullable(right.get(one)))));
        return pairs;
    }

    private static <T> Map<String, T> numbered(Collection<T> items, Function<T, String> key) {
        Map<String, Integer> seen = new HashMap<>();
        Map<String, T> numbered = new LinkedHashMap<>();
        for (T item : items) {
            String name = key.apply(item);
            int count = seen.merge(name, 1, Integer::sum);
            numbered.put(count == 1 ? name : name + "\u001f" + count, item);
        }
        return numbered;
    }

    private List<InputChange> inputs() {
        List<InputChange> changes = new ArrayList<>();
        for (Pair<StatedLine> pair : paired(before.stated(), after.stated(), StatedLine::path).values()) {
            Optional<String> was = pair.before().map(Comparer::entered);
            Optional<String> is = pair.after().map(Comparer::entered);
            if (!was.equals(is)) {
                changes.add(new InputChange(pair.after().or(pair::before).orElseThrow().path(), was, is));
            }
        }
        return changes;
    }

    private static String entered(StatedLine line) {
        return line.value() + (line.note().isEmpty() ? "" : " (" + line.note() + ")");
    }

    private List<FactorChange> factors() {
        List<FactorChange> changes = new ArrayList<>();
        for (Pair<FeatureReview> pair : paired(before.features(), after.features(), FeatureReview::id).values()) {
            if (pair.before().isPresent() && pair.after().isPresent()) {
                List<FactorJudgement> was = pair.before().get().factors();
                List<FactorJudgement> is = pair.after().get().factors();
                for (int i = 0; i < was.size(); i++) {
                    if (was.get(i).state() != is.get(i).state()) {
                        changes.add(new FactorChange(pair.after().get().id(), was.get(i).factor(), was.get(i).state(),
                                is.get(i).state()));
                    }
                }
            }
        }
        return changes;
    }

    /** A finding or a question. */
    private record Item(String id, String rule, Optional<String> feature, Grade grade, boolean decisive, String title,
            String says) {

        static List<Item> of(Review review) {
            return Stream.concat(
                    review.findings().stream().map(one -> new Item(one.id(), one.rule(), one.feature(), one.grade(), false,
                            one.title(), one.statement() + one.evidence())),
                    review.questions().stream().map(one -> new Item(one.id(), one.rule().orElse(one.at().path()),
                            one.feature(), Grade.QUESTION, one.decisive(), one.text(), one.text()))).toList();
        }

        String key() {
            return rule + "\u001e" + feature.orElse("");
        }
    }

    private List<FindingChange> findings() {
        List<FindingChange> changes = new ArrayList<>();
        Set<String> rulesNow = Stream.of(after.findings().stream().map(Finding::rule),
                after.findings().stream().flatMap(one -> one.foldedIn().stream()),
                after.questions().stream().flatMap(one -> one.rule().stream()),
                after.rulesApplied().stream().map(RuleUse::rule), after.rulesNotApplicable().stream().map(RuleUse::rule))
                .flatMap(one -> one).collect(Collectors.toSet());
        for (Pair<Item> pair : paired(Item.of(before), Item.of(after), Item::key).values()) {
            fate(pair, rulesNow).ifPresent(fate -> changes.add(change(fate, pair)));
        }
        return changes.stream().sorted(java.util.Comparator.comparing((FindingChange one) -> !one.isWorse())
                .thenComparing(FindingChange::fate)).toList();
    }

    private static FindingChange change(Fate fate, Pair<Item> pair) {
        Item shown = pair.after().or(pair::before).orElseThrow();
        return new FindingChange(fate, shown.rule(), shown.feature(), pair.before().map(Item::id), pair.after().map(Item::id),
                pair.before().map(Item::grade), pair.after().map(Item::grade),
                pair.after().map(Item::decisive).orElse(false), shown.title());
    }

    private Optional<Fate> fate(Pair<Item> pair, Set<String> rulesNow) {
        if (pair.before().isEmpty()) {
            return Optional.of(isFolded(before, pair.after().orElseThrow()) ? Fate.UNFOLDED : Fate.NEW);
        }
        Item was = pair.before().get();
        if (pair.after().isEmpty() && isFolded(after, was)) {
            return Optional.of(Fate.FOLDED);
        }
        if (pair.after().isEmpty()) {
            boolean ofARule = !was.rule().startsWith("/");
            return Optional.of(ofARule && !rulesNow.contains(was.rule()) ? Fate.RULE_RETIRED : Fate.CLEARED);
        }
        Item is = pair.after().get();
        if (was.grade() == is.grade() && was.decisive() == is.decisive()) {
            return was.says().equals(is.says()) ? Optional.empty() : Optional.of(Fate.REWORDED);
        }
        if (is.grade() == Grade.QUESTION && was.grade() != Grade.QUESTION) {
            return Optional.of(Fate.NOT_EVALUABLE);
        }
        boolean up = is.grade().compareTo(was.grade()) < 0 || is.grade() == was.grade() && is.decisive();
        return Optional.of(up ? Fate.GRADE_UP : Fate.GRADE_DOWN);
    }

    private static boolean isFolded(Review review, Item item) {
        return review.findings().stream().filter(one -> one.feature().isEmpty() || one.feature().equals(item.feature()))
                .anyMatch(one -> one.foldedIn().contains(item.rule()));
    }

    /** A number with its name. */
    private record Named(String what, Amount amount, Optional<String> id, boolean burden) {
    }

    private List<NumberChange> numbers() {
        List<NumberChange> changes = new ArrayList<>();
        for (Pair<Named> pair : paired(numbers(before), numbers(after), Named::what).values()) {
            Optional<Amount> was = pair.before().map(Named::amount);
            Optional<Amount> is = pair.after().map(Named::amount);
            if (!was.equals(is)) {
                Named shown = pair.after().or(pair::before).orElseThrow();
                changes.add(new NumberChange(shown.what(), was, is, shown.id(), shown.burden()));
            }
        }
        return changes;
    }

    private static List<Named> numbers(Review review) {
        List<Named> numbers = new ArrayList<>();
        for (FeatureReview feature : review.features()) {
            for (DirectionReview direction : feature.directions()) {
                String where = " along " + direction.sustained().direction() + " at " + feature.id();
                numbers.add(new Named("sustained tension" + where, direction.sustained().total(), Optional.empty(), false));
                direction.threshold().ifPresent(threshold ->
                        numbers.add(new Named("threshold" + where, threshold.amount(), Optional.empty(), false)));
                direction.utilisation().ifPresent(ratio ->
                        numbers.add(new Named("utilisation" + where, ratio, Optional.empty(), true)));
            }
        }
        for (Calculation one : review.computations()) {
            Band value = one.computed().value();
            numbers.add(new Named(one.computed().title() + one.feature().map(id -> " at " + id).orElse(""),
                    new Amount(one.computed().unit().symbol(), value.value(), value.low(), value.high()),
                    Optional.of(one.id()), false));
        }
        return numbers;
    }

    /** Parts of a review that can differ though nothing judged or computed does. */
    private List<String> texts() {
        Map<String, Function<Review, Object>> parts = new LinkedHashMap<>();
        parts.put("part", Review::part);
        parts.put("purpose", Review::purpose);
        parts.put("prepared by", Review::preparedBy);
        parts.put("reasons of the verdict", Review::because);
        parts.put("reasons of the factors", review -> review.features().stream().map(FeatureReview::factors).toList());
        parts.put("findings in full", Review::findings);
        parts.put("questions in full", Review::questions);
        parts.put("assumptions", Review::assumptions);
        parts.put("calculations in full", Review::computations);
        parts.put("material", Review::material);
        parts.put("route as understood", Review::route);
        parts.put("rules that raised nothing", Review::rulesApplied);
        parts.put("rules not applicable", Review::rulesNotApplicable);
        parts.put("keys read, not judged", Review::readNotJudged);
        parts.put("sources", Review::sources);
        parts.put("cautions", Review::cautions);
        parts.put("in service", Review::inService);
        parts.put("dispositions", Review::dispositions);
        return parts.entrySet().stream()
                .filter(part -> !Objects.equals(part.getValue().apply(before), part.getValue().apply(after)))
                .map(Map.Entry::getKey).toList();
    }
}
