package org.shortgrain.signoff;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.apache.pdfbox.pdmodel.interactive.form.PDSignatureField;
import org.shortgrain.report.json.ReviewJson;
import org.shortgrain.report.json.UnreadableReviewException;
import org.shortgrain.report.pdf.SignatureRole;
import org.shortgrain.review.Review;

/**
 * A report as a file: its review, the files that it carries, its signature fields and what it claims to be.
 *
 * @param bytes       the file; not copied, not to be changed
 * @param review      the review that it carries as data
 * @param attachments the files that it carries, by name
 * @param fields      the signature field of each role
 * @param claims      what its metadata claim, such as PDF/A-3A
 */
record ReportFile(byte[] bytes, Review review, SortedMap<String, byte[]> attachments,
        Map<SignatureRole, Field> fields, List<String> claims) {

    /** Name of the attachment that holds the review as data. */
    static final String REVIEW = "review.json";
    /** Name of the attachment that holds the findings for editors and build servers. */
    static final String FINDINGS = "review.sarif";
    /** Name of the attachment that names the files of the rulebook. */
    static final String MANIFEST = "rulebook.sha256";

    /**
     * A signature field and what fills it.
     *
     * @param left      left edge on its page, points
     * @param bottom    lower edge, points
     * @param width     width, points
     * @param height    height, points
     * @param signature byte range and content of the signature; empty if nobody has signed
     */
    record Field(float left, float bottom, float width, float height, Optional<Signature> signature) {
    }

    /**
     * The entries of a signature dictionary that the checks need.
     *
     * @param name      printed name
     * @param statement what the signer states
     * @param contact   organisation of the signer
     * @param range     two stretches of the file, each as offset and length, bytes
     */
    record Signature(String name, String statement, String contact, List<Long> range) {

        /** {@return where the signed part of the file ends, bytes from its beginning} */
        long end() {
            return range.size() == 4 ? range.get(2) + range.get(3) : 0;
        }
    }

    /**
     * {@return the report in the bytes of a file}
     *
     * @param bytes the file
     * @throws NotAReportException if it is none of ours, or too damaged to be read
     */
    static ReportFile of(byte[] bytes) throws NotAReportException {
        if (bytes.length < 5 || bytes[0] != '%' || bytes[1] != 'P' || bytes[2] != 'D' || bytes[3] != 'F') {
            throw new NotAReportException("it is no PDF");
        }
        try (PDDocument file = Loader.loadPDF(bytes)) {
            SortedMap<String, byte[]> attachments = attachments(file.getDocumentCatalog());
            if (!attachments.containsKey(REVIEW)) {
                throw new NotAReportException("it carries no " + REVIEW + "; only reports that shortgrain review wrote"
                        + " can be signed and verified");
            }
            Review review = ReviewJson.read(attachments.get(REVIEW));
            return new ReportFile(bytes, review, attachments, fields(file), claims(file.getDocumentCatalog()));
        } catch (UnreadableReviewException unreadable) {
            throw new NotAReportException("its " + REVIEW + " cannot be read: " + unreadable.getMessage());
        } catch (IOException | RuntimeException damaged) {
            // a damaged PDF makes the reader fail in many ways, none of which says more than this
            throw new NotAReportException("it is damaged, or no PDF that can be read: " + firstLine(damaged));
        }
    }

    static String firstLine(Exception fault) {
        return String.valueOf(fault.getMessage()).lines().findFirst().orElse(fault.getClass().getSimpleName());
    }

    /** {@return the roles that have signed, in their order} */
    Set<SignatureRole> signed() {
        Set<SignatureRole> signed = EnumSet.noneOf(SignatureRole.class);
        fields.forEach((role, field) -> field.signature().ifPresent(there -> signed.add(role)));
        return signed;
    }

    /** {@return the file that was reviewed, if the report carries it} */
    Optional<byte[]> description() {
        return Optional.ofNullable(attachments.get(review.input().file()));
    }

    /** {@return the names and hashes of the rulebook's files, if the report carries them} */
    Optional<String> manifest() {
        return Optional.ofNullable(attachments.get(MANIFEST))
                .map(bytes -> new String(bytes, java.nio.charset.StandardCharsets.UTF_8));
    }

    private static SortedMap<String, byte[]> attachments(PDDocumentCatalog catalog) throws IOException {
        SortedMap<String, byte[]> found = new TreeMap<>();
        PDDocumentNameDictionary names = catalog.getNames();
        PDEmbeddedFilesNameTreeNode tree = names == null ? null : names.getEmbeddedFiles();
        if (tree != null) {
            collect(tree, found);
        }
        return found;
    }

    private static void collect(PDNameTreeNode<PDComplexFileSpecification> node, SortedMap<String, byte[]> found)
            throws IOException {
        Map<String, PDComplexFileSpecification> names = node.getNames();
        if (names != null) {
            for (Map.Entry<String, PDComplexFileSpecification> entry : names.entrySet()) {
                if (entry.getValue().getEmbeddedFile() != null) {
                    found.put(entry.getKey(), entry.getValue().getEmbeddedFile().toByteArray());
                }
            }
        }
        List<PDNameTreeNode<PDComplexFileSpecification>> kids = node.getKids();
        if (kids != null) {
            for (PDNameTreeNode<PDComplexFileSpecification> kid : kids) {
                collect(kid, found);
            }
        }
    }

    private static Map<SignatureRole, Field> fields(PDDocument file) throws IOException {
        Map<SignatureRole, Field> fields = new LinkedHashMap<>();
        for (PDSignatureField field : file.getSignatureFields()) {
            Optional<SignatureRole> role = SignatureRole.ofField(field.getPartialName());
            if (role.isPresent()) {
                var box = field.getWidgets().get(0).getRectangle();
                fields.put(role.get(), new Field(box.getLowerLeftX(), box.getLowerLeftY(), box.getWidth(),
                        box.getHeight(), Optional.ofNullable(field.getSignature()).map(ReportFile::signature)));
            }
        }
        return fields;
    }

    private static Signature signature(PDSignature signature) {
        List<Long> range = new ArrayList<>();
        var numbers = signature.getCOSObject().getCOSArray(COSName.BYTERANGE);
        if (numbers != null) {
            for (int i = 0; i < numbers.size(); i++) {
                range.add(numbers.getObject(i) instanceof org.apache.pdfbox.cos.COSNumber number ? number.longValue() : -1L);
            }
        }
        return new Signature(text(signature.getName()), text(signature.getReason()), text(signature.getContactInfo()),
                List.copyOf(range));
    }

    private static String text(String value) {
        return value == null ? "" : value;
    }

    private static List<String> claims(PDDocumentCatalog catalog) throws IOException {
        PDMetadata metadata = catalog.getMetadata();
        if (metadata == null) {
            return List.of();
        }
        ByteArrayOutputStream packet = new ByteArrayOutputStream();
        new ByteArrayInputStream(metadata.toByteArray()).transferTo(packet);
        return ArchiveClaim.in(packet.toByteArray());
    }
}
