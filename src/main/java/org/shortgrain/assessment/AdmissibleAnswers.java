package org.shortgrain.assessment;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.IdentityHashMap;
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
 * <p>The answers stand in {@code answers.csv}. A temper or form is drawn from the ratings: of those that they hold, the
 * most susceptible and the most resistant. Where the description holds alternatives they are the answers, and nothing else
 * is: see {@link StatedAlternatives}.
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
    private final Remembered<MaterialQuery, List<MaterialAnswer>> tempers = new Remembered<>(this::temperEnds);
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
        List<Possible> possible = new ArrayList<>();
        for (AnswerTable.Entry entry : tables.answers().to(question.rule(), question.at().path())) {
            if (isCase(entry.when(), question, trial)) {
                possible.addAll(written(entry, question, trial, part));
            }
        }
        return possible.stream().filter(one -> !one.patch().isEmpty()).toList();
    }

    private List<Possible> written(AnswerTable.Entry entry, Question question, Trials.Trial trial,
            EditableDescription part) {
        List<String> places = places(entry.edit(), question.at().path(), part);
        if (entry.value().startsWith(AnswerTable.FROM_TABLE)) {
            boolean temper = entry.value().equals("=temper");
            MaterialQuery query = material(trial).answer().query();
            List<MaterialAnswer> ends = temper ? tempers.of(query) : products.of(query);
            List<Possible> both = new ArrayList<>();
            for (int i = 0; i < ends.size(); i++) {
                String word = (temper ? ends.get(i).query().temper() : ends.get(i).query().productForm()).orElseThrow();
                both.add(new Possible((temper ? "the temper is " : "the form is ") + word.replace('_', ' '),
                        i == 0 ? AnswerTable.Side.WORST : AnswerTable.Side.BEST,
                        written(AnswerTable.Way.SET, places, DescriptionValue.of('"' + word + '"'), part)));
            }
            return both;
        }
        return filled(entry.value(), question, trial).map(DescriptionValue::of)
                .map(value -> new Possible(entry.answer(), entry.side(), written(entry.way(), places, value, part)))
                .stream().toList();
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
            places = places.stream().flatMap(place -> keys[at].equals("*") && !known
                    ? IntStream.range(0, part.at(place).map(list -> list.items().size()).orElse(0))
                            .mapToObj(n -> place + "/" + n)
                    : Stream.of(place + "/" + (known ? own[at] : keys[at]))).toList();
        }
        return places;
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
        return description.features().candidates().stream().flatMap(List::stream).toList();
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
        OptionalDouble own = feature(question, trial).map(one -> Site.greatest(one.sectionAsQuenched()))
                .orElse(OptionalDouble.empty());
        return own.isPresent() ? own : Site.greatest(trial.read().description().form().field(Form::heatTreatThickness));
    }

    private static OptionalDouble hole(Question question, Trials.Trial trial) {
        Stated<Fit> fit = feature(question, trial).map(Feature::fit).orElse(new Stated.Absent<>(question.at()));
        OptionalDouble hole = Site.greatest(fit.field(Fit::hole));
        return hole.isPresent() ? hole : Site.greatest(fit.field(Fit::bush));
    }

    private static String number(double value) {
        return new BigDecimal(value).round(SIX_DIGITS).stripTrailingZeros().toPlainString();
    }

    /** The most susceptible and the most resistant temper of the alloy that the tables name, for the form as stated. */
    private List<MaterialAnswer> temperEnds(MaterialQuery query) {
        String begun = query.temper().orElse("");
        Optional<Alloy> alloy = query.alloy().flatMap(tables.materials().alloys()::find);
        return alloy.map(one -> ends(tables.materials().namedTempers(one).stream()
                .filter(temper -> temper.startsWith(begun) && !temper.equals(begun))
                .map(temper -> tables.materials().lookUp(query.temper(temper))).toList())).orElse(List.of());
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
