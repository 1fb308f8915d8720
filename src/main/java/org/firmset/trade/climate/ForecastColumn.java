package org.firmset.trade.climate;

/** The columns of a table of forecast days. */
enum ForecastColumn implements TableColumn {
    HIGH("high", true, -60, 60, Unit.CELSIUS, Unit.FAHRENHEIT),
    LOW("low", true, -60, 60, Unit.CELSIUS, Unit.FAHRENHEIT),
    WET("wet_percent", true, 0, 100, Unit.NONE),
    SUN("sun_hours", false, 0, 14, Unit.NONE),
    WIND("wind", false, 0, 60, Unit.METRES_PER_SECOND, Unit.KILOMETRES_PER_HOUR, Unit.MILES_PER_HOUR);

    private final Spec spec;

    ForecastColumn(String key, boolean required, double least, double most, Unit... units) {
        spec = new Spec(key, required, least, most, units);
    }

    @Override
    public Spec spec() {
        return spec;
    }
}
