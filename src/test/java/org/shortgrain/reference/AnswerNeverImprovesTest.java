package org.shortgrain.reference;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.shortgrain.terms.GrainDirection;

/**
 * Leaving a datum out never makes an answer better: not the verdict on the material, not a stress to compare with, not
 * a strength. The area of the section is the one datum that may be left out at no cost but the lowest figure.
 */
class AnswerNeverImprovesTest {
    private static final ReferenceTables TABLES = ReferenceTables.builtIn();
    /** Two rows within 1 MPa count as one figure in two roundings; either may be given. */
    private static final double ROUNDING = 1e6;

    private static final double KSI = 6894757.293168361;
    /** A drawing leaves some 20 ksi between the least and the greatest strength (Pa). */
    private static final double BAND = 20 * KSI;

    /** What is left out of a question. */
    enum Gap {
        TEMPER, RELIEF_DIGITS, ALL_DIGITS, FORM, THICKNESS, SECTION_AREA, MAX_STRENGTH, BOTH_STRENGTHS, WIDTH
    }

    @Provide
    Arbitrary<MaterialQuery> questions() {
        List<Arbitrary<MaterialQuery>> perAlloy = new ArrayList<>();
        for (Alloy alloy : TABLES.materials().alloys().all()) {
            if (TABLES.materials().ratings().of(alloy).size() + TABLES.materials().strengths().of(alloy).size() > 0) {
                perAlloy.add(questionsAbout(alloy));
            }
        }
        return Arbitraries.integers().between(0, perAlloy.size() - 1).flatMap(perAlloy::get);
    }

    private static Arbitrary<MaterialQuery> questionsAbout(Alloy alloy) {
        return Combinators.combine(Arbitraries.of(tempersOf(alloy)),
                Arbitraries.of(new ArrayList<>(TABLES.materials().forms().words())), Arbitraries.of(sizesOf(alloy)),
                Arbitraries.of(50e-4, 129e-4, 150e-4, 300e-4), Arbitraries.of(1.0, 2.0, 3.0),
                Arbitraries.of(900e6, 1230e6, 1241e6, 1300e6, 1375e6, 1450e6, 1800e6))
                .as((temper, form, size, area, width, uts) -> new MaterialQuery(Optional.of(alloy.name()),
                        Optional.empty(), Optional.of(temper), Optional.of(form), OptionalDouble.of(size),
                        OptionalDouble.of(area), OptionalDouble.of(width), OptionalDouble.of(leastUts(temper, uts)),
                        OptionalDouble.of(leastUts(temper, uts) + BAND)));
    }

    /** A strength level in the temper and a strength band say the same thing twice: they are drawn to agree. */
    private static double leastUts(String temper, double uts) {
        return temper.startsWith("HT-") ? Integer.parseInt(temper.substring(3)) * KSI : uts;
    }

    /** Every temper that a row of the alloy names, with some that none does. */
    private static List<String> tempersOf(Alloy alloy) {
        List<Integer> levels = TABLES.materials().strengths().strengthLevels(alloy);
        if (!levels.isEmpty()) {
            return levels.stream().map(ksi -> "HT-" + ksi).toList();
        }
        Set<String> tempers = new TreeSet<>(Set.of("T6", "T651", "T73", "T7351", "T7352", "T7651", "T62", "annealed"));
        List<Scope> scopes = new ArrayList<>();
        TABLES.materials().ratings().of(alloy).forEach(r -> scopes.add(r.scope()));
        TABLES.materials().stresses().of(alloy).forEach(r -> scopes.add(r.scope()));
        TABLES.materials().strengths().of(alloy).forEach(r -> scopes.add(r.scope()));
        for (Scope scope : scopes) {
            for (String token : scope.tempers().text().split("\\|")) {
                String plain = token.replaceAll("^[=!]|[<>=]+", "");
                if (plain.matches("(T\\d|H|SCT|RH|CH|SRH|CW).*|[a-zA-Z_]+")) {
                    tempers.add(plain);
                    if (plain.matches("T\\d{1,2}")) {
                        tempers.addAll(Set.of(plain + "51", plain + "511", plain + "52"));
                    }
                }
            }
        }
        return List.copyOf(tempers);
    }

    /** Both sides of the edge of every band of the alloy. */
    private static List<Double> sizesOf(Alloy alloy) {
        Set<Double> sizes = new TreeSet<>(Set.of(0.002, 0.030, 0.100, 0.5));
        List<ThicknessBand> bands = new ArrayList<>();
        TABLES.materials().ratings().of(alloy).forEach(r -> bands.add(r.scope().thickness()));
        TABLES.materials().stresses().of(alloy).forEach(r -> bands.add(r.scope().thickness()));
        TABLES.materials().strengths().of(alloy).forEach(r -> bands.add(r.scope().thickness()));
        for (ThicknessBand band : bands) {
            for (double edge : new double[] {band.from(), band.to()}) {
                if (Double.isFinite(edge) && edge > 1e-3) {
                    sizes.addAll(Set.of(edge - 1e-5, edge, edge + 1e-5));
                }
            }
        }
        return List.copyOf(sizes);
    }

