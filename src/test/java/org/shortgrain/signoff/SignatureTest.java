package org.shortgrain.signoff;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.junit.jupiter.api.Test;
import org.shortgrain.part.Location;
import org.shortgrain.part.Withdrawal;
import org.shortgrain.report.pdf.SignatureRole;
import org.shortgrain.report.pdf.Wording;
import org.shortgrain.report.pdf.tagged.Fonts;
import org.shortgrain.report.pdf.tagged.Validator;
import org.shortgrain.signoff.SigningRefusedException.Reason;

/** Signing: what is made, and what is refused. */
class SignatureTest {

    @Test
    void oneSignatureCertifiesTheReportAndCoversTheWholeFile() {
        Verification found = new Verifier(List.of()).verify(Signing.once());
        assertEquals(List.of(), found.faults());
        SignatureCheck one = found.signatures().get(0);
        assertTrue(one.certifies() && one.wholeFile());
        assertEquals("Ada Preparer", one.name());
        assertEquals("Example Structures", one.organisation());
        assertEquals("PAdES-BASELINE-B", one.level());
        assertEquals(SignatureCheck.Identity.SELF_MADE, one.identity());
        assertEquals(5, found.open().size());
    }

    @Test
    void threeSignaturesInTurnVerifyAndEachCoversWhatItsSignerSaw() {
        Verification found = new Verifier(List.of()).verify(Signing.thrice());
        assertEquals(List.of(), found.faults());
        assertEquals(List.of("prepared", "checked", "approved"),
                found.signatures().stream().map(one -> one.role().orElseThrow().word()).toList());
        assertEquals(List.of(false, false, true), found.signatures().stream().map(SignatureCheck::wholeFile).toList());
        assertArrayEquals(Signing.once(), Arrays.copyOf(Signing.thrice(), Signing.once().length));
    }

    @Test
    void theReportStaysPdfAAndPdfUaAfterThreeSignatures() throws Exception {
        assertEquals(List.of(), Validator.failures(Signing.thrice(), "3a"));
        assertEquals(List.of(), Validator.failures(Signing.thrice(), "ua1"));
    }

    @Test
    void whatIsSeenOfASignatureSaysWhoForWhomWhenInWhichRoleAndByWhichCertificate() throws Exception {
        try (PDDocument file = Loader.loadPDF(Signing.once())) {
            file.getDocumentCatalog().getAcroForm().flatten();
            String text = new PDFTextStripper().getText(file).replaceAll("\\s+", "");
            for (String seen : List.of("Ada Preparer", "Example Structures",
                    "Prepared: I ran the review and own the description", "(signer's clock)", "PAdES B-B",
                    Subject.fingerprint(TestKeys.selfMade("Ada Preparer").certificate()))) {
                assertTrue(text.contains(seen.replace(" ", "")), seen);
            }
        }
    }

    @Test
    void anEllipticKeyOfAnIssuerSignsToo() throws Exception {
        TestKeys.Held key = TestKeys.issued("Eli Curve", "EC", false);
        byte[] signed = Signing.sign(Signing.report(Signing.GOOD), Signing.request(SignatureRole.PREPARED, "Eli Curve"), key);
        Verification unknown = new Verifier(List.of()).verify(signed);
        assertEquals(List.of(), unknown.faults());
        assertEquals(SignatureCheck.Identity.UNKNOWN_ISSUER, unknown.signatures().get(0).identity());
        Verification trusted = new Verifier(List.of(key.chain().get(1))).verify(signed);
        assertEquals(List.of(), trusted.faults());
        assertEquals(SignatureCheck.Identity.TRUSTED, trusted.signatures().get(0).identity());
    }

    private static SigningRefusedException refused(byte[] report, SigningRequest request, TestKeys.Held key) {
        return assertThrows(SigningRefusedException.class, () -> Signing.sign(report, request, key));
    }

    private static void assertRefused(Reason reason, String words, SigningRefusedException refused) {
        assertEquals(reason, refused.reason(), refused.getMessage());
        assertTrue(refused.getMessage().contains(words), refused.getMessage());
        assertFalse(refused.getMessage().contains("\n"), refused.getMessage());
    }

    @Test
    void makerAndCheckerMustDifferByCertificateAndByName() {
        TestKeys.Held ada = TestKeys.selfMade("Ada Preparer");
        assertRefused(Reason.ROLE, "this very certificate",
                refused(Signing.once(), Signing.request(SignatureRole.CHECKED, "Somebody Else"), ada));
        assertRefused(Reason.ROLE, "prepared by Ada Preparer", refused(Signing.once(),
                Signing.request(SignatureRole.CHECKED, " ada  PREPARER"), TestKeys.selfMade("Second Key")));
    }

    @Test
    void aDraftIsNotSigned() {
        assertRefused(Reason.ROLE, "it is a draft", refused(Signing.reviewed(Signing.GOOD, "--draft"),
                Signing.request(SignatureRole.PREPARED, "Ada Preparer"), TestKeys.selfMade("Ada Preparer")));
    }

    @Test
    void rolesAreSignedOnceAndInTheirOrder() {
        TestKeys.Held bo = TestKeys.selfMade("Bo Checker");
        assertRefused(Reason.ROLE, "nobody has signed as prepared yet",
                refused(Signing.report(Signing.GOOD), Signing.request(SignatureRole.CHECKED, "Bo Checker"), bo));
        assertRefused(Reason.ROLE, "already signed by Ada Preparer",
                refused(Signing.once(), Signing.request(SignatureRole.PREPARED, "Bo Checker"), bo));
        assertRefused(Reason.ROLE, "nobody has signed as checked yet",
                refused(Signing.once(), Signing.request(SignatureRole.QUALITY, "Bo Checker"), bo));
        assertRefused(Reason.ROLE, "approved has signed already",
                refused(Signing.thrice(), Signing.request(SignatureRole.QUALITY, "Di Quality"), TestKeys.selfMade("Di Quality")));
    }

