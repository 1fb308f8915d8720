package org.firmset.trade.climate;

/** The columns of a table of monthly normals. */
enum ClimateColumn implements TableColumn {
    HIGH("mean_high", true, -60, 60, Unit.CELSIUS, Unit.FAHRENHEIT),
    LOW("mean_low", true, -60, 60, Unit.CELSIUS, Unit.FAHRENHEIT),
    WET_DAYS("wet_days", true, 0, 31, Unit.NONE),
    SUN("sun_hours", true, 0, 14, Unit.NONE),
    RAIN("rain", false, 0, 3000, Unit.MILLIMETRES, Unit.INCHES),
    WIND("wind", false, 0, 40, Unit.METRES_PER_SECOND, Unit.KILOMETRES_PER_HOUR, Unit.MILES_PER_HOUR);

    private final String key;
    private final boolean required;
    private final double least;
    private final double most;
    private final Unit[] units;

    ClimateColumn(String key, boolean required, double least, double most, Unit... units) {
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
