package org.shortgrain.bench;

import java.io.BufferedOutputStream;
import java.io.ByteArrayInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDContentStream;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;

/** Takes down the strokes, letters, tags, links, fields and attachments of a report, for {@link PdfFloor} to draw. */
public final class PdfFloorRecorder {

    private final PDDocument document;
    private final DataOutputStream list;
    private final Map<COSDictionary, Integer> nodes = new IdentityHashMap<>();
    private final List<PDPage> pages = new ArrayList<>();

    private PdfFloorRecorder(PDDocument document, DataOutputStream list) {
        this.document = document;
        this.list = list;
        document.getPages().forEach(pages::add);
    }

    /**
     * Writes the list.
     *
     * @param args the report, and the list to write
     * @throws IOException if one of them cannot be read or written
     */
    public static void main(String[] args) throws IOException {
        record(Path.of(args[0]), Path.of(args[1]));
    }

    static void record(Path report, Path list) throws IOException {
        try (PDDocument document = Loader.loadPDF(report.toFile());
                DataOutputStream out = new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(list)))) {
            new PdfFloorRecorder(document, out).record();
        }
    }

    private void record() throws IOException {
        COSDictionary root = document.getDocumentCatalog().getStructureTreeRoot().getCOSObject();
        List<COSDictionary> order = new ArrayList<>();
        collect(root.getCOSDictionary(COSName.K), order);
        writeTree(order);
        list.writeInt(pages.size());
        for (PDPage page : pages) {
            list.writeFloat(page.getMediaBox().getWidth());
            list.writeFloat(page.getMediaBox().getHeight());
        }
        COSArray numbers = root.getCOSDictionary(COSName.PARENT_TREE).getCOSArray(COSName.NUMS);
        for (PDPage page : pages) {
            writeContent(page, (COSArray) numbers.getObject(2 * page.getStructParents() + 1));
        }
        writeLinks(numbers);
        writeFields(numbers);
        writeOutline();
        writeRest();
    }

    private void collect(COSDictionary node, List<COSDictionary> order) {
        nodes.put(node, order.size());
        order.add(node);
        COSArray kids = node.getCOSArray(COSName.K);
        for (int i = 0; i < kids.size(); i++) {
            if (kids.getObject(i) instanceof COSDictionary kid && kid.containsKey(COSName.S)) {
                collect(kid, order);
            }
        }
    }

    private void writeTree(List<COSDictionary> order) throws IOException {
        list.writeInt(order.size());
        for (COSDictionary node : order) {
            list.writeUTF(node.getNameAsString(COSName.S));
            list.writeInt(nodes.getOrDefault(node.getCOSDictionary(COSName.P), -1));
            list.writeUTF(node.getString(COSName.getPDFName("Alt"), ""));
            writeAttribute(node.getCOSDictionary(COSName.A));
        }
    }

    private void writeAttribute(COSDictionary attributes) throws IOException {
        if (attributes == null) {
            list.writeByte(PdfFloor.NO_ATTRIBUTE);
        } else if (attributes.containsKey(COSName.BBOX)) {
            list.writeByte(PdfFloor.BOX_ATTRIBUTE);
            list.writeUTF(attributes.getNameAsString(COSName.O));
            writeFloats(attributes.getCOSArray(COSName.BBOX));
        } else {
            list.writeByte(PdfFloor.NAME_ATTRIBUTE);
            list.writeUTF(attributes.getNameAsString(COSName.O));
            String key = attributes.containsKey(COSName.getPDFName("Scope")) ? "Scope" : "ListNumbering";
            list.writeUTF(key);
            list.writeUTF(attributes.getNameAsString(key));
        }
    }

    private void writeFloats(COSArray array) throws IOException {
        for (float value : array.toFloatArray()) {
            list.writeFloat(value);
        }
    }

    /** Reads the operators that the report's writer uses, and refuses any other: nothing may be left out unseen. */
    private void writeContent(PDContentStream content, COSArray marks) throws IOException {
        List<COSBase> operands = new ArrayList<>();
        PDFont font = null;
        String setFont = "";
        float size = 0;
        float[] at = new float[2];
        boolean upward = false;
        PDFStreamParser parser = new PDFStreamParser(content);
        for (Object token = parser.parseNextToken(); token != null; token = parser.parseNextToken()) {
            if (!(token instanceof Operator operator)) {
                operands.add((COSBase) token);
                continue;
            }
            switch (operator.getName()) {
                case "BDC" -> {
                    list.writeByte(PdfFloor.MARK);
                    int id = ((COSDictionary) operands.get(1)).getInt(COSName.MCID);
                    list.writeInt(nodes.get((COSDictionary) marks.getObject(id)));
                }
                case "BMC" -> list.writeByte(PdfFloor.ARTIFACT);
                case "EMC" -> list.writeByte(PdfFloor.END_MARK);
                case "Tf" -> {
                    font = content.getResources().getFont((COSName) operands.get(0));
                    setFont = font.getName().substring(font.getName().indexOf('+') + 1);
                    size = ((COSNumber) operands.get(1)).floatValue();
                }
                case "Td" -> {
                    at = numbers(operands, 0);
                    upward = false;
                }
                case "Tm" -> {
                    at = numbers(operands, 4);
                    upward = true;
                }
                case "Tj" -> {
                    list.writeByte(upward ? PdfFloor.UPWARD_TEXT : PdfFloor.TEXT);
                    list.writeUTF(setFont);
                    list.writeFloat(size);
                    list.writeFloat(at[0]);
                    list.writeFloat(at[1]);
                    list.writeUTF(letters(font, (COSString) operands.get(0)));
                    setFont = "";
                }
                case "rg" -> write(PdfFloor.FILL_INK, operands);
                case "RG" -> write(PdfFloor.STROKE_INK, operands);
                case "w" -> write(PdfFloor.WIDTH, operands);
                case "m" -> write(PdfFloor.MOVE, operands);
                case "l" -> write(PdfFloor.LINE, operands);
                case "re" -> write(PdfFloor.BOX, operands);
                case "d" -> {
                    list.writeByte(PdfFloor.DASH);
                    list.writeInt(((COSArray) operands.get(0)).size());
                    writeFloats((COSArray) operands.get(0));
                }
                case "h" -> list.writeByte(PdfFloor.CLOSE);
                case "f" -> list.writeByte(PdfFloor.FILL);
                case "S" -> list.writeByte(PdfFloor.STROKE);
                case "W" -> list.writeByte(PdfFloor.CLIP);
                case "q" -> list.writeByte(PdfFloor.SAVE);
                case "Q" -> list.writeByte(PdfFloor.RESTORE);
                case "n", "BT", "ET", "cs", "CS" -> {
                    // part of clipping, text and colour, which the drawing program writes by itself
                }
                case "sc", "scn" -> write(PdfFloor.FILL_INK, operands);
                case "SC", "SCN" -> write(PdfFloor.STROKE_INK, operands);
                default -> throw new IOException("the report uses the operator " + operator.getName());
            }
            operands.clear();
        }
        list.writeByte(PdfFloor.END_PAGE);
    }

    private static float[] numbers(List<COSBase> operands, int from) {
        return new float[] {((COSNumber) operands.get(from)).floatValue(),
            ((COSNumber) operands.get(from + 1)).floatValue()};
    }

    private void write(byte operation, List<COSBase> operands) throws IOException {
        list.writeByte(operation);
        for (COSBase operand : operands) {
            list.writeFloat(((COSNumber) operand).floatValue());
        }
    }

    private static String letters(PDFont font, COSString text) throws IOException {
        StringBuilder letters = new StringBuilder();
        try (InputStream codes = new ByteArrayInputStream(text.getBytes())) {
            while (codes.available() > 0) {
                letters.append(font.toUnicode(font.readCode(codes)));
            }
        }
        return letters.toString();
    }

    private void writeLinks(COSArray numbers) throws IOException {
        for (PDPage page : pages) {
            List<COSDictionary> links = annotations(page, "Link");
            list.writeInt(links.size());
            for (COSDictionary link : links) {
                writeFloats(link.getCOSArray(COSName.RECT));
                list.writeUTF(link.getString(COSName.CONTENTS));
                COSArray destination = link.getCOSArray(COSName.DEST);
                list.writeInt(page((COSDictionary) destination.getObject(0)));
                list.writeFloat(((COSNumber) destination.getObject(3)).floatValue());
                writeOwner(numbers, link);
            }
        }
    }

    private void writeOwner(COSArray numbers, COSDictionary object) throws IOException {
        int key = object.getInt(COSName.STRUCT_PARENT);
        list.writeInt(nodes.get((COSDictionary) numbers.getObject(2 * key + 1)));
    }

    private static List<COSDictionary> annotations(PDPage page, String subtype) {
        List<COSDictionary> found = new ArrayList<>();
        COSArray annotations = page.getCOSObject().getCOSArray(COSName.ANNOTS);
        for (int i = 0; annotations != null && i < annotations.size(); i++) {
            COSDictionary annotation = (COSDictionary) annotations.getObject(i);
            if (subtype.equals(annotation.getNameAsString(COSName.SUBTYPE))) {
                found.add(annotation);
            }
        }
        return found;
    }

    private int page(COSDictionary dictionary) {
        for (int i = 0; i < pages.size(); i++) {
            if (pages.get(i).getCOSObject() == dictionary) {
                return i;
            }
        }
        throw new IllegalArgumentException("a link leads out of the document");
    }

    private void writeFields(COSArray numbers) throws IOException {
        int count = 0;
        for (PDPage page : pages) {
            count += annotations(page, "Widget").size();
        }
        list.writeInt(count);
        for (PDPage page : pages) {
            for (COSDictionary field : annotations(page, "Widget")) {
                list.writeInt(page(page.getCOSObject()));
                list.writeUTF(field.getString(COSName.T));
                list.writeUTF(field.getString(COSName.TU));
                writeFloats(field.getCOSArray(COSName.RECT));
                PDAppearanceStream appearance = new PDAppearanceStream(
                        (COSStream) field.getCOSDictionary(COSName.AP).getDictionaryObject(COSName.N));
                list.writeFloat(appearance.getBBox().getWidth());
                list.writeFloat(appearance.getBBox().getHeight());
                writeContent(appearance, new COSArray());
                writeOwner(numbers, field);
            }
        }
    }

    /** An entry of the outline and the number of the entry above it, -1 for none. */
    private record Entry(PDOutlineItem item, int parent) {
    }

    private void writeOutline() throws IOException {
        List<Entry> entries = new ArrayList<>();
        addChildren(document.getDocumentCatalog().getDocumentOutline(), -1, entries);
        list.writeInt(entries.size());
        for (Entry entry : entries) {
            list.writeInt(entry.parent());
            list.writeUTF(entry.item().getTitle());
            PDPageXYZDestination destination = (PDPageXYZDestination) entry.item().getDestination();
            list.writeInt(page(destination.getPage().getCOSObject()));
            list.writeInt(destination.getTop());
        }
    }

    private static void addChildren(PDOutlineNode node, int parent, List<Entry> entries) {
        for (PDOutlineItem item : node.children()) {
            entries.add(new Entry(item, parent));
            addChildren(item, entries.size() - 1, entries);
        }
    }

    private void writeRest() throws IOException {
        COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
        COSDictionary information = document.getDocumentInformation().getCOSObject();
        list.writeInt(information.size());
        for (COSName key : information.keySet()) {
            list.writeUTF(key.getName());
            list.writeUTF(information.getString(key));
        }
        list.writeUTF(catalog.getString(COSName.LANG));
        writeBytes((COSStream) catalog.getDictionaryObject(COSName.METADATA));
        COSDictionary intent = (COSDictionary) catalog.getCOSArray(COSName.OUTPUT_INTENTS).getObject(0);
        writeBytes((COSStream) intent.getDictionaryObject(COSName.DEST_OUTPUT_PROFILE));
        COSArray files = catalog.getCOSArray(COSName.AF);
        int count = files == null ? 0 : files.size();
        list.writeInt(count);
        for (int i = 0; i < count; i++) {
            COSDictionary file = (COSDictionary) files.getObject(i);
            COSStream stream = (COSStream) file.getCOSDictionary(COSName.EF).getDictionaryObject(COSName.F);
            list.writeUTF(file.getString(COSName.UF));
            list.writeUTF(file.getString(COSName.DESC));
            list.writeUTF(file.getNameAsString(COSName.AF_RELATIONSHIP));
            list.writeUTF(stream.getNameAsString(COSName.SUBTYPE));
            writeBytes(stream);
        }
    }

    private void writeBytes(COSStream stream) throws IOException {
        try (InputStream in = stream.createInputStream()) {
            byte[] bytes = in.readAllBytes();
            list.writeInt(bytes.length);
            list.write(bytes);
        }
    }
}
