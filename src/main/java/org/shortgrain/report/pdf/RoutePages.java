package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.review.RouteLine;

/** The route card as the tool understood it, for its owner to check. */
final class RoutePages {

    private RoutePages() {
    }

    static List<Block> blocks(Report report, ReviewFigures figures) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(report.heading(Section.ROUTE));
        if (report.review().route().isEmpty()) {
            blocks.add(report.paragraph(Sentence.ROUTE_NONE));
            return blocks;
        }
        blocks.add(report.paragraph(Sentence.ROUTE_TEXT));
        List<Block.Row> rows = new ArrayList<>();
        for (RouteLine line : report.review().route()) {
            rows.add(Block.Row.of(Block.Cell.of(line.op()), Block.Cell.of(line.entered()),
                    Block.Cell.of(FrontPage.spoken(line.operation())), Block.Cell.of(String.join(", ", line.at())),
                    Block.Cell.of(line.effect()), Block.Cell.of(report.links().toFindings(line.breaches()))));
        }
        blocks.add(new Block.Table(List.of(report.column(Label.COLUMN_OP, 8), report.column(Label.COLUMN_ENTERED, 22),
                report.column(Label.COLUMN_UNDERSTOOD, 20), report.column(Label.COLUMN_AT, 15),
                report.column(Label.COLUMN_LEAVES, 23), report.column(Label.COLUMN_BREACHES, 12)),
                Block.Headings.TOP_AND_SIDE, rows).dense());
        blocks.addAll(figures.in(Section.ROUTE));
        return blocks;
    }
}
