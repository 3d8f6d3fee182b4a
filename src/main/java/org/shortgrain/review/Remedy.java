package org.shortgrain.review;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.shortgrain.part.reader.JsonPatch;

/**
 * A change, or several together, and what the review of the part so changed says.
 *
 * @param id          number in this study, such as R-01
 * @param changes     what is done, one entry for each change
 * @param verdict     the verdict of the part so changed
 * @param objections  objections that stay or come
 * @param conditions  number of conditions
 * @param utilisation greatest utilisation of the threshold over all places, upper end; empty if none is computed
 * @param strength    share of the strength that is kept, 1 where the metal stays
 * @param mass        mass over the mass before, in the mode that needs most; 1 where the metal stays
 * @param addedMass   mass that is added (kg); empty if no mass is stated
 * @param fits        whether the thickened section stays in the stated envelope; true where nothing is thickened
 * @param removed     factors that are removed at a place where three or two met
 * @param weakened    factors that are no longer certain there
 * @param clears      objections and conditions that go
 * @param raises      objections and conditions that come
 * @param leavesOpen  questions that can still change the verdict
 * @param drawings    drawings touched
 * @param processes   processes and cards touched
 * @param agree       who must agree
 * @param requalify   what must be qualified again
 * @param notes       what the engineer must know beside the numbers
 * @param firmness    strength of the evidence, from 1 memory to 5 read: the weakest of the changes
 * @param pareto      whether no other change is at least as good in everything and better in something
 * @param patch       the change, to be made and reviewed again
 */
public record Remedy(String id, List<String> changes, Verdict verdict, List<String> objections, int conditions,
        OptionalDouble utilisation, double strength, double mass, OptionalDouble addedMass, boolean fits,
        Set<Factor> removed, Set<Factor> weakened, List<String> clears, List<String> raises, List<String> leavesOpen,
        int drawings, int processes, List<String> agree, List<String> requalify, List<String> notes, int firmness,
        boolean pareto, JsonPatch patch) {

    /** Copies the lists. */
    public Remedy {
        changes = List.copyOf(changes);
        objections = List.copyOf(objections);
        clears = List.copyOf(clears);
        raises = List.copyOf(raises);
        leavesOpen = List.copyOf(leavesOpen);
        agree = List.copyOf(agree);
        requalify = List.copyOf(requalify);
        notes = List.copyOf(notes);
        removed = Set.copyOf(removed);
        weakened = Set.copyOf(weakened);
    }

    /** {@return whether sign-off is possible with it} */
    public boolean clearsThePart() {
        return verdict == Verdict.NO_OBJECTION || verdict == Verdict.NO_OBJECTION_SUBJECT_TO_CONDITIONS;
    }

    /** {@return whether it brings an objection that was not there} */
    public boolean raisesAnObjection() {
        return raises.stream().anyMatch(one -> one.startsWith(Grade.OBJECTION.word()));
    }

    /**
     * {@return the same under another number}
     *
     * @param number the number
     * @param best   whether it belongs to the Pareto set
     */
    public Remedy numbered(String number, boolean best) {
        return new Remedy(number, changes, verdict, objections, conditions, utilisation, strength, mass, addedMass, fits,
                removed, weakened, clears, raises, leavesOpen, drawings, processes, agree, requalify, notes, firmness, best,
                patch);
    }
}
