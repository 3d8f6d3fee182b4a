package org.shortgrain.report.pdf.tagged;

import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/** The structure tree of a document and the way back from page content to it (ISO 32000-1, 14.7.4.4). */
final class StructureTree {

    private final COSDictionary root = new COSDictionary();
    private final COSArray numbers = new COSArray();
    private final StructNode document;
    private int nextKey;

    StructureTree(PDDocument file) {
        root.setItem(COSName.TYPE, COSName.STRUCT_TREE_ROOT);
        document = new StructNode("Document", root);
        root.setItem(COSName.K, document.dictionary());
        COSDictionary parentTree = new COSDictionary();
        parentTree.setItem(COSName.NUMS, numbers);
        root.setItem(COSName.PARENT_TREE, parentTree);
        file.getDocumentCatalog().getCOSObject().setItem(COSName.STRUCT_TREE_ROOT, root);
    }

    StructNode document() {
        return document;
    }

    /** Ties the marked stretches of a page, in the order of their numbers, to their elements. */
    void addPage(PDPage page, List<StructNode> marks) {
        COSArray elements = new COSArray();
        for (StructNode mark : marks) {
            elements.add(mark.dictionary());
        }
        page.setStructParents(addKey());
        numbers.add(elements);
    }

    /** Ties an annotation or field to its element, in both directions. */
    void addObject(PDPage page, COSDictionary object, StructNode node) {
        object.setInt(COSName.STRUCT_PARENT, addKey());
        numbers.add(node.dictionary());
        node.addObject(page, object);
    }

    private int addKey() {
        int key = nextKey++;
        numbers.add(COSInteger.get(key));
        root.setInt(COSName.PARENT_TREE_NEXT_KEY, nextKey);
        return key;
    }
}
