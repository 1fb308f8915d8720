package org.firmset.homestead;

import org.firmset.measure.Described;
import org.firmset.measure.Hours;
import org.firmset.measure.Power;
import org.javamoney.moneta.Money;

@Described("A generator.")
public record Generator(
        @Described(value = "Rated power.", least = "1 W", most = "100 kW")
        Power power,

        @Described(value = "Hours it may run on one day.", most = "24 h")
        Hours hoursPerDay,

        @Described("Fuel for one kilowatt-hour.") Money costPerKilowattHour) {}
