package org.shortgrain.part.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shortgrain.part.Location;
import org.shortgrain.part.Provenance;

/**
 * The long form of a value: {@code {value: 39 %IACS, kind: measured, scope: lot, ref: "lab report 7"}}. Ranges carry the
 * same keys beside {@code min} and {@code max}; {@code none} and lists stand at {@code value} like any other value.
 *
 * <p>Groups have keys of their own named {@code value} and {@code kind}. A group counts as long form only if it has a
 * {@code value} that is no key of its record, or if it says nothing but {@code none} or {@code unknown} there.
 */
final class LongForm {
    private static final String VALUE = "value";
    private static final String KIND = "kind";
    private static final String REF = "ref";
    private static final String SCOPE = "scope";
    private static final List<String> KEYS = List.of(VALUE, KIND, REF, SCOPE);
    private static final List<String> LIMITS = List.of("min", "max");
    private static final List<String> AXIS = List.of("axis");

    private static final Expected.Text REFERENCE = new Expected.Text(true, false, Optional.empty());

    private final Problems problems;
    private final Forms forms;
    private final Values values;
    private final Expected.OneOf kinds = Expected.OneOf.of(Provenance.Kind.class);
    private final Expected.OneOf scopes = Expected.OneOf.of(Provenance.Scope.class);

    LongForm(Problems problems, Forms forms, Values values) {
        this.problems = problems;
        this.forms = forms;
        this.values = values;
    }

    /**
     * The parts of a long form.
     *
     * @param value      what it is a form of; empty if a problem was reported
     * @param provenance who says so
     */
    record Parts(Optional<Spot> value, Provenance provenance) {
    }

    /**
     * An item of a list.
     *
     * @param value the item
     * @param ref   its reference; groups keep theirs themselves
     */
    record Item(Spot value, Optional<String> ref) {
    }

    static Provenance plain(Location at) {
        return new Provenance(Provenance.Kind.STATED, Optional.empty(), Optional.empty(), at);
    }

    boolean isLong(Expected expected, Spot spot) {
        if (!spot.isGroup() || spot.isEmpty()) {
            return false;
        }
        if (!(expected.item() instanceof Expected.Group group)) {
            return true;
        }
        Optional<Spot> value = spot.entry(VALUE);
        boolean own = forms.of(group).named(VALUE).isPresent();
        return value.isPresent()
                && (!own || Scalar.state(value.get()).isPresent() && KEYS.containsAll(spot.entries().keySet()));
    }

    Parts parts(Expected expected, Spot spot) {
        Map<String, Spot> entries = spot.entries();
        List<String> inPlace = new ArrayList<>(inPlace(expected));
        inPlace.retainAll(entries.keySet());
        List<String> known = new ArrayList<>(KEYS);
        known.addAll(inPlace(expected));
        for (Map.Entry<String, Spot> entry : entries.entrySet()) {
            String key = entry.getKey();
            if (!known.contains(key) || entries.containsKey(VALUE) && inPlace.contains(key)) {
                problems.add(ProblemCode.UNKNOWN_KEY, entry.getValue().atKey(), Values.shown(key),
                        "one of " + QuantityText.list(known), Nearest.advice(key, known, "Take it out"));
            }
        }
        Provenance provenance = provenance(entries, spot);
        if (entries.containsKey(VALUE)) {
            return new Parts(Optional.of(entries.get(VALUE)), provenance);
        }
        if (inPlace.isEmpty() && known.containsAll(entries.keySet())) {
            problems.add(ProblemCode.WRONG_KIND, spot.at(), "a group of keys without value", "one of "
                    + QuantityText.list(known), "Write {value: ..., ref: ...}, or the value alone");
        }
        return new Parts(inPlace.isEmpty() ? Optional.empty() : Optional.of(spot), provenance);
    }

    /** Keys that give the value without the key {@code value}. */
    private static List<String> inPlace(Expected expected) {
        if (expected instanceof Expected.Measure || expected instanceof Expected.Moisture) {
            return LIMITS;
        }
        return expected instanceof Expected.Direction ? AXIS : List.of();
    }

    /** An item that is no group may stand as {@code {value: ..., ref: ...}}. */
    Item item(Expected expected, Spot spot) {
        if (!spot.isGroup() || expected instanceof Expected.Group) {
            return new Item(spot, Optional.empty());
        }
        Parts parts = parts(expected, spot);
        for (String whole : List.of(KIND, SCOPE)) {
            if (spot.entries().containsKey(whole)) {
                problems.add(ProblemCode.UNKNOWN_KEY, spot.entries().get(whole).atKey(), whole, "value and ref in a "
                        + "list item",
                        "Write {value: [...], " + whole + ": ...} for the whole list");
            }
        }
        return new Item(parts.value().orElse(spot), parts.provenance().ref());
    }

    private Provenance provenance(Map<String, Spot> entries, Spot spot) {
        Provenance.Kind kind = word(entries.get(KIND), kinds, Provenance.Kind.class).orElse(Provenance.Kind.STATED);
        Optional<Provenance.Scope> scope = word(entries.get(SCOPE), scopes, Provenance.Scope.class);
        Optional<String> ref = entries.containsKey(REF) ? ref(entries.get(REF)) : Optional.empty();
        return new Provenance(kind, ref, scope, spot.at());
    }

    private <T> Optional<T> word(Spot spot, Expected.OneOf words, Class<T> type) {
        if (spot == null || Scalar.state(spot).isPresent()) {
            return Optional.empty();
        }
        Optional<Scalar> scalar = Scalar.of(spot);
        String text = scalar.isPresent() ? scalar.get().text() : "";
        Object meant = words.words().get(text);
        if (meant == null) {
            List<String> list = List.copyOf(words.words().keySet());
            problems.add(ProblemCode.UNKNOWN_WORD, spot.at(), Values.shown(text), QuantityText.list(list),
                    Nearest.advice(text, list, "Choose the word that comes closest"));
        }
        return Optional.ofNullable(type.cast(meant));
    }

    /** A reference; none and unknown leave it empty. */
    Optional<String> ref(Spot spot) {
        if (Scalar.isNothing(spot)) {
            problems.add(ProblemCode.EMPTY_VALUE, spot.at(), "text: a drawing note, card operation or report");
            return Optional.empty();
        }
        return Scalar.state(spot).isPresent() ? Optional.empty() : values.text(REFERENCE, spot);
    }
}
