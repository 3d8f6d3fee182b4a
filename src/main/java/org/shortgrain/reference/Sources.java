package org.shortgrain.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;

/** The documents behind the rulebook, each once, by key. Read from {@code sources.yaml}. */
public final class Sources {
    static final String FILE = "sources.yaml";
    private static final Set<String> KEYS = Set.of("title", "number", "edition", "year", "kind", "seen");
    private static final Set<String> KINDS = Set.of("standard", "specification", "handbook", "manual",
            "advisory circular", "bulletin", "paper", "report", "thesis", "patent", "book", "data sheet", "chart",
            "web page", "press", "case history", "regulation", "practice", "derivation");

    private final Map<String, Source> byId;

    private Sources(Map<String, Source> byId) {
        this.byId = Collections.unmodifiableMap(byId);
    }

    static Sources read(Function<String, InputStream> door, Faults faults) {
        Map<String, Source> byId = new LinkedHashMap<>();
        try (InputStream in = door.apply(FILE)) {
            if (in == null) {
                faults.add(FILE, "is missing from the rulebook");
                return new Sources(byId);
            }
            try (Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
                Node root = new Yaml(new SafeConstructor(new LoaderOptions())).compose(reader);
                if (root instanceof MappingNode map) {
                    map.getValue().forEach(entry -> add(entry, byId, faults));
                } else {
                    faults.add(FILE, "must map a key to each document");
                }
            }
        } catch (YAMLException e) {
            faults.add(FILE, "is no YAML: " + e.getMessage());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + FILE, e);
        }
        return new Sources(byId);
    }

    private static void add(NodeTuple entry, Map<String, Source> byId, Faults faults) {
        String id = scalar(entry.getKeyNode());
        int line = entry.getKeyNode().getStartMark().getLine() + 1;
        if (!(entry.getValueNode() instanceof MappingNode fields)) {
            faults.add(FILE, line, id + " must have title, kind and seen");
            return;
        }
        Map<String, String> texts = new LinkedHashMap<>();
        for (NodeTuple field : fields.getValue()) {
            String key = scalar(field.getKeyNode());
            if (!KEYS.contains(key) || texts.put(key, scalar(field.getValueNode())) != null) {
                faults.add(FILE, field.getKeyNode().getStartMark().getLine() + 1,
                        "unknown or repeated key '" + key + "' of " + id + "; known are " + KEYS);
            }
        }
        for (String key : new String[] {"title", "kind", "seen"}) {
            if (texts.getOrDefault(key, "").isBlank()) {
                faults.add(FILE, line, id + " has no " + key);
            }
        }
        if (!KINDS.contains(texts.get("kind"))) {
            faults.add(FILE, line, "kind of " + id + " is '" + texts.get("kind") + "'; known are " + KINDS);
        }
        Source source = new Source(id, texts.getOrDefault("title", ""), texts.getOrDefault("number", ""),
                texts.getOrDefault("edition", ""), texts.getOrDefault("year", ""), texts.getOrDefault("kind", ""),
                texts.getOrDefault("seen", ""));
        if (byId.put(id, source) != null) {
            faults.add(FILE, line, id + " stands twice");
        }
    }

    private static String scalar(Node node) {
        return node instanceof ScalarNode scalar ? scalar.getValue() : "";
    }

    /**
     * {@return a document}
     *
     * @param id its key
     */
    public Optional<Source> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /**
     * {@return whether a document is listed}
     *
     * @param id its key
     */
    public boolean has(String id) {
        return byId.containsKey(id);
    }

    /** {@return all documents, in the order of the file} */
    public Collection<Source> all() {
        return byId.values();
    }
}
