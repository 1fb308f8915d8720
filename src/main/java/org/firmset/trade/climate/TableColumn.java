package org.firmset.trade.climate;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;

/** A column of numbers in a table of weather; its unit is part of its name. */
interface TableColumn {
    /** Its name without a unit: "rain". */
    String key();

    boolean required();

    /** In the first unit, as {@link #most}. */
    double least();

    double most();

    /** What it may be written in; the first is the one that is reckoned with. */
    Unit[] units();

    /** The column with its first unit, as it is written. */
    default String header() {
        return key() + units()[0].ending;
    }

    /** All names that it is read by: "rain_mm, rain_in". */
    default Stream<String> headers() {
        return Stream.of(units()).map(u -> key() + u.ending);
    }

    /** The unit that a header names; empty when it is the header of another column. */
    default Optional<Unit> unitIn(String header) {
        return Stream.of(units()).filter(u -> header.equals(key() + u.ending)).findFirst();
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
