package org.shortgrain.mechanics.machining;

import java.util.List;
import java.util.Objects;
import org.shortgrain.mechanics.quench.StressProfile;

/**
 * What cutting a section out of a stressed blank releases. The blank's stress varies through its thickness z only; the
 * section keeps a width b(z) of it.
 *
 * <pre>
 * A = int b dz    zc = int b z dz / A    I = int b (z - zc)^2 dz
 * N = int b s dz    M = int b s (z - zc) dz
 * held flat:    s - N/A
 * free to bow:  s - N/A - (M/I)(z - zc)
 * </pre>
 *
 * <p>Elastic, and exact when the released strain is linear over the section (a plane section stays plane): slender
 * parts, away from their ends by about one thickness. Each grain direction is released with its own stress. Basis: beam
 * and plate theory (own algebra).
 *
 * @param blank        stress of the blank in one direction
 * @param strips       rectangles that make up the section
 * @param area         A, m2 (m for a plate of width one)
 * @param centroid     zc, m
 * @param secondMoment I, m4 (m3 for a plate)
 * @param meanStress   N/A, Pa
 * @param gradient     M/I, Pa/m
 */
public record SectionRelease(StressProfile blank, List<Strip> strips, double area, double centroid,
        double secondMoment, double meanStress, double gradient) {

    /** Copies the strips. */
    public SectionRelease {
        Objects.requireNonNull(blank, "blank");
        strips = List.copyOf(strips);
    }

    /**
     * A rectangle of the section.
     *
     * @param from  depth of its first side in the blank, m
     * @param to    depth of its last side, m
     * @param width width, m
     */
    public record Strip(double from, double to, double width) {

        /** Refuses an empty rectangle. */
        public Strip {
            if (!(to > from && width > 0)) {
                throw new IllegalArgumentException("strip " + from + " to " + to + ", width " + width);
            }
        }

        double height() {
            return to - from;
        }

        double middle() {
            return 0.5 * (from + to);
        }
    }

    /**
     * {@return the release of a plate or wall that keeps the blank between two depths}
     *
     * @param blank stress of the blank
     * @param from  depth of the first face kept, m
     * @param to    depth of the last face kept, m
     */
    public static SectionRelease ofPlate(StressProfile blank, double from, double to) {
        double h = to - from;
        double middle = 0.5 * (from + to);
        return new SectionRelease(blank, List.of(new Strip(from, to, 1)), h, middle, h * h * h / 12,
                blank.force(from, to) / h, blank.moment(from, to, middle) * 12 / (h * h * h));
    }

    /**
     * {@return the release of a section made of rectangles, such as a web with ribs}
     *
     * @param blank  stress of the blank
     * @param strips the rectangles, which do not overlap
     */
    public static SectionRelease ofSection(StressProfile blank, List<Strip> strips) {
        double area = 0;
        double firstMoment = 0;
        double force = 0;
        for (Strip strip : strips) {
            area += strip.width() * strip.height();
            firstMoment += strip.width() * strip.height() * strip.middle();
            force += strip.width() * blank.force(strip.from(), strip.to());
        }
        double centroid = firstMoment / area;
        double second = 0;
        double moment = 0;
        for (Strip strip : strips) {
            double h = strip.height();
            double arm = strip.middle() - centroid;
            second += strip.width() * (h * h * h / 12 + h * arm * arm);
            moment += strip.width() * blank.moment(strip.from(), strip.to(), centroid);
        }
        return new SectionRelease(blank, strips, area, centroid, second, force / area, moment / second);
    }

    /**
     * {@return the stress at a depth after the release, Pa}
     *
     * @param z   depth in the blank, m
     * @param way how far the stress is released
     */
    public double stressAt(double z, Release way) {
        return blank.at(z) - released(z, way);
    }

    /**
     * {@return the stress of a plate or wall after the release}
     *
     * @param way how far the stress is released
     */
    public StressProfile after(Release way) {
        double from = strips.get(0).from();
        double to = strips.get(0).to();
        for (Strip strip : strips) {
            from = Math.min(from, strip.from());
            to = Math.max(to, strip.to());
        }
        StressProfile kept = blank.between(from, to);
        return switch (way) {
            case AS_IS -> kept;
            case HELD_FLAT -> kept.minusLine(meanStress, 0, centroid);
            case FREE_TO_BOW -> kept.minusLine(meanStress, gradient, centroid);
        };
    }

    private double released(double z, Release way) {
        return switch (way) {
            case AS_IS -> 0;
            case HELD_FLAT -> meanStress;
            case FREE_TO_BOW -> meanStress + gradient * (z - centroid);
        };
    }
}
