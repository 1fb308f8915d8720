package org.firmset.trade.cure;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.firmset.measure.Described;
import org.firmset.measure.Temperature;
import org.firmset.trade.climate.MonthlyTemperatures;
import org.firmset.trade.climate.Readings;
import org.jspecify.annotations.Nullable;

/** A pour, what it is waited for, and how warm it will be. */
public record CuringConcrete(
        @Described("Date of the pour; its own day does not count.")
        LocalDate poured,

        @Described(
                value = "What the concrete has to bear next; own for a share of your own.",
                usual = "strip-side-forms")
        Milestone milestone,

        @Described(
                value = "Percent of the 28-day strength that is waited for; left out for that of the milestone.",
                least = "5",
                most = "100")
        @Nullable
        BigDecimal sharePercent,

        @Described(
                value = "Calendar days to wait at least; left out for those of the milestone.",
                least = "0",
                most = "365")
        @Nullable
        Integer leastDays,

        @Described(value = "How fast the cement gains strength.", usual = "normal")
        Cement cement,

        @Described(value = "The published curve of strength against age.", usual = "en-1992")
        StrengthMethod curve,

        @Described(value = "The published way a day at some temperature counts.", usual = "en-1992")
        Ageing ageing,

        @Described(
                value = "Usual daily highs of the twelve months, January first, or one for all of them.",
                usual = "20 degC")
        MonthlyTemperatures meanHigh,

        @Described(
                value = "Usual daily lows of the twelve months, January first, or one for all of them.",
                usual = "20 degC")
        MonthlyTemperatures meanLow,

        @Described("Daily mean temperatures that were measured on dates of the wait; left out for none.") @Nullable
        Readings readings,

        @Described(
                value = "What the concrete has to stand while it is young, which sets how long cold is kept from it.",
                usual = "exposed")
        Exposure exposure,

        @Described(
                value = "Whether an accelerating admixture or more cement is used; rapid cement counts by itself.",
                usual = "false")
        boolean accelerated,

        @Described(value = "Whether the concrete stays wrapped in insulation until the wait is over.", usual = "false")
        boolean insulated,

        @Described(
                value = "Temperature that the insulation holds at least; of no account without insulation.",
                least = "0 degC",
                most = "40 degC",
                usual = "10 degC")
        Temperature insulatedLeast) {}
