package org.shortgrain.rulebook.facts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shortgrain.part.AgeStep;
import org.shortgrain.part.Done;
import org.shortgrain.part.Location;
import org.shortgrain.part.Phase;
import org.shortgrain.part.Range;
import org.shortgrain.part.Range;
import org.shortgrain.part.RouteStep;
import org.shortgrain.part.Stated;

/**
 * One operation of the card as understood.
 *
 * @param position  place in the order of the card, from 0
 * @param stated    what the description says
 * @param operation canonical word of the operation; empty if the word is not known
 * @param kinds     kinds it belongs to, such as {@code heat_treatment}, {@code machining}, {@code hydrogen_charging}; the
 *                  list is in the data dictionary of the tables
 */
public record Step(int position, RouteStep stated, Optional<String> operation, Set<String> kinds) {

    private static final String KIND = "kind:";
    private static final Pattern ON_SCALE_A = Pattern.compile("[0-9] *(mm|in)? *A\\b");
    private static final double MILLIMETRES = 1000;
    private static final double SECONDS_PER_HOUR = 3600;

    /** Class and hours of application, with the hours of assembly in brackets, as AMS-S-8802 numbers its sealants. */
    private static final Pattern SEALANT_CLASS = Pattern.compile("\\b[ABC]-(1/2|[0-9]+)(?:\\(([0-9]+)\\))?");

    /** Copies the set. */
    public Step {
        kinds = Set.copyOf(kinds);
    }

    /**
     * {@return whether it is one of some operations}
     *
     * @param operations canonical words
     */
    public boolean is(String... operations) {
        return operation.isPresent() && List.of(operations).contains(operation.get());
    }

    /**
     * {@return whether it is of a kind}
     *
     * @param kind the kind
     */
    public boolean isKind(String kind) {
        return kinds.contains(kind);
    }

    /** {@return whether it counts as done: it is not stated to be left out or not on record} */
    public boolean isDone() {
        return !stated.done().isOneOf(Done.NO, Done.NOT_ON_RECORD);
    }

    /** {@return whether it belongs to an overhaul or a repair} */
    public boolean isRework() {
        return stated.phase().isOneOf(Phase.OVERHAUL, Phase.REPAIR);
    }

    /**
     * {@return whether it is done at a feature: it names the feature, or names none and so is done all over}
     *
     * @param feature id of the feature
     */
    public boolean isAt(String feature) {
        return stated.at().candidates().stream().findFirst().map(at -> at.contains(feature))
                .orElse(!stated.at().isNone());
    }

    /**
     * {@return whether it shares a place with another operation}
     *
     * @param other the other operation
     */
    public boolean sharesPlaceWith(Step other) {
        List<String> here = features();
        List<String> there = other.features();
        return here.isEmpty() || there.isEmpty() || !Collections.disjoint(here, there);
    }

    /**
     * {@return whether it is the next operation on the card}
     *
     * @param other the operation before
     */
    public boolean comesRightAfter(Step other) {
        return position == other.position() + 1;
    }

    /**
     * {@return the time within which a joint must be closed by the dash number of the sealant's class (h): B-2 is 2 h, and
     * C-8(48) is 48 h; NaN if no such number is stated, which no comparison holds for}
     */
    public double closingHours() {
        Matcher dash = SEALANT_CLASS.matcher(String.join(" ", words()));
        if (!dash.find()) {
            return Double.NaN;
        }
        String hours = dash.group(2) == null ? dash.group(1) : dash.group(2);
        return hours.equals("1/2") ? 0.5 : Double.parseDouble(hours);
    }

    /** {@return the features it names; empty if it is done all over} */
    public List<String> features() {
        List<List<String>> named = stated.at().candidates();
        return named.isEmpty() ? List.of() : named.get(0);
    }

    /** {@return the one feature it names; empty if it names none or several} */
    public Optional<String> place() {
        return features().size() == 1 ? Optional.of(features().get(0)) : Optional.empty();
    }

    /** {@return the operation as a reader finds it on the card} */
    public String label() {
        String word = stated.operation().single().orElse("operation not stated").replace('_', ' ');
        return stated.op().single().map(op -> "op " + op + " (" + word + ")").orElse(word);
    }

    /** {@return its temperatures as stated, for texts} */
    public String sayTemperature() {
        return temperatures().map(Range::entered).collect(Collectors.joining(", ", "temperature ", ""));
    }

    /** {@return where it stands in the description} */
    public Location at() {
        return stated.origin().at();
    }

    /**
     * {@return whether its words, specification, kind, product, method, medium, filler or remarks contain one of some
     * texts, without regard to case}
     *
     * @param texts what to look for
     */
    public boolean mentions(String... texts) {
        String all = String.join(" ", words()).toLowerCase(Locale.ROOT);
        for (String text : texts) {
            if (all.contains(text.toLowerCase(Locale.ROOT))) {
                return true;
            }
        }
        return false;
    }

