package org.firmset.plan.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.InstanceOfAssertFactories.list;
import static org.firmset.plan.Problems.problem;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Set;
import org.assertj.core.api.ListAssert;
import org.assertj.core.api.ObjectAssert;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Effort;
import org.firmset.plan.Layout;
import org.firmset.plan.LeastWait;
import org.firmset.plan.Obstacle;
import org.firmset.plan.Outcome;
import org.firmset.plan.Problems;
import org.firmset.plan.Rule;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What the planner says when there is no plan: which rule, which stages, in a sentence with figures and a remedy. */
class ObstaclesTest {
    private static final Effort EFFORT = new Effort(20, 1);

    /** One trip of two days of 8 h labour, two people. */
    private final Problems problem = problem().trip("may", "2027-05-01", 2);

    private ListAssert<Obstacle> assertObstacles() {
        Outcome outcome = new ConstructivePlanner().plan(problem.build(), EFFORT);
        return assertThat(outcome)
                .isInstanceOf(Outcome.NoPlan.class)
                .extracting(o -> ((Outcome.NoPlan) o).obstacles())
                .asInstanceOf(list(Obstacle.class));
    }

    private ObjectAssert<Obstacle> assertProven(Rule rule, String... stages) {
        return assertObstacles()
                .singleElement()
                .satisfies(o -> assertThat(o.proven()).isTrue())
                .satisfies(o -> assertThat(o.rule()).isEqualTo(rule))
                .satisfies(o -> assertThat(o.stages()).containsExactly(stages));
    }

    private static void says(ObjectAssert<Obstacle> obstacle, String message) {
        obstacle.extracting(Obstacle::message).isEqualTo(message);
    }

    private void planned() {
        assertThat(new ConstructivePlanner().plan(problem.build(), EFFORT)).isInstanceOf(Outcome.Planned.class);
    }

    @Test
    void a_circle_of_waits_is_named_stage_by_stage() {
        problem.stage("dig", 4).stage("form", 4).stage("pour", 4).stage("roof", 4);
        problem.wait("dig", "form", 0).wait("form", "pour", 2).wait("pour", "dig", 1);
        problem.wait("pour", "roof", 0);
        says(
                assertProven(Rule.WAITS, "form", "pour", "dig", "form"),
                "These stages wait for each other in a circle, so none can ever start: Form, then Pour, then Dig, then"
                        + " Form. Take out one of the waits between them.");
    }

    @Test
    void no_open_date_at_all_is_said_of_each_stage() {
        Outcome outcome =
                new ConstructivePlanner().plan(problem().stage("dig", 4).build(), EFFORT);
        assertThat(outcome)
                .isEqualTo(new Outcome.NoPlan(java.util.List.of(new Obstacle(
                        Rule.HOURS,
                        java.util.List.of("dig"),
                        true,
                        "Dig has work left but there is no open date from 2027-05-01 on. Add open dates."))));
    }

    @Nested
    class Hours {
        @Test
        void a_stage_in_one_go_that_no_day_holds() {
            problem.stage("pour", 34, s -> s.layout(Layout.IN_ONE_GO));
            says(
                    assertProven(Rule.HOURS, "pour"),
                    "Pour takes 8.5 h of labour on one day, but no day it may be done on has more than 8 h. Split it,"
                            + " or ask more people.");
        }

        @Test
        void a_least_block_that_no_day_holds() {
            problem.stage("pour", 60, s -> s.leastBlock(33));
            says(
                    assertProven(Rule.HOURS, "pour"),
                    "Pour takes 8.25 h of labour on one day, but no day it may be done on has more than 8 h. Split it,"
                            + " or ask more people.");
        }

        @Test
        void a_stage_that_all_days_together_do_not_hold() {
            problem.stage("dig", 65);
            says(
                    assertProven(Rule.HOURS, "dig"),
                    "Dig takes 16.25 h of labour, but the days it may be done on do not hold that much, even with"
                            + " nothing else on them. Add open dates.");
        }

