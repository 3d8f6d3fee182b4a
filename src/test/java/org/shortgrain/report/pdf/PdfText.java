package org.shortgrain.report.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** What a program that reads a PDF finds in it. */
public final class PdfText {

    private PdfText() {
    }

    /**
     * {@return the text of each page in one line, so that a test need not know where lines end}
     *
     * @param pdf the file
     * @throws IOException if it is no PDF
     */
    public static List<String> pages(byte[] pdf) throws IOException {
        List<String> texts = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                texts.add(stripper.getText(document).replaceAll("[\\s\u00a0\u2002]+", " "));
            }
        }
        return texts;
    }
}
