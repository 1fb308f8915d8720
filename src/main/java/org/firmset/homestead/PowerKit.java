package org.firmset.homestead;

import java.math.BigDecimal;
import org.firmset.measure.Described;
import org.firmset.measure.Energy;
import org.firmset.measure.Measured;
import org.firmset.measure.Power;
import org.firmset.measure.Temperature;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

@Described("Battery and panels on site.")
public record PowerKit(
        @Described(value = "What the battery holds when full.", least = "0 Wh", most = "1000 kWh")
        Energy capacity,

        @Described(value = "Percent of its charge that must stay in it.", least = "0", most = "99")
        int floorPercent,

        @Described(value = "Rated power of the panels.", least = "0 W", most = "100 kW")
        Power panels,

        @Described(value = "Percent of the rated energy that arrives after all losses.", least = "0", most = "100")
        int yieldPercent,

        @Described("A generator besides; left out for none.") @Nullable
        Generator generator,

        @Described("What the battery is made of; left out when it gives the same in the cold.") @Nullable
        BatteryKind kind,

        @Described(
                value = "Percent that stays in the battery of what charges it; left out for all.",
                least = "1",
                most = "100")
        @Nullable
        Integer chargePercent,

        @Described(
                value = "Percent that comes out of what is taken from the battery; left out for all.",
                least = "1",
                most = "100")
        @Nullable
        Integer dischargePercent,

        @Described(
                value = "Below this the battery may not be charged; left out when it may at any temperature.",
                least = "-60 degC",
                most = "60 degC")
        @Nullable
        Temperature leastChargeTemperature,

        @Described("The inverter; left out when tools run on the battery without loss or limit.") @Nullable
        Inverter inverter,

        @Described(
                value = "What is drawn all day and night, as by a refrigerator; left out for nothing.",
                least = "0 W",
                most = "50 kW")
        @Nullable
        Power baseLoad,

        @Described(
                value = "Degrees from lying flat (0) to standing upright (90), for the shape of the day only, since sun"
                        + " hours are those on the panels; left out for the size of the latitude.",
                least = "0",
                most = "90")
        @Nullable
        BigDecimal panelTilt,

        @Described(
                value = "Where the panels look, in degrees clockwise from true north, for the shape of the day only;"
                        + " left out when they look to the equator.",
                least = "0",
                most = "360")
        @Nullable
        BigDecimal panelDirection,

        @Described(value = "Where battery and panels are between trips.", usual = "charged-at-home")
        BetweenTrips betweenTrips,

        @Described(
                value = "Count on so little sun that only so many days in a hundred have less; left out to count on the"
                        + " mean.",
                least = "1",
                most = "50")
        @Nullable
        Integer poorDayPercent,

        @Described("What a kilowatt-hour more of battery would cost; left out when not known.") @Nullable
        Money batteryPerKilowattHour,

        @Described("What a kilowatt more of panels would cost, with what carries them; left out when not known.")
        @Nullable
        Money panelsPerKilowatt) {
    public PowerKit {
        panelTilt = panelTilt == null ? null : Measured.normal(panelTilt);
        panelDirection = panelDirection == null ? null : Measured.normal(panelDirection);
    }

    /** The same with another battery. */
    public PowerKit withCapacity(Energy changed) {
        return with(changed, panels, generator);
    }

    /** The same with other panels. */
    public PowerKit withPanels(Power changed) {
        return with(capacity, changed, generator);
    }

    /** The same with another generator; null for none. */
    public PowerKit withGenerator(@Nullable Generator changed) {
        return with(capacity, panels, changed);
    }

    private PowerKit with(Energy newCapacity, Power newPanels, @Nullable Generator newGenerator) {
        return new PowerKit(
                newCapacity,
                floorPercent,
                newPanels,
                yieldPercent,
                newGenerator,
                kind,
                chargePercent,
                dischargePercent,
                leastChargeTemperature,
                inverter,
                baseLoad,
                panelTilt,
                panelDirection,
                betweenTrips,
                poorDayPercent,
                batteryPerKilowattHour,
                panelsPerKilowatt);
    }
}
