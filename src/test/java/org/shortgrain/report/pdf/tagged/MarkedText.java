package org.shortgrain.report.pdf.tagged;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/** The text of the marked stretches of a page, without the artifacts. */
final class MarkedText {

    private MarkedText() {
    }

    static List<String> of(PDPage page) throws IOException {
        PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
        extractor.processPage(page);
        return extractor.getMarkedContents().stream().filter(content -> content.getMCID() >= 0)
                .map(MarkedText::text).toList();
    }

    private static String text(PDMarkedContent content) {
        StringBuilder text = new StringBuilder();
        content.getContents().forEach(part -> {
            if (part instanceof TextPosition position) {
                text.append(position.getUnicode());
            }
        });
        return text.toString().strip();
    }
}
