package org.firmset.trade.climate;

/** The columns of a table of monthly normals. */
enum ClimateColumn implements TableColumn {
    HIGH("mean_high", true, -60, 60, Unit.CELSIUS, Unit.FAHRENHEIT),
    LOW("mean_low", true, -60, 60, Unit.CELSIUS, Unit.FAHRENHEIT),
    WET_DAYS("wet_days", true, 0, 31, Unit.NONE),
    SUN("sun_hours", true, 0, 14, Unit.NONE),
    RAIN("rain", false, 0, 3000, Unit.MILLIMETRES, Unit.INCHES),
    WIND("wind", false, 0, 40, Unit.METRES_PER_SECOND, Unit.KILOMETRES_PER_HOUR, Unit.MILES_PER_HOUR);

    private final Spec spec;

    ClimateColumn(String key, boolean required, double least, double most, Unit... units) {
        spec = new Spec(key, required, least, most, units);
    }

    @Override
    public Spec spec() {
        return spec;
    }
}
