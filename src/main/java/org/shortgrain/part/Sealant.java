package org.shortgrain.part;

/**
 * Sealing of joints and fasteners.
 *
 * @param faying sealant between joined faces, or none
 * @param fillet fillet seal, or none
 * @param fastenersWet whether fasteners go in wet
 * @param gapFill gap filler, or none
 * @param cureBeforeTorque whether sealant cures before the final torque
 * @param origin where the group stands, and its reference
 */
public record Sealant(
        @Meaning("Sealant between joined faces, or none.") Stated<String> faying,
        @Meaning("Fillet seal, or none.") Stated<String> fillet,
        @Meaning("Whether fasteners go in wet.") Stated<Boolean> fastenersWet,
        @Meaning("Gap filler, or none.") Stated<String> gapFill,
        @Meaning("Whether sealant cures before the final torque.") Stated<Boolean> cureBeforeTorque,
        Origin origin) {
}
