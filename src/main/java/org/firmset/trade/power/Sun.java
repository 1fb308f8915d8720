package org.firmset.trade.power;

/** Energy from panels by the simple daily sum: rated power x hours of full sun x yield. */
public final class Sun {
    private Sun() {}

    /**
     * Energy of a day in Wh.
     *
     * @param panelWatts rated power in W, 0 or more
     * @param sunHours hours of full sun (1000 W/m2) on the panels, 0 to 24
     * @param yieldPercent what arrives after all losses, 0 to 100
     */
    public static double wattHours(double panelWatts, double sunHours, int yieldPercent) {
        boolean inRange =
                panelWatts >= 0 && sunHours >= 0 && sunHours <= 24 && yieldPercent >= 0 && yieldPercent <= 100;
        if (!inRange) {
            throw new IllegalArgumentException("panelWatts [" + panelWatts + "], sunHours [" + sunHours
                    + "] or yieldPercent [" + yieldPercent + "] is out of range");
        }
        return panelWatts * sunHours * yieldPercent / 100;
    }
}
