package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.shortgrain.part.ClampUp;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Form;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Range;
import org.shortgrain.part.Shape;
import org.shortgrain.part.Stated;

/**
 * The lengths of a part whose finished sections are thickened for the same load, as tension, shear and lugs need it: each
 * finished thickness by the ratio of the strengths. The cuts after the quench stay as deep as they are, so the section at
 * quench grows by as much as the finished one; where no finished section is stated it is thickened as a whole. Widths and
 * lengths are kept. A round part is thickened as if it were flat, which is more than its diameter needs.
 *
 * @param part  the part as it is
 * @param ratio old over new strength, 1 or more
 */
record NewSection(PartDescription part, double ratio) {

    /** {@return the thickest section at quench as it is (m); empty where none is stated} */
    OptionalDouble stockBefore() {
        return Range.greatest(part.form().field(Form::heatTreatThickness));
    }

    /** {@return the thickest section at quench after the change (m); empty where none is stated} */
    OptionalDouble stock() {
        OptionalDouble before = stockBefore();
        return before.isEmpty() ? before : OptionalDouble.of(grown(before.getAsDouble(), thickest()));
    }

    /** {@return the thickest finished section as it is (m); empty where none is stated} */
    OptionalDouble thickest() {
        OptionalDouble form = Range.greatest(part.form().field(Form::finishedThickness));
        return form.isPresent() ? form : features().flatMapToDouble(one -> Range.greatest(one.sectionFinished()).stream()).max();
    }

    private Stream<Feature> features() {
        return Stated.items(part.features()).stream();
    }

    /** A section at quench with as much cut from it as before; no finished section is thicker than what it is cut from. */
    private double grown(double quenched, OptionalDouble finished) {
        return quenched + (ratio - 1) * Math.min(quenched, finished.orElse(quenched));
    }

    /**
     * Writes the new lengths: those of the form, and at each place the finished section, the section at quench, and the strip
     * that clamp-up bends, since thicker is stiffer.
     *
     * @param edits where to
     */
    void write(Edits edits) {
        if (ratio <= 1) {
            return;
        }
        grow(edits, "/form/heat_treat_thickness", part.form().field(Form::heatTreatThickness), thickest());
        scale(edits, "/form/finished_thickness", part.form().field(Form::finishedThickness));
        List<Feature> all = features().toList();
        for (int i = 0; i < all.size(); i++) {
            String place = "/features/" + i;
            Feature feature = all.get(i);
            grow(edits, place + "/section_as_quenched", feature.sectionAsQuenched(), Range.greatest(feature.sectionFinished()));
            scale(edits, place + "/section_finished", feature.sectionFinished());
            List<ClampUp> gaps = Stated.items(feature.clampUp());
            for (int k = 0; k < gaps.size(); k++) {
                scale(edits, place + "/clamp_up/" + k + "/thickness", gaps.get(k).thickness());
            }
        }
    }

    private void scale(Edits edits, String place, Stated<Range> stated) {
        if (stated.isKnown()) {
            edits.setIfThere(place, Lengths.changed(stated, length -> length * ratio));
        }
    }

    private void grow(Edits edits, String place, Stated<Range> stated, OptionalDouble finished) {
        if (stated.isKnown()) {
            edits.setIfThere(place, Lengths.changed(stated, length -> grown(length, finished)));
        }
    }

    /** {@return what the engineer must know of the thicker section, a sentence each} */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (ratio <= 1) {
            return notes;
        }
        OptionalDouble before = stockBefore();
        notes.add(before.isPresent() ? String.format(Locale.ROOT, "Section at quench %s -> %s, with the same depth of cut:"
                + " the review of the change takes its strength, its rating and its quench stress at the new thickness.",
                Lengths.said(before.getAsDouble()), Lengths.said(stock().getAsDouble()))
                : "The section at quench is not stated (form/heat_treat_thickness), so the change of its quench stress cannot"
                        + " be told.");
        if (part.form().field(Form::heatTreatShape).is(Shape.CYLINDER)) {
            notes.add("The round section is thickened as if it were flat, which is more than its diameter needs.");
        }
        if (features().anyMatch(place -> place.clampUp().isKnown())) {
            notes.add("Strips that clamp-up bends are thickened with the section, since thicker is stiffer.");
        }
        if (features().anyMatch(place -> place.loads().isKnown())) {
            notes.add("Stated load stresses are left as they are: the thicker section is not credited with less.");
        }
        return notes;
    }
}
