package org.shortgrain.report.pdf.tagged;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.shortgrain.report.pdf.figure.Ink;

/**
 * Adds empty signature fields. They are finished with the document, since adding a field after the first signature
 * counts as a change for some readers; what stands in an empty field is its appearance, which signing replaces.
 */
final class SignatureFields {

    private static final int PRINT = 1 << 2;
    private static final double INSET = 8;
    private static final double SIZE = 7.4;
    private static final Lines.Font PLACEHOLDER = new Lines.Font(Face.REGULAR, SIZE, SIZE * 1.4, Ink.GREY);

    private final PDDocument file;
    private final StructureTree tree;
    private final EmbeddedFonts fonts;

    SignatureFields(PDDocument file, StructureTree tree, EmbeddedFonts fonts) {
        this.file = file;
        this.tree = tree;
        this.fonts = fonts;
    }

    void add(List<Canvas> pages) throws IOException {
        COSArray fields = new COSArray();
        for (Canvas canvas : pages) {
            for (Canvas.FieldArea area : canvas.fields()) {
                COSDictionary field = field(canvas, area);
                tree.addObject(canvas.page(), field, area.node());
                addAnnotation(canvas, field);
                fields.add(field);
            }
        }
        if (fields.size() > 0) {
            COSDictionary form = new COSDictionary();
            form.setItem(COSName.FIELDS, fields);
            file.getDocumentCatalog().getCOSObject().setItem(COSName.ACRO_FORM, form);
        }
    }

    private static void addAnnotation(Canvas canvas, COSDictionary field) {
        COSDictionary page = canvas.page().getCOSObject();
        COSArray annotations = page.getCOSArray(COSName.ANNOTS);
        if (annotations == null) {
            annotations = new COSArray();
            page.setItem(COSName.ANNOTS, annotations);
        }
        annotations.add(field);
    }

    /** Field and widget in one dictionary, as there is one widget to the field. */
    private COSDictionary field(Canvas canvas, Canvas.FieldArea area) throws IOException {
        COSDictionary field = new COSDictionary();
        field.setItem(COSName.TYPE, COSName.ANNOT);
        field.setItem(COSName.SUBTYPE, COSName.getPDFName("Widget"));
        field.setItem(COSName.FT, COSName.SIG);
        field.setString(COSName.T, area.slot().field());
        field.setString(COSName.TU, area.slot().role() + ": " + area.slot().meaning());
        field.setInt(COSName.F, PRINT);
        field.setItem(COSName.P, canvas.page());
        field.setItem(COSName.RECT,
                Navigation.rectangle(canvas, area.left(), area.top(), area.width(), area.height()));
        COSDictionary appearance = new COSDictionary();
        appearance.setDirect(true);
        appearance.setItem(COSName.N, placeholder(area));
        field.setItem(COSName.AP, appearance);
        return field;
    }

    private PDAppearanceStream placeholder(Canvas.FieldArea area) throws IOException {
        return new FieldAppearance(file, fonts).stream(area.width(), area.height(),
                List.of(Text.of(area.slot().placeholder())), PLACEHOLDER, INSET);
    }
}
