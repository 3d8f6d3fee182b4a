package org.shortgrain.mechanics.quench;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shortgrain.mechanics.quench.Quenches.MM;
import static org.shortgrain.mechanics.quench.Quenches.MPA;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * The models beside the published measurements that could be seen, nearly all of them in abstracts. Nothing is tuned per
 * case. The table is kept as text, so that a change of the models or their data shows in what it does to every case.
 */
class PublishedComparisonTest {

    private static final QuenchSolver SOLVER = new QuenchSolver(QuenchResolution.NORMAL, 100);
    private static final Path GUIDE = Path.of("DEVELOPERS.md");
    private static final Path WRITTEN = Path.of("target", "quench-published-comparison.md");

    private final List<String> rows = new ArrayList<>();

    @Test
    void theModelsStandBesideThePublishedMeasurementsAsTheKeptTableSays() throws IOException {
        coldWater();
        afterRelief();
        mildBaths();
        remembered();
        String table = String.join("\n", rows) + "\n";
        Files.createDirectories(WRITTEN.getParent());
        Files.writeString(WRITTEN, table);

        assertTrue(Files.readString(GUIDE).contains(table),
                "the models or their data changed: look at each case in " + WRITTEN + ", then put it into " + GUIDE);
    }

    private void row(String publication, String what, String published, String model, String remark) {
        if (rows.isEmpty()) {
            rows.add("| publication | case | published, MPa or share | model | remark |");
            rows.add("|---|---|---|---|---|");
        }
        rows.add("| " + String.join(" | ", publication, what, published, model, remark) + " |");
    }

    private void coldWater() {
        QuenchedPlate p1 = plate("7050", 76.2, "water20");
        row("contour method repeatability, Exp. Mech. (2014), abstract", "7050-T74 plate 76.2 mm, bath assumed cold",
                "skin -150, core +150", skinCore(p1), difference(p1, -150, 150));
        QuenchedPlate p3 = plate("7085", 100, "water20");
        QuenchedBar bar = SOLVER.bar(quench("7085", 100, "water20"));
        row("Olson et al. 2018, abstract", "7085 die forging, LT, section assumed 100 mm", "skin -200, core +130",
                "plate " + skinCore(p3) + "; bar " + skinCore(bar.hoop()),
                "published core lies between plate and bar");
        row("Olson et al. 2018, abstract", "the same, L", "skin -300, core +250", "bar " + skinCore(bar.axial()),
                String.format(Locale.ROOT, "core %+.0f %%; skin only %.0f %% of the published",
                        100 * (bar.axial().at(0) / (250 * MPA) - 1),
                        100 * bar.axial().at(bar.radius()) / (-300 * MPA)));
    }

    private void afterRelief() {
        SectionQuench p1 = quench("7050", 76.2, "water20");
        List<String> left = new ArrayList<>();
        for (double set : new double[] {0.015, 0.02, 0.03}) {
            RelievedPlate plate = SOLVER.stretched(p1, set);
            left.add(String.format(Locale.ROOT, "%.1f %%: L %.0f, LT %.0f", 100 * set, largest(plate.along()),
                    largest(plate.across())));
        }
        row("Prime and Hill 2002, authors' summary; contour repeatability 2014", "7050-T7451 plate, stretched 1.5 to 3 %",
                "20; reduced by about a factor 10", "largest, " + String.join("; ", left),
                "the model leaves 35 to 40 % less than 20 MPa; reviews take no less than 25 MPa");
        SectionQuench p3 = quench("7085", 100, "water20");
        row("Olson et al. 2018, abstract", "7085-T7452 die forging, compressed", "-130 to +75",
                String.format(Locale.ROOT, "ideal compression, largest %.0f", largest(SOLVER.compressed(p3, 0.03)
                        .along())), "the ideal model is useless here; reviews take no less than 45 % of as-quenched");
        SectionQuench p8 = quench("7449", 75, "water20");
        List<String> light = new ArrayList<>();
        for (double set : new double[] {0.001, 0.002, 0.003}) {
            light.add(String.format(Locale.ROOT, "%.1f %%: %.0f %%", 100 * set,
                    100 * (rms(SOLVER.compressed(p8, set).along()) / rms(SOLVER.plate(p8).profile()) - 1)));
        }
        row("Robinson et al. 2020, abstract", "7449 block compressed 0.1 to 0.3 %, section assumed 75 mm",
                "-30 to -50 %, no trend", "root mean square, " + String.join("; ", light),
                "agrees at 0.1 %; real relief saturates");
        uphill("Dong et al. 2015; Araghchi et al. 2017, abstracts", "2219", 60, 2000,
                "uphill, Al-Cu, boiling water, section assumed 60 mm", "-25 to -40 %; -29 %");
        uphill("Wang et al. 2005; Araghchi et al. 2017, abstracts", "7050", 75, 5000,
                "uphill, stronger medium, section assumed 75 mm", "up to -71 %");
    }

