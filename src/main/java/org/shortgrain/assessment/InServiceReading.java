package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shortgrain.part.PartDescription;
import org.shortgrain.reference.MaterialAnswer;
import org.shortgrain.reference.ReferenceTables;
import org.shortgrain.review.DirectionReview;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.InService;
import org.shortgrain.review.InspectionSchedule;
import org.shortgrain.rulebook.facts.Growth;
import org.shortgrain.rulebook.facts.Place;
import org.shortgrain.terms.GrainDirection;

/** Gathers what one review says of service: cracks that were found, own tests, when to look. */
final class InServiceReading {

    private final GrowthReading growth;
    private final ScheduleReading schedule;
    private final CrackReading cracks;
    private final OwnTestReading tests;
    private final List<Look> looks = new ArrayList<>();
    private final List<Growth> grown = new ArrayList<>();

    /** A place with how long a crack can be watched there. */
    private record Look(Site site, Place place, GrowthReading.Watched watched) {
    }

    InServiceReading(ReferenceTables tables, OwnTestReading tests) {
        this.growth = new GrowthReading(tables.inspection());
        this.schedule = new ScheduleReading(tables.inspection());
        this.cracks = new CrackReading(tables);
        this.tests = tests;
    }

    /**
     * Works out when to look at a place, where inspection is planned or the part is in service.
     *
     * @param site       the place
     * @param directions stress there
     * @param place      the same for the rules
     * @param answer     what the tables say of the material
     */
    void look(Site site, List<DirectionReview> directions, Place place, MaterialAnswer answer) {
        if (!GrowthReading.isAsked(site)) {
            return;
        }
        growth.at(site, directions, place.material().state(), answer).ifPresent(watched -> {
            looks.add(new Look(site, place, watched));
            Optional<Growth> fact = watched.result().map(result -> new Growth(place, watched.method(), result.found(),
                    result.criticalDepth(), watched.first().orElseThrow(), watched.repeat().orElseThrow()));
            fact.ifPresent(grown::add);
        });
    }

    /** {@return what the rules are told} */
    List<Object> facts() {
        List<Object> facts = new ArrayList<>(grown);
        facts.addAll(tests.facts());
        return facts;
    }

    /**
     * {@return what the review says of service}
     *
     * @param description the part
     * @param places      its places
     * @param reviews     what the review says of each of them
     * @param limits      what the tension is compared with beside own tests
     * @param today       date of the review, ISO 8601; empty text if not known
     */
    InService found(PartDescription description, List<Place> places, List<FeatureReview> reviews,
            Map<GrainDirection, Limit> limits, String today) {
        List<InspectionSchedule> schedules = looks.stream()
                .map(one -> schedule.of(one.site(), one.watched(), one.place().material().state(), today)).toList();
        return new InService(cracks.of(description, places, reviews), schedules, tests.shown(limits));
    }
}
