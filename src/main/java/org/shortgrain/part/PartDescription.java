package org.shortgrain.part;

import java.util.List;

/**
 * Everything that is stated about one part.
 *
 * @param schema version of the form of this description: 1
 * @param review what is asked of the review
 * @param part which part it is
 * @param drawing the drawing that governs
 * @param planning the route or planning card
 * @param forging the forging drawing and die
 * @param material alloy, temper and order
 * @param form form, sections and size
 * @param grain grain directions
 * @param route operations in the order of the card
 * @param routeComplete whether the route is the whole card
 * @param features places to judge, the worst first
 * @param surface surface treatment of the part
 * @param sealant sealing
 * @param environment where the part lives
 * @param neighbours parts in contact or close by, or none
 * @param inspection inspection in service
 * @param evidence proof
 * @param service service so far
 * @param testData own stress and time results
 */
public record PartDescription(
        @Meaning("Version of the form of this description: 1.") int schema,
        @Meaning("What is asked of the review.") Stated<ReviewRequest> review,
        @Meaning("Which part it is.") Stated<Identity> part,
        @Meaning("The drawing that governs.") Stated<Drawing> drawing,
        @Meaning("The route or planning card.") Stated<Planning> planning,
        @Meaning("The forging drawing and die.") Stated<ForgingDrawing> forging,
        @Meaning("Alloy, temper and order.") Stated<Material> material,
        @Meaning("Form, sections and size.") Stated<Form> form,
        @Meaning("Grain directions.") Stated<Grain> grain,
        @Minimum(value = Minimum.Role.JUDGING, noneAnswers = true) @Meaning("Operations in the order of the card.")
        Stated<List<RouteStep>> route,
        @Meaning("Whether the route is the whole card.") Stated<Boolean> routeComplete,
        @Minimum(Minimum.Role.JUDGING) @Meaning("Places to judge, the worst first.") Stated<List<Feature>> features,
        @Meaning("Surface treatment of the part.") Stated<Surface> surface,
        @Meaning("Sealing.") Stated<Sealant> sealant,
        @Meaning("Where the part lives.") Stated<Environment> environment,
        @Meaning("Parts in contact or close by, or none.") Stated<List<Neighbour>> neighbours,
        @Meaning("Inspection in service.") Stated<Inspection> inspection,
        @Meaning("Proof.") Stated<Evidence> evidence,
        @Meaning("Service so far.") Stated<Service> service,
        @Meaning("Own stress and time results.") Stated<List<TestData>> testData) {
}
