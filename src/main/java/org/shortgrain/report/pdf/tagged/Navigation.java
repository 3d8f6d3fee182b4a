package org.shortgrain.report.pdf.tagged;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;

/** Adds the ways through a finished document: links and bookmarks. */
final class Navigation {

    /** Annotation flag "print" (ISO 32000-1, table 165), which PDF/A demands. */
    private static final int PRINT = 1 << 2;
    private static final COSName XYZ = COSName.getPDFName("XYZ");
    /** Room that stays visible above a target. */
    private static final double HEADROOM = 8;

    private final PDDocument file;
    private final StructureTree tree;
    private final List<Canvas> pages;

    Navigation(PDDocument file, StructureTree tree, List<Canvas> pages) {
        this.file = file;
        this.tree = tree;
        this.pages = pages;
    }

    void addLinks() {
        for (Canvas canvas : pages) {
            if (canvas.links().isEmpty()) {
                continue;
            }
            COSArray annotations = new COSArray();
            for (Canvas.LinkArea area : canvas.links()) {
                COSDictionary annotation = annotation(canvas, area);
                tree.addObject(canvas.page(), annotation, area.node());
                annotations.add(annotation);
            }
            canvas.page().getCOSObject().setItem(COSName.ANNOTS, annotations);
        }
    }

    private COSDictionary annotation(Canvas canvas, Canvas.LinkArea area) {
        COSDictionary annotation = new COSDictionary();
        annotation.setItem(COSName.TYPE, COSName.ANNOT);
        annotation.setItem(COSName.SUBTYPE, COSName.getPDFName("Link"));
        annotation.setItem(COSName.RECT, rectangle(canvas, area.left(), area.top(), area.width(), area.height()));
        annotation.setItem(COSName.BORDER, direct(COSInteger.ZERO, COSInteger.ZERO, COSInteger.ZERO));
        annotation.setInt(COSName.F, PRINT);
        annotation.setString(COSName.CONTENTS, area.link().text());
        Places.Place place = canvas.places().of(area.link().anchor());
        Canvas target = pages.get(place.page());
        float top = (float) (target.page().getMediaBox().getHeight() - place.top() + HEADROOM);
        annotation.setItem(COSName.DEST, direct(target.page().getCOSObject(), XYZ, COSInteger.ZERO,
                new COSFloat(top), COSNull.NULL));
        return annotation;
    }

    static COSArray rectangle(Canvas canvas, double left, double top, double width, double height) {
        double pageHeight = canvas.page().getMediaBox().getHeight();
        return direct(new COSFloat((float) left), new COSFloat((float) (pageHeight - top - height)),
                new COSFloat((float) (left + width)), new COSFloat((float) (pageHeight - top)));
    }

    private static COSArray direct(COSBase... items) {
        COSArray array = new COSArray(List.of(items));
        array.setDirect(true);
        return array;
    }

    void addOutline(List<List<Paginator.Placed>> made) {
        PDDocumentOutline outline = new PDDocumentOutline();
        List<PDOutlineNode> path = new ArrayList<>(List.of(outline));
        for (int page = 0; page < made.size(); page++) {
            for (Paginator.Placed placed : made.get(page)) {
                if (placed.repeated() || placed.piece().bookmark().isEmpty()) {
                    continue;
                }
                Piece.Bookmark bookmark = placed.piece().bookmark().get();
                PDOutlineItem item = item(bookmark, page, placed.top());
                int depth = Math.min(bookmark.level(), path.size());
                path.subList(depth, path.size()).clear();
                path.get(depth - 1).addLast(item);
                path.add(item);
            }
        }
        if (outline.hasChildren()) {
            file.getDocumentCatalog().setDocumentOutline(outline);
        }
    }

    private PDOutlineItem item(Piece.Bookmark bookmark, int page, double top) {
        PDPageXYZDestination destination = new PDPageXYZDestination();
        destination.setPage(pages.get(page).page());
        destination.setTop((int) Math.ceil(pages.get(page).page().getMediaBox().getHeight() - top + HEADROOM));
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(bookmark.title());
        item.setDestination(destination);
        return item;
    }
}
