package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.review.InService;

/** The chapter on a part in service: cracks that were found, own tests, when to look. */
final class ServicePages {

    private ServicePages() {
    }

    static List<Block> blocks(Report report, ReviewFigures figures) {
        InService service = report.review().inService();
        List<Block> blocks = new ArrayList<>();
        blocks.add(report.heading(Section.SERVICE));
        if (service.isEmpty()) {
            blocks.add(report.paragraph(ServiceWords.SERVICE_NONE));
            return blocks;
        }
        blocks.add(report.paragraph(ServiceWords.SERVICE_TEXT));
        blocks.addAll(CrackPages.blocks(report, service.cracks()));
        blocks.addAll(TestPages.blocks(report, service.tests()));
        blocks.addAll(SchedulePages.blocks(report, service.schedules()));
        blocks.addAll(figures.in(Section.SERVICE));
        return blocks;
    }

    static Block.Column column(Report report, ServiceWords title, double share) {
        return Block.Column.text(report.words(title), share);
    }
}
