package org.shortgrain.rulebook.facts;

import org.shortgrain.part.Sealant;
import org.shortgrain.part.Stated;

/**
 * The sealing that holds at a place: what is stated there first, then what is stated of the part.
 *
 * @param faying           sealant between joined faces
 * @param fillet           fillet seal
 * @param fastenersWet     whether fasteners go in wet
 * @param gapFill          gap filler
 * @param cureBeforeTorque whether sealant cures before the final torque
 */
public record Sealing(Stated<String> faying, Stated<String> fillet, Stated<Boolean> fastenersWet,
        Stated<String> gapFill, Stated<Boolean> cureBeforeTorque) {

    /** {@return whether the joined faces certainly have no sealant} */
    public boolean isFayingDry() {
        return faying.isNone();
    }

    /** {@return the sealing that is stated of a place or of the part} */
    static Sealing of(Stated<Sealant> sealant) {
        return new Sealing(sealant.field(Sealant::faying), sealant.field(Sealant::fillet),
                sealant.field(Sealant::fastenersWet), sealant.field(Sealant::gapFill),
                sealant.field(Sealant::cureBeforeTorque));
    }

    /** {@return each seal as stated here, or as stated of the part} */
    Sealing over(Sealing part) {
        return new Sealing(faying.orIfAbsent(part.faying), fillet.orIfAbsent(part.fillet),
                fastenersWet.orIfAbsent(part.fastenersWet), gapFill.orIfAbsent(part.gapFill),
                cureBeforeTorque.orIfAbsent(part.cureBeforeTorque));
    }

    /** {@return whether there is a fillet seal for certain} */
    public boolean hasFillet() {
        return fillet.isKnown();
    }

    /** {@return whether faces or edges are sealed for certain} */
    public boolean isSealed() {
        return faying.isKnown() || fillet.isKnown();
    }

    /**
     * {@return whether the sealant of faces or edges certainly names one of some things}
     *
     * @param words what to look for
     */
    public boolean names(String... words) {
        return Wording.names(faying, words) || Wording.names(fillet, words);
    }

    /** {@return whether faces or edges certainly are sealed with the class that is thin enough to brush} */
    public boolean isBrushClass() {
        return names("class A", "8802 A-", "3276 A-");
    }

    /** {@return the seals as stated, for texts} */
    public String say() {
        return "faying " + Wording.say(faying) + ", fillet " + Wording.say(fillet);
    }
}