        @Test
        void labour_that_no_number_of_days_divides() {
            problem.stage("lay", 20, s -> s.leastBlock(12).mostBlock(14));
            says(
                    assertProven(Rule.LABOUR, "lay"),
                    "Lay takes 5 h of labour, which cannot be divided into days of at least 3 h and at most 3.5 h."
                            + " Change one of the three.");
        }

        @Test
        void unbroken_days_that_no_trip_holds() {
            problem.trip("june", "2027-06-05", 2).stage("plaster", 80, s -> s.layout(Layout.UNBROKEN_DAYS));
            says(
                    assertProven(Rule.HOURS, "plaster"),
                    "Plaster takes 20 h of labour, but the days it may be done on do not hold that much, even with"
                            + " nothing else on them. Add open dates.");
        }

        @Test
        void stages_that_do_not_fit_together() {
            problem.stage("dig", 40).stage("pour", 26);
            says(
                    assertProven(Rule.HOURS, "dig", "pour"),
                    "All stages together take 17 hours of labour, but the open dates hold only 16. Add open dates or"
                            + " people, or leave stages for later.");
        }
    }

    @Nested
    class Dates {
        @Test
        void a_crew_that_never_comes() {
            problem.stage("raise", 4, s -> s.crew(3));
            says(
                    assertProven(Rule.CREW, "raise"),
                    "Raise needs 3 people at once, but never more than 2 come. Ask helpers for a date, or plan it with"
                            + " fewer.");
        }

        @Test
        void a_season_that_is_never_open() {
            problem.stage("pour", 4, s -> s.shut("2027-05-01", "2027-05-31", "nights may be below 4 °C"));
            says(
                    assertProven(Rule.SHUT, "pour"),
                    "Pour may not be done on any open date on which somebody comes (nights may be below 4 °C)."
                            + " Open other dates, or change what it needs.");
        }

        @Test
        void a_pin_to_a_closed_date() {
            problem.stage("pour", 4).pin("pour", "2027-05-03");
            says(
                    assertProven(Rule.PINNED, "pour"),
                    "Pour is pinned to dates of which none is an open date from 2027-05-01 on. Pin it to an open date,"
                            + " or take the pin out.");
        }

        @Test
        void a_pin_to_a_date_on_which_it_may_not_be_done() {
            problem.stage("pour", 4, s -> s.shut("2027-05-02", "2027-05-02", "frost"))
                    .pin("pour", "2027-05-02");
            says(
                    assertProven(Rule.PINNED, "pour"),
                    "Pour may not be done on any of its pinned dates. Pin it to another date, or take the pin out.");
        }

        @Test
        void waits_that_lead_past_the_last_open_date() {
            problem.stage("pour", 4).stage("strip", 4).wait("pour", "strip", 3);
            says(
                    assertProven(Rule.WAITS, "strip"),
                    "Strip cannot be finished by the last open date 2027-05-02: the stages and waits before it take"
                            + " until 2027-05-04 even with nothing else to do. Add open dates.");
        }

        @Test
        void a_longest_wait_between_two_trips() {
            problem.trip("june", "2027-06-05", 2).stage("mix", 4).stage("pour", 4);
            problem.wait("mix", "pour", new LeastWait.Days(3), 7);
            says(
                    assertProven(Rule.WAITS, "pour", "mix"),
                    "Pour must start at most 7 days after Mix is finished, but whenever that is, there is no open date"
                            + " in that time on which it may be done and all it waits for is over. Add open dates, or"
                            + " allow more days.");
        }

        @Test
        void a_longest_wait_that_was_over_before_today() {
            problem.stage("mix", 0, s -> s.finishedOn("2027-04-01")).stage("pour", 4);
            problem.wait("mix", "pour", new LeastWait.Days(0), 20);
            assertProven(Rule.WAITS, "pour", "mix");
        }
    }

    @Nested
    class Power {
        @Test
        void a_stage_that_takes_more_than_a_day_ever_gives() {
            problem.battery(1_000)
                    .generator(500)
                    .stage("grind", 8, s -> s.draws(800).layout(Layout.IN_ONE_GO));
            says(
                    assertProven(Rule.POWER, "grind"),
                    "Grind takes 1,600 Wh on one day, but on the days that have the hours for it the battery holds its"
                            + " floor for 1.75 h of it at most. Split it, or bring more power.");
        }

