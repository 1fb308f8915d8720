package org.firmset.season.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Travel;
import org.firmset.measure.Hours;
import org.firmset.measure.UnitSystem;
import org.firmset.season.SunnySite;
import org.firmset.season.day.DayOutlook.Asked;
import org.firmset.season.day.DayOutlook.DayPower;
import org.firmset.season.day.DayOutlook.Placed;
import org.firmset.season.day.DayOutlook.Work;
import org.firmset.season.money.Changed;
import org.firmset.trade.power.Remedy;
import org.firmset.trade.power.WorkSplit;
import org.junit.jupiter.api.Test;

class DayOutlookTest {
    private static final LocalDate SATURDAY = LocalDate.of(2027, 6, 12);
    private static final Work SLAB = new Work("slab", Hours.ofWhole(8));
    private static final Work FRAME = new Work("frame", Hours.ofWhole(3));
    /** No sun: each hour of slab labour takes 265 Wh of the 1600 Wh above the floor. */
    private static final int NO_PANELS = 0;

    private static Homestead dark(String more) {
        return SunnySite.with(more, "", NO_PANELS);
    }

    private static DayOutlook outlook(Homestead homestead, Asked... days) {
        return new DayOutlookWriter(homestead).of(List.of(days));
    }

    private static Asked asked(LocalDate date, Work... work) {
        return new Asked(date, List.of(work), 2, 0);
    }

    @Test
    void on_the_first_day_of_a_trip_work_begins_after_the_drive() {
        Homestead site = SunnySite.make();
        Travel travel = Changed.with(Travel.class, site.travel(), "lostArriving", Hours.ofWhole(3));
        assertThat(outlook(Changed.with(site, "travel", travel), asked(SATURDAY, SLAB))
                        .work())
                .extracting(Placed::from)
                .containsExactly(LocalTime.of(10, 0));
    }

    @Test
    void work_lies_one_after_the_other_from_the_start_the_thirstiest_first() {
        assertThat(outlook(SunnySite.make(), asked(SATURDAY, FRAME, SLAB)).work())
                .containsExactly(
                        // 8 h of labour by two people are 4 h; two people draw 2 x 265 W
                        new Placed(
                                "slab",
                                "Pour slab",
                                Hours.ofWhole(8),
                                LocalTime.of(7, 0),
                                Duration.ofHours(4),
                                530,
                                false),
                        new Placed(
                                "frame",
                                "Raise frame",
                                Hours.ofWhole(3),
                                LocalTime.of(11, 0),
                                Duration.ofMinutes(90),
                                0,
                                false));
    }

    @Test
    void the_charge_falls_by_what_the_work_takes() {
        // full 2000 Wh - 4 h x 265 Wh without sun
        DayPower power = outlook(dark(""), asked(SATURDAY, new Work("slab", Hours.ofWhole(4))))
                .power()
                .orElseThrow();
        assertThat(power.curve().points().getLast().wattHours()).isCloseTo(940, within(1e-6));
        assertThat(power.curve().broken()).isEmpty();
        assertThat(power.split()).isEmpty();
        assertThat(power.remedies()).isEmpty();
    }

    @Test
    void what_the_battery_does_not_last_for_is_split_over_two_days_by_the_bag() {
        // 1600 Wh above the floor: 20 bags at 2120 / 20 = 106 Wh each, so 15 today (1590 Wh) and none tomorrow, for it
        // stays dark
        DayPower power = outlook(dark(""), asked(SATURDAY, SLAB)).power().orElseThrow();
        DayOutlook.Split split = power.split().orElseThrow();
        assertThat(split.split()).isEqualTo(new WorkSplit(List.of(15, 0), 5));
        assertThat(split.material()).isNotNull();
        // 530 W from seven on: 1600 Wh are gone after 3 h 1 min 8 s
        assertThat(power.curve().broken()).contains(SATURDAY.atTime(10, 1, 8));
        // 2120 Wh are wanted, 1600 Wh there; a fifth of new battery has to stay in it: 520 / 0.8
        assertThat(power.remedies()).contains(new Remedy(Remedy.Kind.EXTRA_BATTERY_WATT_HOURS, 650));
        assertThat(DayPowerWords.sentences(outlook(dark(""), asked(SATURDAY, SLAB))))
                .startsWith(
                        "The battery does not last: it falls under its limit at 10:01.",
                        "Of 'Pour slab' the battery allows 15 bags of Concrete mix today and 0 bags of Concrete mix"
                                + " tomorrow; 5 bags of Concrete mix stay over.")
                .anyMatch(s -> s.startsWith("Any one of these would do: 650 Wh more battery"));
    }