    @Test
    void aReportWithOpenObjectionsIsNotSigned() {
        assertRefused(Reason.OPEN_FINDINGS, "open objections: F-01", refused(Signing.report(Signing.BAD),
                Signing.request(SignatureRole.PREPARED, "Ada Preparer"), TestKeys.selfMade("Ada Preparer")));
    }

    @Test
    void aWithdrawnIssueIsNotSigned() throws Exception {
        byte[] report = Signing.report(Signing.GOOD);
        Withdrawals withdrawn = new Withdrawals(List.of(new Withdrawal(
                ReportFile.of(report).review().contentHash().substring(0, 16), "drawing revision E", "A. Reviewer",
                "2026-02-03", Optional.of("issue 2"), new Location("/withdrawn/0", 2, 5))));
        try (Fonts fonts = Fonts.load(); SigningKey key = TestKeys.selfMade("Ada Preparer").open()) {
            SigningRequest request = Signing.request(SignatureRole.PREPARED, "Ada Preparer");
            assertRefused(Reason.WITHDRAWN, "withdrawn on 2026-02-03 by A. Reviewer: drawing revision E; superseded by issue 2",
                    assertThrows(SigningRefusedException.class,
                            () -> new Signer(Wording.shipped(), fonts).sign(report, key, request, withdrawn)));
        }
    }

    @Test
    void aChangedFileIsNotSigned() throws Exception {
        SigningRequest request = Signing.request(SignatureRole.CHECKED, "Bo Checker");
        byte[] changed = Signing.once().clone();
        changed[changed.length / 2] ^= 1;
        assertRefused(Reason.CHANGED, "not as it was signed", refused(changed, request, TestKeys.selfMade("Bo Checker")));
        byte[] appended = Tampering.withNote(Signing.report(Signing.GOOD));
        assertRefused(Reason.CHANGED, "something was appended to it", refused(appended,
                Signing.request(SignatureRole.PREPARED, "Ada Preparer"), TestKeys.selfMade("Ada Preparer")));
        byte[] swapped = Tampering.withAttachment(Signing.report(Signing.GOOD), Signing.GOOD + ".yaml", "schema: 1\n");
        assertRefused(Reason.CHANGED, "not the description that was reviewed", refused(swapped,
                Signing.request(SignatureRole.PREPARED, "Ada Preparer"), TestKeys.selfMade("Ada Preparer")));
    }

    @Test
    void anExpiredOrPrematureOrUnfitCertificateIsNamed() {
        byte[] report = Signing.report(Signing.GOOD);
        SigningRequest request = Signing.request(SignatureRole.PREPARED, "Ada Preparer");
        Instant now = Instant.now();
        int signing = KeyUsage.digitalSignature;
        assertRefused(Reason.KEY, "expired on", refused(report, request,
                TestKeys.selfMade("Ada", now.minus(20, ChronoUnit.DAYS), now.minus(2, ChronoUnit.DAYS), signing)));
        assertRefused(Reason.KEY, "not valid before", refused(report, request,
                TestKeys.selfMade("Ada", now.plus(2, ChronoUnit.DAYS), now.plus(20, ChronoUnit.DAYS), signing)));
        assertRefused(Reason.KEY, "not made for signing", refused(report, request,
                TestKeys.selfMade("Ada", now.minus(1, ChronoUnit.DAYS), now.plus(20, ChronoUnit.DAYS), KeyUsage.keyEncipherment)));
    }

    @Test
    void aWrongPasswordAndAFileThatIsNoKeyAreSaid() throws Exception {
        byte[] store = TestKeys.selfMade("Ada Preparer").store();
        assertRefused(Reason.KEY, "the password is wrong", assertThrows(SigningRefusedException.class,
                () -> SigningKey.open(store, "guess".toCharArray(), Optional.empty())));
        assertRefused(Reason.KEY, "no PKCS #12", assertThrows(SigningRefusedException.class,
                () -> SigningKey.open("hello".getBytes(StandardCharsets.UTF_8), "guess".toCharArray(), Optional.empty())));
    }

    @Test
    void aFileThatIsNoneOfOurReportsIsNotSigned() throws Exception {
        TestKeys.Held ada = TestKeys.selfMade("Ada Preparer");
        SigningRequest request = Signing.request(SignatureRole.PREPARED, "Ada Preparer");
        assertRefused(Reason.NOT_A_REPORT, "it is no PDF", refused("hello".getBytes(StandardCharsets.UTF_8), request, ada));
        assertRefused(Reason.NOT_A_REPORT, "carries no review.json", refused(Tampering.strange(), request, ada));
        assertRefused(Reason.NOT_A_REPORT, "damaged", refused("%PDF-1.7 and no more".getBytes(StandardCharsets.UTF_8), request, ada));
    }

    @Test
    void aStatementTooLongForTheFieldIsRefused() {
        SigningRequest wordy = new SigningRequest(SignatureRole.PREPARED, "Ada Preparer", "", "I state at length. ".repeat(80),
                ZonedDateTime.now(), Optional.empty());
        assertRefused(Reason.ROLE, "too long", refused(Signing.report(Signing.GOOD), wordy, TestKeys.selfMade("Ada Preparer")));
    }
}
