package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shortgrain.report.pdf.ReviewFigures.Drawn;
import org.shortgrain.report.pdf.figure.RouteStrip;
import org.shortgrain.review.Finding;
import org.shortgrain.review.RouteLine;

/** The route card as a strip, with the operations that stand at the wrong place. */
final class RouteFigures {

    private RouteFigures() {
    }

    static List<Drawn> of(Report report) {
        List<RouteLine> route = report.review().route();
        if (route.isEmpty()) {
            return List.of();
        }
        List<RouteStrip.Step> steps = new ArrayList<>();
        for (RouteLine line : route) {
            String name = line.operation().isEmpty() ? line.entered() : FrontPage.spoken(line.operation());
            String at = line.at().isEmpty() ? "" : ", " + String.join(", ", line.at());
            steps.add(new RouteStrip.Step(line.op(), name + at, line.effect(), breach(report, line)));
        }
        long wrong = steps.stream().filter(step -> step.breach().isPresent()).count();
        String title = wrong == 0 ? report.words(FigureWords.FIGURE_ROUTE_RIGHT)
                : report.words(FigureWords.FIGURE_ROUTE_WRONG, Long.toString(wrong));
        String alternative = report.words(FigureWords.FIGURE_ROUTE_ALTERNATIVE, steps.stream()
                .map(step -> step.number() + " " + step.name() + step.breach().map(why -> " (" + why + ")").orElse(""))
                .collect(Collectors.joining("; ")));
        RouteStrip strip = new RouteStrip(title, alternative, report.words(FigureWords.FIGURE_ROUTE_NOTE), steps);
        return List.of(new Drawn(strip, Section.ROUTE, Optional.empty(), Optional.empty()));
    }

    private static Optional<String> breach(Report report, RouteLine line) {
        if (line.breaches().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(line.breaches().stream()
                .map(id -> id + " " + report.review().findings().stream().filter(finding -> finding.id().equals(id))
                        .map(Finding::title).findFirst().orElse(""))
                .collect(Collectors.joining("; ")));
    }
}
