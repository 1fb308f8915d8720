package org.firmset.trade.climate;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A forecast as comma-separated text (RFC 4180): a header, then a line for each day without a gap. Columns in any order: date
 * (2027-05-01), high_degC or _degF, low_degC or _degF, wet_percent, and if the forecast says so sun_hours (hours of full sun on the
 * panels) and wind_m_s, _km_h or _mph.
 */
public final class ForecastTable {
    static final String DATE = "date";

    private ForecastTable() {}

    /**
     * What was read.
     *
     * @param faults all that was found, in the order of lines, at most 50; empty when there is a forecast
     */
    public record Read(@Nullable Forecast forecastOrNull, List<TableFault> faults) {
        public Read {
            faults = List.copyOf(faults);
        }

        public Optional<Forecast> forecast() {
            return Optional.ofNullable(forecastOrNull);
        }
    }

    /**
     * Reads a table; a mistake in it is a fault that names line, column and remedy, never an exception.
     *
     * @param today the first date that a forecast may be about
     */
    public static Read read(String text, LocalDate today) {
        return new ForecastReader(today).read(text);
    }
}
