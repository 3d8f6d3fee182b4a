package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
        Optional<RouteStrip.Proposed> proposed = proposed(report, steps);
        String alternative = report.words(FigureWords.FIGURE_ROUTE_ALTERNATIVE, steps.stream()
                .map(step -> name(step) + step.breach().map(why -> " (" + why + ")").orElse(""))
                .collect(Collectors.joining("; "))) + proposed.map(order -> " " + order.caption() + ": "
                        + order.steps().stream().map(RouteFigures::name).collect(Collectors.joining("; ")) + ".").orElse("");
        RouteStrip strip = new RouteStrip(title(report, steps, proposed), alternative,
                report.words(FigureWords.FIGURE_ROUTE_NOTE), steps, proposed);
        return List.of(new Drawn(strip, Section.ROUTE, Optional.empty(), Optional.empty()));
    }

    private static String title(Report report, List<RouteStrip.Step> steps, Optional<RouteStrip.Proposed> proposed) {
        List<RouteStrip.Step> wrong = steps.stream().filter(step -> step.breach().isPresent()).toList();
        if (wrong.isEmpty() && proposed.isEmpty()) {
            return report.words(FigureWords.FIGURE_ROUTE_RIGHT);
        }
        String order = proposed.map(cured -> report.words(FigureWords.FIGURE_ROUTE_ORDER, numbers(cured.steps())))
                .orElse("");
        List<RouteStrip.Step> named = wrong.isEmpty() ? proposed.map(RouteFigures::moved).orElse(List.of()) : wrong;
        return report.words(FigureWords.FIGURE_ROUTE_WRONG, numbers(named), order);
    }

    private static List<RouteStrip.Step> moved(RouteStrip.Proposed proposed) {
        return proposed.moved().stream().sorted().map(proposed.steps()::get).toList();
    }

    private static String numbers(List<RouteStrip.Step> steps) {
        return steps.stream().map(step -> step.number().isEmpty() ? step.name() : step.number())
                .collect(Collectors.joining(", "));
    }

    private static String name(RouteStrip.Step step) {
        return (step.number() + " " + step.name()).strip();
    }

    /** The same operations in the order that the review proposes, where it is not the card's. */
    private static Optional<RouteStrip.Proposed> proposed(Report report, List<RouteStrip.Step> steps) {
        List<Integer> places = report.review().route().stream().map(RouteLine::proposed).toList();
        List<Integer> order = new ArrayList<>();
        for (int place = 0; place < places.size(); place++) {
            order.add(places.indexOf(place));
        }
        if (order.contains(-1) || order.equals(order.stream().sorted().toList())) {
            return Optional.empty();
        }
        Set<Integer> moved = new HashSet<>();
        for (int place = 0; place < order.size(); place++) {
            if (isMoved(order, place)) {
                moved.add(place);
            }
        }
        return Optional.of(new RouteStrip.Proposed(report.words(FigureWords.FIGURE_ROUTE_PROPOSED),
                order.stream().map(steps::get).toList(), moved));
    }

    /** An operation has moved forwards when one that stands before it on the card follows it here. */
    private static boolean isMoved(List<Integer> order, int place) {
        return order.subList(place + 1, order.size()).stream().anyMatch(later -> later < order.get(place));
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
