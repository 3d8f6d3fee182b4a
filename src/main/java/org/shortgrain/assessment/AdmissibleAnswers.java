package org.shortgrain.assessment;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.shortgrain.mechanics.Given;
import org.shortgrain.part.Feature;
import org.shortgrain.part.FeatureKind;
import org.shortgrain.part.Fit;
import org.shortgrain.part.Form;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Product;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;
import org.shortgrain.part.reader.DescriptionValue;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.JsonPatch;
import org.shortgrain.reference.Alloy;
import org.shortgrain.reference.AnswerTable;
import org.shortgrain.reference.MaterialAnswer;
import org.shortgrain.reference.MaterialQuery;
import org.shortgrain.reference.ReferenceTables;
import org.shortgrain.reference.SccLevel;
import org.shortgrain.review.Question;
import org.shortgrain.rulebook.facts.Metal;

/**
 * What may be answered to the open questions of a description, each written as a change of it.
 *
 * <p>The answers stand in {@code answers.csv}. An alloy of a family, a temper or a form is drawn from the ratings: of those
 * that they hold, the most susceptible and the most resistant. Where the description holds alternatives they are the answers,
 * and nothing else is: see {@link StatedAlternatives}.
 */
final class AdmissibleAnswers {

    private static final Set<FeatureKind> BORES = EnumSet.of(FeatureKind.LUG_BORE, FeatureKind.BOLT_HOLE, FeatureKind.BORE,
            FeatureKind.EAR, FeatureKind.THREADED_HOLE, FeatureKind.SHAFT);
    private static final Pattern PLACEHOLDER = Pattern.compile("\\$\\{(\\w+)}");
    private static final MathContext SIX_DIGITS = new MathContext(6);
    private static final double MEGA = 1e6;
    private static final double MILLI = 1e-3;

    private final ReferenceTables tables;
    private final MaterialReading materials;
    private final StatedAlternatives alternatives;
    private final Map<Trials.Trial, MaterialReading.Found> found = Collections.synchronizedMap(new IdentityHashMap<>());
    private final Remembered<MaterialQuery, List<MaterialAnswer>> metals = new Remembered<>(this::metalEnds);
    private final Remembered<MaterialQuery, List<MaterialAnswer>> products = new Remembered<>(this::productEnds);

    AdmissibleAnswers(Trials trials) {
        this.tables = trials.reviewer().knowledge().tables();
        this.materials = trials.reviewer().materials();
        this.alternatives = new StatedAlternatives(trials);
    }

    /**
     * An admissible answer.
     *
     * @param words the answer, as a clause
     * @param side  which way it leans
     * @param patch the answer written into the description
     */
    record Possible(String words, AnswerTable.Side side, JsonPatch patch) {
    }

    /**
     * {@return the admissible answers to a question; none where the tables hold none}
     *
     * @param question the question
     * @param trial    the description that it is asked of
     * @param part     the same, with what was answered before
     */
    List<Possible> to(Question question, Trials.Trial trial, EditableDescription part) {
        if (alternatives.standAt(question, trial)) {
            return alternatives.to(question, trial, part);
        }
        Map<String, Possible> possible = new LinkedHashMap<>();
        for (AnswerTable.Entry entry : tables.answers().to(question.rule(), question.at().path())) {
            if (isCase(entry.when(), question, trial)) {
                JsonPatch begun = Optional.ofNullable(possible.get(entry.answer())).map(Possible::patch)
                        .orElse(JsonPatch.NOTHING);
                written(entry, question, trial, part.with(begun)).forEach(one -> possible.put(one.words(),
                        new Possible(one.words(), one.side(), begun.then(one.patch()))));
            }
        }
        return possible.values().stream().filter(one -> !one.patch().isEmpty()).toList();
    }

    private List<Possible> written(AnswerTable.Entry entry, Question question, Trials.Trial trial,
            EditableDescription part) {
        List<String> places = places(entry.edit(), question.at().path(), part);
        if (entry.value().startsWith(AnswerTable.FROM_TABLE)) {
            Drawn drawn = drawn(entry.value(), material(trial).answer().query());
            List<Possible> both = new ArrayList<>();
            for (int i = 0; i < drawn.words().size(); i++) {
                String word = drawn.words().get(i);
                both.add(new Possible("the " + drawn.key() + " is " + word.replace('_', ' '),
                        i == 0 ? AnswerTable.Side.WORST : AnswerTable.Side.BEST,
                        written(AnswerTable.Way.SET, places, DescriptionValue.of('"' + word + '"'), part)));
            }
            return both;
        }
        return filled(entry.value(), question, trial).map(DescriptionValue::of)
                .map(value -> new Possible(entry.answer(), entry.side(), written(entry.way(), places, value, part)))
                .stream().toList();
    }

    /**
     * Values drawn from the ratings.
     *
     * @param key   the key in words
     * @param words the values, the worst first
     */
    private record Drawn(String key, List<String> words) {
    }

