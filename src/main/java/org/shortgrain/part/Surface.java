package org.shortgrain.part;

import java.util.List;

/**
 * Surface treatment and protection.
 *
 * @param pretreatment anodize, conversion coat or other, with specification and type, or none
 * @param primer primer specification, or none
 * @param topcoat topcoat specification, or none
 * @param areasBare features or areas left bare, or none
 * @param bare whether this place is bare
 * @param boreCoatedBeforeBush whether bores are coated before bushes go in
 * @param fayingSurfacesPrimed when joined faces are primed
 * @param plating plating, or none
 * @param peened areas that are shot peened, or none
 * @param cpc corrosion-preventive compound, or none
 * @param completeFinishSystem whether the whole finish system of the programme is called out
 * @param finishCode finish code of the programme
 * @param touchUp touch-up after assembly, or none
 * @param origin where the group stands, and its reference
 */
public record Surface(
        @Meaning("Anodize, conversion coat or other, with specification and type, or none.")
        Stated<String> pretreatment,
        @Meaning("Primer specification, or none.") Stated<String> primer,
        @Meaning("Topcoat specification, or none.") Stated<String> topcoat,
        @Meaning("Features or areas left bare, or none.") Stated<List<String>> areasBare,
        @Meaning("Whether this place is bare.") Stated<Boolean> bare,
        @Meaning("Whether bores are coated before bushes go in.") Stated<Boolean> boreCoatedBeforeBush,
        @Meaning("When joined faces are primed.") Stated<FayingPrimed> fayingSurfacesPrimed,
        @Meaning("Plating, or none.") Stated<Plating> plating,
        @Meaning("Areas that are shot peened, or none.") Stated<List<String>> peened,
        @Meaning("Corrosion-preventive compound, or none.") Stated<String> cpc,
        @Meaning("Whether the whole finish system of the programme is called out.")
        Stated<Boolean> completeFinishSystem,
        @Meaning("Finish code of the programme.") Stated<String> finishCode,
        @Meaning("Touch-up after assembly, or none.") Stated<String> touchUp,
        Origin origin) {
}
