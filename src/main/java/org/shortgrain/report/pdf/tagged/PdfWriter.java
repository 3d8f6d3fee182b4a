package org.shortgrain.report.pdf.tagged;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Sets a manuscript and writes it as PDF/A-3a and PDF/UA-1. */
public final class PdfWriter {

    private static final int USUAL_SIZE = 1 << 18;

    private final PDDocument file;
    private final Manuscript manuscript;
    private final EmbeddedFonts embedded;
    private final StructureTree tree;
    private final Setting setting;

    private PdfWriter(PDDocument file, Manuscript manuscript, Fonts fonts) {
        this.file = file;
        this.manuscript = manuscript;
        this.embedded = new EmbeddedFonts(file, fonts, new GlyphGuard(fonts));
        this.tree = new StructureTree(file);
        this.setting = new Setting(fonts, embedded.guard(), manuscript.paper().textWidth(), tree.document());
    }

    /**
     * A written document.
     *
     * @param bytes    the file; not copied
     * @param pages    number of its pages
     * @param warnings characters that could not be printed
     */
    public record Written(byte[] bytes, int pages, List<String> warnings) {
        /** Copies the list. */
        public Written {
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * {@return the file of a manuscript; the same manuscript gives the same bytes}
     *
     * @param manuscript the manuscript
     * @param fonts      parsed fonts, used by this thread alone
     * @throws IllegalArgumentException if a link leads nowhere or two places bear the same name
     */
    public static Written write(Manuscript manuscript, Fonts fonts) {
        try (PDDocument file = new PDDocument()) {
            return new PdfWriter(file, manuscript, fonts).write();
        } catch (IOException broken) {
            throw new UncheckedIOException("writing a PDF into memory failed", broken);
        }
    }

    private Written write() throws IOException {
        Paper paper = manuscript.paper();
        List<List<Paginator.Placed>> made = Paginator.pages(Typesetter.pieces(manuscript.blocks(), setting),
                paper.textTop(), paper.textHeight());
        List<Canvas> pages = paint(made);
        Navigation navigation = new Navigation(file, tree, pages);
        navigation.addLinks();
        navigation.addOutline(made);
        new SignatureFields(file, tree, embedded).add(pages);
        Archive.seal(file, manuscript);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(USUAL_SIZE);
        file.save(bytes);
        return new Written(bytes.toByteArray(), pages.size(), embedded.guard().warnings());
    }

    private List<Canvas> paint(List<List<Paginator.Placed>> made) {
        Paper paper = manuscript.paper();
        Places places = places(made);
        RunningLines running = new RunningLines(manuscript.running(), paper, setting, made.size());
        List<Canvas> pages = new ArrayList<>();
        for (int i = 0; i < made.size(); i++) {
            PDPage page = new PDPage(new PDRectangle((float) paper.width(), (float) paper.height()));
            file.addPage(page);
            Canvas canvas = new Canvas(file, page, embedded, places);
            for (Paginator.Placed placed : made.get(i)) {
                canvas.mute(placed.repeated());
                placed.piece().painter().paint(canvas, paper.textLeft(), placed.top());
            }
            running.paint(canvas, i);
            canvas.close();
            tree.addPage(page, canvas.marks());
            pages.add(canvas);
        }
        return pages;
    }

    private static Places places(List<List<Paginator.Placed>> made) {
        Places places = new Places();
        for (int page = 0; page < made.size(); page++) {
            for (Paginator.Placed placed : made.get(page)) {
                if (!placed.repeated()) {
                    Places.Place place = new Places.Place(page, placed.top());
                    for (String anchor : placed.piece().anchors()) {
                        places.add(anchor, place);
                    }
                }
            }
        }
        return places;
    }
}
