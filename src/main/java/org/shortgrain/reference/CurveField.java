package org.shortgrain.reference;

import java.util.List;
import org.shortgrain.mechanics.quench.PropertyCurve;

/** Reads a curve from a field: points {@code temperature:value}, separated by {@code |}, temperatures rising. */
final class CurveField {

    private CurveField() {
    }

    /**
     * {@return the curve in a field; a constant zero, with a fault noted, where it cannot be read}
     *
     * @param row    the row
     * @param column head of the column
     * @param factor what one unit of the field is in SI
     */
    static PropertyCurve read(Row row, String column, double factor) {
        List<String> points = row.list(column);
        double[] temperature = new double[points.size()];
        double[] value = new double[points.size()];
        try {
            for (int i = 0; i < points.size(); i++) {
                String[] pair = points.get(i).split(":", 2);
                temperature[i] = Double.parseDouble(pair[0]);
                value[i] = Double.parseDouble(pair[1]) * factor;
            }
            return PropertyCurve.through(temperature, value);
        } catch (IllegalArgumentException | ArrayIndexOutOfBoundsException e) {
            row.fault(column + " is '" + row.text(column) + "'; expected temperature:value|temperature:value,"
                    + " temperatures rising");
            return PropertyCurve.constant(0);
        }
    }
}
