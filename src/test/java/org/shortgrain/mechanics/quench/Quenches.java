package org.shortgrain.mechanics.quench;

import org.shortgrain.reference.QuenchTables;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/** Metals, baths and units that the quench tests share. */
public final class Quenches {

    /** One megapascal, Pa. */
    public static final double MPA = 1e6;
    /** One millimetre, m. */
    public static final double MM = 1e-3;
    /** The bundled tables. */
    public static final QuenchTables TABLES = QuenchTables.bundled();

    private static final Citation MADE_UP = new Citation("test", "constant properties", SourceStatus.DERIVED);

    private Quenches() {
    }

    /** The metal of an alloy. */
    public static QuenchMaterial metal(String alloy) {
        return TABLES.material(alloy).orElseThrow();
    }

    /** A bath by the short name that the tables use: water20 ... water100, pag10 ... pag30. */
    public static FilmCoefficient bath(String name) {
        return name.startsWith("water") ? TABLES.baths().water(Double.parseDouble(name.substring(5))).orElseThrow()
                : TABLES.baths().glycol(Double.parseDouble(name.substring(3))).orElseThrow();
    }

    /** A 7050 section quenched from 475 degC. */
    public static SectionQuench of7050(double millimetres, String bath) {
        return new SectionQuench(metal("7050"), bath(bath), millimetres * MM, 475);
    }

    /** A metal with constant properties that never yields. */
    static QuenchMaterial elastic(double conductivity, double modulus, double expansion) {
        PropertyCurve never = PropertyCurve.constant(1e15);
        return new QuenchMaterial("constant", 2800, 0.33, PropertyCurve.constant(conductivity),
                PropertyCurve.constant(900), PropertyCurve.constant(modulus), PropertyCurve.constant(expansion), never,
                PropertyCurve.constant(0), PropertyCurve.constant(1), 475, MADE_UP);
    }

    /** A bath with a constant film coefficient. */
    static FilmCoefficient constantFilm(double coefficient, double bathTemperature) {
        return new FilmCoefficient("constant", bathTemperature, PropertyCurve.constant(coefficient), 1, MADE_UP,
                MADE_UP);
    }
}
