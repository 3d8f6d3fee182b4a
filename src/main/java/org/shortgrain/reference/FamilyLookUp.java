package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shortgrain.terms.GrainDirection;

/**
 * Answers for a material whose alloy the tables do not name.
 *
 * <p>With a family, the worst of its members counts and the alloy stays an open datum. Without one, nothing is known
 * and near names are given.
 */
final class FamilyLookUp {
    private static final int MOST_NEIGHBOURS = 6;

    private final MaterialTable table;
    private final MaterialQuery query;
    private final MaterialTable.Named named;

    FamilyLookUp(MaterialTable table, MaterialQuery query, MaterialTable.Named named) {
        this.table = table;
        this.query = query;
        this.named = named;
    }

    MaterialAnswer answer() {
        List<Alloy> members = query.family().map(table.alloys()::ofFamily).orElse(List.of());
        Map<GrainDirection, DirectionAnswer> worst = nothing();
        Temper temper = new Temper.NotStated(query.temper().orElse(""));
        for (Alloy member : members) {
            Question q = table.question(query, member, named, true);
            temper = q.temper();
            table.directions(member, q).forEach((d, answer) -> worst.merge(d, answer, FamilyLookUp::worse));
        }
        List<String> notes = new ArrayList<>(named.notes());
        if (!members.isEmpty()) {
            notes.add("alloy unknown: the worst of family " + query.family().get() + " is taken");
        }
        List<Neighbour> neighbours = named.alias().map(text -> Neighbours.ofName(table, text, MOST_NEIGHBOURS))
                .orElse(List.of());
        return new MaterialAnswer(query, Optional.empty(), named.alias(), query.family(), temper, worst,
                PhysicalData.NONE, List.of(), List.of(), List.of(), neighbours, notes);
    }

    private Map<GrainDirection, DirectionAnswer> nothing() {
        Map<GrainDirection, DirectionAnswer> answers = new EnumMap<>(GrainDirection.class);
        EnumSet<OpenDatum> open = EnumSet.of(OpenDatum.ALLOY);
        for (GrainDirection direction : GrainDirection.values()) {
            answers.put(direction, new DirectionAnswer(direction,
                    new LevelAnswer(SccLevel.UNKNOWN, false, false, false, open, List.of()),
                    new StressAnswer(Optional.empty(), OptionalDouble.empty(), false, open, List.of()),
                    new StrengthAnswer(Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), open,
                            List.of())));
        }
        return answers;
    }

    private static DirectionAnswer worse(DirectionAnswer a, DirectionAnswer b) {
        return new DirectionAnswer(a.direction(), worse(a.level(), b.level()),
                lower(a.stress().low(), b.stress().low()) ? a.stress() : b.stress(),
                lower(a.strength().fty(), b.strength().fty()) ? a.strength() : b.strength());
    }

    /** Of equal levels the one that was seen. */
    private static LevelAnswer worse(LevelAnswer a, LevelAnswer b) {
        return rank(b) < rank(a) || (rank(b) == rank(a) && a.restsOnMemory() && !b.restsOnMemory()) ? b : a;
    }

    /** Worst first; an unknown level says nothing about the others. */
    private static int rank(LevelAnswer level) {
        return level.level() == SccLevel.UNKNOWN ? Integer.MAX_VALUE : level.level().number();
    }

    private static boolean lower(OptionalDouble a, OptionalDouble b) {
        return b.isEmpty() || (a.isPresent() && a.getAsDouble() <= b.getAsDouble());
    }
}
