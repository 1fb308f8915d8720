package org.firmset.trade.climate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Optional;
import org.firmset.measure.Measured;

/** The scales people read thermometers in. */
public enum Scale {
    CELSIUS("degC", "C"),
    FAHRENHEIT("degF", "F");

    private static final BigDecimal FREEZING_FAHRENHEIT = BigDecimal.valueOf(32);

    private final String symbol;
    private final String letter;

    Scale(String symbol, String letter) {
        this.symbol = symbol;
        this.letter = letter;
    }

    /** As it is written: "degC". */
    public String symbol() {
        return symbol;
    }

    /** The same temperature in degrees Celsius; to nine decimals, as quantities are kept. */
    public double celsius(BigDecimal number) {
        return switch (this) {
            case CELSIUS -> number.doubleValue();
            case FAHRENHEIT ->
                number.subtract(FREEZING_FAHRENHEIT)
                        .multiply(BigDecimal.valueOf(5))
                        .divide(BigDecimal.valueOf(9), Measured.DECIMALS, RoundingMode.HALF_EVEN)
                        .doubleValue();
        };
    }

    /** The scale that is written "degC", "°C" or "C". */
    static Optional<Scale> of(String written) {
        return Arrays.stream(values())
                .filter(s -> written.equals(s.symbol) || written.equals("°" + s.letter) || written.equals(s.letter))
                .findFirst();
    }
}
