package org.shortgrain.signoff;

import eu.europa.esig.dss.model.DSSException;
import eu.europa.esig.dss.token.DSSPrivateKeyEntry;
import eu.europa.esig.dss.token.KSPrivateKeyEntry;
import eu.europa.esig.dss.token.Pkcs12SignatureToken;
import java.security.KeyStore.PasswordProtection;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shortgrain.signoff.SigningRefusedException.Reason;

/** A key with its certificate, opened for one signature. */
public final class SigningKey implements AutoCloseable {

    /** Bits of the key usage extension (RFC 5280, 4.2.1.3) that allow signing a document. */
    private static final int DIGITAL_SIGNATURE = 0;
    private static final int NON_REPUDIATION = 1;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm xxx", Locale.ROOT);

    private final Pkcs12SignatureToken token;
    private final DSSPrivateKeyEntry entry;

    private SigningKey(Pkcs12SignatureToken token, DSSPrivateKeyEntry entry) {
        this.token = token;
        this.entry = entry;
    }

    /**
     * Opens a key.
     *
     * @param store    a PKCS #12 file
     * @param password its password; the caller wipes it
     * @param alias    which key, where the file holds several
     * @return the key, to be closed by the caller
     * @throws SigningRefusedException if the password is wrong, the file is no PKCS #12, or no one key is meant
     */
    public static SigningKey open(byte[] store, char[] password, Optional<String> alias) throws SigningRefusedException {
        Pkcs12SignatureToken token;
        List<DSSPrivateKeyEntry> keys;
        try {
            token = new Pkcs12SignatureToken(store, new PasswordProtection(password));
            keys = token.getKeys();
        } catch (DSSException closed) {
            throw new SigningRefusedException(Reason.KEY, "the key cannot be opened: the password is wrong, or the file is"
                    + " no PKCS #12 key store (.p12)");
        }
        List<DSSPrivateKeyEntry> meant = keys.stream()
                .filter(key -> alias.isEmpty() || alias(key).equalsIgnoreCase(alias.get())).toList();
        if (meant.size() != 1) {
            token.close();
            String names = keys.stream().map(SigningKey::alias).sorted().collect(Collectors.joining(", "));
            throw new SigningRefusedException(Reason.KEY, keys.isEmpty() ? "the file holds certificates but no private key"
                    : "the file holds " + keys.size() + " keys (" + names + "); name one of them with --alias");
        }
        return new SigningKey(token, meant.get(0));
    }

    private static String alias(DSSPrivateKeyEntry key) {
        return key instanceof KSPrivateKeyEntry named ? named.getAlias() : "";
    }

    /** {@return the certificate of the signer} */
    public X509Certificate certificate() {
        return entry.getCertificate().getCertificate();
    }

    /** {@return the common name in the certificate, or the whole subject where it has none} */
    public String commonName() {
        return Subject.commonName(certificate());
    }

    /** {@return the organisation in the certificate; empty text if it names none} */
    public String organisation() {
        return Subject.organisation(certificate());
    }

    /** {@return whether the certificate is its own issuer} */
    public boolean isSelfMade() {
        return certificate().getSubjectX500Principal().equals(certificate().getIssuerX500Principal());
    }

    Pkcs12SignatureToken token() {
        return token;
    }

    DSSPrivateKeyEntry entry() {
        return entry;
    }

    /**
     * Refuses a certificate that is not in force, or not made for signing.
     *
     * @param when time of signing
     * @throws SigningRefusedException if it is not fit
     */
    void checkFit(Instant when) throws SigningRefusedException {
        X509Certificate certificate = certificate();
        if (when.isAfter(certificate.getNotAfter().toInstant())) {
            throw new SigningRefusedException(Reason.KEY, "the certificate of " + commonName() + " expired on "
                    + day(certificate.getNotAfter().toInstant()) + "; sign with one that is in force");
        }
        if (when.isBefore(certificate.getNotBefore().toInstant())) {
            throw new SigningRefusedException(Reason.KEY, "the certificate of " + commonName() + " is not valid before "
                    + day(certificate.getNotBefore().toInstant()) + "; check the clock, or wait");
        }
        boolean[] usage = certificate.getKeyUsage();
        if (usage != null && !usage[DIGITAL_SIGNATURE] && !usage[NON_REPUDIATION]) {
            throw new SigningRefusedException(Reason.KEY, "the certificate of " + commonName() + " is not made for signing"
                    + " (its key usage names neither digital signature nor non-repudiation)");
        }
    }

    static String day(Instant instant) {
        return DAY.format(instant.atZone(ZoneId.systemDefault()));
    }

    @Override
    public void close() {
        token.close();
    }
}
