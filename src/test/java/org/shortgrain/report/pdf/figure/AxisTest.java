package org.shortgrain.report.pdf.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class AxisTest {

    @Test
    void ticks_are_round_and_cover_the_range() {
        Axis axis = Axis.covering("stress, MPa", -173, 154, 6);
        assertEquals(List.of(-200.0, -100.0, 0.0, 100.0, 200.0), axis.ticks());
        assertEquals("\u2212200", axis.print(-200));
        assertEquals("0", axis.print(-0.0));
    }

    @Test
    void an_axis_can_end_where_the_part_ends() {
        Axis axis = Axis.ending("depth, mm", 0, 76, 8);
        assertEquals(List.of(0.0, 10.0, 20.0, 30.0, 40.0, 50.0, 60.0, 70.0), axis.ticks());
        assertEquals(1.0, axis.share(76));
    }

    @Test
    void small_steps_get_their_decimals() {
        Axis axis = Axis.covering("length, in", 0, 0.11, 5);
        assertEquals("0.05", axis.print(0.05));
    }

    @Property
    void every_range_is_covered_with_a_readable_number_of_ticks(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double low,
            @ForAll @DoubleRange(min = 1, max = 1e6) double span) {
        Axis axis = Axis.covering("x", low, low + span, 6);
        double slack = axis.step() * 1e-6;
        assertTrue(axis.from() <= low + slack && axis.to() >= low + span - slack, axis.toString());
        // the step is at most 2.5 times the wanted one and at least the wanted one
        assertTrue(axis.ticks().size() >= 3 && axis.ticks().size() <= 9, axis.ticks().toString());
    }
}
