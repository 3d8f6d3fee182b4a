package org.shortgrain.part.reader;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.shortgrain.part.Dimension;
import org.shortgrain.part.Minimum;
import org.shortgrain.part.Provenance;
import org.shortgrain.part.Unit;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Writes the JSON Schema of a part description from the records that the reader fills.
 *
 * <p>Draft 2020-12, but only keywords that mean the same in draft-07, since the editors' YAML services stop there:
 * {@code definitions}, no siblings beside {@code $ref}. The schema says the form; what needs a table or sums (units
 * against limits, words of the rulebook, names of features) is left to the reader.
 */
final class SchemaWriter {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final Map<Dimension, String> EXAMPLES = Map.ofEntries(Map.entry(Dimension.LENGTH, "76 mm"),
            Map.entry(Dimension.STRESS, "48 MPa"), Map.entry(Dimension.TEMPERATURE, "25 degC"),
            Map.entry(Dimension.TIME, "24 h"), Map.entry(Dimension.FORCE, "1.5 kN"), Map.entry(Dimension.TORQUE, "12 Nm"),
            Map.entry(Dimension.MASS, "1.9 kg"), Map.entry(Dimension.ANGLE, "3 deg"), Map.entry(Dimension.VOLUME, "120 ml"),
            Map.entry(Dimension.AREA, "40 mm2"), Map.entry(Dimension.CONDUCTIVITY, "39 %IACS"),
            Map.entry(Dimension.STRESS_INTENSITY, "25 MPa sqrt(m)"), Map.entry(Dimension.SHARE, "80 %"));

    private final Forms forms = new Forms();
    private final Vocabularies vocabularies;
    private final Map<String, ObjectNode> definitions = new LinkedHashMap<>();

    SchemaWriter(Vocabularies vocabularies) {
        this.vocabularies = vocabularies;
    }

    String write() {
        ObjectNode schema = JSON.objectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("$id", "urn:shortgrain:part-description:" + SchemaVersion.READ);
        schema.put("title", "Part description for a stress-corrosion review, version " + SchemaVersion.READ);
        schema.put("description", "What a part is made of, in which order, stressed and wetted where. Every key takes a value, "
                + "none (there is none: someone answers for it), unknown (looked, stated nowhere), or is left out (not looked). "
                + "A value may be long: {value: ..., kind: ..., ref: ..., scope: ...}. Several values in brackets where one is "
                + "expected mean that one of them holds.");
        definitions.put("state", state());
        ObjectNode lone = JSON.objectNode().put("type", "array").put("minItems", 1).put("maxItems", 1);
        definitions.put("lone_state", lone.set("items", refer("state")));
        definitions.put("ref", ref());
        definitions.put("kind", described("How the value is known.", anyOf(List.of(
                oneOf(Expected.OneOf.of(Provenance.Kind.class)), refer("state")))));
        definitions.put("scope", described("What a piece of evidence covers.", anyOf(List.of(
                oneOf(Expected.OneOf.of(Provenance.Scope.class)), refer("state")))));
        ObjectNode top = group(Expected.Group.DESCRIPTION);
        schema.setAll(top);
        ((ObjectNode) schema.get("properties")).set("schema", described("Version of the form of this description: 1.",
                JSON.objectNode().set("enum", array(List.of(JSON.numberNode(SchemaVersion.READ),
                        JSON.stringNode(Integer.toString(SchemaVersion.READ)))))));
        schema.set("required", words(List.of("part")));
        ObjectNode shared = schema.putObject("definitions");
        definitions.forEach(shared::set);
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"));
        return JsonMapper.builder().build().writer().with(printer).writeValueAsString(schema) + "\n";
    }

    private static ObjectNode state() {
        ObjectNode anyCase = JSON.objectNode().put("type", "string").put("pattern",
                "^([Nn][Oo][Nn][Ee]|[Uu][Nn][Kk][Nn][Oo][Ww][Nn])$");
        return anyOf(List.of(JSON.objectNode().set("enum", words(List.of("none", "unknown"))), anyCase));
    }

    private ObjectNode group(Expected.Group form) {
        ObjectNode group = JSON.objectNode();
        group.put("type", "object");
        ObjectNode properties = group.putObject("properties");
        ArrayNode required = JSON.arrayNode();
        for (Expected.Field field : forms.of(form).all()) {
            properties.set(field.key(), described(meaning(field), stated(field.expected())));
            if (field.need().filter(need -> need.role() == Minimum.Role.REFUSED).isPresent()) {
                required.add(field.key());
            }
        }
        properties.set("ref", refer("ref"));
        if (!required.isEmpty()) {
            group.set("required", required);
        }
        group.put("minProperties", 1);
        group.put("additionalProperties", false);
        return group;
    }

    private static String meaning(Expected.Field field) {
        return field.need().map(need -> field.meaning() + " Minimum set.").orElse(field.meaning());
    }

