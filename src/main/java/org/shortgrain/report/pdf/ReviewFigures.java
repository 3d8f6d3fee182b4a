package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shortgrain.report.pdf.figure.Figure;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.Calculation;
import org.shortgrain.review.FeatureReview;

/** The figures of one report, numbered in the order in which they stand. */
final class ReviewFigures {

    private final Report report;
    private final List<Placed> placed = new ArrayList<>();

    private ReviewFigures(Report report) {
        this.report = report;
    }

    /**
     * A figure and where it belongs.
     *
     * @param figure      the figure
     * @param section     its section
     * @param feature     the feature that it shows, if it shows one
     * @param calculation the calculation that it draws, if it draws one
     */
    record Drawn(Figure figure, Section section, Optional<String> feature, Optional<String> calculation) {
    }

    private record Placed(int number, Drawn drawn) {
    }

    static ReviewFigures of(Report report) {
        ReviewFigures figures = new ReviewFigures(report);
        figures.addAll(GrainFigures.of(report));
        figures.addAll(RouteFigures.of(report));
        figures.addAll(BudgetFigures.of(report));
        figures.addAll(ServiceFigures.of(report));
        for (Calculation calculation : report.review().computations()) {
            figures.addAll(SectionFigures.of(report, calculation));
            figures.addAll(BushFigures.of(report, calculation));
        }
        for (FeatureReview feature : report.review().features()) {
            figures.addAll(PocketFigures.of(report, feature));
        }
        return figures;
    }

    private void addAll(List<Drawn> drawn) {
        for (Drawn figure : drawn) {
            placed.add(new Placed(placed.size() + 1, figure));
        }
    }

    /** {@return the figures that stand in a section} */
    List<Block> in(Section section) {
        List<Block> blocks = new ArrayList<>();
        for (Placed figure : placed) {
            if (figure.drawn().section() == section) {
                blocks.add(new Block.Picture(label(figure), figure.drawn().figure(), Links.figure(figure.number())));
            }
        }
        return blocks;
    }

    /** {@return the section of figures} */
    List<Block> section(Report whole) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(whole.heading(Section.FIGURES));
        List<Block> figures = in(Section.FIGURES);
        if (figures.isEmpty()) {
            blocks.add(whole.paragraph(Sentence.FIGURES_NONE));
        }
        blocks.addAll(figures);
        return blocks;
    }

    /** {@return links to the figures of a feature, if there are any} */
    Optional<Text> about(String feature) {
        List<Placed> about = new ArrayList<>();
        for (Placed figure : placed) {
            if (figure.drawn().feature().equals(Optional.of(feature))) {
                about.add(figure);
            }
        }
        return links(about);
    }

    /** {@return links to the figures of a calculation, if there are any} */
    Optional<Text> of(Calculation calculation) {
        List<Placed> drawn = new ArrayList<>();
        for (Placed figure : placed) {
            if (figure.drawn().calculation().equals(Optional.of(calculation.id()))) {
                drawn.add(figure);
            }
        }
        return links(drawn);
    }

    private Optional<Text> links(List<Placed> figures) {
        if (figures.isEmpty()) {
            return Optional.empty();
        }
        List<Text> links = new ArrayList<>();
        for (Placed figure : figures) {
            String anchor = Links.figure(figure.number());
            links.add(Text.EMPTY.link(label(figure), anchor).then(report.onPage(anchor)));
        }
        return Optional.of(Links.joined(links));
    }

    private String label(Placed figure) {
        return report.words(Label.FIGURE, Integer.toString(figure.number()));
    }
}
