package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
        RouteStrip strip = new RouteStrip(title(report, steps, proposed), alternative(report, steps, proposed),
                report.words(FigureWords.FIGURE_ROUTE_NOTE), steps, proposed);
        return List.of(new Drawn(strip, Section.ROUTE, Optional.empty(), Optional.empty()));
    }

    private static String alternative(Report report, List<RouteStrip.Step> steps,
            Optional<RouteStrip.Proposed> proposed) {
        List<String> told = new ArrayList<>();
        for (RouteStrip.Step step : steps) {
            told.add(name(step) + (step.breach().isPresent() ? " (" + step.breach().get() + ")" : ""));
        }
        String card = report.words(FigureWords.FIGURE_ROUTE_ALTERNATIVE, String.join("; ", told));
        if (proposed.isEmpty()) {
            return card;
        }
        List<String> names = new ArrayList<>();
        for (RouteStrip.Step step : proposed.get().steps()) {
            names.add(name(step));
        }
        return card + " " + proposed.get().caption() + ": " + String.join("; ", names) + ".";
    }

    private static String title(Report report, List<RouteStrip.Step> steps, Optional<RouteStrip.Proposed> proposed) {
        List<RouteStrip.Step> wrong = new ArrayList<>();
        for (RouteStrip.Step step : steps) {
            if (step.breach().isPresent()) {
                wrong.add(step);
            }
        }
        if (wrong.isEmpty() && proposed.isEmpty()) {
            return report.words(FigureWords.FIGURE_ROUTE_RIGHT);
        }
        String order = proposed.isEmpty() ? ""
                : report.words(FigureWords.FIGURE_ROUTE_ORDER, numbers(proposed.get().steps()));
        List<RouteStrip.Step> named = wrong.isEmpty() ? moved(proposed.get()) : wrong;
        return report.words(FigureWords.FIGURE_ROUTE_WRONG, numbers(named), order);
    }

    private static List<RouteStrip.Step> moved(RouteStrip.Proposed proposed) {
        List<RouteStrip.Step> moved = new ArrayList<>();
        for (int place = 0; place < proposed.steps().size(); place++) {
            if (proposed.moved().contains(place)) {
                moved.add(proposed.steps().get(place));
            }
        }
        return moved;
    }

    private static String numbers(List<RouteStrip.Step> steps) {
        List<String> numbers = new ArrayList<>();
        for (RouteStrip.Step step : steps) {
            numbers.add(step.number().isEmpty() ? step.name() : step.number());
        }
        return String.join(", ", numbers);
    }

    private static String name(RouteStrip.Step step) {
        return (step.number() + " " + step.name()).strip();
    }

    /** The same operations in the order that the review proposes, where it is not the card's. */
    private static Optional<RouteStrip.Proposed> proposed(Report report, List<RouteStrip.Step> steps) {
        List<Integer> places = new ArrayList<>();
        for (RouteLine line : report.review().route()) {
            places.add(line.proposed());
        }
        List<Integer> order = new ArrayList<>();
        List<RouteStrip.Step> cured = new ArrayList<>();
        boolean same = true;
        for (int place = 0; place < places.size(); place++) {
            int from = places.indexOf(place);
            if (from < 0) {
                return Optional.empty();
            }
            order.add(from);
            cured.add(steps.get(from));
            same &= from == place;
        }
        if (same) {
            return Optional.empty();
        }
        Set<Integer> moved = new HashSet<>();
        for (int place = 0; place < order.size(); place++) {
            if (isMoved(order, place)) {
                moved.add(place);
            }
        }
        return Optional.of(new RouteStrip.Proposed(report.words(FigureWords.FIGURE_ROUTE_PROPOSED), cured, moved));
    }

    /** An operation has moved forwards when one that stands before it on the card follows it here. */
    private static boolean isMoved(List<Integer> order, int place) {
        for (int later : order.subList(place + 1, order.size())) {
            if (later < order.get(place)) {
                return true;
            }
        }
        return false;
    }

    private static Optional<String> breach(Report report, RouteLine line) {
        if (line.breaches().isEmpty()) {
            return Optional.empty();
        }
        List<String> breaches = new ArrayList<>();
        for (String id : line.breaches()) {
            breaches.add(id + " " + title(report, id));
        }
        return Optional.of(String.join("; ", breaches));
    }

    private static String title(Report report, String finding) {
        for (Finding one : report.review().findings()) {
            if (one.id().equals(finding)) {
                return one.title();
            }
        }
        return "";
    }
}
