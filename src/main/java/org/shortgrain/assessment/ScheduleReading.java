package org.shortgrain.assessment;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.mechanics.crack.GrowthResult;
import org.shortgrain.mechanics.crack.InspectionInterval;
import org.shortgrain.part.Inspection;
import org.shortgrain.part.Range;
import org.shortgrain.part.Service;
import org.shortgrain.part.Stated;
import org.shortgrain.reference.InspectionTable;
import org.shortgrain.review.Amount;
import org.shortgrain.review.FactorState;
import org.shortgrain.review.InspectionSchedule;
import org.shortgrain.review.InspectionSchedule.Due;
import org.shortgrain.review.InspectionSchedule.Outcome;
import org.shortgrain.rulebook.facts.InspectionPlan;
import org.shortgrain.terms.SourceStatus;

/** When to look at a place: intervals, calendar, and the declared plan against them. */
final class ScheduleReading {

    private static final double DAY = 86_400;
    /** Months are told from this many days on. */
    private static final double MONTHS_FROM = 90;
    private static final double DAYS_PER_MONTH = 365.25 / 12;
    /** Days are told as whole ones from here on. */
    private static final double WHOLE_FROM = 10;
    /** Keeps twelve months twelve after division and multiplication. */
    private static final double ROUNDING = 1e-9;
    private static final String TIGHT = "Sizes that a method finds are conventions for open cracks; stress-corrosion cracks are"
            + " tight, branched and filled with product.";
    private static final String LAST_LINE = "Inspection takes no factor away: it is the last line after environment, alloy,"
            + " process and stress.";

    private final InspectionTable table;

    ScheduleReading(InspectionTable table) {
        this.table = table;
    }

    /**
     * {@return the schedule of a place}
     *
     * @param site     the place
     * @param watched  how long a crack can be watched there
     * @param material state of the material factor
     * @param today    date of the review, ISO 8601; empty text if not known
     */
    InspectionSchedule of(Site site, GrowthReading.Watched watched, FactorState material, String today) {
        double cap = table.practice("longest").value();
        double firstCap = material == FactorState.ABSENT ? cap : table.practice("first_susceptible").value();
        double first = watched.first().map(InspectionInterval::length).orElse(firstCap);
        double repeat = watched.repeat().map(InspectionInterval::length).orElse(cap);
        boolean unreachable = new InspectionPlan(site.description().inspection()).isOutOfReach();
        boolean hopeless = unreachable || watched.first().filter(InspectionInterval::isNotInspectable).isPresent()
                || watched.repeat().filter(InspectionInterval::isNotInspectable).isPresent();
        Outcome outcome = hopeless ? Outcome.NOT_INSPECTABLE
                : watched.repeat().filter(InspectionInterval.ByGrowth.class::isInstance).isPresent()
                        || watched.first().filter(InspectionInterval.ByGrowth.class::isInstance).isPresent()
                        ? Outcome.BY_GROWTH : Outcome.BY_CALENDAR;
        List<Due> dates = hopeless ? List.of() : dates(site, first, repeat, date(today));
        return new InspectionSchedule(site.id(), lookedFor(watched), outcome, days(hopeless, first), days(hopeless, repeat),
                because(site, watched, unreachable, first, repeat), dates, declared(site, hopeless, first, repeat),
                cautions(watched), watched.written());
    }

    private static Optional<Amount> days(boolean hopeless, double seconds) {
        double days = Math.floor(seconds / DAY);
        return hopeless ? Optional.empty() : Optional.of(new Amount("days", days, days, days));
    }

    private static String lookedFor(GrowthReading.Watched watched) {
        return watched.result().map(result -> String.format(Locale.ROOT, "%s: crack of %.2g mm depth; critical at %.2g mm",
                watched.method(), result.found() * 1e3, result.criticalDepth() * 1e3)).orElse(watched.method());
    }

    private List<String> because(Site site, GrowthReading.Watched watched, boolean unreachable, double first,
            double repeat) {
        List<String> because = new ArrayList<>();
        if (unreachable) {
            because.add("The place cannot be reached without taking a joint apart: " + InspectionInterval.NOT_INSPECTABLE
                    + " as it is built.");
        }
        if (!watched.missing().isEmpty()) {
            because.add("Growth is not computed: " + watched.missing() + ". The practice of the trade stands alone, "
                    + span(repeat) + " at most.");
            return because;
        }
        InspectionTable.Practice factor = table.practice(GrowthReading.isAlone(site) ? "factor_single_load_path" : "factor");
        watched.repeat().ifPresent(one -> because.add("Repeat: " + say(one, factor, repeat)));
        watched.first().ifPresent(one -> because.add("First look, from the flaw assumed from manufacture: "
                + say(one, factor, first)));
        because.addAll(watched.notes());
        return because;
    }

