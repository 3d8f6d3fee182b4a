package org.shortgrain.signoff;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;

/** What somebody may do to a report, by honest or other means. */
final class Tampering {

    private Tampering() {
    }

    /** Appends an object to a file, by an incremental update. */
    static byte[] withNote(byte[] pdf) throws Exception {
        try (PDDocument file = Loader.loadPDF(pdf)) {
            COSDictionary catalog = file.getDocumentCatalog().getCOSObject();
            catalog.setString(COSName.getPDFName("Note"), "appended");
            catalog.setNeedToBeUpdated(true);
            return updated(file);
        }
    }

    /** Puts another file in place of an attachment, by an incremental update. */
    static byte[] withAttachment(byte[] pdf, String name, String content) throws Exception {
        try (PDDocument file = Loader.loadPDF(pdf)) {
            for (var kid : file.getDocumentCatalog().getNames().getEmbeddedFiles().getKids()) {
                PDComplexFileSpecification specification = kid.getNames().get(name);
                if (specification != null) {
                    PDEmbeddedFile other = new PDEmbeddedFile(file,
                            new ByteArrayInputStream(content.getBytes(StandardCharsets.UTF_8)));
                    specification.setEmbeddedFile(other);
                    specification.setEmbeddedFileUnicode(other);
                    specification.getCOSObject().setNeedToBeUpdated(true);
                    ((COSDictionary) specification.getCOSObject().getDictionaryObject(COSName.EF)).setNeedToBeUpdated(true);
                }
            }
            return updated(file);
        }
    }

    /** Draws over a page, by an incremental update. */
    static byte[] withWordsOnThePage(byte[] pdf) throws Exception {
        try (PDDocument file = Loader.loadPDF(pdf)) {
            PDPage page = file.getPage(0);
            try (PDPageContentStream content = new PDPageContentStream(file, page, PDPageContentStream.AppendMode.APPEND, true)) {
                content.beginText();
                content.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 20);
                content.newLineAtOffset(100, 400);
                content.showText("NO OBJECTION");
                content.endText();
            }
            page.getCOSObject().setNeedToBeUpdated(true);
            return updated(file);
        }
    }

    /** Draws another name into a signed field, by an incremental update. */
    static byte[] withAnotherName(byte[] pdf, String field) throws Exception {
        try (PDDocument file = Loader.loadPDF(pdf)) {
            var widget = file.getDocumentCatalog().getAcroForm().getField(field).getWidgets().get(0);
            PDAppearanceStream seen = new PDAppearanceStream(file);
            seen.setBBox(new org.apache.pdfbox.pdmodel.common.PDRectangle(200, 60));
            seen.setResources(new org.apache.pdfbox.pdmodel.PDResources());
            var appearance = new org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceDictionary();
            appearance.setNormalAppearance(seen);
            widget.setAppearance(appearance);
            widget.getCOSObject().setNeedToBeUpdated(true);
            return updated(file);
        }
    }

    /** Takes a signature out of its field, by writing the file anew. */
    static byte[] without(byte[] pdf, String field) throws Exception {
        try (PDDocument file = Loader.loadPDF(pdf)) {
            file.getDocumentCatalog().getAcroForm().getField(field).getCOSObject().removeItem(COSName.V);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            file.save(out);
            return out.toByteArray();
        }
    }

    /** A PDF that is none of ours. */
    static byte[] strange() throws Exception {
        try (PDDocument file = new PDDocument()) {
            file.addPage(new PDPage());
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            file.save(out);
            return out.toByteArray();
        }
    }

    private static byte[] updated(PDDocument file) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        file.saveIncremental(out, Set.of());
        return out.toByteArray();
    }
}