        @Test
        void energy_of_days_without_the_hours_does_not_count() {
            problem.battery(100)
                    .trip("june", "2027-06-05", 1, t -> t.quarters(4).sun(5_000))
                    .stage("grind", 8, s -> s.draws(800).layout(Layout.IN_ONE_GO));
            assertProven(Rule.POWER, "grind")
                    .extracting(Obstacle::message)
                    .asString()
                    .contains("takes 1,600 Wh", "for 0 h of it at most");
        }

        @Test
        void a_generator_may_charge_the_battery_the_day_before() {
            problem.battery(1_000).generator(400);
            problem.stage("saw", 4, s -> s.draws(500).layout(Layout.IN_ONE_GO)).pin("saw", "2027-05-01");
            problem.stage("grind", 4, s -> s.draws(1_300).layout(Layout.IN_ONE_GO))
                    .pin("grind", "2027-05-02");
            planned();
        }
    }

    @Nested
    class Materials {
        @Test
        void a_thing_heavier_than_any_vehicle_that_nobody_brings() {
            problem.material("tank", m -> m.grams(900_000)).stage("place", 4, s -> s.needs("tank", 1));
            says(
                    assertProven(Rule.RUNS, "place"),
                    "Tank (900 kg, 0.02 m3, 0.6 m long) goes into no vehicle on any trip, and no supplier can bring it"
                            + " on an open date. Have it delivered, or use a smaller pack.");
        }

        @Test
        void a_thing_longer_than_any_vehicle_that_comes_on_closed_weekdays_only() {
            problem.material("beam", m -> m.millimetres(6_000)).stage("place", 4, s -> s.needs("beam", 1));
            problem.offer(offer(DayOfWeek.WEDNESDAY));
            assertProven(Rule.RUNS, "place")
                    .extracting(Obstacle::message)
                    .asString()
                    .contains("Beam", "6.0 m long");
        }

        @Test
        void what_a_supplier_brings_need_not_fit_a_vehicle() {
            problem.material("beam", m -> m.millimetres(6_000)).stage("place", 4, s -> s.needs("beam", 1));
            problem.offer(offer(DayOfWeek.SATURDAY));
            planned();
        }

        @Test
        void what_is_on_site_need_not_fit_a_vehicle() {
            problem.material("beam", m -> m.millimetres(6_000)).stage("place", 4, s -> s.needs("beam", 1));
            problem.stock("beam", 1, "2027-04-01");
            planned();
        }

        @Test
        void dry_things_may_come_when_the_dry_stock_has_been_used_up() {
            problem.dryStorage(100_000).material("cement", m -> m.dry().millilitres(20_000));
            problem.material("plaster", m -> m.dry().millilitres(20_000)).stock("cement", 6, "2027-04-01");
            problem.stage("pour", 4, s -> s.needs("cement", 6)).stage("finish", 4, s -> s.needs("plaster", 1));
            problem.trip("june", "2027-06-05", 2);
            planned();
        }

        private DeliveryOffer offer(DayOfWeek weekday) {
            return new DeliveryOffer(
                    "yard", "Yard", Set.of("beam"), 1_000_000, LocalDate.parse("2027-05-01"), Set.of(weekday), 5_000);
        }
    }

    @Test
    void what_the_search_alone_did_not_find_is_not_called_proven() {
        problem.stage("dig", 20, s -> s.layout(Layout.IN_ONE_GO))
                .stage("pour", 20, s -> s.layout(Layout.IN_ONE_GO))
                .stage("lay", 20, s -> s.layout(Layout.IN_ONE_GO));
        assertObstacles().singleElement().satisfies(o -> {
            assertThat(o.proven()).isFalse();
            assertThat(o.rule()).isEqualTo(Rule.HOURS);
            assertThat(o.message())
                    .contains("No plan was found", "by the last open date 2027-05-02", "2 of 3 stages", "Add open");
        });
    }
}
