package org.shortgrain.assessment;

import org.shortgrain.reference.GalvanicMembers.Kind;
import org.shortgrain.reference.GalvanicMembers.Trait;
import org.shortgrain.rulebook.facts.Couple.Call;
import org.shortgrain.rulebook.facts.Couple.Side;

/**
 * What a couple asks for: the band of its voltage, then what the trade knows beyond the voltage, in this order: carbon,
 * magnesium, bare steel that rusts anyway, cadmium or silver against titanium, platings that are meant to be used up.
 *
 * <p>Source: limits of the anodic index as public pages print them (secondary); the departures are common practice, the
 * one for 5xxx aluminium on magnesium is that of MIL-STD-186F 4.14 (read).
 *
 * @param call   what is asked for
 * @param reason why it departs from the voltage; empty text if it does not
 */
record GalvanicCall(Call call, String reason) {

    /** Wetness class from which bare steel rusts by itself: condensation or humidity above 60 % some of the time. */
    private static final int MOIST = 2;

    /**
     * {@return what the voltage alone asks for}
     *
     * @param difference difference (hundredths of a volt)
     * @param usable     greatest difference usable in the zone
     * @param isolate    difference from which isolation is asked for
     */
    static Call band(int difference, int usable, int isolate) {
        if (difference <= usable) {
            return Call.USABLE;
        }
        return difference < isolate ? Call.PROTECT : Call.ISOLATE;
    }

    /**
     * {@return what is asked for in the end}
     *
     * @param anode   the side that is used up
     * @param cathode the nobler side
     * @param band    what the voltage alone asks for
     * @param wetness wetness class of the zone, 0 to 5
     * @param wet     whether the two are put together wet with sealant for certain
     */
    static GalvanicCall of(Side anode, Side cathode, Call band, int wetness, boolean wet) {
        if (anode.is(Kind.CARBON) != cathode.is(Kind.CARBON)) {
            return withCarbon(anode.is(Kind.CARBON) ? cathode : anode);
        }
        if (anode.isMagnesium() != cathode.isMagnesium()) {
            return withMagnesium(anode.isMagnesium() ? cathode : anode, wet);
        }
        GalvanicCall call = new GalvanicCall(band, "");
        if (wetness >= MOIST && band == Call.USABLE && (anode.isRusting() || cathode.isRusting())) {
            call = new GalvanicCall(Call.PROTECT, "bare steel rusts by itself, whatever the voltage");
        }
        if (harmsTitanium(anode, cathode) || harmsTitanium(cathode, anode)) {
            return new GalvanicCall(worse(band, Call.PROTECT), "cadmium and silver crack titanium: the voltage does not"
                    + " decide");
        }
        return anode.has(Trait.SACRIFICIAL) && call.call() != Call.USABLE ? new GalvanicCall(milder(call.call()),
                "the plating is meant to be used up in place of the structure") : call;
    }

    private static GalvanicCall withCarbon(Side metal) {
        if (metal.has(Trait.PASSIVE_ON_CARBON)) {
            return new GalvanicCall(Call.USABLE, "titanium and nickel alloys stay passive against carbon");
        }
        return metal.has(Trait.EATEN_BY_CARBON) ? new GalvanicCall(Call.ISOLATE, "carbon is noble, and its area large")
                : new GalvanicCall(Call.PROTECT, "passive metal against carbon: put together wet");
    }

    private static GalvanicCall withMagnesium(Side other, boolean wet) {
        return other.family().equals("aluminium_5xxx") && wet
                ? new GalvanicCall(Call.PROTECT, "5xxx aluminium, put together wet, is what magnesium bears")
                : new GalvanicCall(Call.ISOLATE, "magnesium is used up by every other metal");
    }

    private static boolean harmsTitanium(Side one, Side other) {
        return one.has(Trait.HARMS_TITANIUM) && other.isTitanium();
    }

    private static Call milder(Call call) {
        return call == Call.ISOLATE ? Call.PROTECT : Call.USABLE;
    }

    private static Call worse(Call one, Call other) {
        return one.compareTo(other) >= 0 ? one : other;
    }
}
