package org.shortgrain.signoff;

import java.security.cert.CertificateEncodingException;
import java.security.cert.X509Certificate;
import java.util.Optional;
import javax.naming.InvalidNameException;
import javax.naming.ldap.LdapName;
import javax.naming.ldap.Rdn;

/** Who a certificate names. */
final class Subject {

    private Subject() {
    }

    static String commonName(X509Certificate certificate) {
        return part(certificate, "CN").orElseGet(() -> name(certificate));
    }

    static String organisation(X509Certificate certificate) {
        return part(certificate, "O").orElse("");
    }

    static String name(X509Certificate certificate) {
        return certificate.getSubjectX500Principal().getName();
    }

    static String fingerprint(X509Certificate certificate) {
        try {
            return Hash.sha256(certificate.getEncoded());
        } catch (CertificateEncodingException impossible) {
            throw new IllegalStateException("a certificate that was read can be written", impossible);
        }
    }

    private static Optional<String> part(X509Certificate certificate, String type) {
        try {
            return new LdapName(name(certificate)).getRdns().stream().filter(rdn -> rdn.getType().equalsIgnoreCase(type))
                    .map(Rdn::getValue).map(String::valueOf).findFirst();
        } catch (InvalidNameException unusual) {
            return Optional.empty();
        }
    }
}
