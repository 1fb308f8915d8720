package org.firmset.trade.power;

/**
 * Published arithmetic of solar panels: the PVWatts version 5 models (NREL/TP-6A20-62641, checks EN-01 to EN-03) and Ross's cell
 * temperature (EN-04).
 */
public final class Photovoltaics {
    private static final double FULL_SUN = 1000;
    private static final double REFERENCE_CELSIUS = 25;

    private Photovoltaics() {}

    /**
     * Direct-current power in W.
     *
     * @param irradiance on the panels in W/m2, 0 or more
     * @param cellCelsius temperature of the cells
     * @param peakWatts rated power, 0 or more
     * @param percentPerKelvin change for each degree over 25 °C, such as -0.3
     */
    public static double directWatts(double irradiance, double cellCelsius, double peakWatts, double percentPerKelvin) {
        Must.lieWithin("irradiance", irradiance, 0, Double.MAX_VALUE);
        double heat = 1 + percentPerKelvin / 100 * (cellCelsius - REFERENCE_CELSIUS);
        return peakWatts * irradiance / FULL_SUN * Math.max(0, heat);
    }

    /** Temperature of the cells: air + irradiance x (nominal - 20) / 800. */
    public static double cellCelsius(double irradiance, double airCelsius, double nominalCellCelsius) {
        return airCelsius + irradiance * (nominalCellCelsius - 20) / 800;
    }

    /** Losses in percent that come one after the other: what each leaves is multiplied, not what each takes added. */
    public static double lossPercent(double... percents) {
        double left = 1;
        for (double percent : percents) {
            Must.lieWithin("loss percent", percent, 0, 100);
            left *= 1 - percent / 100;
        }
        return 100 * (1 - left);
    }

    /**
     * Alternating-current power in W behind an inverter that feeds a grid, by the PVWatts curve. The day's sums use one
     * efficiency instead, since an inverter behind a battery seldom comes with a curve.
     *
     * @param directWatts 0 or more
     * @param ratedDirectWatts of the inverter, over 0
     * @param nominalPercent its nominal efficiency
     */
    public static double alternatingWatts(double directWatts, double ratedDirectWatts, double nominalPercent) {
        double share = directWatts / ratedDirectWatts;
        if (share <= 0) {
            return 0;
        }
        double nominal = nominalPercent / 100;
        double efficiency = nominal / 0.9637 * (-0.0162 * share - 0.0059 / share + 0.9858);
        return Math.clamp(efficiency * directWatts, 0, nominal * ratedDirectWatts);
    }
}
