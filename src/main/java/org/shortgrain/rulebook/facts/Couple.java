package org.shortgrain.rulebook.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.shortgrain.part.Location;
import org.shortgrain.part.Stated;
import org.shortgrain.reference.GalvanicMembers.Kind;
import org.shortgrain.reference.GalvanicMembers.Member;
import org.shortgrain.reference.GalvanicMembers.Trait;

/**
 * Two metals, or a metal and carbon, that touch or share an electrolyte. Potentials are differences of the anodic index
 * in whole hundredths of a volt, so that a limit of 0.15 V is met exactly.
 *
 * @param contact     what brings them together
 * @param feature     place where they meet; empty for a neighbour of the whole part
 * @param part        the side of the part
 * @param other       the other side
 * @param difference  how far apart they are (hundredths of a volt); empty if a side is not in the index
 * @param partIsAnode whether the part is the anode, the side that is used up
 * @param limit       greatest difference usable in the zone without isolation (hundredths of a volt)
 * @param byVoltage   what the difference alone asks for
 * @param call        what is asked for, with what the trade knows beyond the voltage
 * @param reason      why the call departs from the voltage; empty text if it does not
 * @param areaRatio   area of the other side over that of the part; empty if not stated
 * @param apart       whether they are kept apart: insulated, or put together wet with sealant
 * @param zone        zone where they meet
 * @param sealing     sealing there
 * @param atRisk      whether the place is susceptible and its lasting tension reaches the limit
 * @param at          where it stands in the description
 */
