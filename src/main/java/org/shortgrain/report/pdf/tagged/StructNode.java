package org.shortgrain.report.pdf.tagged;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;

/** An element of the structure tree (ISO 32000-1, 14.7.2): what a piece of the page is, in reading order. */
final class StructNode {

    private static final COSName TABLE_ATTRIBUTES = COSName.getPDFName("Table");
    private static final COSName LAYOUT_ATTRIBUTES = COSName.getPDFName("Layout");
    private static final COSName LIST_ATTRIBUTES = COSName.getPDFName("List");

    private final COSName type;
    private final COSDictionary dictionary = new COSDictionary();
    private final COSArray kids = new COSArray();
    private COSDictionary page;

    StructNode(String type, COSDictionary parent) {
        this.type = COSName.getPDFName(type);
        kids.setDirect(true);
        dictionary.setItem(COSName.TYPE, COSName.STRUCT_ELEM);
        dictionary.setItem(COSName.S, this.type);
        dictionary.setItem(COSName.P, parent);
        dictionary.setItem(COSName.K, kids);
    }

    COSName type() {
        return type;
    }

    COSDictionary dictionary() {
        return dictionary;
    }

    /** {@return a new last child} */
    StructNode child(String childType) {
        StructNode child = new StructNode(childType, dictionary);
        kids.add(child.dictionary);
        return child;
    }

    /** Says for which cells a heading cell speaks: {@code Column} or {@code Row}. */
    StructNode scope(String scope) {
        attributes(TABLE_ATTRIBUTES).setName("Scope", scope);
        return this;
    }

    /** Says how the items of a list are labelled. */
    StructNode numbering(String numbering) {
        attributes(LIST_ATTRIBUTES).setName("ListNumbering", numbering);
        return this;
    }

    StructNode alternative(String text) {
        dictionary.setString(COSName.getPDFName("Alt"), text);
        return this;
    }

    void boundingBox(double left, double bottom, double right, double top) {
        COSArray box = new COSArray();
        box.setFloatArray(new float[] {(float) left, (float) bottom, (float) right, (float) top});
        box.setDirect(true);
        attributes(LAYOUT_ATTRIBUTES).setItem(COSName.BBOX, box);
    }

    private COSDictionary attributes(COSName owner) {
        COSDictionary attributes = new COSDictionary();
        attributes.setDirect(true);
        attributes.setItem(COSName.O, owner);
        dictionary.setItem(COSName.A, attributes);
        return attributes;
    }

    /** Adds a marked stretch of a page. */
    void addMarked(PDPage onPage, int markedContentId) {
        if (page == null) {
            page = onPage.getCOSObject();
            dictionary.setItem(COSName.PG, page);
        }
        if (page == onPage.getCOSObject()) {
            kids.add(COSInteger.get(markedContentId));
            return;
        }
        COSDictionary reference = new COSDictionary();
        reference.setDirect(true);
        reference.setItem(COSName.TYPE, COSName.MCR);
        reference.setItem(COSName.PG, onPage.getCOSObject());
        reference.setInt(COSName.MCID, markedContentId);
        kids.add(reference);
    }

    /** Adds an annotation or a form field. */
    void addObject(PDPage onPage, COSDictionary object) {
        COSDictionary reference = new COSDictionary();
        reference.setDirect(true);
        reference.setItem(COSName.TYPE, COSName.OBJR);
        reference.setItem(COSName.PG, onPage.getCOSObject());
        reference.setItem(COSName.OBJ, object);
        kids.add(reference);
    }
}
