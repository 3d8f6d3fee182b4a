package org.shortgrain.reference;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * The documents behind the rulebook, each once, by key. Read from {@code sources.yaml}, or from the table that the build
 * makes of the shipped one: a cold start reads that in a tenth of the time.
 */
public final class Sources {
    static final String FILE = "sources.yaml";
    private static final String COMPILED = "sources.csv";
    private static final List<String> REQUIRED = List.of("title", "kind", "seen");
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
                new FileReader(new ParserImpl(new StreamReader(reader), new LoaderOptions()), byId, faults).read();
            }
        } catch (YAMLException e) {
            faults.add(FILE, "is no YAML: " + e.getMessage());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + FILE, e);
        }
        return new Sources(byId);
    }

    /**
     * Writes the documents of a rulebook as a table for {@link #compiled}, a step of the build.
     *
     * @param rulebook folder of the rulebook
     * @param folder   folder to write to
     * @throws IOException            if the table cannot be written
     * @throws RulebookTableException if the documents have faults
     */
    public static void compile(Path rulebook, Path folder) throws IOException {
        Faults faults = new Faults();
        Sources sources = read(name -> ReferenceTables.open(rulebook.resolve(name)), faults);
        faults.throwIfAny();
        try (CsvWriter table = CsvWriter.builder().build(folder.resolve(COMPILED))) {
            table.writeRecord("id", "title", "number", "edition", "year", "kind", "seen");
            for (Source one : sources.all()) {
                table.writeRecord(one.id(), one.title(), one.number(), one.edition(), one.year(), one.kind(), one.seen());
            }
        }
    }

    /** {@return the documents of the table that the build made} */
    static Sources compiled(Function<String, InputStream> door, Faults faults) {
        Map<String, Source> byId = new LinkedHashMap<>();
        Sources sources = new Sources(byId);
        for (Row row : new Csv(door, faults, sources).read(COMPILED, "id", "title", "number", "edition", "year", "kind",
                "seen")) {
            byId.put(row.text("id"), new Source(row.text("id"), row.text("title"), row.text("number"),
                    row.text("edition"), row.text("year"), row.text("kind"), row.text("seen")));
        }
        return sources;
    }

    /**
     * Reads the file by the events of the YAML parser: a mapping of keys to flat mappings of text. Anchors, tags and
     * lists have no place in it and are refused.
     */
    private static final class FileReader {
        private final Parser parser;
        private final Map<String, Source> byId;
        private final Faults faults;

        FileReader(Parser parser, Map<String, Source> byId, Faults faults) {
            this.parser = parser;
            this.byId = byId;
            this.faults = faults;
        }

        void read() {
            parser.getEvent();
            if (parser.checkEvent(Event.ID.StreamEnd)) {
                return;
            }
            parser.getEvent();
            if (expect(Event.ID.MappingStart, "a key for each document")) {
                while (!parser.checkEvent(Event.ID.MappingEnd)) {
                    if (!document()) {
                        return;
                    }
                }
            }
        }

        private boolean document() {
            Event key = parser.peekEvent();
            if (!expect(Event.ID.Scalar, "the key of a document")) {
                return false;
            }
            String id = ((ScalarEvent) key).getValue();
            if (!expect(Event.ID.MappingStart, "title, kind and seen of " + id)) {
                return false;
            }
            Map<String, String> texts = new HashMap<>();
            while (!parser.checkEvent(Event.ID.MappingEnd)) {
                ScalarEvent field = scalar(id);
                ScalarEvent value = field == null ? null : scalar(id);
                if (value == null) {
                    return false;
                }
                if (!KEYS.contains(field.getValue()) || texts.put(field.getValue(), value.getValue()) != null) {
                    faults.add(FILE, line(field), "unknown or repeated key '" + field.getValue() + "' of " + id
                            + "; known are " + KEYS);
                }
            }
            parser.getEvent();
            add(id, line(key), texts);
            return true;
        }

        private ScalarEvent scalar(String id) {
            Event event = parser.peekEvent();
            return expect(Event.ID.Scalar, "text of " + id) ? (ScalarEvent) event : null;
        }

        private boolean expect(Event.ID kind, String what) {
            Event event = parser.getEvent();
            if (!event.is(kind)) {
                faults.add(FILE, line(event), "expected " + what);
                return false;
            }
            return true;
        }

        private static int line(Event event) {
            return event.getStartMark().getLine() + 1;
        }

        private void add(String id, int line, Map<String, String> texts) {
            for (String key : REQUIRED) {
                if (texts.getOrDefault(key, "").isBlank()) {
                    faults.add(FILE, line, id + " has no " + key);
                }
            }
            if (!KINDS.contains(texts.getOrDefault("kind", ""))) {
                faults.add(FILE, line, "kind of " + id + " is '" + texts.get("kind") + "'; known are " + KINDS);
            }
            Source source = new Source(id, texts.getOrDefault("title", ""), texts.getOrDefault("number", ""),
                    texts.getOrDefault("edition", ""), texts.getOrDefault("year", ""), texts.getOrDefault("kind", ""),
                    texts.getOrDefault("seen", ""));
            if (byId.put(id, source) != null) {
                faults.add(FILE, line, id + " stands twice");
            }
        }
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
