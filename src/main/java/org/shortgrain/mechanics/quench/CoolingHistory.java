package org.shortgrain.mechanics.quench;

import java.util.List;

/**
 * What happened in the bath, moment by moment.
 *
 * @param moments the accepted time steps, in order
 */
public record CoolingHistory(List<Moment> moments) {

    /** Copies the list. */
    public CoolingHistory {
        moments = List.copyOf(moments);
    }

    /**
     * One moment of the quench.
     *
     * @param time               time since immersion, s
     * @param centreTemperature  degC
     * @param surfaceTemperature degC
     * @param centreStress       Pa
     * @param surfaceStress      Pa
     */
    public record Moment(double time, double centreTemperature, double surfaceTemperature, double centreStress,
            double surfaceStress) {
    }
}
