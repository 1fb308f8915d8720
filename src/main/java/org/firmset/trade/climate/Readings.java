package org.firmset.trade.climate;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.firmset.measure.UnitsFault;
import org.jspecify.annotations.Nullable;

/**
 * Daily mean temperatures that were measured, as people write them: "2027-05-01: 12 degC; 2027-05-02: 54 degF".
 *
 * @param days 1 to 80, each date once; kept in the order of their dates
 */
public record Readings(List<Reading> days) {
    /** So many, written out, are no longer than a text may be. */
    private static final int MOST = 80;

    private static final String EXAMPLE = "2027-05-01: 12 degC; 2027-05-02: 54 degF";
    private static final Pattern DAY = Pattern.compile(
            "\\s*(\\d{4}-\\d{2}-\\d{2})\\s*:\\s*(" + Written.NUMBER + ")\\s*(" + Written.UNIT + ")\\s*");

    public Readings {
        days = days.stream().sorted(Comparator.comparing(Reading::date)).toList();
        if (days.isEmpty() || days.size() > MOST) {
            throw new IllegalArgumentException("days [" + days.size() + "] of readings must be 1 to " + MOST);
        }
        if (days.stream().map(Reading::date).distinct().count() < days.size()) {
            throw new IllegalArgumentException("days " + days + " of readings must each be of another date");
        }
    }

    /**
     * Reads dates with their temperatures, parted by semicolons or line breaks.
     *
     * @throws UnitsFault when the text is something else
     */
    public static Readings parse(String text) {
        if (text.length() > Written.LONGEST) {
            throw Written.fault(text, "is not short enough: at most 2,000 characters", EXAMPLE);
        }
        List<Reading> read = Arrays.stream(text.split("[;\n]"))
                .filter(piece -> !piece.isBlank())
                .map(Readings::day)
                .toList();
        if (read.isEmpty() || read.size() > MOST) {
            throw Written.fault(text, "is not 1 to 80 readings", EXAMPLE);
        }
        Set<LocalDate> seen = new HashSet<>();
        for (Reading reading : read) {
            if (!seen.add(reading.date())) {
                throw Written.fault(reading.toString(), "is not the only reading of its date", EXAMPLE);
            }
        }
        return new Readings(read);
    }

    private static Reading day(String piece) {
        Matcher matcher = DAY.matcher(piece);
        if (!matcher.matches()) {
            throw Written.fault(piece.strip(), "is not a date with a temperature", EXAMPLE);
        }
        Scale scale = Scale.of(matcher.group(3)).orElseThrow();
        try {
            return new Reading(LocalDate.parse(matcher.group(1)), new BigDecimal(matcher.group(2)), scale);
        } catch (DateTimeException e) {
            throw Written.fault(piece.strip(), "is not a date of the calendar with a temperature", EXAMPLE);
        } catch (IllegalArgumentException e) {
            throw Written.fault(piece.strip(), "is not from 1990 to 2199 and from -60 to 60 °C", EXAMPLE);
        }
    }

    /** The readings on their dates, what is usual on all others. */
    public DailyTemperature over(DailyTemperature usual) {
        Map<LocalDate, Double> measured = new HashMap<>();
        days.forEach(day -> measured.put(day.date(), day.celsius()));
        return date -> {
            @Nullable Double celsius = measured.get(date);
            return celsius == null ? usual.celsiusOn(date) : celsius;
        };
    }

    /** The text that {@link #parse} reads back. */
    @Override
    public String toString() {
        return days.stream().map(Reading::toString).collect(Collectors.joining("; "));
    }
}
