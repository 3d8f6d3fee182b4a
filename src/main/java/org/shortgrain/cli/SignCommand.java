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
import java.util.concurrent.Callable;
import org.shortgrain.report.AtomicFile;
import org.shortgrain.report.pdf.SignatureRole;
import org.shortgrain.report.pdf.Wording;
import org.shortgrain.report.pdf.tagged.Fonts;
import org.shortgrain.signoff.Signer;
import org.shortgrain.signoff.SigningKey;
import org.shortgrain.signoff.SigningRefusedException;
import org.shortgrain.signoff.SigningRequest;
import org.shortgrain.signoff.TimeStampServer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code shortgrain sign}: signs a report in a role. */
@Command(name = "sign", mixinStandardHelpOptions = true, versionProvider = Main.Version.class,
        description = "Signs a report in a role, in the field that it holds ready.",
        footer = {"", "The password of the key is asked for, or taken from --password-file or the environment variable"
            + " SHORTGRAIN_KEY_PASSWORD; never from the command line, where others could read it."})
final class SignCommand implements Callable<Integer> {

    private static final String PASSWORD_VARIABLE = "SHORTGRAIN_KEY_PASSWORD";
    private static final String SERVER_VARIABLE = "SHORTGRAIN_TIME_STAMP_SERVER";

    @Spec
    private CommandSpec command;

    @Parameters(index = "0", paramLabel = "REPORT.pdf", description = "A report that shortgrain review wrote.")
    private Path report;

    @Option(names = "--key", required = true, paramLabel = "K.p12", description = "Your key and certificate, a PKCS #12"
            + " file.")
    private Path key;

    @Option(names = "--role", required = true, paramLabel = "ROLE", description = "Your role: ${COMPLETION-CANDIDATES};"
            + " signed in this order.")
    private SignatureRole role;

    @Option(names = "--name", paramLabel = "NAME", description = "Your name as printed; by default the common name in the"
            + " certificate.")
    private String name;

    @Option(names = "--organisation", paramLabel = "NAME", description = "Your organisation; by default the one in the"
            + " certificate.")
    private String organisation;

    @Option(names = "--statement", paramLabel = "TEXT", description = "What your signature states; by default the"
            + " sentence beside the field.")
    private String statement;

    @Option(names = "--alias", paramLabel = "ALIAS", description = "Which key, where the file holds several.")
    private String alias;

    @Option(names = "--password-file", paramLabel = "FILE", description = "A file whose first line is the password of the"
            + " key.")
    private Path passwordFile;

    @Option(names = "--time-stamp", paramLabel = "URL", description = "A time-stamp server (RFC 3161), for level B-T; by"
            + " default the environment variable SHORTGRAIN_TIME_STAMP_SERVER, else none and level B-B.")
    private String timeStamp;

    @Option(names = "--out", paramLabel = "FILE", description = "Where the signed report goes; by default in place of the"
            + " unsigned one.")
    private Path out;

    @Override
    public Integer call() {
        byte[] unsigned = InputFile.read(report, "report");
        byte[] store = InputFile.read(key, "key");
        WithdrawalFile withdrawals = WithdrawalFile.beside(report);
        char[] password = password();
        try (SigningKey opened = SigningKey.open(store, password, Optional.ofNullable(alias)); Fonts fonts = Fonts.load()) {
            Wording wording = Wording.shipped();
            SigningRequest request = new SigningRequest(role, name != null ? name : opened.commonName(),
                    organisation != null ? organisation : opened.organisation(),
                    statement != null ? statement : role.meaning(wording), ZonedDateTime.now(), server());
            byte[] signed = new Signer(wording, fonts).sign(unsigned, opened, request, withdrawals.withdrawals());
            Path target = out != null ? out : report;
            AtomicFile.write(target, to -> to.write(signed));
            say(request, opened, target);
            return ExitCode.OK.code();
        } catch (SigningRefusedException refused) {
            throw new CommandFailure(code(refused.reason()), report + " was not signed: " + refused.getMessage());
        } catch (IOException cannotWrite) {
            throw new CommandFailure(ExitCode.CANNOT_WRITE, "cannot write " + (out != null ? out : report) + ": "
                    + cannotWrite.getMessage() + "; " + report + " is as it was");
        } finally {
            Arrays.fill(password, '\0');
        }
    }

    private void say(SigningRequest request, SigningKey opened, Path target) {
        PrintWriter console = command.commandLine().getOut();
        console.println("Signed as " + role + " by " + request.name() + ", "
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
            return Optional.ofNullable(timeStamp != null ? timeStamp : configured).filter(text -> !text.isBlank())
                    .map(URI::create).map(TimeStampServer::new);
        } catch (IllegalArgumentException noAddress) {
            throw new CommandFailure(ExitCode.USAGE, "the address of the time-stamp server cannot be read: "
                    + noAddress.getMessage());
        }
    }

    private char[] password() {
        if (passwordFile != null) {
            try (var lines = Files.lines(passwordFile)) {
                return lines.findFirst().orElse("").toCharArray();
            } catch (IOException | java.io.UncheckedIOException unreadable) {
                throw new CommandFailure(ExitCode.INPUT_MISSING, "the password file " + passwordFile + " cannot be read: "
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
        char[] typed = console.readPassword("Password of %s: ", key);
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
