package org.firmset.trade.power;

/**
 * Battery, panels, inverter and generator together.
 *
 * @param panelWatts rated power of the panels, 0 to 1 million; how they stand is in the {@link SunCurve} of each day
 * @param generator {@link Generator#NONE} for none
 */
public record PowerSystem(Battery battery, double panelWatts, Inverter inverter, Generator generator) {
    static final double MOST_PANEL_WATTS = 1e6;

    public PowerSystem {
        Must.lieWithin("panelWatts", panelWatts, 0, MOST_PANEL_WATTS);
    }

    PowerSystem withCapacity(double wattHours) {
        return new PowerSystem(battery.withCapacity(wattHours), panelWatts, inverter, generator);
    }

    PowerSystem withPanelWatts(double watts) {
        return new PowerSystem(battery, watts, inverter, generator);
    }
}
