package org.shortgrain.report.json;

import java.io.ByteArrayOutputStream;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.shortgrain.part.reader.JsonPatch;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;

/** Writes one JSON object with the same bytes for the same content: fixed order, fixed line ends, {@link Decimal} numbers. */
public final class JsonOut {

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final JsonGenerator out = JsonFactory.builder().build().createGenerator(new Indented(), bytes);

    private JsonOut() {
    }

    /**
     * {@return the bytes of an object, UTF-8, with a line end after it}
     *
     * @param content writes the object's keys
     */
    public static byte[] bytes(Consumer<JsonOut> content) {
        JsonOut json = new JsonOut();
        json.out.writeStartObject();
        content.accept(json);
        json.out.writeEndObject();
        json.out.writeRaw('\n');
        json.out.close();
        return json.bytes.toByteArray();
    }

    /**
     * Writes an object.
     *
     * @param key     its key
     * @param content writes its keys
     * @return this
     */
    public JsonOut object(String key, Runnable content) {
        out.writeObjectPropertyStart(key);
        content.run();
        out.writeEndObject();
        return this;
    }

    /**
     * Writes a list of objects.
     *
     * @param <T>     type of the items
     * @param key     its key
     * @param items   the items
     * @param content writes the keys of one
     * @return this
     */
    public <T> JsonOut objects(String key, Collection<T> items, Consumer<T> content) {
        out.writeArrayPropertyStart(key);
        for (T item : items) {
            out.writeStartObject();
            content.accept(item);
            out.writeEndObject();
        }
        out.writeEndArray();
        return this;
    }

    /**
     * Writes a text.
     *
     * @param key   its key
     * @param value the text
     * @return this
     */
    public JsonOut text(String key, String value) {
        out.writeStringProperty(key, value);
        return this;
    }

    /**
     * Writes a text, or nothing where there is none.
     *
     * @param key   its key
     * @param value the text
     * @return this
     */
    public JsonOut text(String key, Optional<String> value) {
        value.ifPresent(text -> text(key, text));
        return this;
    }

    /**
     * Writes a list of texts.
     *
     * @param key    its key
     * @param values the texts
     * @return this
     */
    public JsonOut texts(String key, Collection<String> values) {
        out.writeArrayPropertyStart(key);
        values.forEach(out::writeString);
        out.writeEndArray();
        return this;
    }

    /**
     * Writes a number.
     *
     * @param key   its key
     * @param value a finite number
     * @return this
     */
    public JsonOut number(String key, double value) {
        out.writeName(key).writeNumber(Decimal.of(value));
        return this;
    }

    /**
     * Writes a change of a description, one operation in a line.
     *
     * @param key   its key
     * @param patch the change
     * @return this
     */
    public JsonOut patch(String key, JsonPatch patch) {
        out.writeName(key).writeRawValue(patch.json());
        return this;
    }

    /**
     * Writes a list of numbers, in one line.
     *
     * @param key    its key
     * @param values finite numbers
     * @return this
     */
    public JsonOut numbers(String key, List<Double> values) {
        out.writeName(key).writeRawValue(values.stream().map(Decimal::of).collect(Collectors.joining(", ", "[", "]")));
        return this;
    }

    /**
     * Writes a whole number.
     *
     * @param key   its key
     * @param value the number
     * @return this
     */
    public JsonOut whole(String key, long value) {
        out.writeNumberProperty(key, value);
        return this;
    }

    /**
     * Writes true or false.
     *
     * @param key   its key
     * @param value which
     * @return this
     */
    public JsonOut truth(String key, boolean value) {
        out.writeBooleanProperty(key, value);
        return this;
    }

    /** Two spaces and a line feed, on every operating system. */
    private static final class Indented extends ObjectWriteContext.Base {
        @Override
        public PrettyPrinter getPrettyPrinter() {
            DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
            Separators tight = Separators.createDefaultInstance().withObjectNameValueSpacing(Separators.Spacing.AFTER)
                    .withObjectEmptySeparator("").withArrayEmptySeparator("");
            return new DefaultPrettyPrinter(tight).withObjectIndenter(indenter).withArrayIndenter(indenter);
        }

        @Override
        public boolean hasPrettyPrinter() {
            return true;
        }
    }
}
