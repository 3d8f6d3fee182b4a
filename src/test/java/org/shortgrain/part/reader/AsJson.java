package org.shortgrain.part.reader;

import java.math.BigDecimal;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** YAML nodes as an editor's JSON Schema service sees them. */
final class AsJson {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private AsJson() {
    }

    static JsonNode of(Node node) {
        if (node instanceof MappingNode mapping) {
            ObjectNode object = JSON.objectNode();
            for (NodeTuple entry : mapping.getValue()) {
                object.set(((ScalarNode) entry.getKeyNode()).getValue(), of(entry.getValueNode()));
            }
            return object;
        }
        if (node instanceof SequenceNode sequence) {
            ArrayNode array = JSON.arrayNode();
            sequence.getValue().forEach(item -> array.add(of(item)));
            return array;
        }
        return of(Scalar.of((ScalarNode) node));
    }

    private static JsonNode of(Scalar scalar) {
        if (scalar.isTruth()) {
            return JSON.booleanNode(Boolean.parseBoolean(scalar.text()));
        }
        if (scalar.plain() && scalar.isNothing()) {
            return JSON.nullNode();
        }
        return scalar.isNumber() ? JSON.numberNode(new BigDecimal(scalar.text())) : JSON.stringNode(scalar.text());
    }
}
