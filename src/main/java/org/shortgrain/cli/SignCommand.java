package org.shortgrain.cli;

import java.io.Console;
import java.io.IOException;
import java.io.PrintWriter;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.Optional;
import org.shortgrain.report.AtomicFile;
import org.shortgrain.report.pdf.SignatureRole;
import org.shortgrain.report.pdf.Wording;
import org.shortgrain.report.pdf.tagged.Fonts;
import org.shortgrain.signoff.Signer;
import org.shortgrain.signoff.SigningKey;
import org.shortgrain.signoff.SigningRefusedException;
import org.shortgrain.signoff.SigningRequest;
import org.shortgrain.signoff.TimeStampServer;

/** {@code shortgrain sign}: signs a report in a role. */
final class SignCommand extends Command {

    static final String NAME = "sign";

    private static final String PASSWORD_VARIABLE = "SHORTGRAIN_KEY_PASSWORD";
    private static final String SERVER_VARIABLE = "SHORTGRAIN_TIME_STAMP_SERVER";

    private final Argument<Path> report = operand("REPORT.pdf", Path.class, "A report that shortgrain review wrote.");
    private final Argument<Path> key = requiredOption("--key", "K.p12", Path.class,
            "Your key and certificate, a PKCS #12 file.");
    private final Argument<SignatureRole> role = requiredOption("--role", "ROLE", SignatureRole.class,
            "Your role: ${COMPLETION-CANDIDATES}; signed in this order.");
    private final Argument<String> name = option("--name", "NAME", String.class,
            "Your name as printed; by default the common name in the certificate.");
    private final Argument<String> organisation = option("--organisation", "NAME", String.class,
            "Your organisation; by default the one in the certificate.");
    private final Argument<String> statement = option("--statement", "TEXT", String.class,
            "What your signature states; by default the sentence beside the field.");
    private final Argument<String> alias = option("--alias", "ALIAS", String.class,
            "Which key, where the file holds several.");
    private final Argument<Path> passwordFile = option("--password-file", "FILE", Path.class,
            "A file whose first line is the password of the key.");
    private final Argument<String> timeStamp = option("--time-stamp", "URL", String.class,
            "A time-stamp server (RFC 3161), for level B-T; by default the environment variable"
                    + " SHORTGRAIN_TIME_STAMP_SERVER, else none and level B-B.");
    private final Argument<Path> out = option("--out", "FILE", Path.class,
            "Where the signed report goes; by default in place of the unsigned one.");

    SignCommand() {
        super(NAME, "Signs a report in a role, in the field that it holds ready.", "",
                "The password of the key is asked for, or taken from --password-file or the environment variable"
                        + " SHORTGRAIN_KEY_PASSWORD; never from the command line, where others could read it.");
    }

    @Override
    public Integer call() {
        Path target = out.or(report.get());
        byte[] unsigned = InputFile.read(report.get(), "report");
        byte[] store = InputFile.read(key.get(), "key");
        WithdrawalFile withdrawals = WithdrawalFile.beside(report.get());
        char[] password = password();
        try (SigningKey opened = SigningKey.open(store, password, alias.value()); Fonts fonts = Fonts.load()) {
            Wording wording = Wording.shipped();
            SigningRequest request = new SigningRequest(role.get(), name.or(opened.commonName()),
                    organisation.or(opened.organisation()), statement.or(role.get().meaning(wording)), ZonedDateTime.now(),
                    server());
            byte[] signed = new Signer(wording, fonts).sign(unsigned, opened, request, withdrawals.withdrawals());
            AtomicFile.write(target, to -> to.write(signed));
            say(request, opened, target);
            return ExitCode.OK.code();
        } catch (SigningRefusedException refused) {
            throw new CommandFailure(code(refused.reason()), report.get() + " was not signed: " + refused.getMessage());
        } catch (IOException cannotWrite) {
            throw new CommandFailure(ExitCode.CANNOT_WRITE, "cannot write " + target + ": "
                    + cannotWrite.getMessage() + "; " + report.get() + " is as it was");
        } finally {
            Arrays.fill(password, '\0');
        }
    }

    private void say(SigningRequest request, SigningKey opened, Path target) {
        PrintWriter console = console();
        console.println("Signed as " + role.get() + " by " + request.name() + ", "
                + (request.timeStamps().isPresent() ? "PAdES B-T, with a time-stamp from " + request.timeStamps().get()
                        : "PAdES B-B: the time is that of this computer's clock"));
        if (opened.isSelfMade()) {
            console.println("The certificate is self-made: it shows that nothing changed since signing, not who signed.");
        }
        console.println("Report written to " + target);
    }

    private Optional<TimeStampServer> server() {
        String configured = System.getenv(SERVER_VARIABLE);
        try {
            return timeStamp.value().or(() -> Optional.ofNullable(configured)).filter(text -> !text.isBlank())
                    .map(URI::create).map(TimeStampServer::new);
        } catch (IllegalArgumentException noAddress) {
            throw new CommandFailure(ExitCode.USAGE, "the address of the time-stamp server cannot be read: "
                    + noAddress.getMessage());
        }
    }

    private char[] password() {
        if (passwordFile.isStated()) {
            try (var lines = Files.lines(passwordFile.get())) {
                return lines.findFirst().orElse("").toCharArray();
            } catch (IOException | java.io.UncheckedIOException unreadable) {
                throw new CommandFailure(ExitCode.INPUT_MISSING, "the password file " + passwordFile.get() + " cannot be read: "
                        + unreadable.getMessage());
            }
        }
        String variable = System.getenv(PASSWORD_VARIABLE);
        if (variable != null) {
            return variable.toCharArray();
        }
        Console console = System.console();
        if (console == null) {
            throw new CommandFailure(ExitCode.USAGE, "there is no terminal to ask for the password of the key; name a file"
                    + " with --password-file, or set " + PASSWORD_VARIABLE);
        }
        char[] typed = console.readPassword("Password of %s: ", key.get());
        return typed == null ? new char[0] : typed;
    }

    private static ExitCode code(SigningRefusedException.Reason reason) {
        return switch (reason) {
            case KEY, ROLE, TIME_STAMP -> ExitCode.USAGE;
            case NOT_A_REPORT -> ExitCode.INPUT_INVALID;
            case OPEN_FINDINGS -> ExitCode.OBJECTION;
            case CHANGED, WITHDRAWN -> ExitCode.VERIFICATION_FAILED;
        };
    }
}
