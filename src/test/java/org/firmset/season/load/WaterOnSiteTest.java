package org.firmset.season.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.firmset.season.WaterSite.STORE;
import static org.firmset.season.WaterSite.TUESDAY;
import static org.firmset.season.WaterSite.WITH_ROOF;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.firmset.homestead.Homestead;
import org.firmset.measure.Mass;
import org.firmset.plan.Effort;
import org.firmset.plan.Need;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.RunKind;
import org.firmset.plan.StockLot;
import org.firmset.plan.Style;
import org.firmset.plan.check.PlanChecker;
import org.firmset.season.WaterSite;
import org.firmset.season.money.Books;
import org.firmset.season.money.MoneyReport;
import org.firmset.season.problem.ProblemWriter;
import org.firmset.season.problem.WaterWriter;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.season.result.PlannedSeason;
import org.firmset.season.result.SeasonReport;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Sums worked by hand from the figures of {@link WaterSite}. */
class WaterOnSiteTest {
    private static final LocalDate SATURDAY = LocalDate.of(2027, 6, 5);

    private static PlanningProblem problem(Homestead homestead, LocalDate today) {
        return ProblemWriter.write(homestead, today, Style.SOONEST);
    }

    private static PlannedSeason season(Homestead homestead, LocalDate today) {
        SeasonPlanner.Result result = new SeasonPlanner().plan(homestead, today, Style.SOONEST, new Effort(200, 1));
        PlannedSeason season = ((SeasonPlanner.Result.Planned) result).season();
        assertThat(PlanChecker.check(season.problem(), season.plan().schedule()))
                .isEmpty();
        return season;
    }

    private static SeasonReport.TripPart firstTrip(Homestead homestead, LocalDate today) {
        return season(homestead, today).report().madeTrips().getFirst();
    }

    private static SeasonReport.TripPart firstTrip(String store) {
        return firstTrip(WaterSite.with(store), TUESDAY);
    }

    @Nested
    class AsAStock {
        @Test
        void a_stage_takes_whole_cans_and_the_tank_counts_whole_cans() {
            PlanningProblem problem = problem(WaterSite.with(STORE.replace("\"100 L", "\"119 L")), TUESDAY);
            assertThat(problem.stages().getFirst().needs()).containsExactly(new Need(WaterWriter.ID, 8));
            assertThat(problem.site().stock())
                    .containsExactly(new StockLot(WaterWriter.ID, 5, LocalDate.of(2027, 5, 31)));
        }

        @Test
        void a_can_weighs_a_kilogram_a_litre_and_itself_and_costs_nothing() {
            assertThat(problem(WaterSite.with(STORE), TUESDAY).materials())
                    .extracting(m -> m.name(), m -> m.grams(), m -> m.millilitres(), m -> m.dry(), m -> m.cents())
                    .containsExactly(tuple("Water, 20 L each", 21_000L, 22_000L, false, 0L));
        }

        @Test
        void a_stage_half_done_takes_half_of_its_water() {
            String begun = WaterSite.file(STORE)
                    .replace(
                            "\"in-one-go\"",
                            "\"splittable\", \"progress\": {\"startedOn\": \"2027-05-30\", \"labourLeft\": \"4 h\"}");
            assertThat(problem(WaterSite.read(begun), TUESDAY)
                            .stages()
                            .getFirst()
                            .needs())
                    .containsExactly(new Need(WaterWriter.ID, 4));
        }

        @Test
        void rain_comes_with_the_first_date_of_each_possible_trip() {
            // 100 L + 4 days x 16 L = 164 L are 8 cans; 7 days more bring 112 L: 276 L are 13
            assertThat(problem(WaterSite.with(WITH_ROOF), TUESDAY).site().stock())
                    .containsExactly(
                            new StockLot(WaterWriter.ID, 5, LocalDate.of(2027, 6, 12)),
                            new StockLot(WaterWriter.ID, 3, SATURDAY),
                            new StockLot(WaterWriter.ID, 5, LocalDate.of(2027, 5, 31)));
        }

