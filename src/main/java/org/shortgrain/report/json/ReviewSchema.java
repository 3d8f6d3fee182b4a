package org.shortgrain.report.json;

import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** The published form of a review, held against JSON. */
final class ReviewSchema {

    private ReviewSchema() {
    }

    /**
     * {@return where and how a document departs from the form; empty if it does not}
     *
     * @param json the document
     */
    static List<String> faults(JsonNode json) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7).getSchema(ReviewJson.schema())
                .validate(json).stream().map(fault -> fault.getInstanceLocation() + " " + fault.getMessage())
                .sorted().toList();
    }
}
