package org.shortgrain.signoff;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import org.bouncycastle.asn1.ASN1Encoding;
import org.bouncycastle.asn1.ASN1InputStream;
import org.bouncycastle.asn1.ASN1Primitive;
import org.bouncycastle.asn1.cms.CMSObjectIdentifiers;
import org.bouncycastle.asn1.cms.ContentInfo;
import org.bouncycastle.asn1.cms.SignedData;
import org.bouncycastle.asn1.cms.SignerInfo;
import org.bouncycastle.asn1.x509.AlgorithmIdentifier;
import org.bouncycastle.operator.DefaultAlgorithmNameFinder;

/**
 * The form of the one stretch of a signed file that the signature cannot cover: the string of hexadecimal digits that
 * holds the signature itself.
 *
 * <p>Readers are lenient there: a small letter for a capital, a blank, other digits in the padding, an algorithm named
 * another way all read as the same signature. Here they count as a change, because a byte did change. What is asked for
 * is what {@link Signer} writes: digits of one kind, one object in DER, zeros behind it, and in it nothing that the signed
 * attributes, the certificate's own signature or the signature value do not hold fast.
 */
final class CmsForm {

    private static final HexFormat SMALL = HexFormat.of();
    private static final HexFormat CAPITAL = HexFormat.of().withUpperCase();
    private static final int SIGNED_DATA_VERSION = 1;
    private static final int SIGNER_INFO_VERSION = 1;

    private CmsForm() {
    }

    /**
     * {@return what is not as it was written, one sentence each}
     *
     * @param file      the file
     * @param signature byte range of the signature
     */
    static List<String> faults(byte[] file, ReportFile.Signature signature) {
        List<Long> range = signature.range();
        if (!isSound(range, file.length)) {
            return List.of("its byte range does not describe a stretch of this file");
        }
        int from = range.get(1).intValue();
        int to = range.get(2).intValue();
        if (file[from] != '<' || file[to - 1] != '>') {
            return List.of("the signature does not fill the gap that it leaves");
        }
        String digits = new String(file, from + 1, to - from - 2, StandardCharsets.ISO_8859_1);
        try {
            byte[] content = HexFormat.of().parseHex(digits);
            boolean asWritten = SMALL.formatHex(content).equals(digits) || CAPITAL.formatHex(content).equals(digits);
            if (!asWritten) {
                return List.of("the digits of the signature were rewritten");
            }
            return contentFaults(content);
        } catch (IllegalArgumentException noDigits) {
            return List.of("the signature is damaged: it is no string of hexadecimal digits");
        } catch (IOException | RuntimeException damaged) {
            return List.of("the signature is damaged: " + ReportFile.firstLine(damaged));
        }
    }

    private static boolean isSound(List<Long> range, int length) {
        return range.size() == 4 && range.get(0) == 0 && range.get(1) > 0 && range.get(2) >= range.get(1) + 2
                && range.get(3) >= 0 && range.get(2) + range.get(3) <= length;
    }

    private static List<String> contentFaults(byte[] content) throws IOException {
        try (ASN1InputStream in = new ASN1InputStream(content)) {
            ASN1Primitive first = in.readObject();
            byte[] written = first.getEncoded(ASN1Encoding.DER);
            if (!Arrays.equals(written, Arrays.copyOf(content, written.length))) {
                return List.of("the signature is not in the one form in which it can be written (DER)");
            }
            for (int i = written.length; i < content.length; i++) {
                if (content[i] != 0) {
                    return List.of("there are digits behind the signature where zeros were written");
                }
            }
            return signedDataFaults(ContentInfo.getInstance(first));
        }
    }

    private static List<String> signedDataFaults(ContentInfo info) {
        if (!info.getContentType().equals(CMSObjectIdentifiers.signedData)) {
            return List.of("the signature names another kind of content");
        }
        SignedData data = SignedData.getInstance(info.getContent());
        List<String> faults = new ArrayList<>();
        if (data.getVersion().getValue().intValue() != SIGNED_DATA_VERSION || data.getSignerInfos().size() != 1
                || data.getDigestAlgorithms().size() != 1 || data.getCRLs() != null
                || !data.getEncapContentInfo().getContentType().equals(CMSObjectIdentifiers.data)
                || data.getEncapContentInfo().getContent() != null) {
            faults.add("the signature is not built as this tool builds it");
            return faults;
        }
        SignerInfo signer = SignerInfo.getInstance(data.getSignerInfos().getObjectAt(0));
        AlgorithmIdentifier digest = AlgorithmIdentifier.getInstance(data.getDigestAlgorithms().getObjectAt(0));
        if (signer.getVersion().getValue().intValue() != SIGNER_INFO_VERSION
                || !signer.getDigestAlgorithm().equals(digest)) {
            faults.add("the signature names its digest in two ways");
        }
        faults.addAll(algorithmFaults(signer));
        return faults;
    }

    /** The name of the signature algorithm is not signed; it must say the same as the digest that is used. */
    private static List<String> algorithmFaults(SignerInfo signer) {
        DefaultAlgorithmNameFinder names = new DefaultAlgorithmNameFinder();
        String digest = names.getAlgorithmName(signer.getDigestAlgorithm()).replace("-", "");
        String algorithm = names.getAlgorithmName(signer.getDigestEncryptionAlgorithm());
        return algorithm.startsWith(digest + "WITH") ? List.of()
                : List.of("the signature names an algorithm that does not fit its digest (" + algorithm + ", " + digest
                        + ")");
    }
}
