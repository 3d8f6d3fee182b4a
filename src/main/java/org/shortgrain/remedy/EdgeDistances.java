package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.shortgrain.part.Concentration;
import org.shortgrain.part.Envelope;
import org.shortgrain.part.Fastener;
import org.shortgrain.part.Feature;
import org.shortgrain.part.FeatureKind;
import org.shortgrain.part.Fit;
import org.shortgrain.part.Form;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;

/**
 * What a weaker metal asks of the edge distance at holes and lugs, for the same load and the same hole.
 *
 * <p>Where the thickness grows by r, the ratio of old to new strength, the edge distance e and the ratio e/D stay: the area in
 * tear-out (2 e t), in net tension ((2 e - D) t) and in bearing (D t) each grow by r. Where the thickness is kept, tear-out
 * needs r e and net tension e + (r - 1)(e - D/2), which is less; bearing gains nothing from the edge and still needs the
 * thickness or a larger pin. Own derivation: strength in proportion to area; straight shear planes, 2 e the width of the lug.
 */
final class EdgeDistances {

    private final PartDescription part;
    private final double ratio;

    private EdgeDistances(PartDescription part, double ratio) {
        this.part = part;
        this.ratio = ratio;
    }

    /**
     * {@return a sentence for each hole and lug}
     *
     * @param part  the part as it is
     * @param ratio r, old over new strength, 1 or more
     */
    static List<String> notes(PartDescription part, double ratio) {
        EdgeDistances edges = new EdgeDistances(part, ratio);
        List<String> notes = new ArrayList<>();
        List<Feature> features = Stated.items(part.features());
        for (int i = 0; i < features.size(); i++) {
            if (ratio > 1 && isHole(features.get(i))) {
                notes.add(edges.note("features/" + i, Subject.id("/features/" + i, features.get(i)), features.get(i)));
            }
        }
        return notes;
    }

    private static boolean isHole(Feature feature) {
        return feature.what().any(kind -> kind == FeatureKind.LUG_BORE || kind == FeatureKind.BOLT_HOLE
                || kind == FeatureKind.THREADED_HOLE);
    }

    private String note(String place, String id, Feature feature) {
        OptionalDouble diameter = diameter(feature);
        OptionalDouble edge = edge(feature);
        if (diameter.isEmpty() || edge.isEmpty()) {
            return String.format(Locale.ROOT, "Edge distance of %s: not checked, since %s is not stated (%s); with the thickness"
                    + " kept it must grow by %.3f.", id, edge.isEmpty() ? "the distance from the centre to an edge" : "the diameter",
                    place + (edge.isEmpty() ? "/fit/edge_distance or outer_width" : "/fit/hole"), ratio);
        }
        double wanted = edge.getAsDouble() * ratio;
        return String.format(Locale.ROOT, "Edge distance of %s: e/D = %.2f is kept where the thickness grows; with the thickness"
                + " kept, tear-out asks for e %s -> %s (e/D %.2f), a width of %s across the hole%s, and bearing is still short by"
                + " %.3f.", id, edge.getAsDouble() / diameter.getAsDouble(), Lengths.said(edge.getAsDouble()), Lengths.said(wanted),
                wanted / diameter.getAsDouble(), Lengths.said(2 * wanted), room(2 * wanted), ratio);
    }

    private String room(double width) {
        OptionalDouble room = Range.least(part.form().field(Form::envelope).field(Envelope::width));
        if (room.isEmpty()) {
            return " (form/envelope/width is not stated: not checked)";
        }
        return String.format(Locale.ROOT, width <= room.getAsDouble() ? ", which stays in the envelope of %s"
                : ", which LEAVES the envelope of %s", Lengths.said(room.getAsDouble()));
    }

    /** The hole of the fit; else the hole that concentrates the stress; else the widest fastener. */
    private static OptionalDouble diameter(Feature feature) {
        return first(Range.greatest(feature.fit().field(Fit::hole)),
                Range.greatest(feature.stressConcentration().field(Concentration::diameter)),
                Stated.items(feature.fasteners()).stream().map(Fastener::diameter)
                        .flatMapToDouble(one -> Range.greatest(one).stream()).max());
    }

    /** As stated; else half the width of the outer member, which is twice the smallest distance to an edge. */
    private static OptionalDouble edge(Feature feature) {
        OptionalDouble width = Range.least(feature.fit().field(Fit::outerWidth));
        return first(Range.least(feature.fit().field(Fit::edgeDistance)),
                width.isPresent() ? OptionalDouble.of(width.getAsDouble() / 2) : OptionalDouble.empty());
    }

    private static OptionalDouble first(OptionalDouble... several) {
        return Stream.of(several).filter(OptionalDouble::isPresent).findFirst().orElse(OptionalDouble.empty());
    }
}