    private static ObjectNode described(String meaning, JsonNode schema) {
        ObjectNode described = JSON.objectNode();
        described.put("description", meaning);
        boolean reference = schema.has("$ref");
        return reference ? described.set("allOf", array(List.of(schema))) : described.setAll((ObjectNode) schema);
    }

    /**
     * What may stand at a key: a state, a value, its long form, or several in brackets. A list of values and several values
     * of which one holds look alike.
     */
    private ObjectNode stated(Expected expected) {
        Expected item = expected instanceof Expected.ListOf list ? list.item() : expected;
        return define("stated_" + name(item), () -> {
            ObjectNode plain = define("plain_" + name(item), () -> anyOf(List.of(refer("state"), value(item), several(item),
                    refer("lone_state"))));
            List<JsonNode> all = new ArrayList<>(List.of(plain));
            all.addAll(longForms(item, plain));
            return anyOf(all);
        });
    }

    private ObjectNode define(String name, Supplier<ObjectNode> schema) {
        if (!definitions.containsKey(name)) {
            definitions.put(name, JSON.objectNode());
            definitions.put(name, schema.get());
        }
        return refer(name);
    }

    private static String name(Expected expected) {
        if (expected instanceof Expected.Text text) {
            return text.date() ? "date" : text.words().map(list -> "word_of_" + list.name().toLowerCase(Locale.ROOT)).orElse("text");
        }
        if (expected instanceof Expected.Number number) {
            Expected.Bounds bounds = number.bounds();
            String least = bounds.positive() ? "_above_0" : Double.isFinite(bounds.min()) ? "_from_" + (int) bounds.min() : "";
            return (number.share() ? "share" : "number") + least
                    + (Double.isFinite(bounds.max()) ? "_to_" + (int) bounds.max() : "");
        }
        if (expected instanceof Expected.Measure measure) {
            return measure.dimension().noun().replace(' ', '_');
        }
        if (expected instanceof Expected.OneOf words) {
            return words.words().values().iterator().next().getClass().getSimpleName();
        }
        return expected instanceof Expected.Group group ? group.name()
                : expected.getClass().getSimpleName();
    }

    private ObjectNode several(Expected item) {
        ObjectNode value = value(item);
        ObjectNode several = JSON.objectNode().put("type", "array").put("minItems", 1);
        if (item instanceof Expected.Group) {
            several.set("items", value);
            return several;
        }
        ObjectNode withRef = object(new TreeMap<>(Map.of("value", value, "ref", refer("ref"))));
        withRef.set("required", words(List.of("value")));
        several.set("items", anyOf(List.of(value, withRef)));
        return several;
    }

    private List<JsonNode> longForms(Expected item, ObjectNode inner) {
        boolean ownValue = item instanceof Expected.Group group && forms.of(group).named("value").isPresent();
        Map<String, JsonNode> keys = new LinkedHashMap<>();
        keys.put("value", ownValue ? refer("state") : inner);
        keys.putAll(provenance());
        ObjectNode longForm = object(keys);
        longForm.set("required", words(List.of("value")));
        if (item instanceof Expected.Measure measure) {
            return List.of(longForm, limits(measure));
        }
        if (item instanceof Expected.Moisture moisture) {
            return List.of(longForm, limits(moisture.relative()));
        }
        return item instanceof Expected.Direction ? List.of(longForm, axisGroup()) : List.of(longForm);
    }

    private static Map<String, JsonNode> provenance() {
        Map<String, JsonNode> keys = new LinkedHashMap<>();
        for (String key : List.of("kind", "ref", "scope")) {
            keys.put(key, refer(key));
        }
        return keys;
    }

    private static ObjectNode ref() {
        return described("Drawing note, card operation or report that it was taken from.", text());
    }

    private static ObjectNode text() {
        ObjectNode text = JSON.objectNode();
        text.set("type", words(List.of("string", "number")));
        return text.put("pattern", "\\S");
    }

    private ObjectNode value(Expected expected) {
        return expected instanceof Expected.Group group ? groupValue(group)
                : define(name(expected), () -> scalar(expected));
    }

    private ObjectNode scalar(Expected expected) {
        if (expected instanceof Expected.Text text && text.date()) {
            return text().put("pattern", "^" + Dates.FORM + "$").set("examples", words(List.of("2026-01-15")));
        }
        if (expected instanceof Expected.Text text) {
            ObjectNode schema = text();
            text.words().ifPresent(list -> schema.set("examples", words(vocabularies.words(list))));
            return schema;
        }
        if (expected instanceof Expected.Number number) {
            return number(number);
        }
        if (expected instanceof Expected.Truth) {
            return JSON.objectNode().put("type", "boolean");
        }
        if (expected instanceof Expected.Measure measure) {
            return anyOf(List.of(quantityOf(measure.dimension()), bareLimits(measure)));
        }
        if (expected instanceof Expected.Moisture moisture) {
            return anyOf(List.of(oneOf(moisture.words()), quantityOf(Dimension.SHARE), bareLimits(moisture.relative())));
        }
        if (expected instanceof Expected.OneOf words) {
            return oneOf(words);
        }
        if (expected instanceof Expected.PartAxis) {
            return axis();
        }
        return anyOf(List.of(oneOf(((Expected.Direction) expected).words()), object(Map.of("axis", value(new Expected.PartAxis())))));
    }

