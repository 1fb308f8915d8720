package org.firmset.trade.climate;

import java.time.LocalDate;

/**
 * A second way to sunrise and sunset for tests: NOAA's short equations after Meeus, from memory of the published
 * spreadsheet. Shares nothing with the library. Good to about a minute between the polar circles.
 */
final class AlmanacEquations {
    private AlmanacEquations() {}

    /** Minutes after midnight UTC of rise and set; the sun stands at a zenith in degrees. */
    static double[] riseAndSet(double latitude, double longitude, LocalDate date, double zenith) {
        double[] result = new double[2];
        for (int side = 0; side < 2; side++) {
            double minutes = 720 - 4 * longitude;
            for (int round = 0; round < 3; round++) {
                double century = (date.toEpochDay() - 10957.5 + minutes / 1440) / 36525;
                double[] sun = declinationAndTime(century);
                double d = sun[0];
                double phi = Math.toRadians(latitude);
                double cos =
                        Math.cos(Math.toRadians(zenith)) / (Math.cos(phi) * Math.cos(d)) - Math.tan(phi) * Math.tan(d);
                double angle = Math.toDegrees(Math.acos(cos));
                minutes = 720 - 4 * (longitude + (side == 0 ? angle : -angle)) - sun[1];
            }
            result[side] = minutes;
        }
        return result;
    }

    private static double[] declinationAndTime(double t) {
        double longitude = 280.46646 + t * (36000.76983 + t * 0.0003032);
        double anomaly = Math.toRadians(357.52911 + t * (35999.05029 - 0.0001537 * t));
        double eccentricity = 0.016708634 - t * (0.000042037 + 0.0000001267 * t);
        double centre = Math.sin(anomaly) * (1.914602 - t * (0.004817 + 0.000014 * t))
                + Math.sin(2 * anomaly) * (0.019993 - 0.000101 * t)
                + Math.sin(3 * anomaly) * 0.000289;
        double node = Math.toRadians(125.04 - 1934.136 * t);
        double apparent = Math.toRadians(longitude + centre - 0.00569 - 0.00478 * Math.sin(node));
        double tilt = Math.toRadians(23.439291 - 0.0130042 * t + 0.00256 * Math.cos(node));
        double declination = Math.asin(Math.sin(tilt) * Math.sin(apparent));
        double y = Math.pow(Math.tan(tilt / 2), 2);
        double l = Math.toRadians(longitude);
        double time = y * Math.sin(2 * l)
                - 2 * eccentricity * Math.sin(anomaly)
                + 4 * eccentricity * y * Math.sin(anomaly) * Math.cos(2 * l)
                - 0.5 * y * y * Math.sin(4 * l)
                - 1.25 * eccentricity * eccentricity * Math.sin(2 * anomaly);
        return new double[] {declination, 4 * Math.toDegrees(time)};
    }
}
