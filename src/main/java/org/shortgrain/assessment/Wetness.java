package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shortgrain.review.Factor;
import org.shortgrain.review.FactorJudgement;
import org.shortgrain.review.FactorState;

/**
 * How wet a place is, with what says so in the order in which it decides.
 *
 * <p>Wet: water stands or soaks in. Intermittently wet: it comes and runs off or dries. Dry: only where everything that was
 * asked says so. A zone that is not stated leaves all of it unknown.
 *
 * @param state how wet
 * @param signs what says so, the gravest first; at least one
 */
record Wetness(State state, List<Sign> signs) {

    /** How wet a place is. */
    enum State {
        /** Water stands there, or it is pooled or immersed. */
        WET("wet", FactorState.PRESENT),
        /** Water comes and goes. */
        INTERMITTENTLY_WET("intermittently wet", FactorState.PRESENT),
        /** Something that decides is not known. */
        UNKNOWN("unknown", FactorState.UNKNOWN),
        /** No water, by evidence. */
        DRY("dry", FactorState.ABSENT);

        private final String word;
        private final FactorState factor;

        State(String word, FactorState factor) {
            this.word = word;
            this.factor = factor;
        }
    }

    /** Copies the list and refuses an unexplained state. */
    Wetness {
        signs = List.copyOf(signs);
        if (signs.isEmpty()) {
            throw new IllegalArgumentException(state + " without a sign");
        }
    }

    /**
     * {@return the wetness that signs add up to}
     *
     * @param signs      the signs, those of one kind in the order in which they are to be read
     * @param zoneStated whether the zone is stated
     */
    static Wetness of(List<Sign> signs, boolean zoneStated) {
        List<Sign> sorted = new ArrayList<>(signs);
        sorted.sort(Comparator.comparing(Sign::kind));
        return new Wetness(state(sorted, zoneStated), sorted);
    }

    private static State state(List<Sign> sorted, boolean zoneStated) {
        if (!zoneStated || sorted.isEmpty()) {
            return State.UNKNOWN;
        }
        return switch (sorted.get(0).kind()) {
            case STANDS -> State.WET;
            case COMES -> State.INTERMITTENTLY_WET;
            case OPEN -> State.UNKNOWN;
            case DRY -> State.DRY;
        };
    }

    /** {@return the environment factor: present where it is wet now and then, absent only where it is dry by evidence} */
    FactorJudgement judgement() {
        List<String> reasons = new ArrayList<>(List.of("wetness: " + state.word));
        signs.forEach(sign -> reasons.add(sign.text()));
        return new FactorJudgement(Factor.ENVIRONMENT, state.factor, reasons);
    }
}
