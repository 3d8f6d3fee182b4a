package org.shortgrain.part.reader;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.composer.Composer;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.resolver.Resolver;

/**
 * Something that can stand at a key of a description: a scalar, a group or a list. Written as YAML, of which JSON is a
 * part, and shown as JSON.
 *
 * <p>Held as nodes and not as values, so that a patch meets the reader in the very form in which a file does.
 */
public final class DescriptionValue {
    /** Written into a text of JSON as they are; all else below a blank as a code point. */
    private static final Map<Character, String> ESCAPED = new TreeMap<>(Map.of('"', "\\\"", '\\', "\\\\", '\n', "\\n",
            '\t', "\\t", '\r', "\\r"));

    private final Node node;

    DescriptionValue(Node node) {
        this.node = node;
    }

    /**
     * {@return a value}
     *
     * @param text YAML or JSON, such as <code>{kind: clearance}</code>
     * @throws IllegalArgumentException if it is neither
     */
    public static DescriptionValue of(String text) {
        LoaderOptions limits = new LoaderOptions();
        try {
            Node node = new Composer(new ParserImpl(new StreamReader(new StringReader(text)), limits), new Resolver(),
                    limits).getSingleNode();
            if (node == null) {
                throw new IllegalArgumentException("no value in '" + text + "'");
            }
            return new DescriptionValue(node);
        } catch (org.yaml.snakeyaml.error.YAMLException malformed) {
            throw new IllegalArgumentException("no value in '" + text + "': " + malformed.getMessage(), malformed);
        }
    }

    /** {@return the value as JSON in one line} */
    public String json() {
        return json(node);
    }

    /** {@return the value as JSON with the keys of each group in order: equal for descriptions that say the same} */
    String canonical() {
        return canonical(node);
    }

    private static String canonical(Node node) {
        if (node instanceof MappingNode group) {
            Map<String, String> sorted = new TreeMap<>();
            group.getValue().forEach(tuple -> sorted.put(((ScalarNode) tuple.getKeyNode()).getValue(),
                    canonical(tuple.getValueNode())));
            return sorted.toString();
        }
        if (node instanceof SequenceNode list) {
            return list.getValue().stream().map(DescriptionValue::canonical).collect(Collectors.joining(",", "[", "]"));
        }
        return json(node);
    }

    /** {@return whether it is a group of keys} */
    public boolean isGroup() {
        return node instanceof MappingNode;
    }

    /** {@return the entries of a group, in its order; none for anything else} */
    public Map<String, DescriptionValue> entries() {
        return node instanceof MappingNode ? Spot.root(node).entries().entrySet().stream().collect(Collectors.toMap(
                Map.Entry::getKey, entry -> new DescriptionValue(entry.getValue().node()), (a, b) -> b,
                LinkedHashMap::new)) : Map.of();
    }

    /** {@return the items of a list; none for anything else} */
    public List<DescriptionValue> items() {
        return node instanceof SequenceNode list ? list.getValue().stream().map(DescriptionValue::new).toList() : List.of();
    }

    /** {@return the text of a scalar, without quotes; empty text for anything else} */
    public String text() {
        return node instanceof ScalarNode scalar ? scalar.getValue() : "";
    }

    /** Whether nothing is said: unknown, alone or in the long form. */
    boolean isUnknown() {
        Node said = Spot.root(node).entry("value").map(Spot::node).orElse(node);
        return said instanceof ScalarNode scalar
                && Scalar.of(scalar).state().filter(Scalar.State.UNKNOWN::equals).isPresent();
    }

    Node node() {
        return node;
    }

    /** A copy whose nodes stand nowhere else: what stands twice would be written as an alias. */
    Node copy() {
        return copy(node);
    }

    static Node copy(Node node) {
        if (node instanceof MappingNode group) {
            List<NodeTuple> tuples = new ArrayList<>();
            group.getValue().forEach(tuple -> tuples.add(new NodeTuple(copy(tuple.getKeyNode()), copy(tuple.getValueNode()))));
            return new MappingNode(group.getTag(), true, tuples, group.getStartMark(), group.getEndMark(), group.getFlowStyle());
        }
        if (node instanceof SequenceNode list) {
            List<Node> items = new ArrayList<>();
            list.getValue().forEach(item -> items.add(copy(item)));
            return new SequenceNode(list.getTag(), true, items, list.getStartMark(), list.getEndMark(), list.getFlowStyle());
        }
        ScalarNode scalar = (ScalarNode) node;
        return new ScalarNode(scalar.getTag(), true, scalar.getValue(), scalar.getStartMark(), scalar.getEndMark(),
                scalar.getScalarStyle());
    }

    /** A key that stands where another node does. */
    static ScalarNode key(String name, Node like) {
        return new ScalarNode(Tag.STR, true, name, like.getStartMark(), like.getEndMark(), DumperOptions.ScalarStyle.PLAIN);
    }

    private static String json(Node node) {
        if (node instanceof MappingNode group) {
            return group.getValue().stream()
                    .map(tuple -> quoted(((ScalarNode) tuple.getKeyNode()).getValue()) + ": " + json(tuple.getValueNode()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (node instanceof SequenceNode list) {
            return list.getValue().stream().map(DescriptionValue::json).collect(Collectors.joining(", ", "[", "]"));
        }
        Scalar scalar = Scalar.of((ScalarNode) node);
        return scalar.isTruth() ? scalar.text().toLowerCase(Locale.ROOT)
                : scalar.isNumber() ? scalar.text().replaceFirst("^\\+", "") : quoted(scalar.text());
    }

    static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        for (char character : text.toCharArray()) {
            String escaped = ESCAPED.get(character);
            out.append(escaped != null ? escaped
                    : character < ' ' ? String.format(Locale.ROOT, "\\u%04x", (int) character) : String.valueOf(character));
        }
        return out.append('"').toString();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof DescriptionValue value && value.json().equals(json());
    }

    @Override
    public int hashCode() {
        return json().hashCode();
    }

    @Override
    public String toString() {
        return json();
    }
}
