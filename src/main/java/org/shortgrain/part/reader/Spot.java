package org.shortgrain.part.reader;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.shortgrain.part.Location;
import org.yaml.snakeyaml.nodes.CollectionNode;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * A node and its place.
 *
 * @param path JSON pointer
 * @param node the node
 * @param key  node of its key; empty for a list item and for the whole file
 */
record Spot(String path, Node node, Optional<Node> key) {

    static Spot root(Node node) {
        return new Spot("", node, Optional.empty());
    }

    /** The value; or its key, where the value only begins on a later line, as groups and lists mostly do. */
    Location at() {
        boolean later = key.isPresent() && key.get().getStartMark().getLine() < node.getStartMark().getLine();
        return YamlText.at(path, (later ? key.get() : node).getStartMark());
    }

    /** The key, or the value where there is no key. */
    Location atKey() {
        return YamlText.at(path, key.orElse(node).getStartMark());
    }

    /** The entries of a group, in the order of the file. */
    Map<String, Spot> entries() {
        Map<String, Spot> entries = new LinkedHashMap<>();
        for (NodeTuple entry : ((MappingNode) node).getValue()) {
            if (entry.getKeyNode() instanceof ScalarNode name) {
                entries.put(name.getValue(), new Spot(path + "/" + escaped(name.getValue()), entry.getValueNode(),
                        Optional.of(name)));
            }
        }
        return entries;
    }

    /** One entry of a group; empty for anything else. */
    Optional<Spot> entry(String name) {
        if (node instanceof MappingNode mapping) {
            for (NodeTuple entry : mapping.getValue()) {
                if (entry.getKeyNode() instanceof ScalarNode key && key.getValue().equals(name)) {
                    return Optional.of(new Spot(path + "/" + escaped(name), entry.getValueNode(), Optional.of(key)));
                }
            }
        }
        return Optional.empty();
    }

    /** Whether it is a list or group of nothing. */
    boolean isEmpty() {
        return node instanceof CollectionNode<?> collection && collection.getValue().isEmpty();
    }

    boolean isGroup() {
        return node instanceof MappingNode;
    }

    boolean isList() {
        return node instanceof SequenceNode;
    }

    int size() {
        return ((SequenceNode) node).getValue().size();
    }

    Spot item(int index) {
        return new Spot(path + "/" + index, ((SequenceNode) node).getValue().get(index), Optional.empty());
    }

    /** The same node under a key that the file leaves out. */
    Spot as(String leftOut) {
        return new Spot(path + "/" + leftOut, node, key);
    }

    private static String escaped(String key) {
        boolean plain = key.indexOf('~') < 0 && key.indexOf('/') < 0;
        return plain ? key : key.replace("~", "~0").replace("/", "~1");
    }
}