    /**
     * {@return whether it counts as done and is one of some operations}
     *
     * @param operations canonical words, or kinds written {@code kind:name}
     */
    public boolean does(String... operations) {
        return isDone() && isAny(operations);
    }

    /**
     * {@return whether it is one of some operations, done or not}
     *
     * @param operations canonical words, or kinds written {@code kind:name}
     */
    public boolean isAny(String... operations) {
        for (String one : operations) {
            if (one.startsWith(KIND) ? isKind(one.substring(KIND.length())) : is(one)) {
                return true;
            }
        }
        return false;
    }

    /** {@return the highest temperature on it (degC), that of its steps included; NaN if none is stated} */
    public double hottest() {
        return temperatures().mapToDouble(Range::highest).max().orElse(Double.NaN);
    }

    /** {@return how long it lasts at most (h), its steps added up; NaN if not stated} */
    public double longest() {
        List<AgeStep> steps = steps();
        if (steps.isEmpty()) {
            return hours(stated.time());
        }
        return steps.stream().mapToDouble(step -> hours(step.time())).sum();
    }

    /** {@return the greatest delay before it (h); NaN if not stated} */
    public double delay() {
        return hours(stated.delay());
    }

    /** {@return the greatest depth of metal that it removes per side (mm); NaN if not stated} */
    public double removes() {
        return greatest(stated.removes()) * MILLIMETRES;
    }

    /** {@return the greatest thickness of the layer that it puts on (mm); NaN if not stated} */
    public double layer() {
        return greatest(stated.thickness()) * MILLIMETRES;
    }

    /**
     * {@return whether its medium certainly is one of some media}
     *
     * @param media words that the medium contains
     */
    public boolean isIn(String... media) {
        return Wording.names(stated.medium(), media);
    }

    /** {@return whether the medium of a quench is not stated, or the temperature of a liquid one} */
    public boolean isBathOpen() {
        return stated.medium().isMissing() || stated.temperature().isMissing() && !isIn("air");
    }

    /**
     * {@return whether a permanent set is stated and lies outside a range}
     *
     * @param least least share
     * @param most  greatest share
     */
    public boolean isSetOutside(double least, double most) {
        return stated.set().any(range -> range.lowest() < least || range.highest() > most);
    }

    /** {@return whether a peening does not state its intensity, media or coverage} */
    public boolean isPeeningOpen() {
        boolean media = stated.kind().isKnown() || stated.product().isKnown() || stated.medium().isKnown();
        return !media || stated.intensity().isMissing() || stated.coverage().isMissing();
    }

    /** {@return whether the peening intensity is on the A scale of the Almen gauge: a number with the letter A} */
    public boolean isIntensityOnScaleA() {
        return stated.intensity().surely(text -> ON_SCALE_A.matcher(text).find());
    }

    /** {@return the peening as stated, for texts} */
    public String sayPeening() {
        return "intensity " + Wording.say(stated.intensity()) + ", media " + Wording.say(stated.kind()) + ", coverage "
                + stated.coverage().single().map(Range::entered).orElse("not stated");
    }

    /**
     * {@return whether a bake certainly starts too late or is too short}
     *
     * @param latest greatest delay before it (h)
     * @param least  least duration (h)
     */
    public boolean isLateOrShort(double latest, double least) {
        return delay() > latest || longest() < least;
    }

    /**
     * {@return whether a bake certainly is too cool or too short}
     *
     * @param coolest least temperature (degC)
     * @param least   least duration (h)
     */
    public boolean isCoolOrShort(double coolest, double least) {
        return hottest() < coolest || longest() < least;
    }

    /** {@return whether nothing is stated to protect the part while it is kept} */
    public boolean isUnprotected() {
        return !stated.protection().isKnown();
    }

    /** {@return whether it is stated not to be on record} */
    public boolean isNotOnRecord() {
        return stated.done().is(Done.NOT_ON_RECORD);
    }

    /** {@return whether the metal certainly comes off one side only} */
    public boolean isOneSided() {
        return stated.sides().surely(side -> side.toLowerCase(Locale.ROOT).matches(".*\\b(one|single)\\b.*"));
    }

    private Stream<Range> temperatures() {
        return Stream.concat(stated.temperature().candidates().stream(),
                steps().stream().flatMap(step -> step.temperature().candidates().stream()));
    }

    private List<AgeStep> steps() {
        return stated.steps().candidates().stream().findFirst().orElse(List.of());
    }

    private static double hours(Stated<Range> time) {
        return greatest(time) / SECONDS_PER_HOUR;
    }

    private static double greatest(Stated<Range> stated) {
        return Range.greatest(stated).orElse(Double.NaN);
    }

    private List<String> words() {
        List<String> words = new ArrayList<>();
        for (Stated<String> one : List.of(stated.operation(), stated.spec(), stated.kind(), stated.product(),
                stated.method(), stated.medium(), stated.filler(), stated.remarks())) {
            words.addAll(one.candidates());
        }
        return words;
    }
}
