package org.firmset.trade.climate;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;

/** A column of numbers in a table of weather; its unit is part of its name. */
interface TableColumn {
    /** What it is called and what may stand in it. */
    Spec spec();

    /**
     * A column as it is described.
     *
     * @param key its name without a unit: "rain"
     * @param least in the first unit, as {@code most}
     * @param units what it may be written in; the first is the one that is reckoned with
     */
    record Spec(String key, boolean required, double least, double most, List<Unit> units) {
        Spec(String key, boolean required, double least, double most, Unit... units) {
            this(key, required, least, most, List.of(units));
        }
    }

    default String key() {
        return spec().key();
    }

    default boolean required() {
        return spec().required();
    }

    default double least() {
        return spec().least();
    }

    default double most() {
        return spec().most();
    }

    default List<Unit> units() {
        return spec().units();
    }

    /** The column with its first unit, as it is written. */
    default String header() {
        return key() + units().getFirst().ending;
    }

    /** All names that it is read by: "rain_mm, rain_in". */
    default Stream<String> headers() {
        return units().stream().map(u -> key() + u.ending);
    }

    /** The unit that a header names; empty when it is the header of another column. */
    default Optional<Unit> unitIn(String header) {
        return units().stream().filter(u -> header.equals(key() + u.ending)).findFirst();
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

        double metric(double written) {
            return metric.applyAsDouble(written);
        }
    }
}
