package org.shortgrain.bench;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.util.Matrix;

/**
 * The floor for the time of a report: a bare program that draws the same pages, straight on PDFBox.
 *
 * <p>It is handed the strokes, letters, tags, links, fields and attachments of a finished report ({@link
 * PdfFloorRecorder} takes them down) and writes the file anew: same fonts parsed and subset, same text encoded, same
 * structure tree, glyph substitution off as in the report. It reads no description, looks nothing up, computes nothing,
 * judges nothing, and breaks no line. What a review takes beyond this is what reviewing costs.
 *
 * <p>{@link ColdReviewBenchmark} runs the two in turn with the same flags.
 */
public final class PdfFloor {

    static final byte MARK = 1;
    static final byte ARTIFACT = 2;
    static final byte END_MARK = 3;
    static final byte TEXT = 4;
    static final byte UPWARD_TEXT = 5;
    static final byte FILL_INK = 6;
    static final byte STROKE_INK = 7;
    static final byte WIDTH = 8;
    static final byte DASH = 9;
    static final byte MOVE = 10;
    static final byte LINE = 11;
    static final byte BOX = 12;
    static final byte CLOSE = 13;
    static final byte FILL = 14;
    static final byte STROKE = 15;
    static final byte CLIP = 16;
    static final byte SAVE = 17;
    static final byte RESTORE = 18;
    static final byte END_PAGE = 19;

    static final byte NO_ATTRIBUTE = 0;
    static final byte NAME_ATTRIBUTE = 1;
    static final byte BOX_ATTRIBUTE = 2;

    private final DataInputStream list;
    private final PDDocument document = new PDDocument();
    private final Map<String, PDFont> fonts = new HashMap<>();
    private final List<COSDictionary> nodes = new ArrayList<>();
    private final List<COSDictionary> nodePages = new ArrayList<>();
    private final List<PDPage> pages = new ArrayList<>();
    private final COSArray numbers = new COSArray();
    private final COSDictionary treeRoot = new COSDictionary();
    private int nextKey;

    private PdfFloor(DataInputStream list) {
        this.list = list;
    }

    /**
     * Writes the file.
     *
     * @param args the list, and the file to write
     * @throws IOException if one of them cannot be read or written
     */
    public static void main(String[] args) throws IOException {
        System.setProperty("java.awt.headless", "true");
        try (DataInputStream list = new DataInputStream(new BufferedInputStream(Files.newInputStream(Path.of(args[0]))))) {
            new PdfFloor(list).draw(Path.of(args[1]));
        }
    }

    private void draw(Path out) throws IOException {
        try (document) {
            readTree();
            int count = list.readInt();
            for (int i = 0; i < count; i++) {
                PDPage page = new PDPage(new PDRectangle(list.readFloat(), list.readFloat()));
                document.addPage(page);
                pages.add(page);
            }
            for (PDPage page : pages) {
                drawPage(page);
            }
            readLinks();
            readFields();
            readOutline();
            readRest();
            try (var file = Files.newOutputStream(out)) {
                document.save(file);
            }
        }
    }

    private PDFont font(String name) throws IOException {
        PDFont known = fonts.get(name);
        if (known == null) {
            try (InputStream file = PdfFloor.class.getResourceAsStream("/fonts/" + name + ".ttf")) {
                TrueTypeFont parsed = new TTFParser().parse(new RandomAccessReadBuffer(file));
                parsed.setEnableGsub(false);
                known = PDType0Font.load(document, parsed, true);
                fonts.put(name, known);
            }
        }
        return known;
    }

    private void readTree() throws IOException {
        treeRoot.setItem(COSName.TYPE, COSName.STRUCT_TREE_ROOT);
        COSDictionary parents = new COSDictionary();
        parents.setItem(COSName.NUMS, numbers);
        treeRoot.setItem(COSName.PARENT_TREE, parents);
        document.getDocumentCatalog().getCOSObject().setItem(COSName.STRUCT_TREE_ROOT, treeRoot);
        int count = list.readInt();
        for (int i = 0; i < count; i++) {
            COSDictionary node = new COSDictionary();
            COSArray kids = new COSArray();
            kids.setDirect(true);
            node.setItem(COSName.TYPE, COSName.STRUCT_ELEM);
            node.setItem(COSName.S, COSName.getPDFName(list.readUTF()));
            int parent = list.readInt();
            node.setItem(COSName.P, parent < 0 ? treeRoot : nodes.get(parent));
            node.setItem(COSName.K, kids);
            if (parent < 0) {
                treeRoot.setItem(COSName.K, node);
            } else {
                nodes.get(parent).getCOSArray(COSName.K).add(node);
            }
            String alternative = list.readUTF();
            if (!alternative.isEmpty()) {
                node.setString(COSName.getPDFName("Alt"), alternative);
            }
            readAttribute(node);
            nodes.add(node);
            nodePages.add(null);
        }
    }

