package org.shortgrain.signoff;

import eu.europa.esig.dss.enumerations.DigestAlgorithm;
import eu.europa.esig.dss.model.DSSException;
import eu.europa.esig.dss.model.TimestampBinary;
import eu.europa.esig.dss.spi.x509.tsp.TSPSource;
import java.io.IOException;
import java.math.BigInteger;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.security.SecureRandom;
import java.time.Duration;
import org.bouncycastle.asn1.ASN1ObjectIdentifier;
import org.bouncycastle.tsp.TSPException;
import org.bouncycastle.tsp.TimeStampRequest;
import org.bouncycastle.tsp.TimeStampRequestGenerator;
import org.bouncycastle.tsp.TimeStampResponse;

/** A server that says when it saw a digest: the time-stamp protocol of RFC 3161 over HTTP. */
public final class TimeStampServer implements TSPSource {

    private static final long serialVersionUID = 1L;
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final int NONCE_BITS = 64;
    private static final int OK = 200;

    private final URI address;

    /**
     * Names a server.
     *
     * @param address its address, http or https
     */
    public TimeStampServer(URI address) {
        this.address = address;
    }

    @Override
    public TimestampBinary getTimeStampResponse(DigestAlgorithm algorithm, byte[] digest) {
        try {
            TimeStampRequestGenerator generator = new TimeStampRequestGenerator();
            generator.setCertReq(true);
            TimeStampRequest request = generator.generate(new ASN1ObjectIdentifier(algorithm.getOid()), digest,
                    new BigInteger(NONCE_BITS, new SecureRandom()));
            TimeStampResponse response = new TimeStampResponse(asked(request.getEncoded()));
            response.validate(request);
            if (response.getTimeStampToken() == null) {
                throw new DSSException("it gives no time-stamp: " + response.getStatusString());
            }
            return new TimestampBinary(response.getTimeStampToken().getEncoded());
        } catch (IOException | TSPException broken) {
            throw new DSSException(String.valueOf(broken.getMessage()), broken);
        }
    }

    private byte[] asked(byte[] request) throws IOException {
        HttpClient client = HttpClient.newBuilder().connectTimeout(PATIENCE).build();
        try {
            HttpResponse<byte[]> answer = client.send(HttpRequest.newBuilder(address).timeout(PATIENCE)
                    .header("Content-Type", "application/timestamp-query")
                    .POST(HttpRequest.BodyPublishers.ofByteArray(request)).build(),
                    HttpResponse.BodyHandlers.ofByteArray());
            if (answer.statusCode() != OK) {
                throw new IOException("it answers with HTTP status " + answer.statusCode());
            }
            return answer.body();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", stopped);
        }
    }

    @Override
    public String toString() {
        return address.toString();
    }
}