public record Couple(Contact contact, Optional<String> feature, Side part, Side other, OptionalInt difference,
        boolean partIsAnode, int limit, Call byVoltage, Call call, String reason, OptionalDouble areaRatio,
        Stated<Boolean> apart, Zone zone, Sealing sealing, boolean atRisk, Location at) {

    private static final double PER_VOLT = 100;
    /** Difference that is usable outdoors, in high humidity and salt (hundredths of a volt). Anodic-index pages. */
    private static final int HARSH = 15;

    /** What brings two metals together. */
    public enum Contact {
        /** A neighbouring part. */
        NEIGHBOUR,
        /** A bush, pin or insert in the part. */
        BUSH,
        /** A fastener through the part. */
        FASTENER
    }

    /** What a couple asks for. */
    public enum Call {
        /** Usable bare in the zone. */
        USABLE,
        /** To be plated, coated or put together wet. */
        PROTECT,
        /** To be isolated from one another. */
        ISOLATE,
        /** Not known: a side is not in the index. */
        NOT_KNOWN
    }

    /**
     * One side of a couple, as its outermost metal.
     *
     * @param name    name for texts
     * @param family  material family of the base metal; empty text if not known
     * @param stated  whether its metal is stated
     * @param outer   the outermost metal; empty if the tables do not hold it
     * @param coating plating or paint of a neighbour as stated; absent for the part
     * @param painted whether paint or primer covers it for certain
     * @param bare    whether nothing covers the base metal for certain
     */
    public record Side(String name, String family, boolean stated, Optional<Member> outer, Stated<String> coating,
            boolean painted, boolean bare) {

        /**
         * {@return whether its outermost metal is of a kind}
         *
         * @param kind the kind
         */
        public boolean is(Kind kind) {
            return outer.isPresent() && outer.get().kind() == kind;
        }

        /**
         * {@return whether its outermost metal has a trait}
         *
         * @param trait the trait
         */
        public boolean has(Trait trait) {
            return outer.isPresent() && outer.get().traits().contains(trait);
        }

        /** {@return whether its base metal is magnesium} */
        public boolean isMagnesium() {
            return family.equals("magnesium");
        }

        /** {@return whether its base metal is titanium} */
        public boolean isTitanium() {
            return family.equals("titanium");
        }

        /** {@return whether it is bare steel that rusts by itself} */
        public boolean isRusting() {
            return bare && has(Trait.RUSTS);
        }
    }

    /**
     * {@return whether it is brought together by one of some contacts}
     *
     * @param contacts the contacts
     */
    public boolean isBy(Contact... contacts) {
        return List.of(contacts).contains(contact);
    }

    /** {@return whether it asks for protection or isolation; what cracks titanium is judged there, not here} */
    public boolean isBeyondLimit() {
        return (call == Call.PROTECT || call == Call.ISOLATE) && !isOnTitanium();
    }

    /** {@return whether one side is titanium and the other cracks it, whatever the voltage} */
    public boolean isOnTitanium() {
        return part.isTitanium() && other.has(Trait.HARMS_TITANIUM) || other.isTitanium() && part.has(Trait.HARMS_TITANIUM);
    }

    /** {@return whether it asks for isolation} */
    public boolean isToIsolate() {
        return call == Call.ISOLATE;
    }

    /** {@return whether it is put together bare or dry for certain, and asks for protection or isolation} */
    public boolean isAttacked() {
        return isTouching() && isBeyondLimit();
    }

    /** {@return whether the sides certainly touch: they are stated not to be kept apart} */
    public boolean isTouching() {
        return apart.is(false);
    }

    /** {@return whether the sides certainly are kept apart} */
    public boolean isKeptApart() {
        return apart.is(true);
    }

    /** {@return whether one side is carbon} */
    public boolean isWithCarbon() {
        return part.is(Kind.CARBON) || other.is(Kind.CARBON);
    }

    /** {@return whether one side is magnesium} */
    public boolean isWithMagnesium() {
        return part.isMagnesium() || other.isMagnesium();
    }

    /** {@return whether the anode is bare, or covered only by paint, while the cathode has no paint} */
    public boolean isAnodePaintedAlone() {
        return anode().painted() && !cathode().painted();
    }

    /** {@return whether the sides may touch and the voltage alone asks for protection: the cathode is polarised} */
    public boolean isPolarising() {
        return !isKeptApart() && (byVoltage == Call.PROTECT || byVoltage == Call.ISOLATE);
    }

    /** {@return whether one side is bare steel that rusts by itself, and the voltage alone would let it pass} */
    public boolean isCalledForRust() {
        return byVoltage == Call.USABLE && call == Call.PROTECT && (part.isRusting() || other.isRusting());
    }

    /** {@return whether the couple would ask for protection where it is not controlled and dry} */
    public boolean isUsableOnlyDry() {
        return call == Call.USABLE && byVoltage == Call.USABLE && limit > HARSH
                && difference.isPresent() && difference.getAsInt() > HARSH;
    }

    /** {@return whether it cracks or eats structure so fast that sign-off stops: carbon and magnesium where it is moist,
     * any other pair to be isolated where it is wetted regularly, and they touch} */
    public boolean stopsSignOff() {
        boolean soft = isWithCarbon() || isWithMagnesium();
        return isTouching() && isToIsolate() && (soft ? zone.isMoist() : zone.isWet());
    }

    /** {@return what must be known of a neighbour before the couple is judged, in words; empty if it is known} */
    public List<String> open() {
        List<String> open = new ArrayList<>();
        if (contact == Contact.NEIGHBOUR && isBeyondLimit() && !isKeptApart()) {
            if (apart.isMissing()) {
                open.add("whether it is insulated");
            }
            if (other.coating().isMissing()) {
                open.add("how it is coated or plated");
            }
        }
        return open;
    }

    /** {@return whether carbon is kept apart, but nothing seals the edges of the joint} */
    public boolean isCarbonEdgeOpen() {
        return isWithCarbon() && isToIsolate() && isKeptApart() && zone.isMoist() && !sealing.isSealed();
    }

    /** {@return whether the anode is a plating that is used up in place of the structure} */
    public boolean isSacrificed() {
        return byVoltage != call && call == Call.USABLE && anode().has(Trait.SACRIFICIAL);
    }

    /** {@return the side that is used up} */
    public Side anode() {
        return partIsAnode ? part : other;
    }

    /** {@return the nobler side} */
    public Side cathode() {
        return partIsAnode ? other : part;
    }

    /** {@return area of the cathode over that of the anode; NaN if not stated, which no comparison holds for} */
    public double cathodeOverAnode() {
        double ratio = areaRatio.orElse(Double.NaN);
        return partIsAnode ? ratio : 1 / ratio;
    }

    /** {@return the couple with its difference, its limit and the reason of the call, for texts} */
    public String say() {
        if (difference.isEmpty()) {
            return part.name() + " with " + other.name() + ", not both in the anodic index";
        }
        String volts = String.format(Locale.ROOT, "%s as anode with %s, %.2f V apart on the anodic index; %.2f V is usable"
                + " in %s", anode().name(), cathode().name(), difference.getAsInt() / PER_VOLT, limit / PER_VOLT, zone.say());
        return reason.isEmpty() ? volts : volts + "; " + reason;
    }
}