    private void readAttribute(COSDictionary node) throws IOException {
        byte kind = list.readByte();
        if (kind == NO_ATTRIBUTE) {
            return;
        }
        COSDictionary attributes = new COSDictionary();
        attributes.setDirect(true);
        attributes.setItem(COSName.O, COSName.getPDFName(list.readUTF()));
        if (kind == NAME_ATTRIBUTE) {
            attributes.setName(list.readUTF(), list.readUTF());
        } else {
            attributes.setItem(COSName.BBOX, floats(4));
        }
        node.setItem(COSName.A, attributes);
    }

    private COSArray floats(int count) throws IOException {
        COSArray array = new COSArray();
        array.setDirect(true);
        for (int i = 0; i < count; i++) {
            array.add(new COSFloat(list.readFloat()));
        }
        return array;
    }

    private void drawPage(PDPage page) throws IOException {
        COSArray marks = new COSArray();
        try (PDPageContentStream content = new PDPageContentStream(document, page,
                PDPageContentStream.AppendMode.OVERWRITE, true)) {
            drawContent(content, page, marks);
        }
        page.setStructParents(key());
        numbers.add(marks);
        page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
    }

    private int key() {
        int key = nextKey++;
        numbers.add(COSInteger.get(key));
        treeRoot.setInt(COSName.PARENT_TREE_NEXT_KEY, nextKey);
        return key;
    }

    private void drawContent(PDPageContentStream content, PDPage page, COSArray marks) throws IOException {
        for (byte operation = list.readByte(); operation != END_PAGE; operation = list.readByte()) {
            switch (operation) {
                case MARK -> mark(content, page, marks);
                case ARTIFACT -> content.beginMarkedContent(COSName.getPDFName("Artifact"));
                case END_MARK -> content.endMarkedContent();
                case TEXT, UPWARD_TEXT -> text(content, operation == UPWARD_TEXT);
                case FILL_INK -> content.setNonStrokingColor(list.readFloat(), list.readFloat(), list.readFloat());
                case STROKE_INK -> content.setStrokingColor(list.readFloat(), list.readFloat(), list.readFloat());
                case WIDTH -> content.setLineWidth(list.readFloat());
                case DASH -> content.setLineDashPattern(dash(), 0);
                case MOVE -> content.moveTo(list.readFloat(), list.readFloat());
                case LINE -> content.lineTo(list.readFloat(), list.readFloat());
                case BOX -> content.addRect(list.readFloat(), list.readFloat(), list.readFloat(), list.readFloat());
                case CLOSE -> content.closePath();
                case FILL -> content.fill();
                case STROKE -> content.stroke();
                case CLIP -> content.clip();
                case SAVE -> content.saveGraphicsState();
                case RESTORE -> content.restoreGraphicsState();
                default -> throw new IOException("operation " + operation);
            }
        }
    }

