package org.firmset.trade.climate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import org.firmset.measure.Measured;

/**
 * The measured mean temperature of a day.
 *
 * @param date from 1990 to 2199
 * @param number from -60 to 60 °C; kept to the hundredth, which no thermometer on a site is good for
 */
public record Reading(LocalDate date, BigDecimal number, Scale scale) {
    private static final int FIRST_YEAR = 1990;
    private static final int LAST_YEAR = 2199;

    public Reading {
        number = Measured.normal(number.setScale(2, RoundingMode.HALF_EVEN));
        if (date.getYear() < FIRST_YEAR || date.getYear() > LAST_YEAR) {
            throw new IllegalArgumentException("date [" + date + "] of a reading must be from 1990 to 2199");
        }
        if (!Written.onEarth(number, scale)) {
            throw new IllegalArgumentException("number [" + number + "] of a reading must be from -60 to 60 °C");
        }
    }

    public double celsius() {
        return scale.celsius(number);
    }

    /** As in "2027-05-01: 12 degC". */
    @Override
    public String toString() {
        return date + ": " + number.toPlainString() + " " + scale.symbol();
    }
}
