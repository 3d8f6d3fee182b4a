package org.shortgrain.cli;

import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.security.cert.CertificateException;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.assessment.Wording;
import org.shortgrain.part.Withdrawal;
import org.shortgrain.review.Review;
import org.shortgrain.signoff.Crossing;
import org.shortgrain.signoff.NotAReportException;
import org.shortgrain.signoff.Replay;
import org.shortgrain.signoff.Replayer;
import org.shortgrain.signoff.ReportText;
import org.shortgrain.signoff.SignatureCheck;
import org.shortgrain.signoff.Verification;
import org.shortgrain.signoff.Verifier;
import org.shortgrain.signoff.Withdrawals;

/** {@code shortgrain verify}: who signed what, whether it is still that, and whether the review comes out again. */
final class VerifyCommand extends Command {

    static final String NAME = "verify";

    private final Argument<Path> report = operand("REPORT.pdf", Path.class, "A signed report.");
    private final Argument<List<Path>> trust = repeatedOption("--trust", "CERT", Path.class,
            "A certificate that you trust, of a signer or an issuer (PEM or DER); may be given several times."
                    + " With it, every signer must lead to one of them.");
    private final Argument<Path> description = option("--description", "PART.yaml", Path.class,
            "The description of the part as it is now: compares description and rulebook, then and now, crosswise.");
    private final Argument<Boolean> signaturesOnly = flag("--signatures-only", "Leave out making the review again.");

    private final RulebookOption rulebook;

    VerifyCommand(Ahead ahead) {
        super(NAME, "Says who signed a report, whether anything changed since, and whether the same review comes out of the"
                        + " files inside it.", "",
                "Ends with 0 if the report is signed, unchanged and makes the same review again; with 4 if not.");
        rulebook = new RulebookOption(this, ahead);
    }

    @Override
    public Integer call() {
        PrintWriter console = console();
        byte[] file = InputFile.read(report.get(), "report");
        WithdrawalFile withdrawals = WithdrawalFile.beside(report.get());
        List<X509Certificate> trusted = trust.or(List.of()).stream().map(VerifyCommand::certificate).toList();
        Verification found = new Verifier(trusted).verify(file);
        List<String> faults = new ArrayList<>(found.faults());
        try {
            Review review = ReportText.review(file);
            console.print(ReportText.head(file));
            console.print(ReportText.signatures(found));
            console.print(ReportText.contents(file));
            Optional<Withdrawal> withdrawn = withdrawals.withdrawals().of(review.contentHash());
            withdrawn.map(Withdrawals::text).ifPresent(text -> {
                console.println("This issue was " + text);
                faults.add("the issue was withdrawn");
            });
            if (!trusted.isEmpty() && !found.signatures().stream()
                    .allMatch(one -> one.identity() == SignatureCheck.Identity.TRUSTED)) {
                faults.add("a signer does not lead to a certificate that you trust");
            }
            if (!signaturesOnly.or(false)) {
                replay(file, review, faults, console);
            }
        } catch (NotAReportException other) {
            console.print(ReportText.signatures(found));
        }
        console.println(faults.isEmpty() ? "Result: " + good(found)
                : "Result: NOT VERIFIED: " + String.join("; ", faults));
        return (faults.isEmpty() ? ExitCode.OK : ExitCode.VERIFICATION_FAILED).code();
    }

    private String good(Verification found) {
        boolean proven = found.signatures().stream()
                .allMatch(one -> one.identity() == SignatureCheck.Identity.TRUSTED);
        return "unchanged since it was signed" + (proven ? ", by signers that you trust"
                : "; who signed is not proven (name the certificates that you trust with --trust)")
                + (signaturesOnly.or(false) ? "" : "; the review comes out the same again");
    }

    private void replay(byte[] file, Review review, List<String> faults, PrintWriter console) throws NotAReportException {
        Wording wording = Wording.shipped();
        Replayer shipped = new Replayer(Knowledge.shipped(), wording, Main.Version.text());
        Replay replay = shipped.replay(file);
        Optional<Replayer> named = Optional.empty();
        if (rulebook.isNamed()) {
            named = Optional.of(new Replayer(rulebook.knowledge(), wording, Main.Version.text()));
            Replay other = named.get().replay(file);
            replay = other.sameRulebook() || !replay.sameRulebook() ? other : replay;
        }
        console.print(replay.text());
        if (!replay.isSame()) {
            faults.add(replay.sameRulebook() ? "the review does not come out the same again"
                    : "the review was not made again, since the rulebook that judged is not at hand");
        }
        if (description.isStated() || named.isPresent()) {
            Optional<Replayer> then = of(review, shipped, named, true);
            Optional<Replayer> now = of(review, shipped, named, false);
            crossing(review, file, then, now, console);
        }
    }

    private static Optional<Replayer> of(Review review, Replayer shipped, Optional<Replayer> named, boolean then) {
        return java.util.stream.Stream.concat(named.stream(), java.util.stream.Stream.of(shipped))
                .filter(one -> one.isRulebookOf(review) == then).findFirst();
    }

    private void crossing(Review review, byte[] file, Optional<Replayer> then, Optional<Replayer> now, PrintWriter console)
            throws NotAReportException {
        Optional<byte[]> attached = Replayer.description(file);
        Optional<byte[]> fresh = description.value().map(path -> InputFile.read(path, "description"));
        String name = description.value().map(path -> path.getFileName().toString()).orElse("");
        Optional<Review> byRules = now.flatMap(one -> attached.map(bytes -> review(one, review, review.input().file(), bytes)));
        Optional<Review> byDesign = then.flatMap(one -> fresh.map(bytes -> review(one, review, name, bytes)));
        Optional<Review> byBoth = now.flatMap(one -> fresh.map(bytes -> review(one, review, name, bytes)));
        console.println();
        console.print(new Crossing(review, byRules, byDesign, byBoth).text());
    }

    private static Review review(Replayer replayer, Review recorded, String name, byte[] description) {
        try {
            return replayer.review(recorded, name, description);
        } catch (Replayer.UnreadableDescriptionException unreadable) {
            throw new CommandFailure(ExitCode.INPUT_INVALID, unreadable.getMessage());
        }
    }

    private static X509Certificate certificate(Path file) {
        try {
            return (X509Certificate) CertificateFactory.getInstance("X.509")
                    .generateCertificate(new ByteArrayInputStream(InputFile.read(file, "certificate")));
        } catch (CertificateException none) {
            throw new CommandFailure(ExitCode.INPUT_INVALID, file + " is no certificate (X.509, PEM or DER)");
        }
    }
}
