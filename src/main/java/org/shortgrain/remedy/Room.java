package org.shortgrain.remedy;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shortgrain.mechanics.section.SizingMode;
import org.shortgrain.part.Envelope;
import org.shortgrain.part.Form;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;

/**
 * The room that the neighbours leave for one dimension, against what a change makes of it. Height stands for the thickest
 * finished section. What is not stated is said to be not checked, never taken to fit.
 *
 * @param dimension height, width or length
 * @param key       where the size of the part stands in the description
 * @param now       the size as it is (m); empty where it is not stated
 * @param scale     what it is multiplied by
 * @param room      the room (m); empty where it is not stated
 * @param enveloped whether any room is stated, so that what cannot be checked is told
 */
record Room(String dimension, String key, OptionalDouble now, double scale, OptionalDouble room, boolean enveloped) {

    /**
     * {@return the three dimensions of a part under a mode}
     *
     * @param part  the part
     * @param mode  what governs the size
     * @param scale scale of the dimension that the mode names
     */
    static List<Room> of(PartDescription part, SizingMode mode, double scale) {
        boolean high = mode == SizingMode.THICKNESS || mode == SizingMode.BENDING_WIDTH_KEPT || mode == SizingMode.BENDING_IN_PROPORTION;
        boolean wide = mode == SizingMode.BENDING_HEIGHT_KEPT || mode == SizingMode.BENDING_IN_PROPORTION;
        Stated<Envelope> envelope = part.form().field(Form::envelope);
        return List.of(
                new Room("height", "form/finished_thickness", new NewSection(part, 1).thickest(), high ? scale : 1,
                        Range.least(envelope.field(Envelope::height)), envelope.isKnown()),
                new Room("width", "form/width", Range.greatest(part.form().field(Form::width)), wide ? scale : 1,
                        Range.least(envelope.field(Envelope::width)), envelope.isKnown()),
                new Room("length", "form/length", Range.greatest(part.form().field(Form::length)), 1,
                        Range.least(envelope.field(Envelope::length)), envelope.isKnown()));
    }

    private boolean grows() {
        return scale > 1;
    }

    /** {@return whether the new size stays in the room; empty where the size or the room is not stated} */
    Optional<Boolean> stays() {
        return now.isPresent() && room.isPresent() ? Optional.of(now.getAsDouble() * scale <= room.getAsDouble()) : Optional.empty();
    }

    /** {@return whether there is anything to tell: it grows, or it is kept in a stated room} */
    boolean tells() {
        return grows() || stays().isPresent();
    }

    /** {@return what becomes of the dimension, as part of a sentence} */
    String words() {
        String size = grows() && now.isPresent() ? String.format(Locale.ROOT, "%s %s -> %s", dimension,
                Lengths.said(now.getAsDouble()), Lengths.said(now.getAsDouble() * scale))
                : grows() ? String.format(Locale.ROOT, "%s x %.3f", dimension, scale)
                : dimension + " kept" + (now.isPresent() ? " at " + Lengths.said(now.getAsDouble()) : "");
        return size + stays().map(stays -> (stays ? ", stays in the envelope of " : ", LEAVES the envelope of ")
                + Lengths.said(room.getAsDouble())).orElseGet(this::unchecked);
    }

    private String unchecked() {
        String missing = now.isEmpty() ? key : "form/envelope/" + dimension;
        return enveloped ? ", envelope not checked: " + missing + " is not stated" : "";
    }
}
