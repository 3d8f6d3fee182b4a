package org.shortgrain.signoff;

import eu.europa.esig.dss.diagnostic.PDFRevisionWrapper;
import eu.europa.esig.dss.diagnostic.jaxb.XmlObjectModification;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
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
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.form.PDField;

/** What the updates after a signature did to the file. */
final class LaterChanges {

    /** A field into which a signature was put: the number of its object, at the end of a path. */
    private static final Pattern SIGNED_FIELD = Pattern.compile("(\\d+ \\d+ R) /V \\d+ \\d+ R$");
    /** Something in the appearance of a field. */
    private static final Pattern APPEARANCE = Pattern.compile("/Annots (\\d+ \\d+ R) /AP /N [^/]*(/.*)?$");
    private static final String BY_THE_FORM = "/Catalog /AcroForm ";
    private static final int DEEPEST = 12;

    private LaterChanges() {
    }

    /**
     * {@return changes that are neither a signature nor its appearance, as paths of objects}
     *
     * <p>The library reaches a field on several ways. A new signature that it finds in a field by way of the structure
     * tree, which it does not know as a way to fields, is the very object that it finds by way of the form; and the
     * appearance of a field that was empty is part of putting a signature into it.
     *
     * @param revision what the library says of the revision
     */
    static List<String> ofOtherKind(PDFRevisionWrapper revision) {
        Set<String> signed = revision.getPdfSignatureOrFormFillChanges().stream().map(XmlObjectModification::getValue)
                .filter(path -> path.startsWith(BY_THE_FORM)).flatMap(path -> match(SIGNED_FIELD, path).stream())
                .collect(Collectors.toSet());
        return revision.getPdfUndefinedChanges().stream().map(XmlObjectModification::getValue)
                .filter(path -> match(SIGNED_FIELD, path).or(() -> match(APPEARANCE, path)).filter(signed::contains).isEmpty())
                .toList();
    }

    private static Optional<String> match(Pattern pattern, String path) {
        Matcher found = pattern.matcher(path);
        return found.find() ? Optional.of(found.group(1)) : Optional.empty();
    }

    /**
     * {@return objects of a signed revision that a later update defines anew though no signature needs that}
     *
     * <p>A signature needs the catalogue, the form with its list of fields, and the fields that are signed later. Asked
     * here apart from the library, since that looks at each object on the first way on which it reaches it.
     *
     * @param file the file
     * @param end  end of the revision, bytes
     */
    static List<String> redefined(byte[] file, long end) {
        if (end >= file.length) {
            return List.of();
        }
        try (PDDocument then = Loader.loadPDF(Arrays.copyOf(file, (int) end)); PDDocument now = Loader.loadPDF(file)) {
            Set<COSObjectKey> needed = needed(then, now);
            Map<COSObjectKey, Long> places = now.getDocument().getXrefTable();
            return then.getDocument().getXrefTable().entrySet().stream()
                    .filter(entry -> !entry.getValue().equals(places.get(entry.getKey())))
                    .map(Map.Entry::getKey).filter(key -> !needed.contains(key)).map(COSObjectKey::toString).toList();
        } catch (IOException | RuntimeException damaged) {
            return List.of("the file, which cannot be read");
        }
    }

    private static Set<COSObjectKey> needed(PDDocument then, PDDocument now) throws IOException {
        Set<COSObjectKey> keys = new HashSet<>();
        COSDictionary catalog = then.getDocumentCatalog().getCOSObject();
        key(then.getDocument().getTrailer().getItem(COSName.ROOT)).ifPresent(keys::add);
        key(catalog.getItem(COSName.ACRO_FORM)).ifPresent(keys::add);
        COSDictionary form = catalog.getCOSDictionary(COSName.ACRO_FORM);
        key(form.getItem(COSName.FIELDS)).ifPresent(keys::add);
        COSArray fields = form.getCOSArray(COSName.FIELDS);
        for (int i = 0; i < fields.size(); i++) {
            COSDictionary field = (COSDictionary) fields.getObject(i);
            PDField later = now.getDocumentCatalog().getAcroForm().getField(field.getString(COSName.T));
            boolean signedLater = !field.containsKey(COSName.V) && later != null
                    && later.getCOSObject().containsKey(COSName.V);
            if (signedLater) {
                key(fields.get(i)).ifPresent(keys::add);
            }
        }
        return keys;
    }

    private static Optional<COSObjectKey> key(COSBase item) {
        return item instanceof COSObject reference ? Optional.ofNullable(reference.getKey()) : Optional.empty();
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
