package org.shortgrain.report.json;

import org.shortgrain.review.Factor;
import org.shortgrain.review.Remedies;
import org.shortgrain.review.Remedy;

/** A study of remedies as JSON. The same study gives the same bytes. */
public final class RemedyJson {

    /** The value of the key {@code format}. */
    public static final String FORMAT = "shortgrain-remedies";
    /** The value of the key {@code version}. */
    public static final int VERSION = 1;

    private RemedyJson() {
    }

    /**
     * {@return the bytes of a study, UTF-8}
     *
     * @param study the study
     */
    public static byte[] bytes(Remedies study) {
        JsonOut out = new JsonOut();
        out.text("format", FORMAT).whole("version", VERSION);
        out.object("part").text("number", study.part().number()).text("revision", study.part().revision())
                .text("name", study.part().name()).end();
        out.object("input").text("file", study.input().file()).text("sha256", study.input().sha256()).end();
        out.text("verdict", study.verdict().name()).texts("objections", study.objections())
                .whole("conditions", study.conditions()).whole("tried", study.tried()).truth("cleared", study.cleared());
        out.list("remedies");
        for (Remedy one : study.remedies()) {
            remedy(out.item(), one);
            out.end();
        }
        return out.end().texts("missing", study.missing()).bytes();
    }

    private static void remedy(JsonOut out, Remedy one) {
        out.text("id", one.id()).texts("changes", one.changes()).text("verdict", one.verdict().name())
                .truth("pareto", one.pareto()).texts("objections", one.objections()).whole("conditions", one.conditions());
        one.utilisation().ifPresent(used -> out.number("utilisation", used));
        out.number("strengthKept", one.strength()).number("massRatio", one.mass());
        one.addedMass().ifPresent(kilogram -> out.number("addedMassKg", kilogram));
        out.truth("staysInEnvelope", one.fits())
                .texts("factorsRemoved", one.removed().stream().sorted().map(Factor::word).toList())
                .texts("factorsWeakened", one.weakened().stream().sorted().map(Factor::word).toList())
                .texts("clears", one.clears()).texts("raises", one.raises()).texts("leavesOpen", one.leavesOpen())
                .whole("drawings", one.drawings()).whole("processes", one.processes()).texts("agree", one.agree())
                .texts("requalify", one.requalify()).texts("notes", one.notes()).whole("firmness", one.firmness())
                .patch("change", one.patch());
    }
}
