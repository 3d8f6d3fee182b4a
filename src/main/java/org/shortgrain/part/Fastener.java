package org.shortgrain.part;

/**
 * A fastener through a feature.
 *
 * @param type type: bolt, screw, rivet, stud
 * @param diameter diameter
 * @param grip grip length
 * @param torque torque
 * @param preload preload
 * @param lubrication lubrication, or none
 * @param thread how the thread was made
 * @param material material and condition
 * @param plating plating, or none
 * @param strength tensile strength
 * @param installedWet installed with wet sealant
 * @param clevis whether it clamps the arms of a clevis
 * @param origin where the group stands, and its reference
 */
public record Fastener(
        @Meaning("Type: bolt, screw, rivet, stud.") Stated<String> type,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Diameter.") Stated<Range> diameter,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Grip length.") Stated<Range> grip,
        @In(Dimension.TORQUE) @Meaning("Torque.") Stated<Range> torque,
        @In(Dimension.FORCE) @Limits(min = 0) @Meaning("Preload.") Stated<Range> preload,
        @Meaning("Lubrication, or none.") Stated<String> lubrication,
        @Meaning("How the thread was made.") Stated<ThreadMaking> thread,
        @Meaning("Material and condition.") Stated<String> material,
        @Meaning("Plating, or none.") Stated<String> plating,
        @In(Dimension.STRESS) @Limits(positive = true) @Meaning("Tensile strength.") Stated<Range> strength,
        @Meaning("Installed with wet sealant.") Stated<Boolean> installedWet,
        @Meaning("Whether it clamps the arms of a clevis.") Stated<Boolean> clevis,
        Origin origin) {
}
