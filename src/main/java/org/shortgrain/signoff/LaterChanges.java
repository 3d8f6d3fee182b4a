package org.shortgrain.signoff;

import eu.europa.esig.dss.diagnostic.PDFRevisionWrapper;
import eu.europa.esig.dss.diagnostic.jaxb.XmlObjectModification;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/** What the updates after a signature did to the file. */
final class LaterChanges {

    /** A field and the signature that was put into it: numbers of the two objects, at the end of a path. */
    private static final Pattern SIGNED_FIELD = Pattern.compile("(\\d+ \\d+ R /V \\d+ \\d+ R)$");
    private static final String BY_THE_FORM = "/Catalog /AcroForm ";
    private static final int DEEPEST = 12;

    private LaterChanges() {
    }

    /**
     * {@return changes that are neither a signature nor its appearance, as paths of objects}
     *
     * <p>The library reaches a field on several ways. A new signature that it finds in a field by way of the structure
     * tree, which it does not know as a way to fields, is the very object that it finds by way of the form.
     *
     * @param revision what the library says of the revision
     */
    static List<String> ofOtherKind(PDFRevisionWrapper revision) {
        Set<String> signed = revision.getPdfSignatureOrFormFillChanges().stream().map(XmlObjectModification::getValue)
                .filter(path -> path.startsWith(BY_THE_FORM)).flatMap(path -> signedField(path).stream())
                .collect(Collectors.toSet());
        return revision.getPdfUndefinedChanges().stream().map(XmlObjectModification::getValue)
                .filter(path -> signedField(path).filter(signed::contains).isEmpty()).toList();
    }

    private static Optional<String> signedField(String path) {
        Matcher end = SIGNED_FIELD.matcher(path);
        return end.find() ? Optional.of(end.group(1)) : Optional.empty();
    }

    /**
     * {@return whether what is seen of a signature is not what was seen when it was made}
     *
     * <p>The standard counts that as filling in a form, which certification allows; of a signature it is a forgery.
     *
     * @param file  the file
     * @param field name of the signature field
     * @param end   end of the revision that the signature covers, bytes
     */
    static boolean isRedrawn(byte[] file, String field, long end) {
        if (end >= file.length) {
            return false;
        }
        return !Arrays.equals(look(Arrays.copyOf(file, (int) end), field), look(file, field));
    }

    private static byte[] look(byte[] file, String field) {
        try (PDDocument document = Loader.loadPDF(file)) {
            COSDictionary widget = document.getDocumentCatalog().getAcroForm().getField(field).getWidgets().get(0)
                    .getCOSObject();
            ByteArrayOutputStream seen = new ByteArrayOutputStream();
            write(widget.getDictionaryObject(COSName.RECT), seen, 0);
            write(widget.getDictionaryObject(COSName.AP), seen, 0);
            write(widget.getDictionaryObject(COSName.F), seen, 0);
            return seen.toByteArray();
        } catch (IOException | RuntimeException damaged) {
            return new byte[0];
        }
    }

    private static void write(COSBase value, ByteArrayOutputStream to, int depth) throws IOException {
        if (depth > DEEPEST) {
            return;
        }
        if (value instanceof COSStream stream) {
            try (var in = stream.createRawInputStream()) {
                in.transferTo(to);
            }
        }
        if (value instanceof COSDictionary dictionary) {
            for (COSName name : dictionary.keySet().stream().sorted().toList()) {
                if (!name.equals(COSName.PARENT) && !name.equals(COSName.P)) {
                    to.writeBytes(name.getName().getBytes(java.nio.charset.StandardCharsets.UTF_8));
                    write(dictionary.getDictionaryObject(name), to, depth + 1);
                }
            }
        } else if (value instanceof COSArray array) {
            for (int i = 0; i < array.size(); i++) {
                write(array.getObject(i), to, depth + 1);
            }
        } else {
            to.writeBytes(String.valueOf(value).getBytes(java.nio.charset.StandardCharsets.UTF_8));
        }
    }
}
