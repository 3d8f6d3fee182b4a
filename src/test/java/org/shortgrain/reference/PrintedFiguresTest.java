package org.shortgrain.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The metric figures of every row against the figures that the source prints, and the factors between them. */
class PrintedFiguresTest {
    private static final double INCH = 0.0254;
    private static final double POUND = 0.45359237;
    private static final double GRAVITY = 9.80665;
    private static final double KSI = 1000 * POUND * GRAVITY / (INCH * INCH);
    /** International table Btu (J). */
    private static final double BTU = 1055.05585262;

    private static List<NamedCsvRecord> rows(String table) throws IOException {
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder()
                .ofNamedCsvRecord(Path.of("rules", "data", table))) {
            return reader.stream().toList();
        }
    }

    /** Factors that the tables were converted with; exact by the definitions of inch, pound, gravity and Btu. */
    @ParameterizedTest(name = "{0} {1} is {2} {3}")
    @CsvSource({"1, ksi, 6.894757, MPa, 5e-7", "25, ksi, 172.4, MPa, 0.05", "35, ksi, 241.3, MPa, 0.05",
        "42, ksi, 289.6, MPa, 0.05", "45, ksi, 310.3, MPa, 0.05", "1, ksi sqrt(in), 1.098843, MPa sqrt(m), 5e-7",
        "0.102, lb/in3, 2.823, g/cm3, 0.0005", "12.8, 1e-6/F, 23.04, 1e-6/K, 0.005",
        "91, Btu/(h ft F), 157.5, W/(m K), 0.05", "0.23, Btu/(lb F), 963, J/(kg K), 0.5",
        "10.3e3, ksi, 71016, MPa, 0.5", "775, degF, 412.8, degC, 0.05", "225, degF, 107.2, degC, 0.05",
        "350, degF, 176.7, degC, 0.05", "1, in, 25.4, mm, 1e-9"})
    void aPrintedFigureIsConverted(double printed, String unit, double expected, String metric, double rounding) {
        double converted = switch (unit) {
            case "ksi" -> printed * KSI / 1e6;
            case "ksi sqrt(in)" -> printed * KSI * Math.sqrt(INCH) / 1e6;
            case "lb/in3" -> printed * POUND * 1000 / Math.pow(INCH * 100, 3);
            case "1e-6/F" -> printed * 1.8;
            case "Btu/(h ft F)" -> printed * BTU / 3600 / (12 * INCH) * 1.8;
            case "Btu/(lb F)" -> printed * BTU / POUND * 1.8;
            case "degF" -> (printed - 32) / 1.8;
            default -> printed * INCH * 1000;
        };
        assertEquals(expected, converted, rounding, metric);
    }

    /** Strengths hold one decimal; a few sources print whole MPa. */
    @Test
    void everyStrengthIsItsPrintedFigureInKsi() throws IOException {
        int compared = 0;
        for (NamedCsvRecord row : rows("strengths.csv")) {
            for (String what : List.of("ftu", "fty")) {
                String ksi = row.getField("printed_" + what + "_ksi");
                if (!ksi.isEmpty()) {
                    String mpa = row.getField(what + "_MPa");
                    double rounding = mpa.contains(".") ? 0.051 : 1.0;
                    assertEquals(Double.parseDouble(ksi) * KSI / 1e6, Double.parseDouble(mpa), rounding, row.toString());
                    compared++;
                }
            }
        }
        assertTrue(compared > 2500, "compared " + compared);
    }

    /** Bands are printed to 0.001 in, so that 3/16 in reads 0.188: half of that step is 0.0127 mm, and the column rounds to 0.001 mm. */
    @Test
    void everyThicknessBandIsItsPrintedBandInInches() throws IOException {
        int compared = 0;
        for (NamedCsvRecord row : rows("strengths.csv")) {
            String band = row.getField("printed_band_in");
            boolean shortened = row.getField("remark").contains("ST values for 1.500 in only");
            if (!band.isEmpty() && !shortened) {
                String[] ends = band.replace(">=", "").split("-");
                assertEquals(Double.parseDouble(ends[0]) * 25.4, number(row, "thickness_min_mm"), 0.0136, row.toString());
                if (ends.length > 1) {
                    assertEquals(Double.parseDouble(ends[1]) * 25.4, number(row, "thickness_max_mm"), 0.0136,
                            row.toString());
                }
                compared++;
            }
        }
        assertTrue(compared > 1200, "compared " + compared);
    }

    private static double number(NamedCsvRecord row, String column) {
        return row.getField(column).isEmpty() ? 0 : Double.parseDouble(row.getField(column));
    }

    /** Test stresses hold whole MPa. */
    @Test
    void everyTestStressIsItsPrintedFigureInKsi() throws IOException {
        int compared = 0;
        for (NamedCsvRecord row : rows("scc-stresses.csv")) {
            if (!row.getField("printed_ksi").isEmpty()) {
                assertEquals(Double.parseDouble(row.getField("printed_ksi")) * KSI / 1e6, number(row, "stress_low_MPa"),
                        0.51, row.toString());
                compared++;
            }
        }
        assertTrue(compared > 150, "compared " + compared);
    }

    /** Toughness holds one decimal. */
    @Test
    void everyToughnessIsItsPrintedFigure() throws IOException {
        for (NamedCsvRecord row : rows("toughness.csv")) {
            assertEquals(Double.parseDouble(row.getField("average_ksi_sqrt_in")) * KSI * Math.sqrt(INCH) / 1e6,
                    number(row, "kic_MPa_sqrt_m"), 0.051, row.toString());
            assertTrue(number(row, "min_ksi_sqrt_in") <= number(row, "average_ksi_sqrt_in")
                    && number(row, "average_ksi_sqrt_in") <= number(row, "max_ksi_sqrt_in"), row.toString());
        }
    }

    /** MIL-DTL-14072F: the anodic index is 0.15 V less the potential against the calomel electrode. */
    @Test
    void everyAnodicIndexIsItsPotential() throws IOException {
        for (NamedCsvRecord row : rows("galvanic.csv")) {
            if (!row.getField("anodic_index_cV").isEmpty()) {
                assertEquals(15 - number(row, "potential_cV"), number(row, "anodic_index_cV"), 0, row.toString());
            }
        }
    }

    /** MIL-HDBK-5J Tables 3.7.4.0: 12.8e-6/F, 91 Btu/(h ft F), 0.23 Btu/(lb F), 0.102 lb/in3, 10.3e3 ksi. */
    @Test
    void thePhysicalDataOfAnOverAgedPlateAreTheHandbooksInSi() {
        PhysicalData data = ReferenceTables.builtIn().materials().lookUp(MaterialQuery.ofAlloy("7050").temper("T7451")
                .form("plate").thickness(0.1)).physical();
        assertEquals(12.8e-6 * 1.8, data.expansion().orElseThrow().value(), 0.05e-6);
        assertEquals(157.5, data.conductivity().orElseThrow().value(), 0.6);
        assertEquals(963, data.specificHeat().orElseThrow().value(), 0.5);
        assertEquals(2823, data.density().orElseThrow().value(), 0.5);
        assertEquals(10.3e6 * KSI / 1000, data.modulus().orElseThrow().value(), 0.05e9);
    }
}
