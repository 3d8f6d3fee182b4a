package org.shortgrain.signoff;

import eu.europa.esig.dss.diagnostic.CertificateWrapper;
import eu.europa.esig.dss.diagnostic.DiagnosticData;
import eu.europa.esig.dss.diagnostic.PDFRevisionWrapper;
import eu.europa.esig.dss.diagnostic.SignatureWrapper;
import eu.europa.esig.dss.diagnostic.TimestampWrapper;
import eu.europa.esig.dss.enumerations.CertificationPermission;
import eu.europa.esig.dss.enumerations.DigestAlgorithm;
import eu.europa.esig.dss.enumerations.SignatureLevel;
import eu.europa.esig.dss.model.DSSException;
import eu.europa.esig.dss.model.InMemoryDocument;
import eu.europa.esig.dss.model.x509.CertificateToken;
import eu.europa.esig.dss.pades.validation.PDFDocumentValidator;
import eu.europa.esig.dss.spi.validation.CommonCertificateVerifier;
import eu.europa.esig.dss.spi.x509.CommonTrustedCertificateSource;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shortgrain.report.pdf.SignatureRole;

/**
 * Verifies the signatures of a report.
 *
 * <p>The European Commission's library validates each signature and looks for changes between the revisions of the file.
 * On top of that, the last signature must reach the end of the file, and each signature must be in the form in which it
 * was written ({@link CmsForm}), so that no byte of the file is free. Nothing is looked up on the network.
 */
public final class Verifier {

    private final List<X509Certificate> trusted;

    /**
     * Makes a verifier.
     *
     * @param trusted certificates that the caller trusts, of signers or of their issuers
     */
    public Verifier(List<X509Certificate> trusted) {
        this.trusted = List.copyOf(trusted);
    }

    /**
     * {@return what is found of a file; a damaged file is a finding, nothing is thrown}
     *
     * @param file the bytes of the file
     */
    public Verification verify(byte[] file) {
        List<SignatureRole> all = Arrays.asList(SignatureRole.values());
        try {
            ReportFile report = ReportFile.of(file);
            List<SignatureCheck> checks = checks(file, report);
            List<SignatureRole> open = all.stream().filter(role -> !report.signed().contains(role)).toList();
            List<String> faults = new ArrayList<>(ContentCheck.faults(report));
            faults.addAll(fileFaults(file, report, checks));
            return new Verification(checks, open, faults);
        } catch (NotAReportException other) {
            return new Verification(List.of(), all, List.of("this is no report that can be verified: " + other.getMessage()));
        } catch (DSSException | IllegalArgumentException | IllegalStateException | NullPointerException
                | IndexOutOfBoundsException | ClassCastException damaged) {
            // the library fails in these ways on files that were damaged between their objects
            return new Verification(List.of(), all,
                    List.of("the file is damaged; its signatures cannot be read: " + ReportFile.firstLine(damaged)));
        }
    }

    private static List<String> fileFaults(byte[] file, ReportFile report, List<SignatureCheck> checks) {
        List<String> faults = new ArrayList<>();
        int expected = report.signed().size();
        if (checks.isEmpty() && expected == 0) {
            faults.add("the report is not signed");
        } else if (checks.size() != expected || checks.stream().anyMatch(one -> one.role().isEmpty())) {
            faults.add("the signatures do not stand in the fields that the report holds ready");
        } else if (checks.stream().noneMatch(SignatureCheck::wholeFile)) {
            long end = report.fields().values().stream().flatMap(field -> field.signature().stream())
                    .mapToLong(ReportFile.Signature::end).max().orElse(0);
            faults.add(file.length - end + " bytes were appended after the last signature");
        }
        if (!checks.isEmpty() && !checks.get(0).certifies()) {
            faults.add("the first signature does not certify the report");
        }
        return faults;
    }

    private List<SignatureCheck> checks(byte[] file, ReportFile report) {
        if (report.signed().isEmpty()) {
            return List.of();
        }
        DiagnosticData data = validated(file);
        Map<SignatureCheck, Long> ends = new HashMap<>();
        List<SignatureCheck> checks = new ArrayList<>();
        for (SignatureWrapper signature : data.getSignatures()) {
            Optional<SignatureRole> role = SignatureRole.ofField(String.valueOf(signature.getFirstFieldName()));
            Optional<ReportFile.Signature> entry = role.map(report.fields()::get)
                    .flatMap(ReportFile.Field::signature);
            SignatureCheck check = check(file, signature, role, entry);
            checks.add(check);
            ends.put(check, entry.map(ReportFile.Signature::end).orElse(Long.MAX_VALUE));
        }
        checks.sort(Comparator.comparing(ends::get));
        return checks;
    }

    private DiagnosticData validated(byte[] file) {
        CommonCertificateVerifier certificates = new CommonCertificateVerifier();
        certificates.setAIASource(null);
        CommonTrustedCertificateSource source = new CommonTrustedCertificateSource();
        trusted.forEach(one -> source.addCertificate(new CertificateToken(one)));
        certificates.setTrustedCertSources(source);
        PDFDocumentValidator validator = new PDFDocumentValidator(new InMemoryDocument(file));
        validator.setCertificateVerifier(certificates);
        validator.setLocale(Locale.ENGLISH);
        return validator.validateDocument().getDiagnosticData();
    }

