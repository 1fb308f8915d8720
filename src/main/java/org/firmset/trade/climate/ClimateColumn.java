package org.firmset.trade.climate;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;

/** The columns of a table of monthly normals; a column's unit is part of its name. */
enum ClimateColumn {
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

    String key() {
        return key;
    }

    boolean required() {
        return required;
    }

    /** In the first unit, as {@link #most}. */
    double least() {
        return least;
    }

    double most() {
        return most;
    }

    /** The column with its unit, as it is written. */
    String header() {
        return key + units[0].ending;
    }

    /** All names that it is read by: "rain_mm, rain_in". */
    Stream<String> headers() {
        return Arrays.stream(units).map(u -> key + u.ending);
    }

    static Optional<Use> of(String header) {
        return Arrays.stream(values())
                .flatMap(ClimateColumn::uses)
                .filter(u -> u.header().equals(header))
                .findFirst();
    }

    private Stream<Use> uses() {
        return Arrays.stream(units).map(u -> new Use(this, u));
    }

    /** A column in one of its units. */
    record Use(ClimateColumn column, Unit unit) {
        String header() {
            return column.key + unit.ending;
        }

        /** In the column's first unit. */
        double metric(double written) {
            return unit.metric.applyAsDouble(written);
        }
    }

    enum Unit {
        NONE("", x -> x),
        CELSIUS("_degC", x -> x),
        FAHRENHEIT("_degF", x -> (x - 32) * 5 / 9),
        MILLIMETRES("_mm", x -> x),
        INCHES("_in", x -> x * 25.4),
        METRES_PER_SECOND("_m_s", x -> x),
        KILOMETRES_PER_HOUR("_km_h", x -> x / 3.6),
        MILES_PER_HOUR("_mph", x -> x * 0.44704);

        private final String ending;
        private final DoubleUnaryOperator metric;

        Unit(String ending, DoubleUnaryOperator metric) {
            this.ending = ending;
            this.metric = metric;
        }
    }
}