    private String say(InspectionInterval interval, InspectionTable.Practice factor, double length) {
        String over = String.format(Locale.ROOT, "%.1f", factor.value()).replace(".0", "");
        if (interval instanceof InspectionInterval.AlreadyCritical) {
            return InspectionInterval.NOT_INSPECTABLE + ": this crack is critical already.";
        }
        if (interval instanceof InspectionInterval.TooFast fast) {
            return String.format(Locale.ROOT, "%s: from this crack to the critical one may take %s, over %s is %s; less than"
                    + " %s cannot be managed by inspection.", InspectionInterval.NOT_INSPECTABLE, span(fast.time()), over,
                    span(fast.wanted()), span(table.practice("shortest").value()));
        }
        if (interval.window().isEmpty()) {
            return "the crack stays below K_ISCC at this size and the sustained stress; " + span(length)
                    + " by the practice of the trade, not by growth.";
        }
        String grows = "from this crack to the critical one " + span(interval.window().getAsDouble()) + " at the least, over "
                + over + " gives " + span(interval.window().getAsDouble() / factor.value());
        return interval instanceof InspectionInterval.ByGrowth ? grows + "."
                : grows + "; held to " + span(length) + " by the practice of the trade.";
    }

    private static List<String> cautions(GrowthReading.Watched watched) {
        List<String> cautions = new ArrayList<>(List.of(LAST_LINE));
        if (watched.result().isPresent()) {
            cautions.add(TIGHT);
            cautions.add("Growth rests on published K_ISCC and velocities" + (restsOnMemory(watched.result().get())
                    ? " from memory, orders of magnitude only: confirm them by own tests before relying on a number here."
                    : ": confirm that they hold for this environment."));
        }
        return cautions;
    }

    private static boolean restsOnMemory(GrowthResult result) {
        return result.sources().stream().anyMatch(one -> one.status() == SourceStatus.MEMORY);
    }

    private List<Due> dates(Site site, double first, double repeat, Optional<LocalDate> today) {
        long many = Math.round(table.practice("dates").value());
        Optional<LocalDate> entered = site.description().service().field(Service::entered).single()
                .flatMap(ScheduleReading::date);
        List<Due> dates = new ArrayList<>();
        if (entered.isEmpty()) {
            for (long i = 0; i < many; i++) {
                dates.add(new Due(span(first + i * repeat) + " after entry into service", i == 0 ? "first look" : "look again"));
            }
            return dates;
        }
        LocalDate due = entered.get().plusDays((long) (first / DAY));
        LocalDate from = today.filter(now -> now.isAfter(due)).orElse(due);
        if (from.isAfter(due)) {
            dates.add(new Due(due.toString(), "first look was due"));
        }
        for (long i = 0; i < many; i++) {
            dates.add(new Due(from.plusDays((long) (i * repeat / DAY)).toString(), i == 0
                    ? from.isAfter(due) ? "look now" : "first look" : "look again"));
        }
        return dates;
    }

    private static Optional<LocalDate> date(String text) {
        try {
            return Optional.of(text.length() == "2000-01".length() ? YearMonth.parse(text).atDay(1) : LocalDate.parse(text));
        } catch (DateTimeParseException none) {
            return Optional.empty();
        }
    }

    private static List<String> declared(Site site, boolean hopeless, double first, double repeat) {
        Stated<Inspection> stated = site.description().inspection();
        InspectionPlan plan = new InspectionPlan(stated);
        List<String> declared = new ArrayList<>(List.of("Declared: " + plan.say() + "; access "
                + plan.access().single().map(one -> one.word().replace('_', ' ')).orElse("not stated") + "."));
        if (!hopeless) {
            declared.add(compared("first look", stated.field(Inspection::first), first));
            declared.add(compared("interval", stated.field(Inspection::repeat), repeat));
        }
        return declared;
    }

    private static String compared(String what, Stated<Range> stated, double allowed) {
        Optional<Range> longest = stated.candidates().stream().max(Comparator.comparingDouble(Range::highest));
        return longest.map(one -> "The declared " + what + " of " + one.entered() + (one.highest() > allowed * (1 + 1 / 365.25)
                ? " is longer than " : " is within ") + span(allowed) + ".")
                .orElse("No " + what + " is declared; " + span(allowed) + " at most.");
    }

    /** A time in days, or in months where it is long. */
    static String span(double seconds) {
        double days = seconds / DAY;
        if (days >= MONTHS_FROM) {
            return String.format(Locale.ROOT, "%.0f months", Math.floor(days / DAYS_PER_MONTH + ROUNDING));
        }
        return String.format(Locale.ROOT, days >= WHOLE_FROM ? "%.0f days" : "%.2g days", days);
    }
}
