package org.shortgrain.part.reader;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * A description as it can be changed: the nodes of its file. Immutable; a change gives a new one, which shares what it
 * left alone.
 *
 * <p>What is tried on a copy is read by the same reader as a file, so that whoever makes the change by hand gets the same
 * review.
 */
public final class EditableDescription {
    private static final int WIDTH = 1000;

    private final Node root;

    EditableDescription(Node root) {
        this.root = root;
    }

    /**
     * {@return the description in a file, ready to be changed; empty if it is not YAML}
     *
     * @param source the file
     */
    public static Optional<EditableDescription> of(SourceFile source) {
        return new YamlText(new Problems(source.name())).compose(source.bytes()).map(EditableDescription::new);
    }

    /**
     * {@return the description in a text; empty if it is not YAML}
     *
     * @param yaml the text
     */
    public static Optional<EditableDescription> of(String yaml) {
        return of(new SourceFile("description", yaml.getBytes(StandardCharsets.UTF_8)));
    }

    Node root() {
        return root;
    }

    /** {@return the description as JSON in one line} */
    public String json() {
        return new DescriptionValue(root).json();
    }

    /** {@return a text that is the same for descriptions that say the same, in whatever order of keys} */
    public String canonical() {
        return new DescriptionValue(root).canonical();
    }

    /** {@return the description as YAML; comments are lost} */
    public String yaml() {
        DumperOptions options = new DumperOptions();
        options.setWidth(WIDTH);
        StringWriter text = new StringWriter();
        new Yaml(options).serialize(DescriptionValue.copy(root), text);
        return text.toString();
    }

    /** {@return the description as a file} */
    public byte[] bytes() {
        return yaml().getBytes(StandardCharsets.UTF_8);
    }

    /**
     * {@return what stands at a place; empty if nothing does}
     *
     * @param pointer JSON pointer
     */
    public Optional<DescriptionValue> at(String pointer) {
        return find(root, keys(pointer)).map(DescriptionValue::new);
    }

    /**
     * {@return whether an answer stands at a place: something other than unknown}
     *
     * @param pointer JSON pointer
     */
    public boolean answers(String pointer) {
        return at(pointer).filter(value -> !value.isUnknown()).isPresent();
    }

    /**
     * {@return the description with a change made}
     *
     * @param patch the change
     * @throws IllegalArgumentException if a place that it names is not there
     */
    public EditableDescription with(JsonPatch patch) {
        Node node = root;
        for (JsonPatch.Operation one : patch.operations()) {
            node = applied(node, one);
        }
        return new EditableDescription(node);
    }

    private static Node applied(Node root, JsonPatch.Operation one) {
        List<String> path = keys(one.path());
        return switch (one.kind()) {
            case ADD -> put(root, path, one.value().orElseThrow().copy(), true, one);
            case REPLACE -> put(existing(root, path, one), path, one.value().orElseThrow().copy(), false, one);
            case REMOVE -> without(existing(root, path, one), path, one);
            case MOVE -> {
                List<String> from = keys(one.from().orElseThrow());
                Node moved = DescriptionValue.copy(find(root, from).orElseThrow(() -> missing(one)));
                yield put(without(root, from, one), path, moved, true, one);
            }
            case COPY -> put(root, path, DescriptionValue.copy(find(root, keys(one.from().orElseThrow()))
                    .orElseThrow(() -> missing(one))), true, one);
        };
    }

    private static Node existing(Node root, List<String> path, JsonPatch.Operation one) {
        find(root, path).orElseThrow(() -> missing(one));
        return root;
    }

    private static IllegalArgumentException missing(JsonPatch.Operation one) {
        return new IllegalArgumentException("the description has no place for " + one);
    }

    private static Node put(Node node, List<String> path, Node value, boolean insert, JsonPatch.Operation one) {
        if (path.isEmpty()) {
            return value;
        }
        String key = path.get(0);
        List<String> rest = path.subList(1, path.size());
        if (node instanceof MappingNode group) {
            Optional<Node> inside = child(node, key);
            if (inside.isEmpty() && !rest.isEmpty()) {
                throw missing(one);
            }
            return entry(group, key, rest.isEmpty() ? value : put(inside.orElseThrow(), rest, value, insert, one));
        }
        if (node instanceof SequenceNode list) {
            List<Node> items = new ArrayList<>(list.getValue());
            if (rest.isEmpty() && insert) {
                items.add(key.equals("-") ? items.size() : index(key, items.size(), one), value);
            } else {
                int index = index(key, items.size() - 1, one);
                items.set(index, put(items.get(index), rest, value, insert, one));
            }
            return list(list, items);
        }
        throw missing(one);
    }

    private static Node without(Node node, List<String> path, JsonPatch.Operation one) {
        String key = path.get(0);
        List<String> rest = path.subList(1, path.size());
        if (node instanceof MappingNode group) {
            if (!rest.isEmpty()) {
                return entry(group, key, without(child(node, key).orElseThrow(() -> missing(one)), rest, one));
            }
            List<NodeTuple> left = group.getValue().stream().filter(tuple -> !is(tuple, key)).toList();
            return group(group, left);
        }
        SequenceNode list = (SequenceNode) node;
        List<Node> items = new ArrayList<>(list.getValue());
        int index = index(key, items.size() - 1, one);
        if (rest.isEmpty()) {
            items.remove(index);
        } else {
            items.set(index, without(items.get(index), rest, one));
        }
        return list(list, items);
    }

