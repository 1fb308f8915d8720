package org.firmset.homestead;

import java.math.BigDecimal;
import org.firmset.measure.Described;
import org.firmset.measure.Hours;
import org.firmset.measure.Measured;
import org.firmset.measure.Power;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

@Described("A generator.")
public record Generator(
        @Described(value = "Rated power.", least = "1 W", most = "100 kW")
        Power power,

        @Described(value = "Hours it may run on one day.", most = "24 h")
        Hours hoursPerDay,

        @Described("Fuel for one kilowatt-hour.") Money costPerKilowattHour,

        @Described(value = "Litres of fuel for one kilowatt-hour; left out when not known.", least = "0", most = "10")
        @Nullable
        BigDecimal litresPerKilowattHour,

        @Described(
                value = "The hour of the day, 0 to 23, from which it may run.",
                least = "0",
                most = "23",
                usual = "8")
        int fromHour) {
    public Generator {
        litresPerKilowattHour = litresPerKilowattHour == null ? null : Measured.normal(litresPerKilowattHour);
    }

    /** The same, running longer or shorter. */
    public Generator withHoursPerDay(Hours changed) {
        return new Generator(power, changed, costPerKilowattHour, litresPerKilowattHour, fromHour);
    }
}
