package org.firmset.trade.cure;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Pressure;
import org.firmset.measure.Speed;
import org.firmset.measure.Temperature;
import org.jspecify.annotations.Nullable;

/** The weather of a day and what is to be placed in it. */
public record PourDay(
        @Described("Date of the work; left out for no date in the result.") @Nullable
        LocalDate date,

        @Described(value = "Whether concrete is placed or masonry laid and filled.", usual = "concrete")
        PourWork work,

        @Described(value = "Air temperature while placing.", least = "-17 degC", most = "50 degC", usual = "20 degC")
        Temperature airNow,

        @Described(
                value = "Highest air temperature of the day; left out for the same as while placing.",
                least = "-17 degC",
                most = "55 degC")
        @Nullable
        Temperature airHigh,

        @Described(
                value = "Lowest air temperature of the day and its night; left out for the same as while placing.",
                least = "-40 degC",
                most = "50 degC")
        @Nullable
        Temperature airLow,

        @Described(
                value = "Lowest air temperature of the nights after it; left out for the same as that of the day.",
                least = "-40 degC",
                most = "50 degC")
        @Nullable
        Temperature nightLow,

        @Described(
                value = "Days in a row before this one with a daily mean under 4.4 °C (40 °F).",
                least = "0",
                most = "60",
                usual = "0")
        int coldDaysBefore,

        @Described(
                value =
                        "Temperature of the fresh concrete, for masonry of the core fill, as it is placed; left out for that of the air.",
                least = "0 degC",
                most = "50 degC")
        @Nullable
        Temperature concreteTemperature,

        @Described(value = "Relative humidity of the air in percent.", least = "0", most = "100", usual = "50")
        BigDecimal humidityPercent,

        @Described(value = "Wind over the surface.", least = "0 km/h", most = "100 km/h", usual = "10 km/h")
        Speed wind,

        @Described(
                value = "Least dimension of the part that is poured.",
                least = "0.02 m",
                most = "5 m",
                usual = "0.1 m")
        Length leastDimension,

        @Described(
                value = "Hours from finishing until rain is expected, 0 for rain before that; left out for no rain.",
                least = "0",
                most = "72")
        @Nullable
        BigDecimal rainHours,

        @Described(value = "28-day strength of the mix.", least = "5 MPa", most = "80 MPa", usual = "3000 psi")
        Pressure strength,

        @Described(value = "How fast the cement gains strength.", usual = "normal")
        Cement cement,

        @Described(
                value = "What the concrete has to stand while it is young, which sets how long cold is kept from it.",
                usual = "exposed")
        Exposure exposure,

        @Described(
                value = "Whether an accelerating admixture or more cement is used; rapid cement counts by itself.",
                usual = "false")
        boolean accelerated,

        @Described(
                value = "Temperature of fresh concrete that mixing water is to bring about; left out for no such sum.",
                least = "0 degC",
                most = "40 degC")
        @Nullable
        Temperature wantedTemperature,

        @Described(
                value = "Dry aggregate and cement of a batch, or its bags.",
                least = "5 kg",
                most = "50000 kg",
                usual = "2200 kg")
        Mass solids,

        @Described(value = "Mixing water of the batch.", least = "0.5 kg", most = "10000 kg", usual = "160 kg")
        Mass water,

        @Described(
                value = "Temperature of aggregate and cement; left out for that of the air.",
                least = "-30 degC",
                most = "60 degC")
        @Nullable
        Temperature solidsTemperature) {}
