package org.shortgrain.report.pdf.tagged;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;
import org.shortgrain.report.pdf.figure.Ink;
import org.shortgrain.report.pdf.figure.Point;
import org.shortgrain.report.pdf.figure.Stroke;

/**
 * One page to draw on. Everything drawn belongs either to an element of the structure tree or to the artifacts (rules,
 * backgrounds, running lines), whichever was named last. It is drawn into memory, where no output can fail but by a
 * defect.
 */
final class Canvas {

    private static final COSName ARTIFACT = COSName.getPDFName("Artifact");
    private static final float[] SOLID = {};
    private static final float[] DASHES = {3.2f, 2f};
    private static final float[] DOTS = {0.9f, 1.8f};
    private static final float[] CHAIN = {7f, 1.8f, 1.2f, 1.8f};

    private final PDPage page;
    private final PDPageContentStream content;
    private final EmbeddedFonts embedded;
    private final Places places;
    private final double height;

    private final List<StructNode> marks = new ArrayList<>();
    private final List<LinkArea> links = new ArrayList<>();
    private final List<FieldArea> fields = new ArrayList<>();
    private Optional<StructNode> openNode = Optional.empty();
    private boolean open;
    private boolean muted;

    private PDFont font;
    private double fontSize;
    private Ink fillInk;
    private Stroke stroke;

    /** A rectangle that leads somewhere: left, top, width, height from the upper left corner of the page. */
    record LinkArea(double left, double top, double width, double height, Line.LinkMark link, StructNode node) {
    }

    /** The rectangle of an empty signature field. */
    record FieldArea(double left, double top, double width, double height, Block.Slot slot, StructNode node) {
    }

    Canvas(PDDocument document, PDPage page, EmbeddedFonts embedded, Places places) {
        this.page = page;
        this.embedded = embedded;
        this.places = places;
        this.height = page.getMediaBox().getHeight();
        try {
            this.content = new PDPageContentStream(document, page, PDPageContentStream.AppendMode.OVERWRITE, true);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    Fonts fonts() {
        return embedded.fonts();
    }

    GlyphGuard guard() {
        return embedded.guard();
    }

    Places places() {
        return places;
    }

    PDPage page() {
        return page;
    }

    List<StructNode> marks() {
        return marks;
    }

    List<LinkArea> links() {
        return links;
    }

    List<FieldArea> fields() {
        return fields;
    }

    /** What is drawn from here on is the content of an element. */
    void mark(StructNode node) {
        if (muted) {
            artifact();
            return;
        }
        if (open && openNode.isPresent() && openNode.get() == node) {
            return;
        }
        endMark();
        int id = marks.size();
        marks.add(node);
        node.addMarked(page, id);
        try {
            content.beginMarkedContent(node.type(), id);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        open = true;
        openNode = Optional.of(node);
    }

    /** What is drawn from here on only serves the layout. */
    void artifact() {
        if (open && openNode.isEmpty()) {
            return;
        }
        endMark();
        try {
            content.beginMarkedContent(ARTIFACT);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        open = true;
        openNode = Optional.empty();
    }

    private void endMark() {
        if (!open) {
            return;
        }
        try {
            content.endMarkedContent();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        open = false;
    }

    /** Whether what is drawn from here on stands elsewhere already, such as a repeated table heading: all artifacts. */
    void mute(boolean repeated) {
        muted = repeated;
    }

    void link(double left, double top, double width, double lineHeight, Line.LinkMark link, StructNode node) {
        if (!muted) {
            links.add(new LinkArea(left, top, width, lineHeight, link, node));
        }
    }

    void field(double left, double top, double width, double boxHeight, Block.Slot slot, StructNode node) {
        fields.add(new FieldArea(left, top, width, boxHeight, slot, node));
    }

    /** Gives an element the rectangle that it covers, in the coordinates of the page. */
    void bound(StructNode node, double left, double top, double width, double boxHeight) {
        node.boundingBox(left, height - top - boxHeight, left + width, height - top);
    }

    void text(Face face, double size, Ink ink, double x, double baseline, String letters) {
        try {
            fill(ink);
            content.beginText();
            use(face, size);
            content.newLineAtOffset((float) x, (float) (height - baseline));
            content.showText(letters);
            content.endText();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    void upwardText(Face face, double size, Ink ink, double x, double baseline, String letters) {
        try {
            fill(ink);
            content.beginText();
            use(face, size);
            content.setTextMatrix(Matrix.getRotateInstance(Math.PI / 2, (float) x, (float) (height - baseline)));
            content.showText(letters);
            content.endText();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    void line(List<Point> points, Stroke with) {
        try {
            stroke(with);
            path(points);
            content.stroke();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    void line(double x1, double y1, double x2, double y2, Stroke with) {
        line(List.of(new Point(x1, y1), new Point(x2, y2)), with);
    }

    void area(List<Point> outline, Ink ink) {
        try {
            fill(ink);
            path(outline);
            content.closePath();
            content.fill();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    void fillBox(double left, double top, double width, double boxHeight, Ink ink) {
        try {
            fill(ink);
            content.addRect((float) left, (float) (height - top - boxHeight), (float) width, (float) boxHeight);
            content.fill();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    void strokeBox(double left, double top, double width, double boxHeight, Stroke with) {
        try {
            stroke(with);
            content.addRect((float) left, (float) (height - top - boxHeight), (float) width, (float) boxHeight);
            content.stroke();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** What is drawn from here on shows only inside an outline. */
    void clip(List<Point> outline) {
        try {
            content.saveGraphicsState();
            path(outline);
            content.closePath();
            content.clip();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** What is drawn from here on shows everywhere again. */
    void unclip() {
        try {
            content.restoreGraphicsState();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        font = null;
        fillInk = null;
        stroke = null;
    }

    void close() {
        endMark();
        try {
            content.close();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private void path(List<Point> points) throws IOException {
        Point first = points.get(0);
        content.moveTo((float) first.x(), (float) (height - first.y()));
        for (Point point : points.subList(1, points.size())) {
            content.lineTo((float) point.x(), (float) (height - point.y()));
        }
    }

    private void use(Face face, double size) throws IOException {
        PDFont wanted = embedded.get(face);
        if (wanted != font || size != fontSize) {
            content.setFont(wanted, (float) size);
            font = wanted;
            fontSize = size;
        }
    }

    private void fill(Ink ink) throws IOException {
        if (ink != fillInk) {
            content.setNonStrokingColor(ink.red(), ink.green(), ink.blue());
            fillInk = ink;
        }
    }

    private void stroke(Stroke wanted) throws IOException {
        if (wanted == stroke) {
            return;
        }
        content.setStrokingColor(wanted.ink().red(), wanted.ink().green(), wanted.ink().blue());
        content.setLineWidth((float) wanted.width());
        content.setLineDashPattern(switch (wanted.dash()) {
            case SOLID -> SOLID;
            case DASHED -> DASHES;
            case DOTTED -> DOTS;
            case CHAIN -> CHAIN;
        }, 0);
        stroke = wanted;
    }
}
