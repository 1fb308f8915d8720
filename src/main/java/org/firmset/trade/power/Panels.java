package org.firmset.trade.power;

/**
 * Solar panels that all look one way.
 *
 * @param peakWatts rated power, 0 to 1 million
 * @param tiltDegrees from lying flat (0) to standing upright (90)
 * @param azimuthDegrees where they look, clockwise from true north: 180 is south
 * @param lossPercent of the energy lost between sun and battery, 0 to 100; see {@link Photovoltaics#lossPercent}
 * @param percentPerKelvin change of power for each degree that the cells are over 25 °C, -1 to 0; 0 when heat is in the losses
 * @param nominalCellCelsius temperature of the cells at 800 W/m2 and 20 °C (NOCT), 20 to 80
 * @param known what the hours of full sun that are given were measured on
 */
public record Panels(
        double peakWatts,
        double tiltDegrees,
        double azimuthDegrees,
        double lossPercent,
        double percentPerKelvin,
        double nominalCellCelsius,
        SunKnown known) {
    public Panels {
        Must.lieWithin("peakWatts", peakWatts, 0, 1e6);
        Must.lieWithin("tiltDegrees", tiltDegrees, 0, 90);
        Must.lieWithin("azimuthDegrees", azimuthDegrees, 0, 360);
        Must.lieWithin("lossPercent", lossPercent, 0, 100);
        Must.lieWithin("percentPerKelvin", percentPerKelvin, -1, 0);
        Must.lieWithin("nominalCellCelsius", nominalCellCelsius, 20, 80);
    }

    /** The surface on which hours of full sun were measured. */
    public enum SunKnown {
        /** The panels as they stand: tilt and direction are in the figure and only shape the day. */
        ON_PANELS,
        /** Level ground: tilt and direction change the sum of the day as they would under a clear sky. */
        ON_LEVEL_GROUND
    }
}