    @Property(tries = 3000)
    void leavingADatumOutNeverImprovesTheAnswer(@ForAll("questions") MaterialQuery full,
            @ForAll Set<Gap> gaps) {
        MaterialQuery less = full;
        boolean areaGiven = !gaps.contains(Gap.SECTION_AREA);
        for (Gap gap : gaps) {
            less = without(less, gap);
        }
        MaterialAnswer before = TABLES.materials().lookUp(full);
        MaterialAnswer after = TABLES.materials().lookUp(less);
        for (GrainDirection direction : GrainDirection.values()) {
            String which = direction + " of " + full + " without " + gaps;
            compareLevels(before.in(direction).level(), after.in(direction).level(), which);
            compare(before.in(direction).stress().low(), after.in(direction).stress().low(),
                    after.in(direction).stress().open(), areaGiven, which + ": stress");
            compare(before.in(direction).strength().fty(), after.in(direction).strength().fty(),
                    after.in(direction).strength().open(), areaGiven, which + ": yield strength");
            compare(before.in(direction).strength().ftu(), after.in(direction).strength().ftu(),
                    after.in(direction).strength().open(), areaGiven, which + ": tensile strength");
        }
    }

    @Property(tries = 700)
    void leavingTheDirectionOutNeverImprovesTheVerdict(@ForAll("questions") MaterialQuery full) {
        MaterialAnswer answer = TABLES.materials().lookUp(full);
        for (GrainDirection direction : GrainDirection.values()) {
            compareLevels(answer.in(direction).level(), answer.inUnknownDirection().level(), direction + " " + full);
        }
    }

    @Property(tries = 700)
    void leavingTheAlloyOutNeverImprovesTheVerdict(@ForAll("questions") MaterialQuery full) {
        MaterialAnswer known = TABLES.materials().lookUp(full);
        MaterialQuery family = new MaterialQuery(Optional.empty(), known.family(), full.temper(), full.productForm(),
                full.thickness(), full.sectionArea(), full.widthToThickness(), full.minUts(), full.maxUts());
        MaterialAnswer answer = TABLES.materials().lookUp(family);
        for (GrainDirection direction : GrainDirection.values()) {
            compareLevels(known.in(direction).level(), answer.in(direction).level(), direction + " " + full);
            compare(known.in(direction).stress().low(), answer.in(direction).stress().low(),
                    answer.in(direction).stress().open(), true, direction + " " + full);
        }
    }

    private static MaterialQuery without(MaterialQuery q, Gap gap) {
        OptionalDouble none = OptionalDouble.empty();
        Optional<String> temper = switch (gap) {
            case TEMPER -> Optional.empty();
            case RELIEF_DIGITS -> q.temper().map(t -> t.replaceFirst("^(T\\d{1,2})(51[01]?|52|54)$", "$1xx"));
            case ALL_DIGITS -> q.temper().map(t -> t.replaceFirst("^T7\\d.*$", "T7x"));
            default -> q.temper();
        };
        return new MaterialQuery(q.alloy(), q.family(), temper,
                gap == Gap.FORM ? Optional.empty() : q.productForm(), gap == Gap.THICKNESS ? none : q.thickness(),
                gap == Gap.SECTION_AREA ? none : q.sectionArea(), gap == Gap.WIDTH ? none : q.widthToThickness(),
                gap == Gap.BOTH_STRENGTHS ? none : q.minUts(),
                gap == Gap.MAX_STRENGTH || gap == Gap.BOTH_STRENGTHS ? none : q.maxUts());
    }

    private static void compareLevels(LevelAnswer before, LevelAnswer after, String which) {
        assertTrue(after.susceptibility().compareTo(before.susceptibility()) >= 0,
                which + ": " + before.susceptibility() + " became " + after.susceptibility());
        if (before.susceptibility() == Susceptibility.SUSCEPTIBLE) {
            assertTrue(after.level().number() <= before.level().number(),
                    which + ": " + before.level() + " became " + after.level());
        }
    }

    /** A figure may not rise; where there was none, one that appears must say what is open. */
    private static void compare(OptionalDouble before, OptionalDouble after, Set<OpenDatum> open,
            boolean mustBeOpen, String which) {
        if (before.isPresent() && after.isPresent()) {
            assertTrue(after.getAsDouble() <= before.getAsDouble() + ROUNDING,
                    which + " rose from " + before + " to " + after);
        }
        if (before.isEmpty() && after.isPresent() && mustBeOpen) {
            assertFalse(open.isEmpty(), which + " appeared as " + after);
        }
    }
}
