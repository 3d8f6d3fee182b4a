package org.shortgrain.part;

/**
 * Another part in contact or close by.
 *
 * @param what what it is
 * @param material its material
 * @param coating its coating, or none
 * @param areaRatio its wetted area over that of the part
 * @param insulated whether it is insulated from the part
 * @param wetted whether the joint can be wet
 * @param compatible whether the pair is stated to be compatible, when no material is given
 * @param origin where the group stands, and its reference
 */
public record Neighbour(
        @Meaning("What it is.") Stated<String> what,
        @Meaning("Its material.") Stated<String> material,
        @Meaning("Its coating, or none.") Stated<String> coating,
        @Limits(positive = true) @Meaning("Its wetted area over that of the part.") Stated<Double> areaRatio,
        @Meaning("Whether it is insulated from the part.") Stated<Boolean> insulated,
        @Meaning("Whether the joint can be wet.") Stated<Boolean> wetted,
        @Meaning("Whether the pair is stated to be compatible, when no material is given.") Stated<Boolean> compatible,
        Origin origin) {
}
