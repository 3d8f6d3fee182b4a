package org.shortgrain.report.pdf.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FigureTest {

    private static final double WIDTH = 476;
    /** Drawn places are sums of a few doubles: a thousandth of a point is far above their error. */
    private static final double TOLERANCE = 1e-3;

    static Stream<Figure> every_figure() {
        return SampleFigures.all().stream();
    }

    @ParameterizedTest
    @MethodSource("every_figure")
    void nothing_is_drawn_outside_of_the_figure(Figure figure) {
        RecordingPen pen = RecordingPen.drawing(figure, WIDTH);
        List<Point> places = new ArrayList<>();
        pen.lines().forEach(line -> places.addAll(line.points()));
        pen.areas().forEach(area -> places.addAll(area.outline()));
        pen.texts().forEach(text -> {
            places.add(new Point(text.left(), text.at().y() - 5));
            places.add(new Point(text.right(), text.at().y()));
        });
        for (Point place : places) {
            assertTrue(place.x() >= -TOLERANCE && place.x() <= WIDTH + TOLERANCE, "beside the figure: " + place);
            assertTrue(place.y() >= -TOLERANCE && place.y() <= figure.height(WIDTH) + TOLERANCE,
                    "above or below the figure: " + place);
        }
    }

    @ParameterizedTest
    @MethodSource("every_figure")
    void every_figure_states_a_conclusion_and_has_words_for_those_who_cannot_see_it(Figure figure) {
        assertFalse(figure.title().isBlank());
        assertFalse(figure.alternative().isBlank());
    }

    @Test
    void the_new_surfaces_stand_at_their_depths() {
        StressThroughSection figure = SampleFigures.stressThroughSection();
        RecordingPen pen = RecordingPen.drawing(figure, WIDTH);
        List<RecordingPen.Drawn> surfaces = pen.lines(Stroke.HEAVY);
        assertEquals(2, surfaces.size());
        double zero = pen.text("0").at().x();
        // two tick labels of the depth axis give its scale
        double perMillimetre = (pen.text("60").at().x() - pen.text("40").at().x()) / 20;
        double origin = pen.text("40").at().x() - 40 * perMillimetre;
        assertEquals(origin + 20 * perMillimetre, surfaces.get(0).points().get(0).x(), TOLERANCE);
        assertEquals(origin + 56 * perMillimetre, surfaces.get(1).points().get(0).x(), TOLERANCE);
        assertTrue(zero < surfaces.get(0).points().get(0).x());
    }

    @Test
    void only_tension_that_is_left_is_hatched() {
        RecordingPen pen = RecordingPen.drawing(SampleFigures.stressThroughSection(), WIDTH);
        List<RecordingPen.Filled> hatched = pen.areas().stream()
                .filter(area -> area.fill() instanceof Fill.Hatch && area.outline().size() > 4).toList();
        assertEquals(1, hatched.size());
        double zeroLine = pen.lines(Stroke.OUTLINE).get(0).points().get(0).y();
        assertTrue(hatched.get(0).outline().stream().allMatch(point -> point.y() <= zeroLine + TOLERANCE));
    }

    @Test
    void the_parts_of_a_bar_are_as_long_as_their_stress() {
        RecordingPen pen = RecordingPen.drawing(SampleFigures.stressBudget(), WIDTH);
        double perMegapascal = (pen.text("200").at().x() - pen.text("100").at().x()) / 100;
        // 70, 12, 8 and 20 MPa, then -40 and 60, then 190: the boxes of the bars in order, then the legend's samples
        List<Double> widths = pen.areas().stream().filter(area -> area.outline().size() == 4)
                .map(area -> (area.outline().get(1).x() - area.outline().get(0).x()) / perMegapascal).toList();
        double[] expected = {70, 12, 8, 20, 40, 60, 190};
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], widths.get(i), 1e-6);
        }
    }

    @Test
    void the_threshold_of_a_bar_stands_at_its_stress() {
        RecordingPen pen = RecordingPen.drawing(SampleFigures.stressBudget(), WIDTH);
        double perMegapascal = (pen.text("200").at().x() - pen.text("100").at().x()) / 100;
        double zero = pen.text("100").at().x() - 100 * perMegapascal;
        List<Double> solid = pen.lines().stream()
                .filter(line -> line.stroke().width() == 2 && line.points().get(0).x() == line.points().get(1).x())
                .map(line -> line.points().get(0).x()).toList();
        assertEquals(2, solid.size());
        assertEquals(zero + 48 * perMegapascal, solid.get(0), TOLERANCE);
        assertEquals(zero + 220 * perMegapascal, solid.get(1), TOLERANCE);
        assertEquals("threshold 48 MPa", pen.text("threshold 48 MPa").text());
    }

    @Test
    void wrong_operations_are_framed_heavily_and_numbered() {
        RecordingPen pen = RecordingPen.drawing(SampleFigures.routeStrip(), WIDTH);
        // two at the wrong place, and the same two moved in the proposed order
        assertEquals(4, pen.lines(Stroke.HEAVY).size());
        assertEquals(2, pen.texts().stream().filter(text -> text.text().equals("1")).count());
        assertEquals(2, pen.texts().stream().filter(text -> text.text().equals("2")).count());
        List<String> numbers = pen.texts().stream().map(RecordingPen.Lettered::text)
                .filter(text -> text.matches("[0-9]{2,3}")).toList();
        assertEquals(List.of("20", "30", "40", "50", "60", "70", "80", "90", "100",
                "50", "20", "30", "40", "70", "60", "80", "90", "100"), numbers);
    }

    @Test
    void water_is_drawn_to_the_computed_level_where_there_is_one() {
        PocketAttitudes.Attitude level = new PocketAttitudes.Attitude("level", 0, "", Optional.of(10.0));
        PocketAttitudes.Attitude dry = new PocketAttitudes.Attitude("dry", 3, "", Optional.of(0.0));
        PocketAttitudes pocket = pocket(Optional.empty(), PocketAttitudes.Opening.UP, level);
        assertEquals(200 * 10, area(pocket.water(level)), 1e-6);
        assertEquals(List.of(), pocket.water(dry));
    }

    @Test
    void a_level_open_pocket_without_a_drain_is_full_to_its_lip() {
        PocketAttitudes.Attitude level = new PocketAttitudes.Attitude("level", 0, "");
        PocketAttitudes pocket = pocket(Optional.empty(), PocketAttitudes.Opening.UP, level);
        assertEquals(200 * 40, area(pocket.water(level)), 1e-6);
    }

    @Test
    void a_tilted_open_pocket_keeps_what_lies_below_its_lower_lip() {
        // the water surface runs from the lower lip; what is missing is a triangle of length L and height L tan(pitch)
        PocketAttitudes.Attitude tilted = new PocketAttitudes.Attitude("tilted", 6, "");
        PocketAttitudes pocket = pocket(Optional.empty(), PocketAttitudes.Opening.UP, tilted);
        double expected = 200 * 40 - 200 * 200 * Math.tan(Math.toRadians(6)) / 2;
        assertEquals(expected, area(pocket.water(tilted)), 1e-6);
    }

    @Test
    void an_open_drain_at_the_low_point_leaves_nothing_and_one_above_it_leaves_a_wedge() {
        PocketAttitudes.Attitude tilted = new PocketAttitudes.Attitude("tilted", 6, "");
        PocketAttitudes low = pocket(Optional.of(new PocketAttitudes.Drain(0, true)), PocketAttitudes.Opening.UP, tilted);
        assertEquals(0, area(low.water(tilted)), 1e-6);
        // at 150 from the low end the wedge is 150 along the floor and 150 tan(pitch) high at the rear wall: 15.8 < 40
        PocketAttitudes high = pocket(Optional.of(new PocketAttitudes.Drain(150, true)), PocketAttitudes.Opening.UP,
                tilted);
        assertEquals(150 * 150 * Math.tan(Math.toRadians(6)) / 2, area(high.water(tilted)), 1e-6);
    }

    @Test
    void a_drain_that_is_not_shown_to_be_open_does_not_count() {
        PocketAttitudes.Attitude level = new PocketAttitudes.Attitude("level", 0, "");
        PocketAttitudes pocket = pocket(Optional.of(new PocketAttitudes.Drain(0, false)), PocketAttitudes.Opening.UP,
                level);
        assertEquals(200 * 40, area(pocket.water(level)), 1e-6);
    }

    @Test
    void a_pocket_open_downwards_holds_nothing() {
        PocketAttitudes.Attitude level = new PocketAttitudes.Attitude("level", 0, "");
        PocketAttitudes pocket = pocket(Optional.empty(), PocketAttitudes.Opening.DOWN, level);
        assertEquals(0, area(pocket.water(level)), 1e-6);
    }

    @Test
    void a_bush_shows_its_dimensions_and_its_curve_falls_from_the_bore() {
        RecordingPen pen = RecordingPen.drawing(SampleFigures.bush(), WIDTH);
        pen.text("\u2300 19 mm");
        pen.text("28 mm");
        pen.text("wall 4.5 mm");
        pen.text("interference 0.03 to 0.06 mm");
        List<Point> curve = pen.lines().stream().filter(line -> line.stroke().ink() == Ink.RUST
                && line.points().size() > 10).findFirst().orElseThrow().points();
        assertTrue(curve.get(0).y() < curve.get(curve.size() - 1).y());
    }

    @ParameterizedTest
    @MethodSource("directions")
    void the_pulled_direction_has_two_heavy_arrows_and_a_crack_plane(GrainSketch.Direction direction) {
        RecordingPen pen = RecordingPen.drawing(SampleFigures.grain(Optional.of(direction)), WIDTH);
        List<RecordingPen.Drawn> heavy = pen.lines().stream().filter(line -> line.stroke().ink() == Ink.RUST
                && line.stroke().dash() == Stroke.Dash.SOLID).toList();
        // two on the block, one in the triad
        assertEquals(3, heavy.size());
        assertEquals(1, pen.lines().stream().filter(line -> line.stroke().dash() == Stroke.Dash.DASHED).count());
        pen.text("a crack opens in this plane");
        pen.text("parting line");
    }

    static Stream<GrainSketch.Direction> directions() {
        return Stream.of(GrainSketch.Direction.values());
    }

    @Test
    void an_unknown_direction_pulls_nothing() {
        RecordingPen pen = RecordingPen.drawing(SampleFigures.grain(Optional.empty()), WIDTH);
        assertTrue(pen.lines().stream().noneMatch(line -> line.stroke().ink() == Ink.RUST));
        pen.text("ST (Z)");
    }

    private static PocketAttitudes pocket(Optional<PocketAttitudes.Drain> drain, PocketAttitudes.Opening opening,
            PocketAttitudes.Attitude attitude) {
        return new PocketAttitudes("title", "words", "", 200, 40, opening, drain, List.of(attitude));
    }

    /** Area of a polygon by the shoelace formula. */
    private static double area(List<Point> outline) {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            Point a = outline.get(i);
            Point b = outline.get((i + 1) % outline.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return Math.abs(twice) / 2;
    }

    @Test
    void a_specimen_that_did_not_crack_has_an_open_mark_with_an_arrow_and_days_stand_in_decades() {
        RecordingPen pen = RecordingPen.drawing(SampleFigures.stressAgainstTime(), WIDTH);
        double decade = pen.text("10").at().x() - pen.text("1").at().x();
        assertEquals(2 * decade, pen.text("1000").at().x() - pen.text("10").at().x(), TOLERANCE);
        double end = pen.text("1").at().x() + Math.log10(240) * decade;
        assertEquals(1, pen.areas().stream().filter(area -> area.fill().equals(new Fill.Even(Ink.WHITE))
                && Math.abs(centre(area) - end) < TOLERANCE).count());
        assertEquals(2, pen.areas().stream().filter(area -> area.fill().equals(new Fill.Even(Ink.BLACK))).count());
    }

    private static double centre(RecordingPen.Filled area) {
        return area.outline().stream().mapToDouble(Point::x).average().orElseThrow();
    }

    @Test
    void what_is_found_and_what_is_critical_stand_at_their_depths() {
        RecordingPen pen = RecordingPen.drawing(SampleFigures.intensityOverDepth(), WIDTH);
        double left = pen.lines().stream().filter(line -> line.stroke().equals(Stroke.THIN))
                .flatMap(line -> line.points().stream()).mapToDouble(Point::x).min().orElseThrow();
        double perMillimetre = (pen.text("30").at().x() - left) / 30;
        assertEquals(16 - 1.27, (pen.text("critical").at().x() - pen.text("found").at().x()) / perMillimetre, 1e-2,
                "both words begin a point beside their depth");
    }

    @Test
    void a_change_stands_at_its_strength_and_use_and_changes_at_one_point_share_a_label() {
        RecordingPen pen = RecordingPen.drawing(SampleFigures.tradeChart(), WIDTH);
        double perPercent = (pen.text("100").at().x() - pen.text("90").at().x()) / 10;
        double zero = pen.text("0").at().y();
        double perUse = zero - pen.text("1").at().y();
        Point cleared = centre(pen, new Fill.Even(Ink.BLACK));
        Point left = centre(pen, new Fill.Even(Ink.WHITE));
        assertEquals(13 * perPercent, left.x() - cleared.x(), TOLERANCE);
        assertEquals((2.4 - 0.61) * perUse, cleared.y() - left.y(), TOLERANCE);
        pen.text("R-02, R-03");
    }

    /** Centre of the last area that is filled so: limits are written on white, the marks come after. */
    private static Point centre(RecordingPen pen, Fill fill) {
        List<Point> outline = pen.areas().stream().filter(area -> area.fill().equals(fill)).reduce((a, b) -> b).orElseThrow()
                .outline();
        double x = outline.stream().mapToDouble(Point::x).summaryStatistics().getMin()
                + outline.stream().mapToDouble(Point::x).summaryStatistics().getMax();
        double y = outline.stream().mapToDouble(Point::y).summaryStatistics().getMin()
                + outline.stream().mapToDouble(Point::y).summaryStatistics().getMax();
        return new Point(x / 2, y / 2);
    }
}
