package org.shortgrain.report.json;

import java.util.Collection;
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
        out.objects("cracks", service.cracks(), this::crack);
        out.objects("schedules", service.schedules(), this::schedule);
        out.objects("ownTests", service.tests(), this::tests);
    }

    private void crack(CrackFound crack) {
        out.text("id", crack.id()).text("feature", crack.feature()).text("what", crack.what());
        out.objects("factors", crack.factors(), one -> out.text("factor", one.factor().word())
                .texts("speaksFor", one.speaksFor()).texts("speaksAgainst", one.speaksAgainst()));
        out.objects("contributions", crack.contributions(), one -> {
            out.text("source", one.source()).number("share", one.share());
            out.object("amount", () -> amount(one.amount()));
        });
        out.objects("alternatives", crack.alternatives(), one -> {
            out.text("name", one.name()).texts("speaksFor", one.speaksFor()).texts("speaksAgainst", one.speaksAgainst())
                    .text("decides", one.decides());
            source(one.source());
        });
        checks("onPart", crack.onPart());
        checks("onSisters", crack.onSisters());
    }

    private void checks(String key, Collection<CrackFound.Check> checks) {
        out.objects(key, checks, one -> {
            out.text("action", one.action());
            source(one.source());
        });
    }

    private void schedule(InspectionSchedule schedule) {
        out.text("feature", schedule.feature()).text("lookedFor", schedule.lookedFor())
                .text("outcome", schedule.outcome().words());
        schedule.first().ifPresent(one -> out.object("first", () -> amount(one)));
        schedule.repeat().ifPresent(one -> out.object("repeat", () -> amount(one)));
        out.texts("because", schedule.because());
        out.objects("dates", schedule.dates(), one -> out.text("when", one.when()).text("what", one.what()));
        out.texts("declared", schedule.declared()).texts("cautions", schedule.cautions())
                .texts("calculations", schedule.calculations());
    }

    private void tests(OwnTests tests) {
        out.text("feature", tests.feature()).text("scope", tests.scope());
        out.objects("points", tests.points(), one -> out.number("stress", one.stress()).number("days", one.days())
                .truth("cracked", one.cracked()));
        tests.threshold().ifPresent(one -> out.object("threshold", () -> amount(one)));
        out.truth("identified", tests.identified()).truth("counted", tests.counted()).texts("because", tests.because())
                .text("calculation", tests.calculation());
    }

    private void amount(Amount amount) {
        out.text("unit", amount.unit()).number("value", amount.value()).number("low", amount.low())
                .number("high", amount.high());
    }

    private void source(Citation source) {
        out.object("source", () -> out.text("id", source.id()).text("clause", source.clause())
                .text("status", source.status().word()));
    }
}
