package org.firmset.trade.climate;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.firmset.measure.Measured;
import org.firmset.measure.Temperature;
import org.firmset.measure.UnitsFault;

/**
 * Usual temperatures of the twelve months as people write them: "2.8 5.2 9.1 13.4 18.6 22.8 29.2 28.8 23.9 15.8 7.2 2.6
 * degC", or "20 degC" for all months alike.
 *
 * @param numbers twelve, January first, from -60 to 60 °C, to nine decimals
 */
public record MonthlyTemperatures(List<BigDecimal> numbers, Scale scale) {
    private static final int MONTHS = 12;
    private static final String EXAMPLE = "2.8 5.2 9.1 13.4 18.6 22.8 29.2 28.8 23.9 15.8 7.2 2.6 degC";
    private static final Pattern TEXT = Pattern.compile(
            "\\s*(" + Written.NUMBER + "(?:(?:\\s+|,\\s+)" + Written.NUMBER + "){0,11})\\s*(" + Written.UNIT + ")\\s*");

    public MonthlyTemperatures {
        numbers = numbers.stream().map(Measured::normal).toList();
        Scale written = scale;
        if (numbers.size() != MONTHS || !numbers.stream().allMatch(n -> Written.onEarth(n, written))) {
            throw new IllegalArgumentException("numbers " + numbers + " must be twelve from -60 to 60 °C");
        }
    }

    /** Twelve temperatures, January first. */
    public static MonthlyTemperatures of(List<Temperature> months) {
        return new MonthlyTemperatures(months.stream().map(Temperature::value).toList(), Scale.CELSIUS);
    }

    /**
     * Reads twelve numbers, or one for all months, and their unit.
     *
     * @throws UnitsFault when the text is something else
     */
    public static MonthlyTemperatures parse(String text) {
        Matcher matcher = TEXT.matcher(text);
        if (text.length() > Written.LONGEST || !matcher.matches()) {
            throw Written.fault(text, "is not twelve temperatures of months with their unit", EXAMPLE);
        }
        List<BigDecimal> read = Arrays.stream(matcher.group(1).split(",?\\s+"))
                .map(BigDecimal::new)
                .toList();
        if (read.size() != 1 && read.size() != MONTHS) {
            throw Written.fault(text, "is not twelve temperatures of months but " + read.size(), EXAMPLE);
        }
        Scale scale = Scale.of(matcher.group(2)).orElseThrow();
        if (!read.stream().allMatch(n -> Written.onEarth(n, scale))) {
            throw Written.fault(text, "is not all from -60 to 60 °C", EXAMPLE);
        }
        return new MonthlyTemperatures(read.size() == 1 ? Collections.nCopies(MONTHS, read.getFirst()) : read, scale);
    }

    /** In degrees Celsius. */
    public MonthlyValues celsius() {
        return new MonthlyValues(numbers.stream().map(scale::celsius).toList());
    }

    /** Whether all months are alike. */
    public boolean constant() {
        return numbers.stream().distinct().count() == 1;
    }

    /** The text that {@link #parse} reads back. */
    @Override
    public String toString() {
        return numbers.stream()
                .limit(constant() ? 1 : MONTHS)
                .map(BigDecimal::toPlainString)
                .collect(Collectors.joining(" ", "", " " + scale.symbol()));
    }
}
