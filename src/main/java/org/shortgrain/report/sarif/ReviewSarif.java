package org.shortgrain.report.sarif;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shortgrain.part.Location;
import org.shortgrain.report.json.JsonOut;
import org.shortgrain.review.Answer;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Grade;
import org.shortgrain.review.Question;
import org.shortgrain.review.Review;
import org.shortgrain.review.RuleUse;
import org.shortgrain.terms.Citation;

/**
 * Writes a review as one SARIF run.
 *
 * <p>A finding is a result of kind {@code fail}, with level {@code error} for an objection, {@code warning} for a condition
 * and {@code note} for advice. What cannot be judged is of kind {@code open}, which takes level {@code none} (clauses
 * 3.27.9 and 3.27.10). Fingerprints hold neither numbers nor lines (clause 3.27.16), so that a result is known again when
 * the description grows.
 */
public final class ReviewSarif {

    private static final String SCHEMA =
            "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";
    private static final String MINIMUM = "MINIMUM-SET";

    private final Review review;
    private final JsonOut out;
    private final String uri;
    private final List<String> rules = new ArrayList<>();
    private final Fingerprints fingerprints;

    private ReviewSarif(Review review, JsonOut out) {
        this.review = review;
        this.out = out;
        this.uri = URLEncoder.encode(review.input().file(), StandardCharsets.UTF_8).replace("+", "%20");
        this.fingerprints = new Fingerprints(review.part().number());
    }

    /**
     * {@return the bytes of a review as SARIF, UTF-8}
     *
     * @param review the review
     */
    public static byte[] bytes(Review review) {
        return new ReviewSarif(review, new JsonOut()).written();
    }

    private byte[] written() {
        out.text("$schema", SCHEMA).text("version", "2.1.0").list("runs").item();
        tool();
        input();
        results();
        out.object("properties").text("verdict", review.verdict().name()).texts("because", review.because())
                .text("contentHash", review.contentHash()).end();
        return out.end().end().bytes();
    }

    private void tool() {
        out.object("tool").object("driver").text("name", "Shortgrain").text("version", review.tool().version());
        out.list("rules").item().text("id", MINIMUM);
        message("shortDescription", "A field of the minimum set of a description holds no answer");
        out.end().end().end();
        out.list("extensions").item();
        rulebook();
        out.end().end().end();
    }

    private void rulebook() {
        out.text("name", "rulebook").text("version", review.rulebook().edition()).list("rules");
        for (Descriptor one : descriptors()) {
            rules.add(one.id());
            out.item().text("id", one.id());
            if (one.title().isPresent()) {
                message("shortDescription", one.title().get());
            }
            if (one.why().isPresent()) {
                message("fullDescription", one.why().get());
            }
            out.end();
        }
        out.end().object("properties").text("sha256", review.rulebook().sha256()).end();
    }

    /** Rules that the review names, each as the first that names it describes it. */
    private Collection<Descriptor> descriptors() {
        Map<String, Descriptor> described = new LinkedHashMap<>();
        for (Finding one : review.findings()) {
            described.putIfAbsent(one.rule(), new Descriptor(one.rule(), Optional.of(one.title()), Optional.of(one.why())));
        }
        for (List<RuleUse> uses : List.of(review.rulesApplied(), review.rulesNotApplicable())) {
            for (RuleUse one : uses) {
                described.putIfAbsent(one.rule(), new Descriptor(one.rule(), Optional.of(one.title()), Optional.empty()));
            }
        }
        for (Question one : review.questions()) {
            if (one.rule().isPresent()) {
                String id = one.rule().get();
                described.putIfAbsent(id, new Descriptor(id, Optional.empty(), Optional.empty()));
            }
        }
        return described.values();
    }

    private record Descriptor(String id, Optional<String> title, Optional<String> why) {
    }

    private void input() {
        out.object("automationDetails").text("id", review.part().number() + "/" + review.part().revision()).end();
        out.list("invocations").item().truth("executionSuccessful", true).end().end();
        out.list("artifacts").item().object("location").text("uri", uri).end();
        out.texts("roles", List.of("analysisTarget"));
        out.object("hashes").text("sha-256", review.input().sha256()).end().end().end();
        out.text("columnKind", "unicodeCodePoints");
    }

    private void results() {
        out.list("results");
        for (Finding finding : review.findings()) {
            finding(finding);
        }
        for (Question question : review.questions()) {
            question(question);
        }
        out.end();
    }

    private void finding(Finding finding) {
        out.item();
        rule(Optional.of(finding.rule()));
        out.text("kind", finding.grade() == Grade.QUESTION ? "open" : "fail").text("level", level(finding.grade()));
        message("message", finding.statement());
        locations(finding.at(), finding.feature());
        fingerprint(List.of(finding.rule(), finding.feature().orElse("")));
        out.object("properties").text("number", finding.id()).text("grade", finding.grade().word())
                .text("factor", finding.factor().word()).texts("evidence", finding.evidence())
                .texts("remedies", finding.remedies()).texts("foldedIn", finding.foldedIn())
                .texts("sources", sources(finding)).truth("needsConfirmation", finding.needsConfirmation()).end();
        out.end();
    }

    private static List<String> sources(Finding finding) {
        List<String> sources = new ArrayList<>();
        for (Citation source : finding.sources()) {
            sources.add(source.id() + ", " + source.clause() + " (" + source.status().word() + ")");
        }
        return sources;
    }

    private static String level(Grade grade) {
        return switch (grade) {
            case OBJECTION -> "error";
            case CONDITION -> "warning";
            case ADVICE -> "note";
            case QUESTION -> "none";
        };
    }

    private void question(Question question) {
        out.item();
        rule(question.rule());
        out.text("kind", "open").text("level", "none");
        message("message", question.text() + " " + question.why());
        locations(List.of(question.at()), question.feature());
        fingerprint(List.of(question.rule().orElse(MINIMUM), question.feature().orElse(""),
                question.at().path().replaceAll("/\\d+(?=/|$)", "/*")));
        List<String> answers = new ArrayList<>();
        for (Answer answer : question.answers()) {
            answers.add(answer.says());
        }
        out.object("properties").text("number", question.id()).text("factor", question.factor().word())
                .truth("decisive", question.decisive()).texts("answers", answers).end();
        out.end();
    }

    /** Rules of the rulebook lie in its component; what the minimum set asks is the tool's own. */
    private void rule(Optional<String> rule) {
        String id = rule.orElse(MINIMUM);
        out.text("ruleId", id).object("rule").text("id", id).whole("index", rule.isPresent() ? rules.indexOf(id) : 0);
        if (rule.isPresent()) {
            out.object("toolComponent").whole("index", 0).end();
        }
        out.end();
    }

    private void message(String key, String text) {
        out.object(key).text("text", text).end();
    }

    private void locations(List<Location> places, Optional<String> feature) {
        out.list("locations");
        for (Location at : places) {
            out.item().object("physicalLocation");
            out.object("artifactLocation").text("uri", uri).whole("index", 0).end();
            if (at.line() > 0) {
                out.object("region").whole("startLine", at.line()).whole("startColumn", at.column()).end();
            }
            out.end().list("logicalLocations").item().text("name", feature).text("fullyQualifiedName", at.path()).end().end();
            out.end();
        }
        out.end();
    }

    private void fingerprint(List<String> identity) {
        out.object("fingerprints").text(Fingerprints.NAME, fingerprints.next(identity)).end();
    }
}