    private float[] dash() throws IOException {
        float[] dash = new float[list.readInt()];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = list.readFloat();
        }
        return dash;
    }

    private void mark(PDPageContentStream content, PDPage page, COSArray marks) throws IOException {
        int index = list.readInt();
        COSDictionary node = nodes.get(index);
        int id = marks.size();
        marks.add(node);
        content.beginMarkedContent(node.getCOSName(COSName.S), id);
        if (nodePages.get(index) == null) {
            nodePages.set(index, page.getCOSObject());
            node.setItem(COSName.PG, page.getCOSObject());
        }
        if (nodePages.get(index) == page.getCOSObject()) {
            node.getCOSArray(COSName.K).add(COSInteger.get(id));
        } else {
            COSDictionary reference = new COSDictionary();
            reference.setDirect(true);
            reference.setItem(COSName.TYPE, COSName.MCR);
            reference.setItem(COSName.PG, page.getCOSObject());
            reference.setInt(COSName.MCID, id);
            node.getCOSArray(COSName.K).add(reference);
        }
    }

    private void text(PDPageContentStream content, boolean upward) throws IOException {
        String name = list.readUTF();
        float size = list.readFloat();
        float x = list.readFloat();
        float y = list.readFloat();
        content.beginText();
        if (!name.isEmpty()) {
            content.setFont(font(name), size);
        }
        if (upward) {
            content.setTextMatrix(Matrix.getRotateInstance(Math.PI / 2, x, y));
        } else {
            content.newLineAtOffset(x, y);
        }
        content.showText(list.readUTF());
        content.endText();
    }

    private void readLinks() throws IOException {
        for (PDPage page : pages) {
            int count = list.readInt();
            COSArray annotations = new COSArray();
            for (int i = 0; i < count; i++) {
                COSDictionary link = new COSDictionary();
                link.setItem(COSName.TYPE, COSName.ANNOT);
                link.setItem(COSName.SUBTYPE, COSName.getPDFName("Link"));
                link.setItem(COSName.RECT, floats(4));
                link.setItem(COSName.BORDER, zeros());
                link.setInt(COSName.F, 4);
                link.setString(COSName.CONTENTS, list.readUTF());
                COSArray destination = new COSArray();
                destination.setDirect(true);
                destination.add(pages.get(list.readInt()).getCOSObject());
                destination.add(COSName.getPDFName("XYZ"));
                destination.add(COSInteger.ZERO);
                destination.add(new COSFloat(list.readFloat()));
                destination.add(COSNull.NULL);
                link.setItem(COSName.DEST, destination);
                addObject(page, link, list.readInt());
                annotations.add(link);
            }
            if (count > 0) {
                page.getCOSObject().setItem(COSName.ANNOTS, annotations);
            }
        }
    }

    private static COSArray zeros() {
        COSArray zeros = new COSArray(List.of(COSInteger.ZERO, COSInteger.ZERO, COSInteger.ZERO));
        zeros.setDirect(true);
        return zeros;
    }

    private void addObject(PDPage page, COSDictionary object, int node) {
        object.setInt(COSName.STRUCT_PARENT, key());
        numbers.add(nodes.get(node));
        COSDictionary reference = new COSDictionary();
        reference.setDirect(true);
        reference.setItem(COSName.TYPE, COSName.OBJR);
        reference.setItem(COSName.PG, page.getCOSObject());
        reference.setItem(COSName.OBJ, object);
        nodes.get(node).getCOSArray(COSName.K).add(reference);
    }

    private void readFields() throws IOException {
        int count = list.readInt();
        COSArray fields = new COSArray();
        for (int i = 0; i < count; i++) {
            PDPage page = pages.get(list.readInt());
            COSDictionary field = new COSDictionary();
            field.setItem(COSName.TYPE, COSName.ANNOT);
            field.setItem(COSName.SUBTYPE, COSName.getPDFName("Widget"));
            field.setItem(COSName.FT, COSName.SIG);
            field.setString(COSName.T, list.readUTF());
            field.setString(COSName.TU, list.readUTF());
            field.setInt(COSName.F, 4);
            field.setItem(COSName.P, page);
            field.setItem(COSName.RECT, floats(4));
            PDAppearanceStream appearance = new PDAppearanceStream(document);
            appearance.setResources(new PDResources());
            appearance.setBBox(new PDRectangle(list.readFloat(), list.readFloat()));
            try (PDPageContentStream content = new PDPageContentStream(document, appearance,
                    appearance.getContentStream().createOutputStream(COSName.FLATE_DECODE))) {
                drawContent(content, page, new COSArray());
            }
            COSDictionary appearances = new COSDictionary();
            appearances.setDirect(true);
            appearances.setItem(COSName.N, appearance);
            field.setItem(COSName.AP, appearances);
            addObject(page, field, list.readInt());
            COSArray annotations = page.getCOSObject().getCOSArray(COSName.ANNOTS);
            if (annotations == null) {
                annotations = new COSArray();
                page.getCOSObject().setItem(COSName.ANNOTS, annotations);
            }
            annotations.add(field);
            fields.add(field);
        }
        COSDictionary form = new COSDictionary();
        form.setItem(COSName.FIELDS, fields);
        document.getDocumentCatalog().getCOSObject().setItem(COSName.ACRO_FORM, form);
    }

    private void readOutline() throws IOException {
        PDDocumentOutline outline = new PDDocumentOutline();
        List<PDOutlineItem> items = new ArrayList<>();
        int count = list.readInt();
        for (int i = 0; i < count; i++) {
            int parent = list.readInt();
            PDOutlineItem item = new PDOutlineItem();
            item.setTitle(list.readUTF());
            PDPageXYZDestination destination = new PDPageXYZDestination();
            destination.setPage(pages.get(list.readInt()));
            destination.setTop(list.readInt());
            item.setDestination(destination);
            if (parent < 0) {
                outline.addLast(item);
            } else {
                items.get(parent).addLast(item);
            }
            items.add(item);
        }
        document.getDocumentCatalog().setDocumentOutline(outline);
    }

    /** Identity, metadata, colour profile and attachments. */
    private void readRest() throws IOException {
        COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
        document.setDocumentId(42L);
        document.setVersion(1.7f);
        COSDictionary information = document.getDocumentInformation().getCOSObject();
        int entries = list.readInt();
        for (int i = 0; i < entries; i++) {
            information.setString(list.readUTF(), list.readUTF());
        }
        catalog.setString(COSName.LANG, list.readUTF());
        COSDictionary marked = new COSDictionary();
        marked.setBoolean(COSName.getPDFName("Marked"), true);
        catalog.setItem(COSName.MARK_INFO, marked);
        COSDictionary preferences = new COSDictionary();
        preferences.setBoolean(COSName.getPDFName("DisplayDocTitle"), true);
        catalog.setItem(COSName.VIEWER_PREFERENCES, preferences);
        PDStream packet = new PDStream(document, new ByteArrayInputStream(bytes()));
        packet.getCOSObject().setItem(COSName.TYPE, COSName.METADATA);
        packet.getCOSObject().setItem(COSName.SUBTYPE, COSName.getPDFName("XML"));
        catalog.setItem(COSName.METADATA, packet);
        PDStream profile = new PDStream(document, new ByteArrayInputStream(bytes()), COSName.FLATE_DECODE);
        profile.getCOSObject().setInt(COSName.N, 3);
        COSDictionary intent = new COSDictionary();
        intent.setItem(COSName.TYPE, COSName.OUTPUT_INTENT);
        intent.setItem(COSName.S, COSName.GTS_PDFA1);
        intent.setString(COSName.OUTPUT_CONDITION_IDENTIFIER, "sRGB");
        intent.setItem(COSName.DEST_OUTPUT_PROFILE, profile);
        catalog.setItem(COSName.OUTPUT_INTENTS, new COSArray(List.of(intent)));
        readAttachments(catalog);
    }

    private void readAttachments(COSDictionary catalog) throws IOException {
        int count = list.readInt();
        COSArray names = new COSArray();
        COSArray associated = new COSArray();
        for (int i = 0; i < count; i++) {
            String name = list.readUTF();
            COSDictionary specification = new COSDictionary();
            specification.setItem(COSName.TYPE, COSName.FILESPEC);
            specification.setString(COSName.F, name);
            specification.setString(COSName.UF, name);
            specification.setString(COSName.DESC, list.readUTF());
            specification.setName(COSName.AF_RELATIONSHIP, list.readUTF());
            String type = list.readUTF();
            byte[] bytes = bytes();
            PDStream stream = new PDStream(document, new ByteArrayInputStream(bytes), COSName.FLATE_DECODE);
            stream.getCOSObject().setItem(COSName.TYPE, COSName.getPDFName("EmbeddedFile"));
            stream.getCOSObject().setItem(COSName.SUBTYPE, COSName.getPDFName(type));
            COSDictionary parameters = new COSDictionary();
            parameters.setInt(COSName.SIZE, bytes.length);
            stream.getCOSObject().setItem(COSName.PARAMS, parameters);
            COSDictionary files = new COSDictionary();
            files.setItem(COSName.F, stream);
            files.setItem(COSName.UF, stream);
            specification.setItem(COSName.EF, files);
            associated.add(specification);
            names.add(new COSString(name));
            names.add(specification);
        }
        COSDictionary leaf = new COSDictionary();
        leaf.setItem(COSName.NAMES, names);
        COSDictionary tree = new COSDictionary();
        tree.setItem(COSName.EMBEDDED_FILES, leaf);
        catalog.setItem(COSName.NAMES, tree);
        catalog.setItem(COSName.AF, associated);
    }

    private byte[] bytes() throws IOException {
        byte[] bytes = new byte[list.readInt()];
        list.readFully(bytes);
        return bytes;
    }
}
