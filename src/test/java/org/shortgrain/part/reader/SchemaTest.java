package org.shortgrain.part.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shortgrain.reference.ReferenceTables;
import org.shortgrain.reference.RulebookWords;
import org.yaml.snakeyaml.nodes.Node;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class SchemaTest {
    private static final Path SHIPPED = Path.of("src/main/resources/schema/part-description.schema.json");
    private static final Path FRESH = Path.of("target/part-description.schema.json");

    private static final String GOOD = "schema: 1\npart: {number: EX-1}\n";

    private static final String WRITTEN = new SchemaWriter(new RulebookWords(ReferenceTables.builtIn())).write();
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(WRITTEN);

    @Test
    void theShippedSchemaIsWhatTheRecordsSay() throws IOException {
        Files.writeString(FRESH, WRITTEN);
        assertEquals(WRITTEN, Files.exists(SHIPPED) ? Files.readString(SHIPPED) : "", "copy " + FRESH + " to " + SHIPPED);
    }

    /** What the schema says against a text. */
    static List<String> refusals(String yaml) {
        Node root = new YamlText(new Problems("test")).compose(yaml.getBytes(StandardCharsets.UTF_8)).orElseThrow();
        return SCHEMA.validate(AsJson.of(root)).stream().map(Object::toString).toList();
    }

    @Test
    void theWholeFormIsValid() throws IOException {
        assertEquals(List.of(), refusals(Files.readString(Read.WHOLE_FORM)));
    }

    @Test
    void theSampleDescriptionsAreValid() throws IOException {
        try (Stream<Path> samples = Files.list(Path.of("sample-reviews"))) {
            for (Path sample : samples.filter(file -> file.toString().endsWith(".yaml")).toList()) {
                assertEquals(List.of(), refusals(Files.readString(sample)), sample.toString());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"form: {prodct: plate}", "form: {heat_treat_thickness: 76}", "form: {heat_treat_thickness: 76 MPa}",
        "form: {heat_treat_thickness: 76 mmm}", "form: plate", "form: {}", "form: {product: die forging}",
        "form: {heat_treat_thickness: {kind: typical}}", "form: {heat_treat_thickness: }", "form: {heat_treat_thickness: []}",
        "form: {heat_treat_thickness: [9 mm, unknown]}", "surface: {primer: true}", "surface: {bare: yes}",
        "features: [{what: web}]", "features: [{id: A, stress_direction: [0, 0, 1]}]", "grain: {L: [1, 2]}",
        "review: {threshold_factor: 2}", "evidence: {hardness: {value: 150 HB, kind: mesured}}", "route: [do: age]\nzone: bilge",
        "environment: {humidity: 80}", "features: [{id: A, residual_stress: {value: none, method: 3, kin: x}}]"})
    void whatTheReaderRefusesForItsFormTheSchemaRefusesAsWell(String lines) {
        assertFalse(refusals(GOOD + lines).isEmpty());
        assertInstanceOf(Reading.Refused.class, Read.text(GOOD + lines));
    }

    @Test
    void onlyKeywordsThatDraftSevenHasAreUsed() {
        for (String newer : List.of("$defs", "prefixItems", "unevaluatedProperties", "dependentRequired", "$dynamicRef",
                "dependentSchemas")) {
            assertFalse(WRITTEN.contains("\"" + newer + "\""), newer);
        }
    }

    @Test
    void everyKeyIsExplained() {
        JsonNode schema = JsonMapper.builder().build().readTree(WRITTEN);
        List<String> silent = new ArrayList<>();
        collectSilentKeys(schema, "", silent);
        assertEquals(List.of(), silent);
    }

    private static void collectSilentKeys(JsonNode node, String path, List<String> silent) {
        node.properties().forEach(entry -> {
            boolean keyed = path.endsWith("/properties");
            boolean explained = entry.getValue().has("description") || entry.getValue().path("$ref").asString("").length() > 0;
            if (keyed && !explained && !path.contains("value")) {
                silent.add(path + "/" + entry.getKey());
            }
            collectSilentKeys(entry.getValue(), path + "/" + entry.getKey(), silent);
        });
    }
}
