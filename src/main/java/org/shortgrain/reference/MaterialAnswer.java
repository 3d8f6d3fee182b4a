package org.shortgrain.reference;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shortgrain.terms.GrainDirection;

/**
 * All that the tables hold about a material.
 *
 * @param query      what was asked
 * @param alloy      the material, if the tables name it
 * @param aliasUsed  the spelling that was given, where it is not the name itself
 * @param family     family of the material; as asked when the alloy is unknown
 * @param temper     temper or condition, taken apart
 * @param directions what holds in each grain direction
 * @param physical   physical data
 * @param statements what documents say in words
 * @param toughness  plane-strain fracture toughness, for information
 * @param growth     crack-growth thresholds and rates
 * @param neighbours near materials that are covered, when this one is not
 * @param notes      what was read into the question, in words
 */
public record MaterialAnswer(MaterialQuery query, Optional<Alloy> alloy, Optional<String> aliasUsed,
        Optional<String> family, Temper temper, Map<GrainDirection, DirectionAnswer> directions,
        PhysicalData physical, List<MaterialStatement> statements, List<Toughness> toughness,
        List<CrackGrowth> growth, List<Neighbour> neighbours, List<String> notes) {

    /** Copies the collections. */
    public MaterialAnswer {
        directions = Collections.unmodifiableMap(new EnumMap<>(directions));
        statements = List.copyOf(statements);
        toughness = List.copyOf(toughness);
        growth = List.copyOf(growth);
        neighbours = List.copyOf(neighbours);
        notes = List.copyOf(notes);
    }

    /**
     * {@return what holds in a direction}
     *
     * @param direction grain direction
     */
    public DirectionAnswer in(GrainDirection direction) {
        return directions.get(direction);
    }

    /** {@return what holds when the direction is not known: the direction of the worst level, ST among equals} */
    public DirectionAnswer inUnknownDirection() {
        DirectionAnswer worst = in(GrainDirection.ST);
        for (DirectionAnswer answer : directions.values()) {
            if (answer.level().susceptibility().compareTo(worst.level().susceptibility()) > 0) {
                worst = answer;
            }
        }
        return worst;
    }

    /** {@return whether the level in some direction rests on rows from memory alone} */
    public boolean needsConfirmation() {
        return directions.values().stream().anyMatch(d -> d.level().restsOnMemory());
    }
}
