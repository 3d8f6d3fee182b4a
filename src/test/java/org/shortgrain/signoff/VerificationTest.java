package org.shortgrain.signoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eu.europa.esig.dss.diagnostic.SignatureWrapper;
import eu.europa.esig.dss.model.InMemoryDocument;
import eu.europa.esig.dss.pades.validation.PDFDocumentValidator;
import eu.europa.esig.dss.spi.validation.CommonCertificateVerifier;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.shortgrain.report.pdf.SignatureRole;

/**
 * What is found of signed files that were left alone, and of files that were not. The library that validates and
 * poppler's {@code pdfsig}, an independent program, are asked beside our own words; where pdfsig is not installed, its
 * tests are skipped and say so.
 */
class VerificationTest {

    /** Byte order of a hexadecimal signature in the file: after this key. */
    private static final byte[] CONTENTS = "/Contents <".getBytes(StandardCharsets.US_ASCII);

    private static Verification verified(byte[] file) {
        return new Verifier(List.of()).verify(file);
    }

    private static void assertFault(String words, byte[] file) {
        Verification found = verified(file);
        assertFalse(found.isIntact());
        assertTrue(found.faults().stream().anyMatch(fault -> fault.contains(words)), found.faults().toString());
    }

    /** Whether the library finds every signature intact, and nothing appended or changed. */
    private static boolean libraryFindsIntact(byte[] file) {
        CommonCertificateVerifier offline = new CommonCertificateVerifier();
        offline.setAIASource(null);
        PDFDocumentValidator validator = new PDFDocumentValidator(new InMemoryDocument(file));
        validator.setCertificateVerifier(offline);
        List<SignatureWrapper> signatures = validator.validateDocument().getDiagnosticData().getSignatures();
        return !signatures.isEmpty() && signatures.stream().allMatch(SignatureWrapper::isSignatureIntact)
                && signatures.stream().allMatch(one -> one.getDigestMatchers().stream().allMatch(digest -> digest.isDataIntact()));
    }

    /** What pdfsig prints of each signature. */
    private static String pdfsig(byte[] file) throws IOException, InterruptedException {
        Path path = Files.createTempFile("shortgrain", ".pdf");
        try {
            Files.write(path, file);
            Process process = new ProcessBuilder("pdfsig", "-nocert", path.toString()).redirectErrorStream(true).start();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            process.waitFor(1, TimeUnit.MINUTES);
            return said;
        } catch (IOException absent) {
            Assumptions.abort("pdfsig (poppler-utils) is not installed; its check is skipped");
            return "";
        } finally {
            Files.delete(path);
        }
    }

    private static int count(String text, String words) {
        return text.split(java.util.regex.Pattern.quote(words), -1).length - 1;
    }

    @Test
    void pdfsigFindsOneSignatureValidOverTheWholeFile() throws Exception {
        String said = pdfsig(Signing.once());
        assertEquals(1, count(said, "Signature is Valid."), said);
        assertEquals(1, count(said, "- Total document signed"), said);
        assertTrue(libraryFindsIntact(Signing.once()) && verified(Signing.once()).isIntact());
    }

    @Test
    void pdfsigFindsThreeSignaturesValidTheLastOverTheWholeFile() throws Exception {
        String said = pdfsig(Signing.thrice());
        assertEquals(3, count(said, "Signature is Valid."), said);
        assertEquals(1, count(said, "- Total document signed"), said);
        assertTrue(libraryFindsIntact(Signing.thrice()) && verified(Signing.thrice()).isIntact());
    }

    @Test
    void aByteFlippedInAnyRevisionIsFoundByAllThree() throws Exception {
        int[] ends = {Signing.once().length, Signing.twice().length, Signing.thrice().length};
        int begin = 0;
        for (int i = 0; i < ends.length; i++) {
            byte[] file = Signing.thrice().clone();
            // inside the first object of the revision, past the text in which pdf readers find their way
            int at = begin + (i == 0 ? 3000 : 60);
            file[at] ^= 0x01;
            assertFalse(verified(file).isIntact(), "revision " + (i + 1));
            String said = pdfsig(file);
            int valid = count(said, "Signature is Valid.");
            assertTrue(valid <= i, "revision " + (i + 1) + ": " + said);
            boolean library;
            try {
                library = libraryFindsIntact(file);
            } catch (RuntimeException unreadable) {
                library = false;
            }
            assertFalse(library, "revision " + (i + 1));
            begin = ends[i];
        }
    }

    @Test
    void anAppendedObjectIsFound() throws Exception {
        byte[] file = Tampering.withNote(Signing.thrice());
        assertFault("bytes were appended after the last signature", file);
        assertEquals(0, count(pdfsig(file), "- Total document signed"));
    }

    @Test
    void wordsDrawnOverAPageAreFoundEvenUnderALaterSignature() throws Exception {
        byte[] file = Signing.signUnasked(Tampering.withWordsOnThePage(Signing.once()),
                Signing.request(SignatureRole.CHECKED, "Bo Checker"), TestKeys.selfMade("Bo Checker"));
        assertFault("prepared: later updates of the file change more than signing does", file);
        byte[] note = Signing.signUnasked(Tampering.withNote(Signing.once()),
                Signing.request(SignatureRole.CHECKED, "Bo Checker"), TestKeys.selfMade("Bo Checker"));
        assertFault("prepared: later updates of the file change more than signing does", note);
    }

