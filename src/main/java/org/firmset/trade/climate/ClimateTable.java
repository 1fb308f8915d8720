package org.firmset.trade.climate;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;

/**
 * Monthly normals as comma-separated text (RFC 4180): a header, then twelve lines. Columns in any order: month (1 to 12),
 * mean_high_degC or _degF, mean_low_degC or _degF, wet_days, sun_hours, and if known rain_mm or _in, wind_m_s, _km_h or
 * _mph.
 */
public final class ClimateTable {
    static final String MONTH = "month";

    private ClimateTable() {}

    /**
     * What was read.
     *
     * @param faults all that was found, in the order of lines, at most 50; empty when there is a climate
     */
    public record Read(@Nullable YearClimate yearOrNull, List<TableFault> faults) {
        public Read {
            faults = List.copyOf(faults);
        }

        public Optional<YearClimate> climate() {
            return Optional.ofNullable(yearOrNull);
        }
    }

    /** Reads a table; a mistake in it is a fault that names line, column and remedy, never an exception. */
    public static Read read(String text) {
        return new ClimateReader().read(text);
    }

    /** The table that {@link #read} reads back, in metric units, lines ended by CRLF. What is not known stays empty. */
    public static String write(YearClimate climate) {
        StringBuilder text = new StringBuilder();
        StringJoiner header = new StringJoiner(",", "", "\r\n").add(MONTH);
        for (ClimateColumn column : ClimateColumn.values()) {
            header.add(column.header());
        }
        text.append(header);
        for (int month = 1; month <= climate.months().size(); month++) {
            text.append(line(month, climate.months().get(month - 1)));
        }
        return text.toString();
    }

    private static String line(int month, MonthClimate m) {
        // in the order of the columns; numbers never need quotes
        return new StringJoiner(",", "", "\r\n")
                .add(Integer.toString(month))
                .add(plain(m.meanHighCelsius()))
                .add(plain(m.meanLowCelsius()))
                .add(plain(m.wetDays()))
                .add(plain(m.sunHours()))
                .add(plain(m.rainMillimetres()))
                .add(plain(m.windMetresPerSecond()))
                .toString();
    }

    private static String plain(@Nullable Double value) {
        return value == null
                ? ""
                : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
