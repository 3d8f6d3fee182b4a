package org.shortgrain.report.json;

import java.util.Collection;
import java.util.Optional;
import org.shortgrain.review.Amount;
import org.shortgrain.review.CrackFound;
import org.shortgrain.review.InService;
import org.shortgrain.review.InspectionSchedule;
import org.shortgrain.review.OwnTests;
import org.shortgrain.terms.Citation;

/** Writes what a review says of a part in service. What is written here is read by {@link InServiceReader}. */
final class InServiceWriter {

    private final JsonOut out;

    InServiceWriter(JsonOut out) {
        this.out = out;
    }

    void write(InService service) {
        out.list("cracks");
        for (CrackFound crack : service.cracks()) {
            crack(crack);
        }
        out.end().list("schedules");
        for (InspectionSchedule schedule : service.schedules()) {
            schedule(schedule);
        }
        out.end().list("ownTests");
        for (OwnTests tests : service.tests()) {
            tests(tests);
        }
        out.end();
    }

    private void crack(CrackFound crack) {
        out.item().text("id", crack.id()).text("feature", crack.feature()).text("what", crack.what()).list("factors");
        for (CrackFound.Evidence one : crack.factors()) {
            out.item().text("factor", one.factor().word()).texts("speaksFor", one.speaksFor())
                    .texts("speaksAgainst", one.speaksAgainst()).end();
        }
        out.end().list("contributions");
        for (CrackFound.Share one : crack.contributions()) {
            out.item().text("source", one.source()).number("share", one.share());
            amount("amount", one.amount());
            out.end();
        }
        out.end().list("alternatives");
        for (CrackFound.Alternative one : crack.alternatives()) {
            out.item().text("name", one.name()).texts("speaksFor", one.speaksFor())
                    .texts("speaksAgainst", one.speaksAgainst()).text("decides", one.decides());
            source(one.source());
            out.end();
        }
        out.end();
        checks("onPart", crack.onPart());
        checks("onSisters", crack.onSisters());
        out.end();
    }

    private void checks(String key, Collection<CrackFound.Check> checks) {
        out.list(key);
        for (CrackFound.Check one : checks) {
            out.item().text("action", one.action());
            source(one.source());
            out.end();
        }
        out.end();
    }

    private void schedule(InspectionSchedule schedule) {
        out.item().text("feature", schedule.feature()).text("lookedFor", schedule.lookedFor())
                .text("outcome", schedule.outcome().words());
        amount("first", schedule.first());
        amount("repeat", schedule.repeat());
        out.texts("because", schedule.because()).list("dates");
        for (InspectionSchedule.Due one : schedule.dates()) {
            out.item().text("when", one.when()).text("what", one.what()).end();
        }
        out.end().texts("declared", schedule.declared()).texts("cautions", schedule.cautions())
                .texts("calculations", schedule.calculations()).end();
    }

    private void tests(OwnTests tests) {
        out.item().text("feature", tests.feature()).text("scope", tests.scope()).list("points");
        for (OwnTests.Point one : tests.points()) {
            out.item().number("stress", one.stress()).number("days", one.days()).truth("cracked", one.cracked()).end();
        }
        out.end();
        amount("threshold", tests.threshold());
        out.truth("identified", tests.identified()).truth("counted", tests.counted()).texts("because", tests.because())
                .text("calculation", tests.calculation()).end();
    }

    private void amount(String key, Optional<Amount> amount) {
        if (amount.isPresent()) {
            amount(key, amount.get());
        }
    }

    private void amount(String key, Amount amount) {
        out.object(key).text("unit", amount.unit()).number("value", amount.value()).number("low", amount.low())
                .number("high", amount.high()).end();
    }

    private void source(Citation source) {
        out.object("source").text("id", source.id()).text("clause", source.clause())
                .text("status", source.status().word()).end();
    }
}
