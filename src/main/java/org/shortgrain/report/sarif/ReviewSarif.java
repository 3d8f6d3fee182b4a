package org.shortgrain.report.sarif;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.shortgrain.part.Location;
import org.shortgrain.report.json.JsonOut;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Grade;
import org.shortgrain.review.Question;
import org.shortgrain.review.Review;

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
    private final List<String> rules = new ArrayList<>();
    private final Fingerprints fingerprints;

    private ReviewSarif(Review review, JsonOut out) {
        this.review = review;
        this.out = out;
        this.fingerprints = new Fingerprints(review.part().number());
    }

    /**
     * {@return the bytes of a review as SARIF, UTF-8}
     *
     * @param review the review
     */
    public static byte[] bytes(Review review) {
        return JsonOut.bytes(out -> new ReviewSarif(review, out).write());
    }

    private void write() {
        out.text("$schema", SCHEMA).text("version", "2.1.0");
        out.objects("runs", List.of(review), one -> run());
    }

    private void run() {
        out.object("tool", () -> {
            out.object("driver", this::driver);
            out.objects("extensions", List.of(review.rulebook()), one -> rulebook());
        });
        out.object("automationDetails", () -> out.text("id", review.part().number() + "/" + review.part().revision()));
        out.objects("invocations", List.of(review), one -> out.truth("executionSuccessful", true));
        out.objects("artifacts", List.of(review.input()), input -> {
            out.object("location", () -> out.text("uri", uri()));
            out.texts("roles", List.of("analysisTarget"));
            out.object("hashes", () -> out.text("sha-256", input.sha256()));
        });
        out.text("columnKind", "unicodeCodePoints");
        Stream<Result> findings = review.findings().stream().map(Result::of);
        Stream<Result> questions = review.questions().stream().map(Result::of);
        out.objects("results", Stream.concat(findings, questions).toList(), this::result);
        out.object("properties", () -> out.text("verdict", review.verdict().name())
                .texts("because", review.because()).text("contentHash", review.contentHash()));
    }

    private void driver() {
        out.text("name", "Shortgrain").text("version", review.tool().version());
        out.objects("rules", List.of(MINIMUM), id -> out.text("id", id).object("shortDescription",
                () -> out.text("text", "A field of the minimum set of a description holds no answer")));
    }

    private void rulebook() {
        out.text("name", "rulebook").text("version", review.rulebook().edition());
        Map<String, Descriptor> described = new LinkedHashMap<>();
        review.findings().forEach(one -> described.putIfAbsent(one.rule(),
                new Descriptor(one.rule(), Optional.of(one.title()), Optional.of(one.why()))));
        Stream.concat(review.rulesApplied().stream(), review.rulesNotApplicable().stream())
                .forEach(one -> described.putIfAbsent(one.rule(),
                        new Descriptor(one.rule(), Optional.of(one.title()), Optional.empty())));
        review.questions().stream().flatMap(one -> one.rule().stream())
                .forEach(id -> described.putIfAbsent(id, new Descriptor(id, Optional.empty(), Optional.empty())));
        rules.addAll(described.keySet());
        out.objects("rules", described.values(), one -> {
            out.text("id", one.id());
            one.title().ifPresent(text -> out.object("shortDescription", () -> out.text("text", text)));
            one.why().ifPresent(text -> out.object("fullDescription", () -> out.text("text", text)));
        });
        out.object("properties", () -> out.text("sha256", review.rulebook().sha256()));
    }

    private record Descriptor(String id, Optional<String> title, Optional<String> why) {
    }

    private void result(Result result) {
        out.text("ruleId", result.rule().orElse(MINIMUM));
        out.object("rule", () -> {
            out.text("id", result.rule().orElse(MINIMUM))
                    .whole("index", result.rule().map(rules::indexOf).orElse(0));
            result.rule().ifPresent(id -> out.object("toolComponent", () -> out.whole("index", 0)));
        });
        out.text("kind", result.kind()).text("level", result.level());
        out.object("message", () -> out.text("text", result.message()));
        out.objects("locations", result.at(), at -> location(at, result.feature()));
        out.object("fingerprints", () -> out.text(Fingerprints.NAME, fingerprints.next(result.identity())));
        out.object("properties", () -> result.properties().accept(out));
    }

    private void location(Location at, Optional<String> feature) {
        out.object("physicalLocation", () -> {
            out.object("artifactLocation", () -> out.text("uri", uri()).whole("index", 0));
            if (at.line() > 0) {
                out.object("region", () -> out.whole("startLine", at.line()).whole("startColumn", at.column()));
            }
        });
        out.objects("logicalLocations", List.of(at), one -> out.text("name", feature)
                .text("fullyQualifiedName", one.path()));
    }

    private String uri() {
        return URLEncoder.encode(review.input().file(), StandardCharsets.UTF_8).replace("+", "%20");
    }

    /** What a finding and a question have in common in SARIF. */
    private record Result(Optional<String> rule, String kind, String level, String message, Optional<String> feature,
            List<Location> at, List<String> identity, Consumer<JsonOut> properties) {

        static Result of(Finding finding) {
            boolean open = finding.grade() == Grade.QUESTION;
            return new Result(Optional.of(finding.rule()), open ? "open" : "fail", level(finding.grade()),
                    finding.statement(), finding.feature(), finding.at(),
                    List.of(finding.rule(), finding.feature().orElse("")),
                    out -> out.text("number", finding.id()).text("grade", finding.grade().word())
                            .text("factor", finding.factor().word()).texts("evidence", finding.evidence())
                            .texts("remedies", finding.remedies()).texts("foldedIn", finding.foldedIn())
                            .texts("sources", finding.sources().stream().map(source -> source.id() + ", "
                                    + source.clause() + " (" + source.status().word() + ")").toList())
                            .truth("needsConfirmation", finding.needsConfirmation()));
        }

        static Result of(Question question) {
            return new Result(question.rule(), "open", "none", question.text() + " " + question.why(),
                    question.feature(), List.of(question.at()),
                    List.of(question.rule().orElse(MINIMUM), question.feature().orElse(""),
                            question.at().path().replaceAll("/\\d+(?=/|$)", "/*")),
                    out -> out.text("number", question.id()).text("factor", question.factor().word())
                            .truth("decisive", question.decisive()).texts("answers", question.answers().stream().map(org.shortgrain.review.Answer::says).toList()));
        }

        private static String level(Grade grade) {
            return switch (grade) {
                case OBJECTION -> "error";
                case CONDITION -> "warning";
                case ADVICE -> "note";
                case QUESTION -> "none";
            };
        }
    }
}
