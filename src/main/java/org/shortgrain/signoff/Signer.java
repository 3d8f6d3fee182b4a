package org.shortgrain.signoff;

import eu.europa.esig.dss.alert.SilentOnStatusAlert;
import eu.europa.esig.dss.enumerations.CertificationPermission;
import eu.europa.esig.dss.enumerations.DigestAlgorithm;
import eu.europa.esig.dss.enumerations.SignatureLevel;
import eu.europa.esig.dss.model.DSSDocument;
import eu.europa.esig.dss.model.DSSException;
import eu.europa.esig.dss.model.InMemoryDocument;
import eu.europa.esig.dss.model.SignatureValue;
import eu.europa.esig.dss.model.ToBeSigned;
import eu.europa.esig.dss.pades.PAdESSignatureParameters;
import eu.europa.esig.dss.pades.signature.PAdESService;
import eu.europa.esig.dss.spi.DSSUtils;
import eu.europa.esig.dss.spi.validation.CommonCertificateVerifier;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import org.shortgrain.report.pdf.SignatureRole;
import org.shortgrain.report.pdf.Wording;
import org.shortgrain.report.pdf.tagged.Fonts;
import org.shortgrain.signoff.SigningRefusedException.Reason;

/**
 * Signs a report: PAdES baseline, level B, or level T where a time-stamp server is named (ETSI EN 319 142-1).
 *
 * <p>The first signature, of whoever prepared the report, certifies it with the permission to sign and nothing else
 * (DocMDP, P = 2; ISO 32000-1, 12.8.2.2). Every signature is appended; not a byte of what was signed before moves.
 */
public final class Signer {

    /** Room for the signature in the file, bytes: a chain of some five certificates with a time-stamp. */
    private static final int ROOM = 16_384;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss xxx", Locale.ROOT);

    private final Wording wording;
    private final Fonts fonts;

    /**
     * Makes a signer.
     *
     * @param wording words of the report
     * @param fonts   parsed fonts, for this thread alone
     */
    public Signer(Wording wording, Fonts fonts) {
        this.wording = wording;
        this.fonts = fonts;
    }

    /**
     * {@return the report with one more signature}
     *
     * @param report      the file as it is
     * @param key         the signer's key
     * @param request     what is asked for
     * @param withdrawals issues that were withdrawn
     * @throws SigningRefusedException if something stands against it; nothing is signed then
     */
    public byte[] sign(byte[] report, SigningKey key, SigningRequest request, Withdrawals withdrawals)
            throws SigningRefusedException {
        ReportFile file = opened(report);
        key.checkFit(request.time().toInstant());
        new SigningRules(file).check(request, key, withdrawals);
        byte[] signed = signed(file, key, request);
        checkTaken(signed, request);
        return signed;
    }

    private static ReportFile opened(byte[] report) throws SigningRefusedException {
        try {
            return ReportFile.of(report);
        } catch (NotAReportException other) {
            throw new SigningRefusedException(Reason.NOT_A_REPORT, "this file cannot be signed: " + other.getMessage());
        }
    }

    /** Signs whatever the file is: what must hold before is asked by {@link SigningRules}. */
    byte[] signed(ReportFile file, SigningKey key, SigningRequest request) throws SigningRefusedException {
        PAdESSignatureParameters parameters = parameters(key, request);
        CommonCertificateVerifier offline = new CommonCertificateVerifier();
        offline.setAIASource(null);
        // asked before, by SigningKey.checkFit, in plainer words
        offline.setAlertOnExpiredCertificate(new SilentOnStatusAlert());
        offline.setAlertOnNotYetValidCertificate(new SilentOnStatusAlert());
        PAdESService service = new PAdESService(offline);
        request.timeStamps().ifPresent(service::setTspSource);
        ReportFile.Field place = file.fields().get(request.role());
        service.setPdfObjFactory(new VisibleSignature(request.role().field(), place, fonts, request.name(),
                lines(key, request)));
        DSSDocument document = new InMemoryDocument(file.bytes());
        try {
            ToBeSigned data = service.getDataToSign(document, parameters);
            SignatureValue value = key.token().sign(data, parameters.getDigestAlgorithm(), key.entry());
            return DSSUtils.toByteArray(service.signDocument(document, parameters, value));
        } catch (IllegalArgumentException tooLong) {
            throw new SigningRefusedException(Reason.ROLE, tooLong.getMessage());
        } catch (DSSException failed) {
            if (request.timeStamps().isEmpty()) {
                throw failed;
            }
            throw new SigningRefusedException(Reason.TIME_STAMP, "no time-stamp from " + request.timeStamps().get() + ": "
                    + ReportFile.firstLine(failed) + "; nothing was signed");
        }
    }

    private PAdESSignatureParameters parameters(SigningKey key, SigningRequest request) {
        PAdESSignatureParameters parameters = new PAdESSignatureParameters();
        parameters.setSignatureLevel(level(request));
        parameters.setDigestAlgorithm(DigestAlgorithm.SHA256);
        parameters.setSigningCertificate(key.entry().getCertificate());
        parameters.setCertificateChain(key.entry().getCertificateChain());
        parameters.setContentSize(ROOM);
        parameters.bLevel().setSigningDate(Date.from(request.time().toInstant().truncatedTo(ChronoUnit.SECONDS)));
        parameters.setSigningTimeZone(TimeZone.getTimeZone(request.time().getZone()));
        parameters.setSignerName(request.name());
        parameters.setReason(request.statement());
        if (!request.organisation().isEmpty()) {
            parameters.setContactInfo(request.organisation());
        }
        if (request.role() == SignatureRole.PREPARED) {
            parameters.setPermission(CertificationPermission.MINIMAL_CHANGES_PERMITTED);
        }
        parameters.getImageParameters().getFieldParameters().setFieldId(request.role().field());
        return parameters;
    }

    private static SignatureLevel level(SigningRequest request) {
        return request.timeStamps().isPresent() ? SignatureLevel.PAdES_BASELINE_T : SignatureLevel.PAdES_BASELINE_B;
    }

    /** What a reader of the printed page sees, by the minimum that records of signatures ask for. */
    private List<String> lines(SigningKey key, SigningRequest request) {
        List<String> lines = new ArrayList<>();
        if (!request.organisation().isEmpty()) {
            lines.add(request.organisation());
        }
        lines.add(request.role().title(wording) + ": " + request.statement());
        lines.add(TIME.format(request.time()) + (request.timeStamps().isPresent() ? " (with a trusted time-stamp)"
                : " (signer's clock)"));
        lines.add("PAdES " + (request.timeStamps().isPresent() ? "B-T" : "B-B") + " \u00b7 certificate of "
                + key.commonName() + ", SHA-256");
        lines.add(Subject.fingerprint(key.certificate()));
        return lines;
    }

    /** A signature that does not verify is not handed out. */
    private static void checkTaken(byte[] signed, SigningRequest request) {
        Verification made = new Verifier(List.of()).verify(signed);
        boolean taken = made.signatures().stream()
                .anyMatch(one -> one.role().equals(Optional.of(request.role())) && one.isIntact());
        if (!taken || !made.isIntact()) {
            throw new IllegalStateException("the signature just made does not verify: " + made.faults());
        }
    }
}
