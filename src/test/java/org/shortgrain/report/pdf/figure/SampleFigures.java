package org.shortgrain.report.pdf.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** One figure of each kind, with invented numbers. */
public final class SampleFigures {

    private SampleFigures() {
    }

    /** {@return the figures} */
    public static List<Figure> all() {
        return List.of(stressThroughSection(), stressBudget(), routeStrip(), pocketUp(), pocketSide(), pocketClosed(),
                bush(), grain(Optional.of(GrainSketch.Direction.ST)), grain(Optional.of(GrainSketch.Direction.LT)),
                grain(Optional.of(GrainSketch.Direction.L)), stressAgainstTime(), intensityOverDepth(), tradeChart());
    }

    static TradeChart tradeChart() {
        return new TradeChart("R-01 makes sign-off possible: 87 % of the strength is kept, greatest utilisation 0.61",
                "R-01 at 87 %, utilisation 0.61; R-02 and R-03 at 100 %, utilisation 2.4", "Invented for demonstration.",
                "strength kept, %", "utilisation of the threshold", "threshold",
                List.of(new TradeChart.Change("R-01", 87, 0.61, true), new TradeChart.Change("R-02", 100, 2.4, false),
                        new TradeChart.Change("R-03", 100, 2.4, false)));
    }

    static StressAgainstTime stressAgainstTime() {
        List<Point> curve = new ArrayList<>();
        for (int day = 2; day <= 240; day++) {
            curve.add(new Point(day, 50 + 400 / Math.sqrt(day)));
        }
        return new StressAgainstTime("Own tests: the threshold lies between 24 and 62 MPa in 95 of 100 cases",
                "Stress against time to cracking, two specimens cracked, one did not",
                "Invented for demonstration.", "MPa", List.of(new StressAgainstTime.Specimen(2, 300, true),
                        new StressAgainstTime.Specimen(60, 110, true), new StressAgainstTime.Specimen(240, 60, false)),
                curve, 50, 24, 62);
    }

    static IntensityOverDepth intensityOverDepth() {
        List<Point> curve = new ArrayList<>();
        for (int i = 0; i <= 32; i++) {
            curve.add(new Point(i, 3.8 * Math.sqrt(i)));
        }
        return new IntensityOverDepth("GROOVE: the crack that is found is too near to the critical one",
                "Stress intensity against depth of a crack", "Invented for demonstration.", "mm", curve, 6, 9,
                Optional.of(15.4), 1.27, Optional.of(16.0));
    }

    static StressThroughSection stressThroughSection() {
        List<Point> before = new ArrayList<>();
        List<Point> after = new ArrayList<>();
        List<Point> low = new ArrayList<>();
        List<Point> high = new ArrayList<>();
        for (int i = 0; i <= 76; i++) {
            double z = (i - 38) / 38.0;
            double stress = 90 * (1 - 3 * z * z);
            before.add(new Point(i, stress));
            if (i >= 20 && i <= 56) {
                double left = stress - 30;
                after.add(new Point(i, left));
                low.add(new Point(i, left - 25));
                high.add(new Point(i, left + 25));
            }
        }
        return new StressThroughSection("Removing 20 mm from each side bares metal that the quench left in tension",
                "Curve of residual stress against depth, \u2212180 MPa at the quenched skin, 90 MPa in the middle",
                "Invented for demonstration. Range: heat transfer and yield strength.", "mm", "MPa", 76, before, after,
                low, high, List.of(20.0, 56.0),
                List.of(new StressThroughSection.Whisker(38, 60, 35, 85)), Optional.of(48.0));
    }

    static StressBudget stressBudget() {
        return new StressBudget("The sum in the ST direction is twice the threshold; two thirds come from the quench",
                "Three bars of stacked stress against thresholds", "Invented for demonstration.", "MPa",
                List.of(new StressBudget.Bar("GROOVE, ST",
                                List.of(new StressBudget.Part("quench residual after machining", 70),
                                        new StressBudget.Part("fit", 12), new StressBudget.Part("clamp-up", 8),
                                        new StressBudget.Part("sustained service", 20)),
                                60, 142, Optional.of(48.0), Optional.of(24.0)),
                        new StressBudget.Bar("GROOVE, LT",
                                List.of(new StressBudget.Part("quench residual after machining", -40),
                                        new StressBudget.Part("sustained service", 60)),
                                -20, 55, Optional.of(220.0), Optional.empty()),
                        new StressBudget.Bar("LUG-A, ST", List.of(new StressBudget.Part("fit", 190)), 150, 230,
                                Optional.empty(), Optional.empty())));
    }

