package org.shortgrain.remedy;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shortgrain.reference.MaterialAnswer;
import org.shortgrain.reference.MaterialQuery;
import org.shortgrain.reference.SccLevel;
import org.shortgrain.terms.GrainDirection;

/**
 * Whether the tables cover another metal at the thickness that its own strength asks for.
 *
 * <p>A weaker metal needs a thicker section, for which the printed strength may be lower again. The thickness is raised until
 * the strength of its band asks for no more: the ratio never falls and there are finitely many bands, so this ends.
 */
final class NewMetal {

    private static final double MILLI = 1e-3;

    /** What the tables say of a metal. */
    sealed interface Answer {

        /**
         * Covered at its own thickness.
         *
         * @param metal   what the tables hold at that thickness
         * @param price   what it costs
         * @param section the lengths of the part in it
         */
        record Covered(MaterialAnswer metal, Resized price, NewSection section) implements Answer {
        }

        /**
         * Not covered.
         *
         * @param why why, as the end of a sentence
         */
        record NotCovered(String why) implements Answer {
        }
    }

    private final Subject subject;
    private final String alloy;
    private final String temper;

    private NewMetal(Subject subject, String alloy, String temper) {
        this.subject = subject;
        this.alloy = alloy;
        this.temper = temper;
    }

    /**
     * {@return whether the tables rate a metal, print its strength and list it as available, at the thickness it needs}
     *
     * @param subject the part
     * @param alloy   alloy proposed
     * @param temper  temper proposed
     */
    static Answer of(Subject subject, String alloy, String temper) {
        return new NewMetal(subject, alloy, temper).at(new NewSection(subject.part(), 1), Optional.empty());
    }

    private Answer at(NewSection section, Optional<Resized> before) {
        MaterialAnswer metal = lookUp(section);
        Optional<String> why = uncovered(metal, section);
        if (why.isPresent()) {
            return new Answer.NotCovered(why.get());
        }
        Optional<Resized> found = Resized.of(subject.part(), subject.metal(), metal);
        if (found.isEmpty()) {
            return new Answer.NotCovered("no strength or density is printed for both" + thickness(section));
        }
        Resized price = before.filter(one -> one.ratio() > found.get().ratio()).orElse(found.get());
        return price.ratio() <= section.ratio() ? new Answer.Covered(metal, price, section)
                : at(new NewSection(subject.part(), price.ratio()), Optional.of(price));
    }

    /** The question that the review of the change asks: the width is kept while the thickness grows. */
    private MaterialAnswer lookUp(NewSection section) {
        MaterialQuery now = subject.metal().query();
        OptionalDouble thickness = section.ratio() > 1 && section.stock().isPresent() ? section.stock() : now.thickness();
        OptionalDouble slenderness = now.widthToThickness().isPresent() && now.thickness().isPresent()
                ? OptionalDouble.of(now.widthToThickness().getAsDouble() * now.thickness().getAsDouble() / thickness.getAsDouble())
                : now.widthToThickness();
        return subject.tables().materials().lookUp(new MaterialQuery(Optional.of(alloy), Optional.empty(), Optional.of(temper),
                now.productForm(), thickness, now.sectionArea(), slenderness, now.minUts(), now.maxUts()));
    }

    private Optional<String> uncovered(MaterialAnswer metal, NewSection section) {
        if (metal.in(GrainDirection.ST).level().level() == SccLevel.UNKNOWN) {
            return Optional.of("it is not rated in the short transverse direction" + thickness(section));
        }
        OptionalDouble needed = metal.query().thickness();
        return subject.tables().sectionLimits().greatest(metal).stream().filter(limit -> needed.isPresent() && needed.getAsDouble() > limit.thickness()).findFirst()
                .map(limit -> String.format(Locale.ROOT, "its published minima end at %.1f mm (%s)%s",
                        limit.thickness() / MILLI, limit.row(), thickness(section)));
    }

    private String thickness(NewSection section) {
        if (section.stock().isEmpty()) {
            return ", whose thickness is not stated";
        }
        return section.ratio() > 1 ? String.format(Locale.ROOT, ", and its lower strength asks for a section of %s at quench in"
                + " place of %s", Lengths.said(section.stock().getAsDouble()), Lengths.said(section.stockBefore().getAsDouble()))
                : String.format(Locale.ROOT, ", and the section at quench is %s", Lengths.said(section.stock().getAsDouble()));
    }
}
