package org.shortgrain.assessment;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.shortgrain.part.Crack;
import org.shortgrain.part.Feature;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Range;
import org.shortgrain.part.Service;
import org.shortgrain.part.Stated;
import org.shortgrain.reference.CrackTable;
import org.shortgrain.reference.ReferenceTables;
import org.shortgrain.review.Contribution;
import org.shortgrain.review.CrackFound;
import org.shortgrain.review.CrackFound.Alternative;
import org.shortgrain.review.CrackFound.Check;
import org.shortgrain.review.CrackFound.Evidence;
import org.shortgrain.review.CrackFound.Share;
import org.shortgrain.review.DirectionReview;
import org.shortgrain.review.Factor;
import org.shortgrain.review.FactorJudgement;
import org.shortgrain.review.FactorState;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.ReportNumber;
import org.shortgrain.rulebook.facts.Place;
import org.shortgrain.terms.GrainDirection;

/**
 * Weighs a crack that was found: what speaks for the part of each factor in it and what against, which other modes of
 * cracking are to be ruled out, and what to look at next. It never names a cause as proven.
 */
final class CrackReading {

    private static final double MONTHS_PER_YEAR = 12;
    private static final double HOURS_PER_YEAR = 365.25 * 24;
    private static final double PER_CENT = 100;
    private static final String RESIDUAL = "quench residual";

    private final ReferenceTables tables;

    CrackReading(ReferenceTables tables) {
        this.tables = tables;
    }

    /**
     * {@return the cracks that are stated, weighed}
     *
     * @param description the part
     * @param places      its places
     * @param reviews     what the review says of each of them, in the same order
     */
    List<CrackFound> of(PartDescription description, List<Place> places, List<FeatureReview> reviews) {
        List<CrackFound> found = new ArrayList<>();
        for (Crack crack : Stated.items(description.service().field(Service::cracks))) {
            Optional<Place> place = places.stream().filter(one -> crack.feature().is(one.id())).findFirst();
            Optional<FeatureReview> review = reviews.stream().filter(one -> crack.feature().is(one.id())).findFirst();
            Weighed weighed = new Weighed(description, crack, place, review);
            found.add(new CrackFound(ReportNumber.of('K', found.size() + 1), crack.feature().single().orElse(""),
                    say(crack), List.of(weighed.material(), weighed.stress(), weighed.environment()), shares(review),
                    tables.cracks().causes().stream().map(weighed::alternative).toList(), checks(false), checks(true)));
        }
        return found;
    }

    private List<Check> checks(boolean sister) {
        return tables.cracks().checks().stream().filter(one -> one.sister() == sister)
                .map(one -> new Check(one.action(), one.source())).toList();
    }

    private static String say(Crack crack) {
        return String.join("; ", "Found " + crack.found().single().orElse("at a time not stated"),
                "runs " + crack.direction().single().orElse("in a direction not stated"),
                "length " + entered(crack.length()), "depth " + entered(crack.depth()),
                "laboratory: " + crack.observed().single().orElse("nothing stated"));
    }

    private static String entered(Stated<Range> stated) {
        return stated.single().map(Range::entered).orElse("not stated");
    }

    private static List<Share> shares(Optional<FeatureReview> review) {
        Optional<DirectionReview> governing = review.flatMap(FeatureReview::governing);
        double sum = governing.stream().flatMap(one -> one.sustained().parts().stream())
                .mapToDouble(one -> one.amount().value()).sum();
        return sum <= 0 ? List.of() : governing.orElseThrow().sustained().parts().stream()
                .sorted(Comparator.comparingDouble((Contribution one) -> -one.amount().value())
                        .thenComparing(one -> -one.amount().high()))
                .map(one -> new Share(one.source(), one.amount(), one.amount().value() / sum)).toList();
    }

    /** One crack against what is known of its place. */
    private record Weighed(PartDescription description, Crack crack, Optional<Place> place, Optional<FeatureReview> review) {

        private boolean tells(String... words) {
            String text = (crack.observed().single().orElse("") + " " + crack.direction().single().orElse(""))
                    .toLowerCase(Locale.ROOT);
            return List.of(words).stream().anyMatch(text::contains);
        }

        /** "no striations" tells the contrary of "striations". */
        private boolean tellsOfNo(String word) {
            String text = crack.observed().single().orElse("").toLowerCase(Locale.ROOT);
            return text.contains("no " + word) || text.contains("without " + word);
        }