    private void uphill(String publication, String alloy, double millimetres, double film, String what,
            String published) {
        SectionQuench quench = quench(alloy, millimetres, "water20");
        QuenchedPlate before = SOLVER.plate(quench);
        QuenchedPlate after = SOLVER.uphill(quench, Quenches.constantFilm(film, 100));
        row(publication, what, published, String.format(Locale.ROOT, "skin %.0f %%, core %.0f %%",
                100 * (after.skin() / before.skin() - 1), 100 * (after.core() / before.core() - 1)),
                "film picked after seeing the published relief: shows that it can be, no more");
    }

    private void mildBaths() {
        mild("60 degC water", "-28.2 %", "water60", "film fixed beforehand; section unknown");
        mild("80 degC water", "-75.7 %, -75 %", "water80", "calibrated at 60 mm, no validation");
        mild("100 degC water", "-88.9 %, -91.4 %", "water100", "calibrated at 60 mm, no validation");
        mild("10 % glycol", "-35.1 %", "pag10", "calibrated at 60 mm, no validation");
        mild("20 % glycol", "-47.8 %", "pag20", "film fixed beforehand; section unknown");
        mild("30 % glycol", "-53.2 %, -52.2 %", "pag30", "calibrated at 60 mm, no validation");
        List<String> p6 = new ArrayList<>();
        for (double t : new double[] {60, 80, 100}) {
            p6.add(String.format(Locale.ROOT, "%.0f mm %.0f %%", t,
                    100 * (plate("7075", t, "water80").skin() / plate("7075", t, "water40").skin() - 1)));
        }
        row("TNMSC, residual stress in quenched 7075 thick plates, abstract", "7075 plate, 40 to 80 degC water",
                "-30 %", "skin, " + String.join("; ", p6), "agrees from 100 mm up only; section unknown");
    }

    private void mild(String bath, String published, String film, String remark) {
        List<String> model = new ArrayList<>();
        for (double t : new double[] {50, 60, 80}) {
            model.add(String.format(Locale.ROOT, "%.0f mm %.0f %%", t,
                    100 * (plate("2219", t, film).skin() / plate("2219", t, "water20").skin() - 1)));
        }
        row("Dong et al. 2015, abstracts", "Al-Cu block, " + bath + " against cold water", published,
                "skin, " + String.join("; ", model), remark);
    }

    private void remembered() {
        QuenchedPlate p20 = plate("7075", 70, "water20");
        row("Jeanmart and Bouvaist 1985, from memory", "7075 plate 70 mm, layer removal",
                "skin -200, core +150 to +170", skinCore(p20), "not seen: low confidence");
        QuenchedPlate thick = plate("7449", 75, "water20");
        QuenchedPlate thin = plate("7449", 20, "water20");
        row("Chobaut 2015, from memory", "7449 plate 75 mm and 20 mm, neutron",
                "-230 to -250, +190 to +220; -100, +60", skinCore(thick) + "; " + skinCore(thin),
                "not seen: low confidence; the model is 15 to 20 % low");
    }

    private static SectionQuench quench(String alloy, double millimetres, String bath) {
        QuenchMaterial metal = Quenches.metal(alloy);
        return new SectionQuench(metal, Quenches.bath(bath), millimetres * MM, metal.solutionTemperature());
    }

    private static QuenchedPlate plate(String alloy, double millimetres, String bath) {
        return SOLVER.plate(quench(alloy, millimetres, bath));
    }

    private static String skinCore(QuenchedPlate plate) {
        return String.format(Locale.ROOT, "skin %.0f, core %+.0f", plate.skin() / MPA, plate.core() / MPA);
    }

    private static String skinCore(StressProfile byRadius) {
        return String.format(Locale.ROOT, "skin %.0f, core %+.0f", byRadius.at(byRadius.end()) / MPA,
                byRadius.at(0) / MPA);
    }

    private static String difference(QuenchedPlate plate, double skin, double core) {
        return String.format(Locale.ROOT, "model higher by %.0f at the skin, %.0f in the core",
                skin - plate.skin() / MPA, plate.core() / MPA - core);
    }

    private static double largest(StressProfile profile) {
        return Arrays.stream(profile.stresses()).map(Math::abs).max().orElseThrow() / MPA;
    }

    private static double rms(StressProfile profile) {
        double sum = 0;
        int points = 2000;
        for (int i = 0; i <= points; i++) {
            double s = profile.at(profile.start() + profile.thickness() * i / points);
            sum += s * s;
        }
        return Math.sqrt(sum / (points + 1));
    }
}
