package org.firmset.trade.climate;

/** The columns of a table of forecast days. */
enum ForecastColumn implements TableColumn {
    HIGH("high", true, -60, 60, Unit.CELSIUS, Unit.FAHRENHEIT),
    LOW("low", true, -60, 60, Unit.CELSIUS, Unit.FAHRENHEIT),
    WET("wet_percent", true, 0, 100, Unit.NONE),
    SUN("sun_hours", false, 0, 14, Unit.NONE),
    WIND("wind", false, 0, 60, Unit.METRES_PER_SECOND, Unit.KILOMETRES_PER_HOUR, Unit.MILES_PER_HOUR);

    private final String key;
    private final boolean required;
    private final double least;
    private final double most;
    private final Unit[] units;

    ForecastColumn(String key, boolean required, double least, double most, Unit... units) {
        this.key = key;
        this.required = required;
        this.least = least;
        this.most = most;
        this.units = units;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public boolean required() {
        return required;
    }

    @Override
    public double least() {
        return least;
    }

    @Override
    public double most() {
        return most;
    }

    @Override
    public Unit[] units() {
        return units.clone();
    }
}