    private Drawn drawn(String table, MaterialQuery query) {
        return switch (table) {
            case "=alloy" -> new Drawn("alloy", metals.of(query).stream().map(MaterialAnswer::query)
                    .map(MaterialQuery::alloy).map(Optional::orElseThrow).distinct().toList());
            case "=temper" -> new Drawn("temper", metals.of(query).stream().map(MaterialAnswer::query)
                    .flatMap(one -> one.temper().stream()).distinct().toList());
            case "=product" -> new Drawn("form", products.of(query).stream().map(MaterialAnswer::query)
                    .map(MaterialQuery::productForm).map(Optional::orElseThrow).distinct().toList());
            default -> throw new IllegalStateException("answers.csv draws from an unknown table: " + table);
        };
    }

    private static JsonPatch written(AnswerTable.Way way, List<String> places, DescriptionValue value,
            EditableDescription part) {
        JsonPatch patch = JsonPatch.NOTHING;
        EditableDescription now = part;
        for (String place : places) {
            JsonPatch one = switch (way) {
                case FILL -> now.filling(place, value);
                case SET -> now.setting(place, value);
                case JOIN -> now.answers(place) && !now.at(place).orElseThrow().items().isEmpty()
                        ? new JsonPatch(value.items().stream().map(item -> JsonPatch.add(place + "/-", item)).toList())
                        : now.setting(place, value);
            };
            now = now.with(one);
            patch = patch.then(one);
        }
        return patch;
    }

    /** The places that an answer changes: each star is the number in the question's own path, or every item. */
    private static List<String> places(String edit, String asked, EditableDescription part) {
        if (edit.isEmpty()) {
            return List.of(asked);
        }
        List<String> places = List.of("");
        String[] keys = edit.substring(1).split("/");
        String[] own = asked.substring(1).split("/");
        for (int i = 0; i < keys.length; i++) {
            int at = i;
            boolean known = i < own.length && own[i].matches("\\d+") && keys[i].equals("*");
            places = places.stream().flatMap(place -> keys[at].startsWith("*") && !known ? below(place, keys[at], part)
                    : Stream.of(place + "/" + (known ? own[at] : keys[at]))).toList();
        }
        return places;
    }

    /** Every key of a group; of a list every item, or those that are or are named as it stands in brackets. */
    private static Stream<String> below(String place, String star, EditableDescription part) {
        Optional<DescriptionValue> value = part.at(place);
        List<DescriptionValue> items = value.map(DescriptionValue::items).orElse(List.of());
        String word = star.length() == 1 ? "" : star.substring(2, star.length() - 1);
        return Stream.concat(value.stream().flatMap(group -> group.entries().keySet().stream()),
                IntStream.range(0, items.size()).filter(n -> word.isEmpty() || isNamed(items.get(n), word))
                        .mapToObj(Integer::toString)).map(key -> place + "/" + key);
    }

    private static boolean isNamed(DescriptionValue item, String word) {
        return item.text().equals(word) || item.entries().values().stream().anyMatch(value -> value.text().equals(word));
    }

    private boolean isCase(String when, Question question, Trials.Trial trial) {
        boolean stated = trial.part().answers(question.at().path());
        Stated<FeatureKind> what = feature(question, trial).map(Feature::what)
                .orElse(new Stated.Absent<>(question.at()));
        return switch (when) {
            case "open" -> !stated;
            case "stated" -> stated;
            case "open bore" -> !stated && what.any(BORES::contains);
            case "open no bore" -> !stated && what.surely(kind -> !BORES.contains(kind));
            case "open kind not stated" -> !stated && what.isMissing();
            case "strength known" -> strength(trial).isPresent();
            case "aluminium of unknown strength" -> strength(trial).isEmpty() && metal(trial).isAluminium();
            case "other metal of unknown strength" -> strength(trial).isEmpty() && !metal(trial).isAluminium();
            case "7xxx" -> metal(trial).isSeries(7);
            case "2xxx" -> metal(trial).isSeries(2);
            case "quenched" -> isQuenched(trial);
            case "not quenched" -> !isQuenched(trial);
            case "section not known" -> section(question, trial).isEmpty();
            default -> true;
        };
    }

    /** {@return whether a question asks which of the alternatives of the description holds, or about a key that has some} */
    boolean areStated(Question question, Trials.Trial trial) {
        return alternatives.standAt(question, trial);
    }

    private MaterialReading.Found material(Trials.Trial trial) {
        return found.computeIfAbsent(trial, one -> materials.read(one.read().description()));
    }

    private Metal metal(Trials.Trial trial) {
        return material(trial).metal();
    }

    private Optional<Given> strength(Trials.Trial trial) {
        return material(trial).elastic().flatMap(Elastic::lowestYield);
    }

    private boolean isQuenched(Trials.Trial trial) {
        return metal(trial).isHeatTreatable();
    }

    private static Optional<Feature> feature(Question question, Trials.Trial trial) {
        Matcher path = Pattern.compile("/features/(\\d+)(/.*)?").matcher(question.at().path());
        List<Feature> features = features(trial.read().description());
        return path.matches() && Integer.parseInt(path.group(1)) < features.size()
                ? Optional.of(features.get(Integer.parseInt(path.group(1)))) : Optional.empty();
    }