        private boolean shows(String word) {
            return tells(word) && !tellsOfNo(word);
        }

        Evidence material() {
            List<String> yes = new ArrayList<>();
            List<String> no = new ArrayList<>();
            judged(FeatureReview::material, yes, no);
            if (tells("along the grain", "parting", "flow line", "short transverse", "parallel to the surface", "plate surface")) {
                yes.add("The crack runs along the grain, as stated: boundaries across the short grain are the easy path.");
            } else if (tells("across the grain")) {
                no.add("The crack runs across the grain, as stated.");
            } else {
                no.add("Whether the crack follows the grain is not stated; a section beside it tells.");
            }
            if (shows("intergranular")) {
                yes.add("The laboratory saw an intergranular path.");
            }
            if (shows("transgranular")) {
                no.add("The laboratory saw a transgranular path, which in aluminium alloys speaks against.");
            }
            if (shows("branch")) {
                yes.add("The laboratory saw branches.");
            }
            place.filter(Place::isEndGrainExposed).ifPresent(one -> yes.add("End grain is exposed at " + one.id() + "."));
            place.filter(one -> one.directions().contains(GrainDirection.ST))
                    .ifPresent(one -> yes.add("The short transverse direction may be pulled at " + one.id() + "."));
            return new Evidence(Factor.MATERIAL, yes, no);
        }

        Evidence stress() {
            List<String> yes = new ArrayList<>();
            List<String> no = new ArrayList<>();
            judged(FeatureReview::stress, yes, no);
            boolean core = parts().stream().anyMatch(one -> one.source().startsWith(RESIDUAL) && one.amount().value() > 0);
            if (core) {
                yes.add("The finished surface lies" + depth() + " below the one that was quenched, where machining opens the"
                        + " tension of the core.");
            } else if (review.isPresent()) {
                no.add("No core tension of the quench is computed at this surface.");
            }
            place.filter(Place::isPressed).ifPresent(one -> yes.add(String.format(Locale.ROOT,
                    "It lies under an interference fit: hoop tension up to %.0f MPa.", one.megapascal("fit.bore-hoop"))));
            place.filter(one -> !one.clampUps().isEmpty()).ifPresent(one -> yes.add("Assembly pulls a gap shut here."));
            return new Evidence(Factor.STRESS, yes, no);
        }

        private List<Contribution> parts() {
            return review.flatMap(FeatureReview::governing).map(one -> one.sustained().parts()).orElse(List.of());
        }

        private String depth() {
            return place.map(Place::feature).map(Feature::asQuenchedDepth).flatMap(Stated::single)
                    .map(one -> " " + one.entered()).orElse("");
        }

        Evidence environment() {
            List<String> yes = new ArrayList<>();
            List<String> no = new ArrayList<>();
            judged(FeatureReview::environment, yes, no);
            if (shows("pit")) {
                yes.add("The laboratory saw pits.");
            }
            if (shows("chlor") || shows("product") || shows("deposit")) {
                yes.add("The laboratory saw deposits or corrosion product.");
            }
            age().ifPresent(years -> yes.add(String.format(Locale.ROOT, "Found %.1f years after entry into service: a calendar"
                    + " time in which such cracks appear; it excludes none of the alternatives.", years)));
            made().filter(one -> age().isEmpty()).ifPresent(one -> yes.add("Made " + one + " before the review, as stated."));
            idle().ifPresent(share -> yes.add(String.format(Locale.ROOT, "It stood still %.0f %% of that time: exposure goes on,"
                    + " load cycles do not.", share)));
            if (age().isEmpty() && made().isEmpty()) {
                no.add("The time from entry into service to the find is not stated.");
            }
            return new Evidence(Factor.ENVIRONMENT, yes, no);
        }

        private void judged(Function<FeatureReview, FactorJudgement> factor, List<String> yes,
                List<String> no) {
            review.map(factor).ifPresentOrElse(one -> {
                String text = "As judged here: " + one.state().word() + (one.reasons().isEmpty() ? "."
                        : " (" + one.reasons().get(0) + ").");
                (one.state() == FactorState.PRESENT ? yes : no).add(text);
            }, () -> no.add("The place of the crack is not described, so the factor is not judged there."));
        }

