package org.shortgrain.part;

import java.util.List;

/**
 * One operation of the card.
 *
 * @param op operation number on the card
 * @param operation what is done, a word of the operation list
 * @param at features it is done at; absent: the whole part
 * @param done whether it was done
 * @param phase when in the life of the part
 * @param spec process specification
 * @param kind type, class or variant of the process
 * @param temperature temperature
 * @param time time at temperature
 * @param steps steps of an ageing or tempering treatment
 * @param medium quenching medium: water, polymer, oil, air, spray
 * @param concentration concentration of the medium
 * @param delay delay before this operation, after the one before
 * @param agitated whether the bath is agitated on record
 * @param removes depth of metal removed per side
 * @param sides which sides
 * @param set permanent strain of a stretch or compression
 * @param expansion expansion of a hole
 * @param method how it is done: press, shrink, expand, hot, cold
 * @param intensity peening intensity
 * @param coverage peening coverage
 * @param thickness thickness of a coating or plating
 * @param gap gap before shimming or drawing up
 * @param torque torque
 * @param filler filler metal of a weld or braze, or none
 * @param beadRemoved whether the weld bead is machined off
 * @param product chemical, sealant, paint or fluid used
 * @param limit acceptance limit of an inspection
 * @param result result of an inspection
 * @param place where the part is kept or shipped
 * @param protection what protects it there, or none
 * @param remarks anything a reader should know
 * @param origin where the group stands, and its reference
 */
public record RouteStep(
        @Verbatim @Meaning("Operation number on the card.") Stated<String> op,
        @Key("do") @Vocabulary(Vocabulary.List.OPERATIONS) @Meaning("What is done, a word of the operation list.")
        Stated<String> operation,
        @Meaning("Features it is done at; absent: the whole part.") Stated<List<String>> at,
        @Meaning("Whether it was done.") Stated<Done> done,
        @Meaning("When in the life of the part.") Stated<Phase> phase,
        @Meaning("Process specification.") Stated<String> spec,
        @Meaning("Type, class or variant of the process.") Stated<String> kind,
        @In(Dimension.TEMPERATURE) @Meaning("Temperature.") Stated<Range> temperature,
        @In(Dimension.TIME) @Meaning("Time at temperature.") Stated<Range> time,
        @Meaning("Steps of an ageing or tempering treatment.") Stated<List<AgeStep>> steps,
        @Meaning("Quenching medium: water, polymer, oil, air, spray.") Stated<String> medium,
        @In(Dimension.SHARE) @Meaning("Concentration of the medium.") Stated<Range> concentration,
        @In(Dimension.TIME) @Meaning("Delay before this operation, after the one before.") Stated<Range> delay,
        @Meaning("Whether the bath is agitated on record.") Stated<Boolean> agitated,
        @In(Dimension.LENGTH) @Meaning("Depth of metal removed per side.") Stated<Range> removes,
        @Meaning("Which sides.") Stated<String> sides,
        @In(Dimension.SHARE) @Meaning("Permanent strain of a stretch or compression.") Stated<Range> set,
        @In(Dimension.SHARE) @Meaning("Expansion of a hole.") Stated<Range> expansion,
        @Meaning("How it is done: press, shrink, expand, hot, cold.") Stated<String> method,
        @Meaning("Peening intensity.") Stated<String> intensity,
        @In(Dimension.SHARE) @Limits(max = 10) @Meaning("Peening coverage.") Stated<Range> coverage,
        @In(Dimension.LENGTH) @Meaning("Thickness of a coating or plating.") Stated<Range> thickness,
        @In(Dimension.LENGTH) @Meaning("Gap before shimming or drawing up.") Stated<Range> gap,
        @In(Dimension.TORQUE) @Meaning("Torque.") Stated<Range> torque,
        @Meaning("Filler metal of a weld or braze, or none.") Stated<String> filler,
        @Meaning("Whether the weld bead is machined off.") Stated<Boolean> beadRemoved,
        @Meaning("Chemical, sealant, paint or fluid used.") Stated<String> product,
        @Meaning("Acceptance limit of an inspection.") Stated<String> limit,
        @Meaning("Result of an inspection.") Stated<String> result,
        @Meaning("Where the part is kept or shipped.") Stated<String> place,
        @Meaning("What protects it there, or none.") Stated<String> protection,
        @Meaning("Anything a reader should know.") Stated<String> remarks,
        Origin origin) {
}