    static RouteStrip routeStrip() {
        List<RouteStrip.Step> steps = new ArrayList<>();
        String[] names = {"solution heat treat", "quench in water, 25 \u00b0C", "age 121 \u00b0C, 24 h", "finish machine groove",
            "shot peen", "hone the bore", "anodize", "prime", "install bush"};
        for (int i = 0; i < names.length; i++) {
            String effect = switch (i) {
                case 1, 3, 8 -> "tension";
                case 4 -> "compression";
                case 6, 7 -> "protection";
                default -> "";
            };
            Optional<String> breach = i == 3 ? Optional.of("The groove is cut after the last quench: it opens the "
                    + "tension in the middle of the section. Cut it before operation 20.")
                    : i == 5 ? Optional.of("Honing after peening takes the compressed skin away.") : Optional.empty();
            steps.add(new RouteStrip.Step(Integer.toString(20 + 10 * i), names[i], effect, breach));
        }
        return new RouteStrip("Two operations stand at the wrong place", "Nine operations in order, two crossed out",
                "Order as on the planning card.", steps, Optional.of(new RouteStrip.Proposed("Proposed order",
                        Stream.of(3, 0, 1, 2, 5, 4, 6, 7, 8).map(steps::get).toList(), Set.of(0, 4))));
    }

    static PocketAttitudes pocketUp() {
        return new PocketAttitudes("The pocket holds water on the ground; its drain is not at the low point",
                "Pocket 200 mm by 20 mm in two attitudes", "Section along the pocket; walls not to scale.", 200, 40,
                PocketAttitudes.Opening.UP, Optional.of(new PocketAttitudes.Drain(150, true)),
                List.of(new PocketAttitudes.Attitude("on the ground, pitch 6\u00b0", 6, "holds 41 ml"),
                        new PocketAttitudes.Attitude("in flight, pitch \u22122\u00b0", -2, "holds 8 ml"),
                        new PocketAttitudes.Attitude("level", 0, "drains")));
    }

    static PocketAttitudes pocketSide() {
        return new PocketAttitudes("Open to the side, the pocket keeps water when the nose is down",
                "Pocket open to the side in two attitudes", "", 60, 50, PocketAttitudes.Opening.SIDE, Optional.empty(),
                List.of(new PocketAttitudes.Attitude("nose up 10\u00b0", 10, "drains"),
                        new PocketAttitudes.Attitude("nose down 10\u00b0", -10, "holds 12 ml")));
    }

    static PocketAttitudes pocketClosed() {
        return new PocketAttitudes("The closed pocket has a drain that is not shown to be open",
                "Closed pocket", "", 100, 30, PocketAttitudes.Opening.CLOSED,
                Optional.of(new PocketAttitudes.Drain(20, false)),
                List.of(new PocketAttitudes.Attitude("level", 0, "cannot be judged")));
    }

    static BushSection bush() {
        List<Point> hoop = new ArrayList<>();
        for (double r = 9.5; r <= 14.01; r += 0.25) {
            hoop.add(new Point(r, 75 * (1 + 14.0 * 14.0 / (r * r)) / (14.0 * 14.0 / (9.5 * 9.5) + 1) * 1.6));
        }
        return new BushSection("The press fit alone keeps the bore above the threshold",
                "Bush in its lug and the falling hoop stress through the wall", "Invented for demonstration.", "mm",
                "MPa", 15, 19, 28, "interference 0.03 to 0.06 mm", hoop, Optional.of(48.0));
    }

    static GrainSketch grain(Optional<GrainSketch.Direction> stressed) {
        return new GrainSketch("The lug is pulled across its short grain", "Block with flat grains and two arrows",
                "Directions from the forging drawing.", List.of("X", "Y", "Z"), stressed,
                Optional.of("parting line"));
    }
}
