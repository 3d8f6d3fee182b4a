package org.shortgrain.review;

import java.util.List;
import java.util.Optional;

/**
 * When to look at a place where a crack may grow.
 *
 * @param feature      the place
 * @param lookedFor    the crack that is looked for, and how
 * @param outcome      what sets the intervals
 * @param first        time to the first look; empty where no interval helps
 * @param repeat       time between looks; empty where no interval helps
 * @param because      how that came about, one sentence each
 * @param dates        dates and what is due, in their order
 * @param declared     the declared plan against it, one sentence each
 * @param cautions     what a reader must know before relying on it
 * @param calculations numbers of the calculations behind it
 */
public record InspectionSchedule(String feature, String lookedFor, Outcome outcome, Optional<Amount> first,
        Optional<Amount> repeat, List<String> because, List<Due> dates, List<String> declared, List<String> cautions,
        List<String> calculations) {

    /** Copies the lists. */
    public InspectionSchedule {
        because = List.copyOf(because);
        dates = List.copyOf(dates);
        declared = List.copyOf(declared);
        cautions = List.copyOf(cautions);
        calculations = List.copyOf(calculations);
    }

    /** What sets the intervals. */
    public enum Outcome {
        /** The time that the crack takes to grow. */
        BY_GROWTH("by growth"),
        /** The practice of the trade: growth is slow, below K_ISCC at the size that is found, or could not be computed. */
        BY_CALENDAR("by the calendar"),
        /** The place cannot be managed by inspection. */
        NOT_INSPECTABLE("not inspectable");

        private final String words;

        Outcome(String words) {
            this.words = words;
        }

        /** {@return the words for it} */
        public String words() {
            return words;
        }
    }

    /**
     * One entry of the calendar.
     *
     * @param when date, ISO 8601, or a time after entry into service
     * @param what what is due
     */
    public record Due(String when, String what) {
    }
}
