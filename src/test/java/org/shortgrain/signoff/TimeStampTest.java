package org.shortgrain.signoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.math.BigInteger;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import org.bouncycastle.asn1.ASN1ObjectIdentifier;
import org.bouncycastle.cert.jcajce.JcaCertStore;
import org.bouncycastle.cms.jcajce.JcaSimpleSignerInfoGeneratorBuilder;
import org.bouncycastle.operator.DigestCalculatorProvider;
import org.bouncycastle.operator.jcajce.JcaDigestCalculatorProviderBuilder;
import org.bouncycastle.tsp.TSPAlgorithms;
import org.bouncycastle.tsp.TimeStampRequest;
import org.bouncycastle.tsp.TimeStampResponseGenerator;
import org.bouncycastle.tsp.TimeStampTokenGenerator;
import org.junit.jupiter.api.Test;
import org.shortgrain.report.pdf.SignatureRole;

/** Level B-T, against a time-stamp server that the test makes itself. No public server was tried. */
class TimeStampTest {

    private static byte[] answer(byte[] query, TestKeys.Held authority) throws Exception {
        DigestCalculatorProvider digests = new JcaDigestCalculatorProviderBuilder().build();
        TimeStampTokenGenerator tokens = new TimeStampTokenGenerator(
                new JcaSimpleSignerInfoGeneratorBuilder().build("SHA256withRSA", authority.key(), authority.certificate()),
                digests.get(new org.bouncycastle.asn1.x509.AlgorithmIdentifier(TSPAlgorithms.SHA256)),
                new ASN1ObjectIdentifier("1.2.3.4.5"));
        tokens.addCertificates(new JcaCertStore(authority.chain()));
        return new TimeStampResponseGenerator(tokens, TSPAlgorithms.ALLOWED)
                .generate(new TimeStampRequest(query), BigInteger.valueOf(System.nanoTime()), new Date()).getEncoded();
    }

    private static HttpServer server(TestKeys.Held authority) throws IOException {
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", exchange -> {
            try (exchange) {
                byte[] answer = answer(exchange.getRequestBody().readAllBytes(), authority);
                exchange.sendResponseHeaders(200, answer.length);
                exchange.getResponseBody().write(answer);
            } catch (Exception failed) {
                throw new IOException(failed);
            }
        });
        server.start();
        return server;
    }

    private static SigningRequest request(URI address) {
        SigningRequest plain = Signing.request(SignatureRole.PREPARED, "Ada Preparer");
        return new SigningRequest(plain.role(), plain.name(), plain.organisation(), plain.statement(), plain.time(),
                Optional.of(new TimeStampServer(address)));
    }

    @Test
    void aTimeStampMakesLevelTAndSaysWhen() throws Exception {
        HttpServer server = server(TestKeys.issued("Clock", "RSA", true));
        try {
            URI address = URI.create("http://127.0.0.1:" + server.getAddress().getPort() + "/");
            byte[] signed = Signing.sign(Signing.report(Signing.GOOD), request(address), TestKeys.selfMade("Ada Preparer"));
            SignatureCheck one = new Verifier(List.of()).verify(signed).signatures().get(0);
            assertEquals(List.of(), one.faults());
            assertEquals("PAdES-BASELINE-T", one.level());
            assertTrue(one.stamped().isPresent());
        } finally {
            server.stop(0);
        }
    }

    @Test
    void aServerThatDoesNotAnswerStopsTheSigning() {
        SigningRefusedException refused = assertThrows(SigningRefusedException.class, () -> Signing.sign(
                Signing.report(Signing.GOOD), request(URI.create("http://127.0.0.1:9/")), TestKeys.selfMade("Ada Preparer")));
        assertEquals(SigningRefusedException.Reason.TIME_STAMP, refused.reason());
        assertTrue(refused.getMessage().startsWith("no time-stamp from http://127.0.0.1:9/"), refused.getMessage());
    }
}
