package org.shortgrain.rulebook;

import org.shortgrain.part.Location;

/**
 * A fact for the rulebooks of these tests.
 *
 * @param id   name of the bore
 * @param hoop hoop tension (MPa)
 * @param wet  whether water can stand in it
 * @param at   place in the description
 */
public record Bore(String id, double hoop, boolean wet, Location at) {

    static Bore of(String id, double hoop, boolean wet) {
        return new Bore(id, hoop, wet, new Location("/features/" + id, 10, 3));
    }
}
