package org.shortgrain.part.reader;

import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * Walks the nodes once, reports repeated keys, tags and keys that are no words, and counts. An alias inside its own
 * anchor would make every later walk endless, so it counts as endlessly many.
 */
final class NodeCheck {
    private static final long ENDLESS = Integer.MAX_VALUE;
    private static final Set<Tag> READ = Set.of(Tag.STR, Tag.INT, Tag.FLOAT, Tag.BOOL, Tag.NULL, Tag.TIMESTAMP, Tag.MERGE,
            Tag.SEQ, Tag.MAP);

    private final Problems problems;
    private final Set<Node> open = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Map<Node, Long> sizes = new IdentityHashMap<>();

    NodeCheck(Problems problems) {
        this.problems = problems;
    }

    /** Nodes of the tree with all aliases followed; endlessly many for a loop. */
    long size(Node node) {
        if (!open.add(node)) {
            problems.add(ProblemCode.SELF_REFERENCE, YamlText.at("", node.getStartMark()));
            return ENDLESS;
        }
        Long size = sizes.get(node);
        if (size == null) {
            checkTag(node);
            size = Math.min(ENDLESS, 1 + inside(node));
            sizes.put(node, size);
        }
        open.remove(node);
        return size;
    }

    private long inside(Node node) {
        long nodes = 0;
        if (node instanceof SequenceNode sequence) {
            for (Node item : sequence.getValue()) {
                nodes += size(item);
            }
        } else if (node instanceof MappingNode mapping) {
            checkKeys(mapping);
            for (NodeTuple entry : mapping.getValue()) {
                nodes += size(entry.getValueNode());
            }
        }
        return nodes;
    }

    private void checkTag(Node node) {
        if (!READ.contains(node.getTag())) {
            String tag = node.getTag().getValue();
            String shown = tag.startsWith(Tag.PREFIX) ? "!!" + tag.substring(Tag.PREFIX.length()) : tag;
            problems.add(ProblemCode.TAG, YamlText.at("", node.getStartMark()), shown);
        }
    }

    private void checkKeys(MappingNode mapping) {
        Map<String, Integer> lines = new HashMap<>();
        for (NodeTuple entry : mapping.getValue()) {
            Mark at = entry.getKeyNode().getStartMark();
            if (!(entry.getKeyNode() instanceof ScalarNode key)) {
                problems.add(ProblemCode.KEY_NOT_TEXT, YamlText.at("", at));
                continue;
            }
            checkTag(key);
            Integer first = lines.putIfAbsent(key.getValue(), at.getLine() + 1);
            if (first != null) {
                problems.add(ProblemCode.DUPLICATE_KEY, YamlText.at("", at), Values.shown(key.getValue()), first);
            }
        }
    }
}