    @Test
    void the_battery_begins_a_second_day_with_what_the_first_has_left() {
        Asked first = asked(SATURDAY, new Work("slab", Hours.ofWhole(4)));
        DayPower power =
                outlook(dark(""), first, asked(SATURDAY.plusDays(1))).power().orElseThrow();
        assertThat(power.curve().points().getFirst().at()).isEqualTo(LocalDateTime.of(2027, 6, 13, 0, 0));
        assertThat(power.curve().points().getFirst().wattHours()).isCloseTo(940, within(1e-6));
    }

    @Test
    void a_generator_that_runs_gives_the_rest() {
        Homestead homestead = dark(", \"generator\": {\"power\": \"530 W\", \"hoursPerDay\": \"3 h\","
                + " \"costPerKilowattHour\": \"0.60 USD\", \"fromHour\": 7}");
        DayPower power = outlook(homestead, asked(SATURDAY, SLAB)).power().orElseThrow();
        // 520 Wh at 530 W: 59 minutes
        assertThat(power.remedies()).contains(new Remedy(Remedy.Kind.GENERATOR_MINUTES_A_DAY, 59));
        DayOutlook helped = outlook(homestead, new Asked(SATURDAY, List.of(SLAB), 2, 59));
        assertThat(helped.power().orElseThrow().curve().broken()).isEmpty();
        assertThat(helped.cautions()).anyMatch(c -> c.startsWith("Generator outdoors"));
        assertThat(DayPowerWords.sentences(helped)).contains("The generator gives 521 Wh.");
    }

    @Test
    void work_that_no_battery_could_feed_is_told_and_breaks_nothing() {
        DayOutlook day = outlook(dark(""), new Asked(SATURDAY, List.of(SLAB), 500, 0));
        assertThat(day.work().getFirst().watts()).isEqualTo(265 * 500);
        assertThat(day.power().orElseThrow().curve().broken()).isPresent();
    }

    @Test
    void a_battery_too_cold_to_be_charged_is_told_first() {
        DayOutlook day = outlook(
                SunnySite.with(", \"kind\": \"lithium\", \"leastChargeTemperature\": \"14 degC\"", ""),
                asked(SATURDAY));
        // 20 and 6 °C are 13 °C in mean
        assertThat(day.cautions().getFirst()).startsWith("The battery is colder than it may be charged at");
        assertThat(day.cautions()).anyMatch(c -> c.contains("licensed electrician"));
    }

    @Test
    void work_beyond_the_last_light_is_told() {
        DayOutlook day =
                outlook(SunnySite.make(), new Asked(SATURDAY, List.of(new Work("frame", Hours.ofWhole(15))), 1, 0));
        assertThat(day.work()).allMatch(Placed::inTheDark);
        assertThat(DayPowerWords.sentences(day))
                .anyMatch(s -> s.startsWith("'Raise frame' would last beyond the last"));
    }

    @Test
    void light_and_weather_are_told_in_a_table() {
        DayOutlook day = outlook(SunnySite.make(), asked(SATURDAY));
        DayWords words = new DayWords(UnitSystem.METRIC);
        assertThat(words.weather(day).rows())
                .containsExactly(
                        List.of("Taken from", "the usual weather of the date"),
                        List.of("Highest", "20 °C"),
                        List.of("Lowest", "6 °C"),
                        List.of("Odds of a dry day", "100 %"),
                        // 6 °C is one and a half deviations of 4 °C over freezing: 0.0668
                        List.of("Odds of frost", "7 %"),
                        List.of("Wind", "14 km/h"),
                        List.of("Full sun on the panels, in mean", "5.0 h"),
                        List.of("On a poor day (20 in 100 have less)", "3.7 h"));
        assertThat(words.light(day).rows()).hasSize(4);
        assertThat(words.odds(day).rows())
                .containsExactly(List.of("Pour slab", "68 %", "100 %", "84 %", "84 %", "96 %", "67 %"));
    }

    @Test
    void odds_are_never_rounded_to_sure_or_never() {
        assertThat(List.of(DayWords.percent(1), DayWords.percent(0.9999), DayWords.percent(0.001), DayWords.percent(0)))
                .containsExactly("100 %", "over 99 %", "under 1 %", "0 %");
    }
}
