package org.shortgrain.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.review.Calculation;
import org.shortgrain.review.Contribution;
import org.shortgrain.review.DirectionReview;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.Review;
import org.shortgrain.review.StatedLine;

/**
 * Every number on page one is followed by its links, as a reader with a mouse would: to the stresses at its place, from
 * there to each calculation, and from each calculation to every value of the description and every source that went in.
 * What the target holds is read from the page.
 */
class ReportTraceTest {

    /** Height below a destination within which its content must begin, points: a heading and a row of a table. */
    private static final double NEAR = 90;
    /** Height below the heading of a place within which its stresses stand. */
    private static final double TABLE = 330;
    /** Height below a destination within which a heading stands. */
    private static final double HEADING = 24;
    private static final String REGION = "target";

    @TempDir
    Path folder;

    static List<Path> samples() {
        return Printed.samples();
    }

    /** A link with its words, where it stands and where it leads. */
    private record Link(String words, int page, double fromTop, int toPage, double toTop) {
    }

    /** A report being followed. */
    private record Reader(PDDocument document, Review review, List<Link> links) {

        static Reader of(PDDocument document, Review review) throws IOException {
            List<Link> links = new ArrayList<>();
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                PDPage sheet = document.getPage(page);
                for (PDAnnotation annotation : sheet.getAnnotations()) {
                    if (annotation instanceof PDAnnotationLink link) {
                        PDPageXYZDestination to = (PDPageXYZDestination) link.getDestination();
                        double height = sheet.getMediaBox().getHeight();
                        links.add(new Link(link.getContents(), page, height - link.getRectangle().getUpperRightY(),
                                document.getPages().indexOf(to.getPage()), height - to.getTop()));
                    }
                }
            }
            return new Reader(document, review, links);
        }

        /** The text of a strip across a page, in one line. */
        String text(int page, double top, double height) throws IOException {
            PDFTextStripperByArea stripper = new PDFTextStripperByArea();
            stripper.addRegion(REGION, new Rectangle2D.Double(0, top, document.getPage(page).getMediaBox().getWidth(),
                    height));
            stripper.extractRegions(document.getPage(page));
            return stripper.getTextForRegion(REGION).replaceAll("[\\s\u00a0\u2002]+", " ");
        }

        /** Links of the table that begins at a target; it may go on over the page. */
        List<Link> below(Link link) {
            List<Link> below = new ArrayList<>(on(link.toPage(), link.toTop(), TABLE));
            below.addAll(on(link.toPage() + 1, 0, TABLE));
            return below;
        }

        List<Link> on(int page, double top, double height) {
            return links.stream().filter(link -> link.page() == page && link.fromTop() >= top
                    && link.fromTop() <= top + height).toList();
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everyNumberOnPageOneLeadsToItsCalculationItsInputsAndItsSources(Path sample) throws Exception {
        Printed printed = Printed.of(sample, folder, "--units", "si");
        try (PDDocument document = Loader.loadPDF(printed.pdf())) {
            Reader reader = Reader.of(document, printed.review());
            int followed = 0;
            for (FeatureReview feature : printed.review().features()) {
                Optional<DirectionReview> governing = feature.governing();
                if (governing.isPresent()) {
                    followed += follow(reader, feature, governing.get());
                }
            }
            assertTrue(followed > 0, "no number of " + sample + " was followed");
        }
    }

    /** Follows sum, threshold and use of one place. */
    private static int follow(Reader reader, FeatureReview feature, DirectionReview governing) throws IOException {
        List<Link> onFront = reader.on(0, 0, Double.MAX_VALUE);
        Link first = onFront.stream().filter(link -> isSum(reader, link, feature.id(), governing)).findFirst()
                .orElseThrow(() -> new AssertionError(feature.id() + " has no sum on page one"));
        List<Link> numbers = onFront.stream()
                .filter(link -> link.toPage() == first.toPage() && link.toTop() == first.toTop()).toList();
        int expected = 1 + (governing.threshold().isPresent() ? 1 : 0) + (governing.utilisation().isPresent() ? 1 : 0);
        assertTrue(numbers.size() >= expected, feature.id() + ": " + numbers.size() + " links on page one, not "
                + expected);
        Link sum = numbers.get(0);
        String table = reader.text(sum.toPage(), sum.toTop(), TABLE) + reader.text(sum.toPage() + 1, 0, TABLE);
        for (Contribution part : governing.sustained().parts()) {
            assertTrue(table.contains(part.source()), part.source() + " is not among the stresses: " + table);
            part.calculation().ifPresent(id -> followCalculation(reader, id,
                    link(reader.below(sum), id)));
        }
        governing.threshold().ifPresent(threshold -> holds(reader,
                link(reader.below(sum), threshold.source().id()), threshold.source().id()));
        for (String kind : List.of("sustained.stress", "sustained.utilisation")) {
            String id = reader.review().computations().stream().filter(one -> one.computed().id().equals(kind)
                            && one.feature().filter(feature.id()::equals).isPresent()
                            && one.computed().title().endsWith(" " + governing.sustained().direction()))
                    .map(Calculation::id).findFirst().orElse("");
            if (!id.isEmpty()) {
                followCalculation(reader, id, link(reader.below(sum), id));
            }
        }
        return numbers.size();
    }

    /** The sum of a place bears its direction and leads to the heading of the place. */
    private static boolean isSum(Reader reader, Link link, String feature, DirectionReview governing) {
        try {
            return link.words().startsWith(governing.sustained().direction() + " ")
                    && reader.text(link.toPage(), link.toTop(), HEADING).strip().startsWith(feature);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** The calculation is there, and each input of it leads on. */
    private static void followCalculation(Reader reader, String id, Link link) {
        Calculation calculation = reader.review().calculation(id).orElseThrow();
        String heading = calculation.id() + " " + calculation.feature().map(feature -> feature + ": ").orElse("")
                + calculation.computed().title();
        holds(reader, link, heading);
        for (Computed.Input input : calculation.computed().inputs()) {
            if (input.origin().startsWith("/")) {
                followValue(reader, input.origin());
            }
            input.source().ifPresent(source -> holds(reader, link(reader.links(), source.id()), source.id()));
        }
    }

    /** A place of the description leads to the value as stated. */
    private static void followValue(Reader reader, String path) {
        StatedLine stated = reader.review().stated().stream()
                .filter(line -> line.path().equals(path) || line.path().startsWith(path + "/")).findFirst()
                .orElseThrow(() -> new AssertionError(path + " is not stated"));
        holds(reader, link(reader.links(), path), stated.value());
    }

    private static Link link(List<Link> links, String words) {
        return links.stream().filter(link -> link.words().equals(words)).findFirst()
                .orElseThrow(() -> new AssertionError("no link '" + words + "'"));
    }

    private static void holds(Reader reader, Link link, String words) {
        try {
            String text = reader.text(link.toPage(), link.toTop(), NEAR);
            // a narrow column breaks a long word without a trace in the text
            assertTrue(text.replace(" ", "").contains(words.replace(" ", "")), "the link '" + link.words() + "' leads to page " + (link.toPage() + 1)
                    + ", where '" + words + "' is not: " + text);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
