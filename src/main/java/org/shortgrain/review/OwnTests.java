package org.shortgrain.review;

import java.util.List;
import java.util.Optional;

/**
 * Own stress and time results, and whether they count.
 *
 * @param feature     the place they are stated for; empty text for the whole part
 * @param scope       alloy, temper, form, direction and exposure as stated, in words
 * @param points      the results
 * @param threshold   fitted threshold with its 95 % interval; empty if there are too few results
 * @param identified  whether the tests identify the threshold
 * @param counted     whether its lower end is what the sustained tension is compared with
 * @param because     why it counts or does not, one sentence each
 * @param calculation number of the calculation behind it
 */
public record OwnTests(String feature, String scope, List<Point> points, Optional<Amount> threshold, boolean identified,
        boolean counted, List<String> because, Optional<String> calculation) {

    /** Copies the lists. */
    public OwnTests {
        points = List.copyOf(points);
        because = List.copyOf(because);
    }

    /**
     * {@return how many specimens cracked, or did not}
     *
     * @param cracked which of the two
     */
    public int count(boolean cracked) {
        int count = 0;
        for (Point point : points) {
            count += point.cracked() == cracked ? 1 : 0;
        }
        return count;
    }

    /**
     * One specimen.
     *
     * @param stress  stress (MPa)
     * @param days    days to cracking, or to the end of the test
     * @param cracked whether it cracked
     */
    public record Point(double stress, double days, boolean cracked) {
    }
}
