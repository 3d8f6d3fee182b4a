package org.shortgrain.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shortgrain.part.Decision;
import org.shortgrain.report.json.ReviewJson;
import org.shortgrain.report.pdf.tagged.Validator;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Review;
import org.shortgrain.signoff.TestKeys;

/** Decisions on findings, and two reviews compared, as a user meets them. */
class FollowUpTest {

    private static final String PART = "strut-end-fitting";

    @TempDir
    Path folder;

    private Path part;
    private Path decisions;

    @BeforeEach
    void copySample() throws IOException {
        part = folder.resolve(PART + ".yaml");
        decisions = folder.resolve(PART + ".findings.yaml");
        Files.copy(Path.of("sample-reviews", PART + ".yaml"), part);
    }

    private CommandRun.Ran review() {
        return CommandRun.run("review", part, "--date", "2026-02-03");
    }

    private Review read() throws Exception {
        return ReviewJson.read(Files.readAllBytes(folder.resolve(PART + ".review.json")));
    }

    private String pdfText() throws IOException {
        try (PDDocument file = Loader.loadPDF(folder.resolve(PART + ".review.pdf").toFile())) {
            return new PDFTextStripper().getText(file).replaceAll("\\s+", " ");
        }
    }

    private static String entry(Finding finding, String rest) {
        return "  " + finding.id() + ": {rule: " + finding.rule() + finding.feature().map(id -> ", feature: " + id).orElse("")
                + ", " + rest + "}\n";
    }

    private String head(Review review) {
        return "part: {number: \"" + review.part().number() + "\", revision: \"" + review.part().revision() + "\"}\nfindings:\n";
    }

    @Test
    void decisionsAreCarriedIntoTheNewIssueShownAndMakeItFitForSigning() throws Exception {
        assertEquals(1, review().code());
        Review open = read();
        StringBuilder text = new StringBuilder(head(open));
        for (Finding one : open.openObjections()) {
            text.append(entry(one, one == open.openObjections().get(0)
                    ? "disposition: rejected_by_reviewer, reason: \"The lug is clamped, not pressed\", by: \"R. Reviewer\", decided: 2026-02-02"
                    : "disposition: redesign, reason: \"New forging\", by: \"R. Reviewer\", owner: \"Design office\", due: 2026-05-01,"
                            + " closure_evidence: \"DWG revision D\", closed_by: \"Q. Quality\", closed_on: 2026-02-03"));
        }
        Files.writeString(decisions, text.toString());
        CommandRun.Ran ran = review();
        assertEquals(1, ran.code(), "a decision does not change the verdict; " + ran.err());
        Review decided = read();
        assertEquals(open.verdict(), decided.verdict());
        assertEquals(List.of(), decided.openObjections());
        assertEquals(Decision.REJECTED_BY_REVIEWER, decided.dispositions().get(0).decision());
        assertFalse(open.contentHash().equals(decided.contentHash()));
        String pdf = pdfText();
        for (String shown : List.of("The lug is clamped, not pressed", "R. Reviewer", "Design office", "due 2026-05-01",
                "Q. Quality, 2026-02-03: DWG revision D", "overruled")) {
            assertTrue(pdf.contains(shown), shown);
        }
        byte[] file = Files.readAllBytes(folder.resolve(PART + ".review.pdf"));
        assertEquals(List.of(), Validator.failures(file, "3a"));
        assertEquals(List.of(), Validator.failures(file, "ua1"));
        Path key = folder.resolve("k.p12");
        Files.write(key, TestKeys.selfMade("Ada Preparer").store());
        Path password = Files.writeString(folder.resolve("password"), TestKeys.PASSWORD + "\n");
        CommandRun.Ran signed = CommandRun.run("sign", folder.resolve(PART + ".review.pdf"), "--key", key, "--role", "prepared",
                "--password-file", password);
        assertEquals(0, signed.code(), signed.err());
        CommandRun.Ran verified = CommandRun.run("verify", folder.resolve(PART + ".review.pdf"));
        assertEquals(0, verified.code(), verified.out());
    }

