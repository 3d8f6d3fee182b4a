package org.shortgrain.signoff;

import eu.europa.esig.dss.model.DSSException;
import eu.europa.esig.dss.pdf.PDFServiceMode;
import eu.europa.esig.dss.pdf.PDFSignatureService;
import eu.europa.esig.dss.pdf.pdfbox.PdfBoxNativeObjectFactory;
import eu.europa.esig.dss.pdf.pdfbox.PdfBoxSignatureService;
import eu.europa.esig.dss.pdf.pdfbox.visible.nativedrawer.PdfBoxNativeSignatureDrawerFactory;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationWidget;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceDictionary;
import org.shortgrain.report.pdf.tagged.Fonts;
import org.shortgrain.report.pdf.tagged.SignatureAppearance;

/**
 * Sets what is seen of a signature into the field that the report holds ready.
 *
 * <p>The library draws signatures into fields that it places itself, and takes the rectangle away from a field for which
 * it is given nothing to draw. Here the field keeps its rectangle and its place in the structure of the document, and the
 * text is set in the report's own fonts, so that the file stays PDF/A and PDF/UA.
 */
final class VisibleSignature extends PdfBoxNativeObjectFactory {

    private final String field;
    private final ReportFile.Field place;
    private final Fonts fonts;
    private final String first;
    private final List<String> others;

    VisibleSignature(String field, ReportFile.Field place, Fonts fonts, String first, List<String> others) {
        this.field = field;
        this.place = place;
        this.fonts = fonts;
        this.first = first;
        this.others = List.copyOf(others);
    }

    @Override
    public PDFSignatureService newPAdESSignatureService() {
        return configure(new PdfBoxSignatureService(PDFServiceMode.SIGNATURE, new PdfBoxNativeSignatureDrawerFactory()) {
            @Override
            public void saveDocumentIncrementally(PDDocument document, OutputStream to) {
                show(document);
                super.saveDocumentIncrementally(document, to);
            }
        });
    }

    private void show(PDDocument document) {
        try {
            PDAnnotationWidget widget = document.getDocumentCatalog().getAcroForm().getField(field).getWidgets().get(0);
            widget.setRectangle(new PDRectangle(place.left(), place.bottom(), place.width(), place.height()));
            PDAppearanceDictionary appearance = new PDAppearanceDictionary();
            appearance.setNormalAppearance(
                    SignatureAppearance.of(document, fonts, place.width(), place.height(), first, others));
            widget.setAppearance(appearance);
        } catch (IOException broken) {
            throw new DSSException("the signature cannot be drawn", broken);
        }
    }
}