        @Test
        void rain_counts_as_far_as_there_is_room_in_the_tank() {
            String small = WITH_ROOF.replace("1000 L", "125 L");
            assertThat(problem(WaterSite.with(small), TUESDAY).site().stock())
                    .containsExactly(
                            new StockLot(WaterWriter.ID, 1, SATURDAY),
                            new StockLot(WaterWriter.ID, 5, LocalDate.of(2027, 5, 31)));
        }

        @Test
        void no_rain_where_it_is_not_known_or_the_month_is_freezing() {
            String unknown = WaterSite.file(WITH_ROOF).replace(", \"rain\": \"60 mm\"", "");
            String freezing = WaterSite.file(WITH_ROOF).replace("\"6 degC\"", "\"-20 degC\"");
            for (String file : List.of(unknown, freezing)) {
                assertThat(problem(WaterSite.read(file), TUESDAY).site().stock())
                        .extracting(StockLot::packs)
                        .containsExactly(5);
            }
        }

        @Test
        void nothing_is_reckoned_without_a_tank_or_without_a_stage_that_takes_any() {
            PlanningProblem noTank = problem(WaterSite.with(""), TUESDAY);
            PlanningProblem noStage =
                    problem(WaterSite.read(WaterSite.file(STORE).replace(", \"water\": \"160 L\"", "")), TUESDAY);
            for (PlanningProblem problem : List.of(noTank, noStage)) {
                assertThat(problem.materials()).isEmpty();
                assertThat(problem.site().stock()).isEmpty();
                assertThat(problem.stages().getFirst().needs()).isEmpty();
            }
        }
    }

    @Nested
    class InALoad {
        @Test
        void what_the_tank_lacks_is_carried() {
            SeasonReport.RunPart run = firstTrip(STORE).runs().getFirst();
            assertThat(run.loads())
                    .extracting(l -> l.name(), l -> l.pack(), l -> l.packs(), l -> l.mass())
                    .containsExactly(tuple("Water, 20 L each", "can", 3, Mass.ofKilograms(63)));
            assertThat(run.limitUsed()).isEqualTo(Mass.ofKilograms(63));
        }

        @Test
        void cans_count_against_the_payload() {
            // 3200 - 2300 - 50 - 150 kg are 700; with 640 kg less only two cans of 21 kg go at once
            String file = WaterSite.file(STORE)
                    .replace("3200 kg", "2560 kg")
                    .replace("\"8 h\", \"crew\"", "\"6 h\", \"crew\"");
            assertThat(firstTrip(WaterSite.read(file), TUESDAY).runs())
                    .extracting(r -> r.kind(), r -> r.loads().getFirst().packs())
                    .containsExactlyInAnyOrder(tuple(RunKind.ARRIVAL, 2), tuple(RunKind.EXTRA, 1));
        }

        @Test
        void none_is_carried_with_a_fuller_tank_or_with_rain() {
            assertThat(firstTrip(STORE.replace("\"100 L", "\"160 L")).runs()).isEmpty();
            assertThat(firstTrip(WITH_ROOF).runs()).isEmpty();
        }

        @Test
        void rain_of_a_later_trip_is_of_no_use_to_an_earlier_one() {
            // no night lies between today and the trip: the rain until the next one comes too late
            SeasonReport.TripPart trip = firstTrip(WaterSite.with(WITH_ROOF), SATURDAY);
            assertThat(trip.firstDate()).isEqualTo(SATURDAY);
            assertThat(trip.runs().getFirst().loads())
                    .extracting(SeasonReport.LoadPart::packs)
                    .containsExactly(3);
        }

        @Test
        void water_has_a_place_in_the_vehicle_and_in_the_stock() {
            Homestead homestead = WaterSite.with(STORE);
            TripLoads loads = TripLoadsWriter.of(homestead, season(homestead, TUESDAY), "2027-06-05");
            assertThat(loads.own().getFirst().items())
                    .extracting(
                            i -> i.cargo().packs().name(),
                            i -> i.cargo().packs().count(),
                            i -> i.use())
                    .containsExactly(tuple("Water, 20 L each", 3, new TripLoads.Use("Fill wall", SATURDAY)));
            assertThat(loads.stock())
                    .extracting(s -> s.before(), s -> s.arrived(), s -> s.used(), s -> s.after())
                    .containsExactly(tuple(5, 3, 8, 0));
        }