    private ObjectNode groupValue(Expected.Group group) {
        ObjectNode whole = define(name(group), () -> group(group));
        return forms.of(group).inShort().map(main -> anyOf(List.of(whole, inShort(main.expected())))).orElse(whole);
    }

    private ObjectNode inShort(Expected expected) {
        return expected instanceof Expected.Measure measure ? quantityOf(measure.dimension()) : value(expected);
    }

    private ObjectNode number(Expected.Number number) {
        ObjectNode plain = JSON.objectNode().put("type", "number");
        Expected.Bounds bounds = number.bounds();
        if (bounds.positive()) {
            plain.put("exclusiveMinimum", 0);
        } else if (Double.isFinite(bounds.min())) {
            plain.put("minimum", bounds.min());
        }
        if (Double.isFinite(bounds.max())) {
            plain.put("maximum", bounds.max());
        }
        return number.share() ? anyOf(List.of(plain, quantityOf(Dimension.SHARE))) : plain;
    }

    private ObjectNode quantityOf(Dimension dimension) {
        return define("one_" + dimension.noun().replace(' ', '_'), () -> quantity(dimension));
    }

    private static ObjectNode quantity(Dimension dimension) {
        String units = Unit.of(dimension).stream().flatMap(unit -> unit.symbols().stream()).map(SchemaWriter::literal)
                .collect(Collectors.joining("|"));
        ObjectNode quantity = JSON.objectNode().put("type", "string");
        quantity.put("pattern", "^\\s*[-+\u2212]?[0-9]+(\\.[0-9]+)?\\s*(" + units + ")\\s*$");
        quantity.set("examples", words(List.of(EXAMPLES.get(dimension))));
        return quantity;
    }

    private static String literal(String symbol) {
        return symbol.replaceAll("([\\^$.|?*+()\\[\\]{}\\\\])", "\\\\$1").replace(" ", "\\s+");
    }

    /** {min, max} alone. */
    private ObjectNode bareLimits(Expected.Measure measure) {
        return limits(measure, Map.of());
    }

    /** {min, max} with a provenance. */
    private ObjectNode limits(Expected.Measure measure) {
        return limits(measure, provenance());
    }

    private ObjectNode limits(Expected.Measure measure, Map<String, JsonNode> more) {
        ObjectNode limit = anyOf(List.of(refer("state"), quantityOf(measure.dimension())));
        Map<String, JsonNode> keys = new LinkedHashMap<>();
        keys.put("min", described("Lower limit.", limit));
        keys.put("max", described("Upper limit.", limit));
        keys.putAll(more);
        ObjectNode limits = object(keys);
        limits.set("anyOf", array(List.of(required("min"), required("max"))));
        return limits;
    }

    private static ObjectNode required(String key) {
        return JSON.objectNode().set("required", words(List.of(key)));
    }

    private ObjectNode axisGroup() {
        Map<String, JsonNode> keys = new LinkedHashMap<>();
        keys.put("axis", value(new Expected.PartAxis()));
        keys.putAll(provenance());
        ObjectNode group = object(keys);
        group.set("required", words(List.of("axis")));
        return group;
    }

    private static ObjectNode axis() {
        ObjectNode vector = JSON.objectNode().put("type", "array").put("minItems", 3).put("maxItems", 3);
        vector.set("items", JSON.objectNode().put("type", "number"));
        ObjectNode named = JSON.objectNode().set("enum", words(List.of("X", "Y", "Z", "-X", "-Y", "-Z", "+X", "+Y", "+Z")));
        return anyOf(List.of(named, vector));
    }

    private static ObjectNode oneOf(Expected.OneOf words) {
        return JSON.objectNode().set("enum", words(words.words().keySet()));
    }

    private static ObjectNode object(Map<String, JsonNode> keys) {
        ObjectNode object = JSON.objectNode().put("type", "object");
        ObjectNode properties = object.putObject("properties");
        keys.forEach(properties::set);
        return object.put("additionalProperties", false);
    }

    private static ObjectNode refer(String definition) {
        return JSON.objectNode().put("$ref", "#/definitions/" + definition);
    }

    private static ObjectNode anyOf(Collection<? extends JsonNode> schemas) {
        return JSON.objectNode().set("anyOf", array(schemas));
    }

    private static ArrayNode array(Collection<? extends JsonNode> nodes) {
        ArrayNode array = JSON.arrayNode();
        nodes.forEach(array::add);
        return array;
    }

    private static ArrayNode words(Collection<String> words) {
        ArrayNode array = JSON.arrayNode();
        words.forEach(array::add);
        return array;
    }
}