    @Test
    void anAppearanceDrawnAnewIsFound() throws Exception {
        byte[] file = Tampering.withAnotherName(Signing.thrice(), "sigPrepared");
        assertFault("what is seen of the signature was redrawn", file);
    }

    @Test
    void aSwappedAttachmentIsFound() throws Exception {
        byte[] file = Tampering.withAttachment(Signing.thrice(), Signing.GOOD + ".yaml", "schema: 1\n");
        assertFault("is not the description that was reviewed", file);
        assertFault("bytes were appended after the last signature", file);
        assertEquals(0, count(pdfsig(file), "- Total document signed"));
    }

    @Test
    void aStrippedSignatureIsFound() throws Exception {
        byte[] file = Tampering.without(Signing.once(), "sigPrepared");
        assertFault("the report is not signed", file);
        assertEquals(0, count(pdfsig(file), "Signature is Valid."));
        byte[] middle = Tampering.without(Signing.thrice(), "sigChecked");
        assertFalse(verified(middle).isIntact());
        assertFault("the report is not signed", Signing.report(Signing.GOOD));
    }

    @Test
    void aCertificateThatWasNotInForceIsFoundAndOneThatExpiredSinceIsNoted() throws Exception {
        Instant now = Instant.now();
        TestKeys.Held key = TestKeys.selfMade("Ex Pired", now.minus(40, ChronoUnit.DAYS), now.minus(10, ChronoUnit.DAYS),
                KeyUsage.digitalSignature);
        SigningRequest request = Signing.request(SignatureRole.PREPARED, "Ex Pired");
        SigningRequest inForce = new SigningRequest(request.role(), request.name(), request.organisation(),
                request.statement(), ZonedDateTime.ofInstant(now.minus(20, ChronoUnit.DAYS), ZoneOffset.UTC), Optional.empty());
        Verification found = verified(Signing.sign(Signing.report(Signing.GOOD), inForce, key));
        assertEquals(List.of(), found.faults());
        assertTrue(found.signatures().get(0).notes().get(0).contains("expired on"), found.signatures().get(0).notes().toString());
        assertTrue(found.signatures().get(0).notes().get(0).contains("rests on the signer's clock"));
        byte[] late = Signing.signUnasked(Signing.report(Signing.GOOD), request, key);
        assertFault("the certificate was not in force when it was signed", late);
        assertEquals(1, count(pdfsig(late), "Signature is Valid."), "pdfsig looks at the certificate apart from the signature");
    }

    @Test
    void anUnknownRootIsIntactButProvesNobody() {
        SignatureCheck unknown = verified(Signing.once()).signatures().get(0);
        assertTrue(unknown.isIntact());
        assertEquals("signer not proven: the certificate is self-made", unknown.identity().words());
        Verification trusted = new Verifier(TestKeys.certificates(TestKeys.selfMade("Ada Preparer"),
                TestKeys.selfMade("Bo Checker"), TestKeys.selfMade("Cy Authority"))).verify(Signing.thrice());
        assertEquals(List.of(), trusted.faults());
        assertTrue(trusted.signatures().stream().allMatch(one -> one.identity() == SignatureCheck.Identity.TRUSTED));
    }

    @Test
    void noneOfAHundredRandomBytesChangesUnnoticed() {
        Random random = new Random(20260715);
        for (int i = 0; i < 100; i++) {
            byte[] file = List.of(Signing.once(), Signing.twice(), Signing.thrice()).get(i % 3);
            int at = random.nextInt(file.length);
            byte[] changed = file.clone();
            changed[at] ^= (byte) (1 + random.nextInt(255));
            assertFalse(verified(changed).isIntact(), "byte " + at + " changed from " + file[at] + " to " + changed[at]);
        }
    }

    /** The signature itself is the one stretch that no signature covers; half of the draws would miss it. */
    @Test
    void noneOfSixtyBytesOfTheLastSignatureChangesUnnoticed() {
        byte[] file = Signing.once();
        int from = indexOf(file, CONTENTS) + CONTENTS.length;
        Random random = new Random(20260716);
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            places.add(from + random.nextInt(2800));
        }
        for (int i = 0; i < 20; i++) {
            places.add(from + 2800 + random.nextInt(29_000));
        }
        for (int at : places) {
            byte[] changed = file.clone();
            // half of the time a small letter for a capital or the other way round, which most readers forgive
            changed[at] ^= random.nextBoolean() ? 0x20 : (byte) (1 + random.nextInt(255));
            assertFalse(verified(changed).isIntact(), "byte " + at + " changed from " + file[at] + " to " + changed[at]);
        }
    }

    @Test
    void aFileCutShortIsNotIntact() {
        byte[] file = Signing.once();
        for (int length : new int[] {0, 4, 100, file.length / 2, file.length - 40_000, file.length - 1}) {
            assertFalse(verified(Arrays.copyOf(file, length)).isIntact(), "cut to " + length);
        }
    }

    private static int indexOf(byte[] text, byte[] wanted) {
        for (int i = 0; i + wanted.length <= text.length; i++) {
            if (Arrays.equals(text, i, i + wanted.length, wanted, 0, wanted.length)) {
                return i;
            }
        }
        throw new AssertionError("no signature in the file");
    }
}
