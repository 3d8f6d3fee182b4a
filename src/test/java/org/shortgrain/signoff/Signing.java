package org.shortgrain.signoff;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.concurrent.ConcurrentHashMap;
import org.shortgrain.cli.CommandRun;
import org.shortgrain.report.pdf.SignatureRole;
import org.shortgrain.report.pdf.Wording;
import org.shortgrain.report.pdf.tagged.Fonts;

/** Reports of the samples, and their signatures, for tests. */
final class Signing {

    /** A sample without objection. */
    static final String GOOD = "hatch-hinge-arm";
    /** A sample with objections. */
    static final String BAD = "strut-end-fitting";

    private static final Map<String, byte[]> REPORTS = new ConcurrentHashMap<>();
    private static final Map<String, byte[]> SIGNED = new ConcurrentHashMap<>();

    private Signing() {
    }

    /** The report of a sample as the tool writes it now. */
    static byte[] report(String sample) {
        return REPORTS.computeIfAbsent(sample, Signing::reviewed);
    }

    /** {@return the report of a sample as the command line writes it with more options} */
    static byte[] reviewed(String sample, String... options) {
        try {
            Path folder = Files.createTempDirectory("shortgrain-test");
            CommandRun.run(Stream.concat(Stream.of("review", "sample-reviews/" + sample + ".yaml", "--out",
                    folder.toString(), "--format", "pdf"), Stream.of(options)).toArray());
            Path file = folder.resolve(sample + ".review.pdf");
            byte[] bytes = Files.readAllBytes(file);
            Files.delete(file);
            Files.delete(folder);
            return bytes;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static SigningRequest request(SignatureRole role, String name) {
        return new SigningRequest(role, name, "Example Structures", role.meaning(Wording.shipped()),
                ZonedDateTime.ofInstant(Instant.now(), ZoneId.of("Europe/Paris")), Optional.empty());
    }

    static byte[] sign(byte[] report, SignatureRole role, String name) throws Exception {
        return sign(report, request(role, name), TestKeys.selfMade(name));
    }

    static byte[] sign(byte[] report, SigningRequest request, TestKeys.Held key) throws Exception {
        try (Fonts fonts = Fonts.load(); SigningKey open = key.open()) {
            return new Signer(Wording.shipped(), fonts).sign(report, open, request, Withdrawals.NONE);
        }
    }

    /** Signs without asking whether it may be signed, as somebody else's tool would. */
    static byte[] signUnasked(byte[] report, SigningRequest request, TestKeys.Held key) throws Exception {
        try (Fonts fonts = Fonts.load(); SigningKey open = key.open()) {
            return new Signer(Wording.shipped(), fonts).signed(ReportFile.of(report), open, request);
        }
    }

    /** The good sample, signed as prepared. */
    static byte[] once() {
        return made("once", report(GOOD), SignatureRole.PREPARED, "Ada Preparer");
    }

    /** The good sample, signed as prepared and checked. */
    static byte[] twice() {
        return made("twice", once(), SignatureRole.CHECKED, "Bo Checker");
    }

    /** The good sample, signed as prepared, checked and approved. */
    static byte[] thrice() {
        return made("thrice", twice(), SignatureRole.APPROVED, "Cy Authority");
    }

    private static byte[] made(String key, byte[] report, SignatureRole role, String name) {
        return SIGNED.computeIfAbsent(key, wanted -> {
            try {
                return sign(report, role, name);
            } catch (Exception failed) {
                throw new IllegalStateException(failed);
            }
        });
    }
}
