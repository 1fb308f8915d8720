package org.firmset.season.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.InstanceOfAssertFactories.type;

import java.time.LocalDate;
import java.util.List;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.PowerKit;
import org.firmset.measure.Cash;
import org.firmset.measure.Energy;
import org.firmset.measure.Hours;
import org.firmset.measure.Power;
import org.firmset.plan.Effort;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.firmset.season.StageCopies;
import org.firmset.season.SunnySite;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.season.result.PlannedSeason;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/**
 * A trip of two days has room for slab and frame, 24 of its 28 h, and for the extra run of 2 h that the last bag needs. The
 * slab draws 265 W for 8 h, 2,120 Wh in all; without panels a battery of 2 kWh gives 1,600 Wh of them, so the rest waits for
 * the next trip.
 */
class MorePowerTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 4, 1);
    private static final LocalDate FIRST_SUNDAY = LocalDate.of(2027, 5, 2);
    private static final String GENERATOR = """
            , "generator": {"power": "%s", "hoursPerDay": "0 h", "costPerKilowattHour": "0.60 USD", "fromHour": %d}""";
    private static final String PRICES = """
            , "batteryPerKilowattHour": "400 USD", "panelsPerKilowatt": "900 USD\"""";

    private static PlannedSeason planned(Homestead homestead) {
        SeasonPlanner.Result result = new SeasonPlanner().plan(homestead, TODAY, Style.SOONEST, new Effort(300, 1));
        return ((SeasonPlanner.Result.Planned) result).season();
    }

    private static MorePower answer(Homestead homestead) {
        return MorePowerFinder.find(homestead, planned(homestead), new Stop());
    }

    private static Homestead dark(String more) {
        return StageCopies.withStage(
                SunnySite.with(more, "", 0), "frame", s -> StageCopies.withLabour(s, Hours.ofWhole(16)));
    }

    private static Homestead drawing(int wattHoursPerHour) {
        return StageCopies.withStage(
                dark(""), "slab", s -> StageCopies.withDraw(s, Energy.ofWattHours(wattHoursPerHour)));
    }

    private static MorePower.Way way(MorePower answer, MorePower.Kind kind) {
        return ((MorePower.Limiting) answer)
                .ways().stream().filter(w -> w.kind() == kind).findFirst().orElseThrow();
    }

    private static MorePower.Way.Found found(MorePower answer, MorePower.Kind kind) {
        return (MorePower.Way.Found) way(answer, kind);
    }

    private static LocalDate finish(Homestead homestead) {
        return planned(homestead).plan().finish().orElseThrow();
    }

    private static PowerKit kit(Homestead homestead) {
        assertThat(homestead.power()).isNotNull();
        return homestead.power();
    }

    private static Homestead withBattery(Homestead homestead, int wattHours) {
        return homestead.withPower(kit(homestead).withCapacity(Energy.ofWattHours(wattHours)));
    }

    @Nested
    class WhereASlabIsSplitByPower {
        private final Homestead homestead = dark(PRICES);
        private final MorePower answer = answer(homestead);

        @Test
        void what_power_without_limit_would_bring_is_told() {
            MorePower.Gain gain = ((MorePower.Limiting) answer).unlimited();
            assertThat(finish(homestead)).isAfter(FIRST_SUNDAY);
            assertThat(gain.finishes()).containsExactly(new MorePower.Finish("Shop", finish(homestead), FIRST_SUNDAY));
            assertThat(gain.trips()).isEqualTo(1);
            // a trip and its two days, less the extra run
            assertThat(gain.haulingCents()).isEqualTo(90_00 - 25_00);
            assertThat(gain.whole()).containsExactly("Pour slab");
        }

        /** 2,120 Wh over a floor of a fifth want 2,650 Wh, 650 more than there are. */
        @Test
        void the_least_step_of_battery_is_named_with_its_price() {
            MorePower.Way.Found battery = found(answer, MorePower.Kind.BATTERY);
            assertThat(battery.amount()).isEqualTo(700);
            assertThat(battery.enough()).isTrue();
            assertThat(battery.cost()).isEqualTo(Cash.ofCents(280_00, "USD"));
            assertThat(battery.gain()).isEqualTo(((MorePower.Limiting) answer).unlimited());
        }

        @Test
        void planned_again_with_that_battery_it_is_so_and_just_below_it_is_not() {
            assertThat(finish(withBattery(homestead, 2700))).isEqualTo(FIRST_SUNDAY);
            assertThat(finish(withBattery(homestead, 2600))).isAfter(FIRST_SUNDAY);
        }

        @Test
        void planned_again_with_the_panels_it_is_so_and_just_below_it_is_not() {
            MorePower.Way.Found panels = found(answer, MorePower.Kind.PANELS);
            int watts = panels.amount();
            assertThat(panels.cost()).isEqualTo(Cash.ofCents(900_00L * watts / 1000, "USD"));
            PowerKit kit = kit(homestead);
            assertThat(finish(homestead.withPower(kit.withPanels(Power.ofWatts(watts)))))
                    .isEqualTo(FIRST_SUNDAY);
            assertThat(finish(homestead.withPower(kit.withPanels(Power.ofWatts(watts - 50)))))
                    .isAfter(FIRST_SUNDAY);
        }

        @Test
        void without_a_generator_no_hours_of_one_are_offered() {
            assertThat(((MorePower.Limiting) answer).ways())
                    .extracting(MorePower.Way::kind)
                    .containsExactly(MorePower.Kind.BATTERY, MorePower.Kind.PANELS);
        }

        @Test
        void it_is_told_in_sentences_and_a_table() {
            assertThat(MorePowerWords.sentences(answer))
                    .containsExactly(
                            "If power never ran short: Shop would be finished on Sun 2 May 2027 instead of Sat 8 May 2027; the"
                                    + " season would take 1 trip fewer; trips and hauling would cost $65.00 less; 'Pour slab'"
                                    + " would be done in one trip.",
                            "700 Wh more battery would bring the same.",
                            found(answer, MorePower.Kind.PANELS).amount() + " W more panels would bring the same.");
            assertThat(MorePowerWords.table((MorePower.Limiting) answer).rows().getFirst())
                    .containsExactly(
                            "700 Wh more battery",
                            "$280.00",
                            "Shop Sun 2 May, not Sat 8 May",
                            "1 trip fewer",
                            "$65.00 less",
                            "Pour slab");
        }
    }

    @Test
    void whole_hours_of_the_generator_cost_their_fuel() {
        MorePower.Way.Found generator = found(answer(dark(GENERATOR.formatted("600 W", 8))), MorePower.Kind.GENERATOR);
        assertThat(generator.amount()).isEqualTo(1);
        assertThat(generator.enough()).isTrue();
        // 520 Wh that the battery does not have, at 60 cents a kWh
        assertThat(generator.cost())
                .isNotNull()
                .satisfies(c -> assertThat(Cash.cents(c)).isBetween(31L, 72L));
    }

    @Test
    void a_kind_that_brings_nothing_is_told_as_such_and_one_without_a_price_too() {
        MorePower answer = answer(dark(GENERATOR.formatted("1 W", 23)));
        assertThat(way(answer, MorePower.Kind.GENERATOR))
                .isEqualTo(new MorePower.Way.Useless(MorePower.Kind.GENERATOR, 1));
        assertThat(MorePowerWords.sentences(answer))
                .contains("The generator up to 1 h a day would bring nothing alone.");
        assertThat(MorePowerWords.table((MorePower.Limiting) answer).rows().getFirst())
                .contains("no price is written down");
    }

    /** 12 kWh for the slab are more than the greatest battery that is tried gives on a trip, 11,760 Wh: two trips want 6 kWh each. */
    @Test
    void where_no_battery_is_enough_the_least_of_the_best_is_told() {
        Homestead homestead = drawing(1500);
        MorePower answer = answer(homestead);
        MorePower.Way.Found battery = found(answer, MorePower.Kind.BATTERY);
        assertThat(battery.enough()).isFalse();
        assertThat(battery.amount()).isEqualTo(5500);
        assertThat(battery.gain().trips()).isEqualTo(6);
        assertThat(MorePowerWords.sentences(answer))
                .contains(
                        "5,500 Wh more battery would bring a part of it; no more than that part was found with more alone.");
    }

    @Test
    void power_that_is_plenty_does_not_limit() {
        MorePower answer = answer(withBattery(dark(""), 4000));
        assertThat(answer).asInstanceOf(type(MorePower.NotLimiting.class)).satisfies(n -> {
            assertThat(n.foundAgain()).isFalse();
            assertThat(n.proven()).isTrue();
        });
        assertThat(MorePowerWords.sentences(answer))
                .singleElement()
                .asString()
                .startsWith("Power is not what limits the season")
                .endsWith("in the style 'Finish soonest'; that there is none is proven.");
    }

    @Test
    void without_power_or_without_work_that_draws_there_is_nothing_to_have_more_of() {
        assertThat(MorePowerWords.sentences(answer(drawing(0).withPower(null))))
                .containsExactly("There is no power on site that there could be more of.");
        assertThat(MorePowerWords.sentences(answer(drawing(0))))
                .containsExactly("Nothing that is left to do draws power, so more of it would bring nothing.");
    }

    @Test
    void the_same_question_has_the_same_answer() {
        Homestead homestead = dark(GENERATOR.formatted("600 W", 8));
        assertThat(List.of(answer(homestead), answer(homestead)).stream().distinct())
                .hasSize(1);
    }
}