        private Optional<Double> age() {
            Optional<LocalDate> from = description.service().field(Service::entered).single().flatMap(Weighed::date);
            Optional<LocalDate> to = crack.found().single().flatMap(Weighed::date);
            return from.isEmpty() || to.isEmpty() || to.get().isBefore(from.get()) ? Optional.empty()
                    : Optional.of(ChronoUnit.MONTHS.between(from.get(), to.get()) / MONTHS_PER_YEAR);
        }

        private Optional<String> made() {
            return description.service().field(Service::since).single().map(Range::entered);
        }

        /** Share of the time since entry into service in which it did not operate (%). */
        private Optional<Double> idle() {
            return age().filter(years -> years > 0).flatMap(years -> description.service().field(Service::hours).single()
                    .map(hours -> PER_CENT * Math.max(0, 1 - hours / (years * HOURS_PER_YEAR))));
        }

        private static Optional<LocalDate> date(String text) {
            try {
                return Optional.of(text.length() == "2000-01".length() ? YearMonth.parse(text).atDay(1)
                        : LocalDate.parse(text));
            } catch (DateTimeParseException none) {
                return Optional.empty();
            }
        }

        Alternative alternative(CrackTable.Cause cause) {
            List<String> yes = new ArrayList<>();
            List<String> no = new ArrayList<>();
            switch (cause.key()) {
                case "stress_corrosion" -> stressCorrosion(yes, no);
                case "fatigue" -> fatigue(yes, no);
                case "corrosion_fatigue" -> corrosionFatigue(yes, no);
                case "hydrogen" -> hydrogen(yes, no);
                case "overload" -> overload(yes, no);
                default -> no.add("Nothing in the description bears on it.");
            }
            return new Alternative(cause.name(), yes, no, "Look for: " + cause.speaksFor() + ". Against: "
                    + cause.speaksAgainst() + ". Decides: " + cause.decides() + ".", cause.source());
        }

        private void stressCorrosion(List<String> yes, List<String> no) {
            long present = place.map(one -> one.count(FactorState.PRESENT)).orElse(0L);
            (present == 3 ? yes : no).add(present + " of the three factors are judged present at the place.");
            if (shows("intergranular")) {
                yes.add("Intergranular path, as stated.");
            }
            if (shows("striation") || shows("beach")) {
                no.add("Marks of cycles on the fracture, as stated.");
            }
        }

        private void fatigue(List<String> yes, List<String> no) {
            description.service().field(Service::cycles).single().ifPresentOrElse(
                    cycles -> yes.add(String.format(Locale.ROOT, "%.0f cycles of operation are stated.", cycles)),
                    () -> no.add("Cycles of operation are not stated."));
            place.filter(Place::hasShortLoads).ifPresent(one -> yes.add("Loads that come and go are named at the place."));
            if (shows("striation") || shows("beach")) {
                yes.add("Marks of cycles on the fracture, as stated.");
            }
            if (tellsOfNo("striation") || tellsOfNo("beach")) {
                no.add("No marks of cycles on the fracture, as stated.");
            }
            if (shows("intergranular")) {
                no.add("Intergranular path, as stated.");
            }
        }

        private void corrosionFatigue(List<String> yes, List<String> no) {
            boolean cycles = description.service().field(Service::cycles).isKnown();
            boolean wet = place.filter(Place::isWet).isPresent();
            (cycles && wet ? yes : no).add(cycles && wet ? "Cycles are stated, and the place can be wet."
                    : "Cycles and wetness are not both stated.");
            if (tellsOfNo("striation") || tellsOfNo("beach")) {
                no.add("No marks of cycles on the fracture, as stated.");
            }
        }

        private void hydrogen(List<String> yes, List<String> no) {
            boolean prone = place.map(Place::metal).filter(one -> one.isHardenableSteel() || one.isPhSteel() || one.isTitanium())
                    .isPresent();
            (prone ? yes : no).add(prone ? "The material is a steel of high strength or titanium."
                    : "The material is no steel of high strength and no titanium.");
            if (place.filter(one -> one.route().has("plate", "strip", "galvanize")).isPresent()) {
                yes.add("The card has plating or stripping.");
            }
        }

        private void overload(List<String> yes, List<String> no) {
            List<String> events = Stated.items(description.service().field(Service::events));
            if (events.isEmpty()) {
                no.add(description.service().field(Service::events).isNone() ? "No event is on record, as stated."
                        : "Whether there was an event is not stated.");
            } else {
                yes.add("On record: " + String.join("; ", events) + ".");
            }
            if (shows("dimple")) {
                yes.add("Dimples on the fracture, as stated.");
            }
        }
    }
}
