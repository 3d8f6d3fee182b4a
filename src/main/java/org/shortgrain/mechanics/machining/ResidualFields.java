package org.shortgrain.mechanics.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.quench.PublishedRelief;
import org.shortgrain.mechanics.quench.QuenchBound;
import org.shortgrain.mechanics.quench.RetainedShare;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/** Finds the views of the blank's stress that a case has to consider. */
final class ResidualFields {

    private static final Citation METHOD = new Citation("quench-method", "bound for an unknown quench",
            SourceStatus.DERIVED);

    private final PublishedRelief published;

    ResidualFields(PublishedRelief published) {
        this.published = published;
    }

    FieldSet of(ResidualStressCase c) {
        return ofUnknownQuench(c);
    }

    private FieldSet ofUnknownQuench(ResidualStressCase c) {
        QuenchBound bound = QuenchBound.of(c.material());
        Optional<RetainedShare> retained = c.relief().retained(published);
        double left = retained.map(RetainedShare::high).orElse(1.0);
        double upper = left * published.upperYield().high();
        List<Citation> sources = new ArrayList<>(List.of(METHOD, c.material().source(),
                published.upperYield().source()));
        retained.ifPresent(share -> sources.add(share.source()));
        return new FieldSet(bounds(c, bound, 0), bounds(c, bound, left), bounds(c, bound, upper),
                retained.map(RetainedShare::atLeast).orElse(0.0),
                new Computed.Validity(true, "bound for any quench of 7xxx, Al-Cu or 6061 sections; as close as the full"
                        + " model for cold water from 50 mm up, on the high side elsewhere"),
                String.format(Locale.ROOT, "lower end: a mild quench leaves nothing; value: the bound; upper end: the"
                        + " bound with a flow stress %.2g times the table's", published.upperYield().high()),
                List.of(), sources, List.of("the quench is not known: no credit for compression is taken"));
    }

    private static List<ResidualField> bounds(ResidualStressCase c, QuenchBound bound, double share) {
        boolean untouched = c.surface().isAsQuenched(c.section().rulingThickness());
        double factor = untouched ? 0 : share;
        return BoundFields.of(bound, c.section(), c.direction(), c.surface().edgeDistance()).stream()
                .map(field -> field.times(factor, field.basis())).toList();
    }
}
