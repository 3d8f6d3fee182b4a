package org.shortgrain.signoff;

import java.io.ByteArrayOutputStream;
import java.math.BigInteger;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/** Keys and certificates of invented persons, made while the tests run and forgotten with them. */
public final class TestKeys {

    /** Password of every key store. */
    public static final String PASSWORD = "only for tests";
    private static final AtomicLong SERIAL = new AtomicLong(1000);
    private static final Map<String, Held> MADE = new ConcurrentHashMap<>();

    private TestKeys() {
    }

    /** A private key with its certificates, the signer's own first. */
    public record Held(PrivateKey key, List<X509Certificate> chain) {

        /** The signer's certificate. */
        public X509Certificate certificate() {
            return chain.get(0);
        }

        /** As a PKCS #12 file. */
        public byte[] store() throws Exception {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(null, null);
            store.setKeyEntry("signer", key, PASSWORD.toCharArray(), chain.toArray(Certificate[]::new));
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            store.store(bytes, PASSWORD.toCharArray());
            return bytes.toByteArray();
        }

        SigningKey open() throws Exception {
            return SigningKey.open(store(), PASSWORD.toCharArray(), Optional.empty());
        }
    }

    /** A certificate that is its own issuer, in force now. */
    public static Held selfMade(String name) {
        return MADE.computeIfAbsent(name, wanted -> selfMade(wanted, Instant.now().minus(1, ChronoUnit.DAYS),
                Instant.now().plus(700, ChronoUnit.DAYS), KeyUsage.digitalSignature | KeyUsage.nonRepudiation));
    }

    static Held selfMade(String name, Instant from, Instant to, int usage) {
        KeyPair pair = pair("RSA", 2048);
        X500Name subject = subject(name);
        return new Held(pair.getPrivate(), List.of(certificate(subject, pair, subject, pair.getPrivate(), from, to, usage,
                false, false)));
    }

    /** A certificate by an issuer of its own; the chain holds both. */
    static Held issued(String name, String algorithm, boolean forTimeStamps) {
        KeyPair issuer = pair("RSA", 2048);
        KeyPair pair = pair(algorithm, algorithm.equals("EC") ? 256 : 2048);
        Instant from = Instant.now().minus(1, ChronoUnit.DAYS);
        Instant to = Instant.now().plus(700, ChronoUnit.DAYS);
        X500Name root = subject("Test root of " + name);
        X509Certificate top = certificate(root, issuer, root, issuer.getPrivate(), from, to, KeyUsage.keyCertSign, true,
                false);
        X509Certificate own = certificate(subject(name), pair, root, issuer.getPrivate(), from, to,
                KeyUsage.digitalSignature | KeyUsage.nonRepudiation, false, forTimeStamps);
        return new Held(pair.getPrivate(), List.of(own, top));
    }

    private static X500Name subject(String name) {
        return new X500Name("CN=" + name + ",O=Invented for tests,C=XX");
    }

    private static KeyPair pair(String algorithm, int size) {
        try {
            KeyPairGenerator generator = KeyPairGenerator.getInstance(algorithm);
            generator.initialize(size);
            return generator.generateKeyPair();
        } catch (java.security.GeneralSecurityException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static X509Certificate certificate(X500Name subject, KeyPair pair, X500Name issuer, PrivateKey by, Instant from,
            Instant to, int usage, boolean authority, boolean forTimeStamps) {
        try {
            JcaX509v3CertificateBuilder builder = new JcaX509v3CertificateBuilder(issuer,
                    BigInteger.valueOf(SERIAL.incrementAndGet()), Date.from(from), Date.from(to), subject, pair.getPublic());
            builder.addExtension(Extension.keyUsage, true, new KeyUsage(usage));
            builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(authority));
            if (forTimeStamps) {
                builder.addExtension(Extension.extendedKeyUsage, true, new ExtendedKeyUsage(KeyPurposeId.id_kp_timeStamping));
            }
            return new JcaX509CertificateConverter()
                    .getCertificate(builder.build(new JcaContentSignerBuilder("SHA256withRSA").build(by)));
        } catch (Exception impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** The certificates of some holders. */
    static List<X509Certificate> certificates(Held... holders) {
        return Stream.of(holders).map(Held::certificate).toList();
    }
}