    private static Node entry(MappingNode group, String key, Node value) {
        List<NodeTuple> tuples = new ArrayList<>();
        boolean found = false;
        for (NodeTuple tuple : group.getValue()) {
            boolean here = is(tuple, key);
            found |= here;
            tuples.add(here ? new NodeTuple(tuple.getKeyNode(), value) : tuple);
        }
        if (!found) {
            tuples.add(new NodeTuple(DescriptionValue.key(key, group), value));
        }
        return group(group, tuples);
    }

    private static Node group(MappingNode like, List<NodeTuple> tuples) {
        return new MappingNode(like.getTag(), true, tuples, like.getStartMark(), like.getEndMark(), like.getFlowStyle());
    }

    private static Node list(SequenceNode like, List<Node> items) {
        return new SequenceNode(like.getTag(), true, items, like.getStartMark(), like.getEndMark(), like.getFlowStyle());
    }

    private static boolean is(NodeTuple tuple, String key) {
        return tuple.getKeyNode() instanceof ScalarNode name && name.getValue().equals(key);
    }

    private static Optional<Node> find(Node node, List<String> path) {
        Optional<Node> found = Optional.of(node);
        for (String key : path) {
            found = found.flatMap(one -> child(one, key));
        }
        return found;
    }

    private static Optional<Node> child(Node node, String key) {
        if (node instanceof MappingNode group) {
            return group.getValue().stream().filter(tuple -> is(tuple, key)).findFirst().map(NodeTuple::getValueNode);
        }
        if (node instanceof SequenceNode list && key.matches("0|[1-9][0-9]{0,5}")) {
            int index = Integer.parseInt(key);
            return index < list.getValue().size() ? Optional.of(list.getValue().get(index)) : Optional.empty();
        }
        return Optional.empty();
    }

    private static int index(String key, int last, JsonPatch.Operation one) {
        if (!key.matches("0|[1-9][0-9]{0,5}") || Integer.parseInt(key) > last) {
            throw missing(one);
        }
        return Integer.parseInt(key);
    }

    /**
     * {@return the change that puts a value at a place, whatever stands there, and the groups above it where they are
     * missing}
     *
     * @param pointer JSON pointer
     * @param value   the value
     */
    public JsonPatch setting(String pointer, DescriptionValue value) {
        List<String> path = keys(pointer);
        for (int depth = 1; depth < path.size(); depth++) {
            Optional<Node> above = find(root, path.subList(0, depth));
            if (above.isEmpty() || above.get() instanceof ScalarNode) {
                DescriptionValue nested = nested(path.subList(depth, path.size()), value);
                String place = pointer(path.subList(0, depth));
                return new JsonPatch(List.of(above.isEmpty() ? JsonPatch.add(place, nested)
                        : JsonPatch.replace(place, nested)));
            }
        }
        return new JsonPatch(List.of(at(pointer).isPresent() ? JsonPatch.replace(pointer, value)
                : JsonPatch.add(pointer, value)));
    }

    /**
     * {@return the change that fills in what a place leaves open, and leaves alone what is answered}
     *
     * <p>A group fills the keys of the group that stands there, or of every group of a list, and takes the place of a text
     * that it holds itself, which is a group in its short form; anything else goes to a place where nothing or unknown stands.
     *
     * @param pointer JSON pointer
     * @param value   what to fill in
     */
    public JsonPatch filling(String pointer, DescriptionValue value) {
        if (!answers(pointer)) {
            return setting(pointer, value);
        }
        DescriptionValue stands = at(pointer).orElseThrow();
        if (!value.isGroup()) {
            return JsonPatch.NOTHING;
        }
        boolean inShort = !stands.text().isEmpty()
                && value.entries().values().stream().anyMatch(one -> one.text().equals(stands.text()));
        if (inShort) {
            return setting(pointer, value);
        }
        JsonPatch patch = JsonPatch.NOTHING;
        EditableDescription now = this;
        List<String> places = stands.isGroup() ? List.of(pointer)
                : Stream.iterate(0, i -> i + 1).limit(stands.items().size()).map(i -> pointer + "/" + i).toList();
        for (String place : places) {
            for (var entry : value.entries().entrySet()) {
                JsonPatch one = now.filling(place + "/" + escaped(entry.getKey()), entry.getValue());
                now = now.with(one);
                patch = patch.then(one);
            }
        }
        return patch;
    }

    private static DescriptionValue nested(List<String> keys, DescriptionValue value) {
        Node node = value.copy();
        for (int i = keys.size() - 1; i >= 0; i--) {
            node = new MappingNode(Tag.MAP, true,
                    List.of(new NodeTuple(DescriptionValue.key(keys.get(i), node), node)), node.getStartMark(), node.getEndMark(),
                    DumperOptions.FlowStyle.FLOW);
        }
        return new DescriptionValue(node);
    }

    private static List<String> keys(String pointer) {
        if (pointer.isEmpty()) {
            return List.of();
        }
        if (pointer.charAt(0) != '/') {
            throw new IllegalArgumentException("no JSON pointer: " + pointer);
        }
        return Stream.of(pointer.substring(1).split("/", -1)).map(key -> key.replace("~1", "/").replace("~0", "~")).toList();
    }

    private static String pointer(List<String> keys) {
        StringBuilder pointer = new StringBuilder();
        keys.forEach(key -> pointer.append('/').append(escaped(key)));
        return pointer.toString();
    }

    private static String escaped(String key) {
        return key.replace("~", "~0").replace("/", "~1");
    }
}
