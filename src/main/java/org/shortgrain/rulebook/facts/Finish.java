package org.shortgrain.rulebook.facts;

import java.util.regex.Pattern;
import org.shortgrain.part.FayingPrimed;
import org.shortgrain.part.Plating;
import org.shortgrain.part.Stated;
import org.shortgrain.part.Surface;

/**
 * The finish that holds at a place: what is stated there first, then what is stated of the part.
 *
 * @param pretreatment anodize, conversion coat or other
 * @param primer       primer
 * @param topcoat      topcoat
 * @param plating      metallic plating
 * @param inhibitor    corrosion-preventive compound
 * @param touchUp      touch-up after assembly
 * @param faying       when joined faces are primed
 */
public record Finish(Stated<String> pretreatment, Stated<String> primer, Stated<String> topcoat,
        Stated<Plating> plating, Stated<String> inhibitor, Stated<String> touchUp, Stated<FayingPrimed> faying) {

    private static final Pattern ANODIZE_TYPE = Pattern.compile("\\btype +(I|IB|IC|II|IIB|III)\\b");
    private static final Pattern CHROMIC_TYPE = Pattern.compile("\\btype +I\\b");
    private static final Pattern HARD_TYPE = Pattern.compile("\\btype +III\\b");
    private static final Pattern CLASS = Pattern.compile("(?i)\\bclass +[0-9]");

    /** {@return the finish that is stated of a place or of the part} */
    static Finish of(Stated<Surface> surface) {
        return new Finish(surface.field(Surface::pretreatment), surface.field(Surface::primer),
                surface.field(Surface::topcoat), surface.field(Surface::plating), surface.field(Surface::cpc),
                surface.field(Surface::touchUp), surface.field(Surface::fayingSurfacesPrimed));
    }

    /** {@return each layer as stated here, or as stated of the part} */
    Finish over(Finish part) {
        return new Finish(pretreatment.orIfAbsent(part.pretreatment), primer.orIfAbsent(part.primer),
                topcoat.orIfAbsent(part.topcoat), plating.orIfAbsent(part.plating), inhibitor.orIfAbsent(part.inhibitor),
                touchUp.orIfAbsent(part.touchUp), faying.orIfAbsent(part.faying));
    }

    /** {@return whether there certainly is no finish of any kind} */
    public boolean isMissing() {
        return pretreatment.isNone() && primer.isNone() && topcoat.isNone() && !plating.isKnown();
    }

    /** {@return whether the pretreatment certainly is an anodize} */
    public boolean isAnodized() {
        return Wording.names(pretreatment, "anodi", "8625", "8629");
    }

    /** {@return whether it is an anodize of a stated type} */
    public boolean isAnodizeTyped() {
        return isAnodized() && (matches(pretreatment, ANODIZE_TYPE) || isHardAnodized() || isChromicAnodized()
                || Wording.names(pretreatment, "sulphuric", "sulfuric", "tartaric", "phosphoric"));
    }

    /** {@return whether it certainly is a hard anodize} */
    public boolean isHardAnodized() {
        return matches(pretreatment, HARD_TYPE) || Wording.names(pretreatment, "hard anodi");
    }

    /** {@return whether it certainly is an anodize in chromic acid at the usual voltage} */
    public boolean isChromicAnodized() {
        return matches(pretreatment, CHROMIC_TYPE) || Wording.names(pretreatment, "chromic");
    }

    /** {@return whether the anodic film is stated to be sealed, or not to be} */
    public boolean namesSeal() {
        return Wording.names(pretreatment, "seal");
    }

    /** {@return whether the pretreatment certainly is a chemical conversion coat} */
    public boolean isConversionCoated() {
        return Wording.names(pretreatment, "conversion", "chem film", "chemical film", "5541");
    }

    /** {@return whether the plating certainly is one that runs bare: chromium or nickel, against wear} */
    public boolean isHardPlated() {
        return plating.surely(one -> Wording.names(one.kind(), "chrom", "nickel"));
    }

    /** {@return whether the primer certainly is one without chromate} */
    public boolean isPrimerWithoutChromate() {
        return Wording.names(primer, "class N", "type N", "non-chromate", "chromate-free");
    }

    /** {@return whether the topcoat certainly is one that withstands acid} */
    public boolean isAcidProof() {
        return Wording.names(topcoat, "acid");
    }

    /** {@return whether the plating certainly is cadmium} */
    public boolean isCadmium() {
        return Wording.names(platingKind(), "cadmium", "QQ-P-416", "MIL-STD-870");
    }

    /** {@return whether the plating certainly is aluminium from the vapour} */
    public boolean isVapourAluminium() {
        return Wording.names(platingKind(), "83488", "vapour-deposited alumin", "vapor-deposited alumin",
                "ion vapour", "ion vapor", "IVD");
    }

    /** {@return whether the plating's class is stated} */
    public boolean namesPlatingClass() {
        return matches(platingKind(), CLASS);
    }

    /** {@return the layers as stated, for texts} */
    public String say() {
        return "pretreatment " + Wording.say(pretreatment) + ", primer " + Wording.say(primer) + ", topcoat "
                + Wording.say(topcoat) + ", plating " + Wording.say(platingKind());
    }

    private Stated<String> platingKind() {
        return plating.field(Plating::kind);
    }

    private static boolean matches(Stated<String> text, Pattern pattern) {
        return text.surely(one -> pattern.matcher(one).find());
    }
}