    @Test
    void faultsInTheFileOfDecisionsAreNamedWithLineAndColumn() throws Exception {
        review();
        Review open = read();
        Finding first = open.findings().get(0);
        Files.writeString(decisions, head(open) + entry(first, "disposition: redesign, by: \"R\"")
                + "  F-98: {rule: X, disposition: redesign, reason: r, by: R}\n");
        CommandRun.Ran noReason = review();
        assertEquals(65, noReason.code());
        assertTrue(noReason.err().contains(".findings.yaml:3:3: reason is missing"), noReason.err());
        Files.writeString(decisions, head(open) + "  F-98: {rule: X, disposition: redesign, reason: r, by: R}\n"
                + "  " + first.id() + ": {rule: X-01, disposition: redsign, reason: r, by: R}\n");
        assertTrue(review().err().contains(":4:35: the word \"redsign\" is not known here"), review().err());
        Files.writeString(decisions, head(open) + "  F-98: {rule: X, disposition: redesign, reason: r, by: R}\n"
                + "  " + first.id() + ": {rule: X-01, disposition: redesign, reason: r, by: R}\n");
        CommandRun.Ran unknown = review();
        assertEquals(65, unknown.code());
        assertTrue(unknown.err().contains(":3:3: F-98 is no finding or question of this review"), unknown.err());
        assertTrue(unknown.err().contains("was decided on as X-01 on the whole part, and is now " + first.rule()), unknown.err());
    }

    @Test
    void decisionsOnAnotherPartAreRefusedUnlessTheFileIsShared() throws Exception {
        Files.writeString(decisions, "part: {number: \"OTHER\"}\nfindings: {}\n");
        CommandRun.Ran own = review();
        assertEquals(65, own.code());
        assertTrue(own.err().contains("these are decisions on OTHER"), own.err());
        Files.move(decisions, folder.resolve("findings.yaml"));
        assertEquals(1, review().code());
    }

    @Test
    void twoReviewsAreComparedInAnyMixAndTheExitCodeSaysWhetherAnythingGotWorse() throws Exception {
        review();
        Path data = folder.resolve(PART + ".review.json");
        Path report = folder.resolve(PART + ".review.pdf");
        CommandRun.Ran same = CommandRun.run("compare", data, report);
        assertEquals(0, same.code(), same.out());
        assertTrue(same.out().endsWith("Same.\n"), same.out());
        Path good = Path.of("sample-reviews/hatch-hinge-arm.yaml");
        CommandRun.Ran worse = CommandRun.run("compare", good, report);
        assertEquals(1, worse.code(), worse.out());
        assertTrue(worse.out().contains("new: F-01 objection"), worse.out());
        assertTrue(worse.out().endsWith("Something got worse.\n"), worse.out());
        CommandRun.Ran better = CommandRun.run("compare", data, good, "--format", "json");
        assertTrue(better.out().contains("\"format\": \"shortgrain-comparison\""), better.out());
        assertTrue(better.out().contains("\"fate\": \"cleared\""), better.out());
        assertEquals(65, CommandRun.run("compare", decisions.resolveSibling("password.txt").toFile().createNewFile()
                ? folder.resolve("password.txt") : data, data).code());
        assertEquals(66, CommandRun.run("compare", folder.resolve("absent.json"), data).code());
    }

    @Test
    void aChangedDatumIsNamedByItsPathWithWhatItMoves() throws Exception {
        review();
        String text = Files.readString(part);
        Path edited = folder.resolve("edited.yaml");
        Files.writeString(edited, text.replaceFirst("temper: \"[^\"]*\"", "temper: \"T7351\""));
        CommandRun.Ran ran = CommandRun.run("compare", folder.resolve(PART + ".review.json"), edited);
        assertTrue(ran.out().contains("/material/temper: "), ran.out());
        assertTrue(ran.out().contains("stands on its own now: "), "what an objection stood for before is not new; " + ran.out());
        CommandRun.Ran report = CommandRun.run("review", edited, "--compared-with", part, "--date", "2026-02-03");
        assertTrue(report.code() == 0 || report.code() == 1 || report.code() == 3, report.err());
        try (PDDocument file = Loader.loadPDF(folder.resolve("edited.review.pdf").toFile())) {
            String pdf = new PDFTextStripper().getText(file).replaceAll("\\s+", " ");
            assertTrue(pdf.contains("Compared with the review of"), pdf.substring(Math.max(0, pdf.length() - 2000)));
            assertTrue(pdf.contains("/material/temper"), pdf);
        }
        assertEquals(List.of(), Validator.failures(Files.readAllBytes(folder.resolve("edited.review.pdf")), "3a"));
        assertEquals(List.of(), Validator.failures(Files.readAllBytes(folder.resolve("edited.review.pdf")), "ua1"));
    }
}