    private static List<Feature> features(PartDescription description) {
        return Stated.items(description.features());
    }

    /** The value with what depends on the part; empty where the part does not say it. */
    private Optional<String> filled(String value, Question question, Trials.Trial trial) {
        Matcher places = PLACEHOLDER.matcher(value);
        StringBuilder text = new StringBuilder();
        while (places.find()) {
            Optional<String> known = known(places.group(1), question, trial);
            if (known.isEmpty()) {
                return Optional.empty();
            }
            places.appendReplacement(text, Matcher.quoteReplacement(known.get()));
        }
        return Optional.of(places.appendTail(text).toString());
    }

    private Optional<String> known(String name, Question question, Trials.Trial trial) {
        PartDescription description = trial.read().description();
        return switch (name) {
            case "yield" -> strength(trial).map(given -> number(given.value().high() / MEGA));
            case "half_section" -> section(question, trial).stream().mapToObj(depth -> number(depth / 2 / MILLI)).findFirst();
            case "two_holes" -> hole(question, trial).stream().mapToObj(hole -> number(2 * hole / MILLI)).findFirst();
            case "six_holes" -> hole(question, trial).stream().mapToObj(hole -> number(6 * hole / MILLI)).findFirst();
            case "features" -> Optional.of(features(description).stream().flatMap(one -> one.id().single().stream())
                    .map(id -> '"' + id.replace("\\", "\\\\").replace("\"", "\\\"") + '"').collect(Collectors.joining(", ", "[", "]")));
            default -> throw new IllegalStateException("answers.csv has an unknown ${" + name + "}");
        };
    }

    private static OptionalDouble section(Question question, Trials.Trial trial) {
        OptionalDouble own = feature(question, trial).map(one -> Range.greatest(one.sectionAsQuenched()))
                .orElse(OptionalDouble.empty());
        return own.isPresent() ? own : Range.greatest(trial.read().description().form().field(Form::heatTreatThickness));
    }

    private static OptionalDouble hole(Question question, Trials.Trial trial) {
        Stated<Fit> fit = feature(question, trial).map(Feature::fit).orElse(new Stated.Absent<>(question.at()));
        OptionalDouble hole = Range.greatest(fit.field(Fit::hole));
        return hole.isPresent() ? hole : Range.greatest(fit.field(Fit::bush));
    }

    private static String number(double value) {
        return new BigDecimal(value).round(SIX_DIGITS).stripTrailingZeros().toPlainString();
    }

    /**
     * The most susceptible and the most resistant metal that the tables name, for the form as stated: of the alloy, or
     * of the family where no alloy is stated, in a temper that begins as stated.
     */
    private List<MaterialAnswer> metalEnds(MaterialQuery query) {
        Optional<Alloy> stated = query.alloy().flatMap(tables.materials().alloys()::find);
        List<Alloy> alloys = query.alloy().isPresent() ? stated.stream().toList()
                : query.family().map(tables.materials().alloys()::ofFamily).orElse(List.of());
        String begun = query.temper().orElse("");
        return ends(alloys.stream().flatMap(alloy -> {
            MaterialQuery named = query.alloy().isPresent() ? query : query.alloy(alloy.name());
            Stream<MaterialAnswer> tempers = tables.materials().namedTempers(alloy).stream()
                    .filter(temper -> temper.startsWith(begun) && !temper.equals(begun))
                    .map(temper -> tables.materials().lookUp(named.temper(temper)));
            return query.alloy().isPresent() || begun.isEmpty() ? tempers
                    : Stream.concat(Stream.of(tables.materials().lookUp(named)), tempers);
        }).toList());
    }

    private List<MaterialAnswer> productEnds(MaterialQuery query) {
        return query.alloy().isEmpty() ? List.of() : ends(Arrays.stream(Product.values())
                .map(product -> tables.materials().lookUp(query.form(product.word()))).toList());
    }

    /** The two ends of what is rated; the first that the tables name where several are alike. */
    private static List<MaterialAnswer> ends(List<MaterialAnswer> all) {
        List<MaterialAnswer> rated = all.stream()
                .filter(one -> one.inUnknownDirection().level().level() != SccLevel.UNKNOWN).toList();
        if (rated.isEmpty()) {
            return List.of();
        }
        Comparator<MaterialAnswer> resistance = Comparator.comparingInt(MaterialReading::resistance);
        MaterialAnswer worst = rated.stream().min(resistance).orElseThrow();
        MaterialAnswer best = rated.stream().reduce((a, b) -> resistance.compare(b, a) > 0 ? b : a).orElseThrow();
        return worst == best ? List.of(worst) : List.of(worst, best);
    }

    /**
     * {@return the answer that leans furthest to one side; empty if there is none at all}
     *
     * @param answers the answers, the worst first where a table orders them
     * @param side    worst or best
     */
    static Optional<Possible> furthest(List<Possible> answers, AnswerTable.Side side) {
        Optional<Possible> named = answers.stream().filter(one -> one.side() == side).findFirst();
        return named.isPresent() ? named : answers.stream().findFirst();
    }
}