        @Test
        void nobody_is_told_to_buy_water() {
            Homestead homestead = WaterSite.with(STORE);
            PlannedSeason season = season(homestead, TUESDAY);
            assertThat(SuppliesWriter.write(homestead, season).runs())
                    .singleElement()
                    .satisfies(list -> assertThat(list.stops()).isEmpty());
            assertThat(season.report().withoutPrice()).isEmpty();
            assertThat(season.plan().totals().materialCents()).isZero();
        }

        @Test
        void water_is_no_money_still_to_be_paid_and_lacks_no_price() {
            Homestead homestead = WaterSite.with(STORE);
            PlannedSeason season = season(homestead, TUESDAY);
            MoneyReport money = MoneyReport.of(new Books(homestead, season, List.of(), TUESDAY));
            assertThat(season.report().runCount()).isEqualTo(1);
            assertThat(money.forecast().unpriced()).isEmpty();
            assertThat(money.coming()).extracting(c -> c.what()).doesNotContain(WaterWriter.ID);
            assertThat(money.payments()).isNotEmpty().noneMatch(p -> p.what().equals(WaterWriter.ID));
        }

        @Test
        void fewer_cans_on_the_day_leave_the_work_undone() {
            Homestead homestead = WaterSite.with(WITH_ROOF);
            PlannedSeason season = season(homestead, SATURDAY);
            ChangedTrip changed = LoadChange.of(
                    homestead, season, new DayChange("2027-06-05", Map.of(WaterWriter.ID, 1), false, Mass.ofGrams(0)));
            assertThat(changed.work()).singleElement().satisfies(reach -> {
                assertThat(reach.inFull()).isFalse();
                assertThat(reach.lacks()).containsExactly(new ChangedTrip.Lack(WaterWriter.ID, 6, 8));
            });
        }
    }

    @Nested
    class InWords {
        @Test
        void a_trip_tells_what_it_takes_and_when_the_tank_is_empty() {
            assertThat(firstTrip(STORE).water())
                    .containsExactly(
                            "Its work takes 160 L, counted in whole cans: 100 L from the tank, 60 L from cans.",
                            "In the tank: 100 L before it (no rain is counted on), nothing after it.",
                            "The tank is empty after Fill wall on Sat 5 Jun: bring 3 cans of water, 63 kg.");
        }

        @Test
        void rain_that_is_counted_on_is_told() {
            assertThat(firstTrip(WITH_ROOF.replace("\"100 L", "\"120 L")).water())
                    .containsExactly(
                            "Its work takes 160 L, counted in whole cans: all from the tank.",
                            "In the tank: 180 L before it (60 L of that is rain still to come, as usual for the time of"
                                    + " year), 20 L after it.");
        }

        @Test
        void a_tank_without_water_is_told() {
            assertThat(firstTrip(STORE.replace("\"100 L", "\"0 L")).water())
                    .contains("The tank is empty before it: bring 8 cans of water, 168 kg.");
        }

        @Test
        void without_a_tank_it_is_told_that_water_is_not_counted() {
            assertThat(firstTrip("").water())
                    .containsExactly(
                            "Its work takes about 160 L. Water is not counted: Place and kit names no tank to take"
                                    + " it from.");
        }

        @Test
        void gallons_where_people_think_in_those() {
            String file = WaterSite.file(STORE).replace("\"metric\"", "\"us\"");
            assertThat(firstTrip(WaterSite.read(file), TUESDAY).water())
                    .contains(
                            "Its work takes 42.3 gal, counted in whole cans: 26.4 gal from the tank, 15.9 gal from cans.");
        }
    }

    @Nested
    class OnAPile {
        private final Pile pile =
                new Pile(problem(WaterSite.with(STORE), TUESDAY).materials().getFirst());

        @Test
        void packs_of_a_date_to_come_are_not_there_before_it() {
            pile.arrive(SATURDAY.plusDays(7), 4, false);
            pile.arrive(SATURDAY, 3, true);
            assertThat(pile.good(SATURDAY)).isEqualTo(3);
            assertThat(pile.use(SATURDAY, 5)).isEqualTo(new Pile.Taken(3, 3));
            assertThat(pile.good(SATURDAY.plusDays(7))).isEqualTo(4);
        }
    }
}