    private SignatureCheck check(byte[] file, SignatureWrapper signature, Optional<SignatureRole> role,
            Optional<ReportFile.Signature> entry) {
        List<String> faults = new ArrayList<>(integrityFaults(signature));
        entry.ifPresentOrElse(there -> faults.addAll(CmsForm.faults(file, there)),
                () -> faults.add("it stands in no field of the report"));
        faults.addAll(changeFaults(signature.getPDFRevision()));
        List<String> redefined = entry.map(there -> LaterChanges.redefined(file, there.end())).orElse(List.of());
        if (!redefined.isEmpty()) {
            faults.add("later updates define objects anew that signing leaves alone: "
                    + redefined.stream().limit(3).collect(Collectors.joining(", ")));
        }
        if (role.isPresent() && entry.isPresent() && LaterChanges.isRedrawn(file, role.get().field(), entry.get().end())) {
            faults.add("what is seen of the signature was redrawn by a later update");
        }
        CertificateWrapper certificate = signature.getSigningCertificate();
        Instant claimed = Optional.ofNullable(signature.getClaimedSigningTime()).map(date -> date.toInstant())
                .orElse(Instant.EPOCH);
        Optional<Instant> stamped = signature.getTLevelTimestamps().stream()
                .filter(one -> one.isMessageImprintDataIntact() && one.isSignatureIntact() && one.isSignatureValid())
                .map(TimestampWrapper::getProductionTime).map(date -> date.toInstant()).findFirst();
        List<String> notes = new ArrayList<>();
        if (certificate == null) {
            faults.add("it names no certificate");
        } else {
            validity(certificate, claimed, stamped, notes, faults);
        }
        SignatureLevel level = signature.getSignatureFormat();
        return new SignatureCheck(role, entry.map(ReportFile.Signature::name).orElse(""),
                entry.map(ReportFile.Signature::contact).orElse(""), entry.map(ReportFile.Signature::statement).orElse(""),
                claimed, stamped, level == null ? "" : level.toString(),
                certificate == null ? "" : certificate.getCertificateDN(),
                certificate == null ? "" : fingerprint(certificate), identity(certificate),
                signature.getDocMDPPermissions() == CertificationPermission.MINIMAL_CHANGES_PERMITTED,
                entry.map(there -> there.end() == file.length).orElse(false), notes, faults);
    }

    private static List<String> integrityFaults(SignatureWrapper signature) {
        List<String> faults = new ArrayList<>();
        boolean digests = signature.getDigestMatchers().stream()
                .allMatch(digest -> digest.isDataFound() && digest.isDataIntact());
        if (!digests) {
            faults.add("what was signed has changed since");
        }
        if (!signature.isSignatureIntact() || !signature.isSignatureValid()) {
            faults.add("the signature does not fit the certificate and what it says it signed");
        }
        if (!signature.isSigningCertificateIdentified() || !signature.isSigningCertificateReferencePresent()
                || !signature.getSigningCertificateReference().isDigestValueMatch()) {
            faults.add("the certificate beside the signature is not the one with which it was made");
        }
        return faults;
    }

    private static List<String> changeFaults(PDFRevisionWrapper revision) {
        List<String> faults = new ArrayList<>();
        if (revision == null || !revision.isSignatureByteRangeValid()) {
            faults.add("its byte range is not what the standard allows");
        }
        if (revision != null && !revision.isPdfSignatureDictionaryConsistent()) {
            faults.add("its entries were changed by a later update");
        }
        if (revision != null && (!LaterChanges.ofOtherKind(revision).isEmpty()
                || !revision.getPdfAnnotationChanges().isEmpty()
                || !revision.getPdfPageDifferenceConcernedPages().isEmpty()
                || !revision.getPdfAnnotationsOverlapConcernedPages().isEmpty())) {
            faults.add("later updates of the file change more than signing does");
        }
        return faults;
    }

    /** A certificate that was not in force at the time that counts is a fault; one that ran out since is none. */
    private static void validity(CertificateWrapper certificate, Instant claimed, Optional<Instant> stamped,
            List<String> notes, List<String> faults) {
        Instant when = stamped.orElse(claimed);
        Instant from = certificate.getNotBefore().toInstant();
        Instant to = certificate.getNotAfter().toInstant();
        if (when.isBefore(from) || when.isAfter(to)) {
            faults.add("the certificate was not in force when it was signed (in force from " + SigningKey.day(from) + " to "
                    + SigningKey.day(to) + ")");
        } else if (Instant.now().isAfter(to)) {
            notes.add("the certificate expired on " + SigningKey.day(to) + (stamped.isPresent()
                    ? "; the time-stamp shows that it was in force when it was signed"
                    : "; that it was in force when it was signed rests on the signer's clock"));
        }
    }

    private static String fingerprint(CertificateWrapper certificate) {
        return java.util.HexFormat.of().formatHex(
                certificate.getDigestAlgoAndValue() != null
                        && certificate.getDigestAlgoAndValue().getDigestMethod() == DigestAlgorithm.SHA256
                                ? certificate.getDigestAlgoAndValue().getDigestValue()
                                : Hash.digest(certificate.getBinaries()));
    }

    private static SignatureCheck.Identity identity(CertificateWrapper certificate) {
        if (certificate == null) {
            return SignatureCheck.Identity.UNKNOWN_ISSUER;
        }
        if (certificate.isTrusted() || certificate.isTrustedChain()) {
            return SignatureCheck.Identity.TRUSTED;
        }
        return certificate.isSelfSigned() ? SignatureCheck.Identity.SELF_MADE : SignatureCheck.Identity.UNKNOWN_ISSUER;
    }
}
