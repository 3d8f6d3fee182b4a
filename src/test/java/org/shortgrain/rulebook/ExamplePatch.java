package org.shortgrain.rulebook;

import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * An example of a rule as the smallest change of a base description: a merge patch after RFC 7396, written in YAML.
 *
 * <ul>
 * <li>A map changes the keys that it names and leaves the others; {@code null} takes a key away.</li>
 * <li>A list takes the place of a list.</li>
 * <li>A map where the base has the list {@code features} or {@code route} changes the items that it names by {@code id}
 *     or {@code op}: {@code features: {BORE: {stress_direction: ST}}}; {@code null} takes an item away; a name that is not
 *     in the base adds an item, a route step before the first step with a higher number.</li>
 * </ul>
 *
 * <p>Works on nodes, not on values, so that quoted text stays text.
 */
final class ExamplePatch {

    private static final Map<String, String> NAMED_BY = Map.of("features", "id", "route", "op");

    private ExamplePatch() {
    }

    /**
     * {@return the description with the change made}
     *
     * @param base  text of the base description
     * @param patch text of the change
     * @throws IllegalArgumentException if the change cannot be made
     */
    static String merged(String base, String patch) {
        Node change = new Yaml().compose(new StringReader(patch));
        if (!(change instanceof MappingNode changes)) {
            throw new IllegalArgumentException("an example is a map of changes");
        }
        MappingNode whole = (MappingNode) new Yaml().compose(new StringReader(base));
        DumperOptions options = new DumperOptions();
        options.setWidth(1000);
        StringWriter text = new StringWriter();
        new Yaml(options).serialize(changed(whole, changes), text);
        return text.toString();
    }

    private static MappingNode changed(MappingNode base, MappingNode changes) {
        List<NodeTuple> tuples = new ArrayList<>(base.getValue());
        for (NodeTuple change : changes.getValue()) {
            String key = text(change.getKeyNode());
            Optional<NodeTuple> there = tuples.stream().filter(one -> text(one.getKeyNode()).equals(key)).findFirst();
            if (isNull(change.getValueNode())) {
                tuples.remove(there.orElseThrow(() -> new IllegalArgumentException("no key '" + key + "' to take away")));
            } else if (there.isPresent()) {
                tuples.set(tuples.indexOf(there.get()), new NodeTuple(there.get().getKeyNode(),
                        changed(key, there.get().getValueNode(), change.getValueNode())));
            } else {
                tuples.add(change);
            }
        }
        return new MappingNode(base.getTag(), tuples, base.getFlowStyle());
    }

    private static Node changed(String key, Node base, Node change) {
        if (change instanceof MappingNode changes && base instanceof MappingNode whole) {
            return changed(whole, changes);
        }
        if (change instanceof MappingNode changes && base instanceof SequenceNode list) {
            if (!NAMED_BY.containsKey(key)) {
                throw new IllegalArgumentException("the items of '" + key + "' have no names; write the whole list");
            }
            return changed(NAMED_BY.get(key), list, changes);
        }
        return change;
    }

    private static SequenceNode changed(String name, SequenceNode base, MappingNode changes) {
        List<Node> items = new ArrayList<>(base.getValue());
        for (NodeTuple change : changes.getValue()) {
            String wanted = text(change.getKeyNode());
            int at = position(items, name, wanted);
            if (isNull(change.getValueNode())) {
                if (at < 0) {
                    throw new IllegalArgumentException("no item with " + name + " '" + wanted + "' to take away");
                }
                items.remove(at);
            } else if (at >= 0) {
                items.set(at, changed((MappingNode) items.get(at), (MappingNode) change.getValueNode()));
            } else {
                items.add(name.equals("op") ? placeOfStep(items, wanted) : items.size(),
                        named(name, change.getKeyNode(), (MappingNode) change.getValueNode()));
            }
        }
        return new SequenceNode(base.getTag(), items, base.getFlowStyle());
    }

    private static int position(List<Node> items, String name, String wanted) {
        for (int at = 0; at < items.size(); at++) {
            if (wanted.equals(value(items.get(at), name))) {
                return at;
            }
        }
        return -1;
    }

    private static int placeOfStep(List<Node> items, String op) {
        for (int at = 0; at < items.size(); at++) {
            if (Integer.parseInt(value(items.get(at), "op")) > Integer.parseInt(op)) {
                return at;
            }
        }
        return items.size();
    }

    private static MappingNode named(String name, Node value, MappingNode item) {
        ScalarNode key = new ScalarNode(Tag.STR, name, null, null, DumperOptions.ScalarStyle.PLAIN);
        ScalarNode text = new ScalarNode(Tag.STR, text(value), null, null, DumperOptions.ScalarStyle.DOUBLE_QUOTED);
        List<NodeTuple> tuples = new ArrayList<>(List.of(new NodeTuple(key, text)));
        tuples.addAll(item.getValue());
        return new MappingNode(item.getTag(), tuples, item.getFlowStyle());
    }

    private static String value(Node item, String key) {
        return ((MappingNode) item).getValue().stream().filter(one -> text(one.getKeyNode()).equals(key))
                .map(one -> text(one.getValueNode())).findFirst().orElse("");
    }

    private static String text(Node node) {
        return ((ScalarNode) node).getValue();
    }

    private static boolean isNull(Node node) {
        return node.getTag().equals(Tag.NULL);
    }
}
