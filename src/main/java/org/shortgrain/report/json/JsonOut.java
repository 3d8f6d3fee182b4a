package org.shortgrain.report.json;

import java.io.ByteArrayOutputStream;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.shortgrain.part.reader.JsonPatch;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;

/**
 * Writes one JSON object with the same bytes for the same content: fixed order, fixed line ends, {@link Decimal} numbers.
 *
 * <p>What is begun with {@link #object(String)}, {@link #list(String)} or {@link #item()} goes on until its {@link #end()}.
 */
public final class JsonOut {

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final JsonGenerator out = JsonFactory.builder().build().createGenerator(new Indented(), bytes);

    /** Begins an object. */
    public JsonOut() {
        out.writeStartObject();
    }

    /** {@return the bytes of the object, UTF-8, with a line end after it; nothing is written any more} */
    public byte[] bytes() {
        out.writeEndObject();
        out.writeRaw('\n');
        out.close();
        return bytes.toByteArray();
    }

    /** {@return how many bytes the keys written so far take} */
    int length() {
        out.flush();
        return bytes.size();
    }

    /**
     * Begins an object under a key.
     *
     * @param key its key
     * @return this
     */
    public JsonOut object(String key) {
        out.writeObjectPropertyStart(key);
        return this;
    }

    /**
     * Begins a list of objects.
     *
     * @param key its key
     * @return this
     */
    public JsonOut list(String key) {
        out.writeArrayPropertyStart(key);
        return this;
    }

    /**
     * Begins an object of the open list.
     *
     * @return this
     */
    public JsonOut item() {
        out.writeStartObject();
        return this;
    }

    /**
     * Ends the object or list that was begun last.
     *
     * @return this
     */
    public JsonOut end() {
        if (out.streamWriteContext().inArray()) {
            out.writeEndArray();
        } else {
            out.writeEndObject();
        }
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
        return value.isPresent() ? text(key, value.get()) : this;
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
        for (String value : values) {
            out.writeString(value);
        }
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
        StringBuilder line = new StringBuilder("[");
        for (double value : values) {
            line.append(line.length() == 1 ? "" : ", ").append(Decimal.of(value));
        }
        out.writeName(key).writeRawValue(line.append(']').toString());
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
