package org.shortgrain.part.reader;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.nodes.ScalarNode;

/**
 * What a scalar says before anything is expected of it. Only {@code true}, {@code false}, an empty value and plain
 * decimal numbers are more than text: {@code NO}, {@code 012}, {@code 1e5} and dates stay the text they are.
 *
 * @param text  the text, without quotes
 * @param plain whether it stands without quotes
 */
record Scalar(String text, boolean plain) {
    private static final Pattern DECIMAL = Pattern.compile("[-+]?(0|[1-9][0-9]{0,17})(\\.[0-9]{1,18})?");
    private static final Set<String> NOTHING = Set.of("", "~", "null", "Null", "NULL");
    private static final Set<String> TRUTH = Set.of("true", "True", "TRUE", "false", "False", "FALSE");

    /** The words that stand for a state in place of a value. */
    enum State {
        /** There is none. */
        NONE,
        /** Stated nowhere. */
        UNKNOWN
    }

    static Scalar of(ScalarNode node) {
        return new Scalar(node.getValue(), node.isPlain());
    }

    static Optional<Scalar> of(Spot spot) {
        return spot.node() instanceof ScalarNode node ? Optional.of(of(node)) : Optional.empty();
    }

    /** Whether a scalar stands there that says nothing. */
    static boolean isNothing(Spot spot) {
        return spot.node() instanceof ScalarNode node && of(node).isNothing();
    }

    /** The state that stands there in place of a value. */
    static Optional<State> state(Spot spot) {
        return spot.node() instanceof ScalarNode node ? of(node).state() : Optional.empty();
    }

    Optional<State> state() {
        return switch (text.length()) {
            case 4 -> text.equalsIgnoreCase("none") ? Optional.of(State.NONE) : Optional.empty();
            case 7 -> text.equalsIgnoreCase("unknown") ? Optional.of(State.UNKNOWN) : Optional.empty();
            default -> Optional.empty();
        };
    }

    boolean isNothing() {
        return plain ? NOTHING.contains(text) : text.isBlank();
    }

    boolean isTruth() {
        return plain && TRUTH.contains(text);
    }

    boolean isNumber() {
        return plain && looksLikeNumber();
    }

    boolean looksLikeNumber() {
        return DECIMAL.matcher(text).matches();
    }
}
