package org.firmset.plan.search;

import static java.time.DayOfWeek.SATURDAY;
import static java.time.DayOfWeek.WEDNESDAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.plan.Problems.STATUS_DATE;
import static org.firmset.plan.Problems.problem;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Set;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Effort;
import org.firmset.plan.Obstacle;
import org.firmset.plan.Outcome;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Problems;
import org.firmset.plan.Run;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Style;
import org.firmset.plan.check.PlanChecker;
import org.junit.jupiter.api.Test;

/** Rock fits no vehicle; the quarry brings it at 900 cents a delivery. Trips are weekends, from Saturday on. */
class DeliveriesTest {
    private static final DeliveryOffer QUARRY = new DeliveryOffer(
            "quarry", "Quarry", Set.of("rock"), 9_000_000, STATUS_DATE, Set.of(WEDNESDAY, SATURDAY), 900);
    private static final DeliveryOffer ON_WEDNESDAYS =
            new DeliveryOffer("quarry", "Quarry", Set.of("rock"), 9_000_000, STATUS_DATE, Set.of(WEDNESDAY), 900);

    private static Problems fill(int packs, DeliveryOffer offer) {
        return problem()
                .trip("may", "2027-05-08", 2)
                .trip("june", "2027-06-05", 2)
                .material(
                        "rock",
                        m -> m.grams(1_000_000).millimetres(99_999).shelfLife(4).cents(500))
                .stage("fill", 4, s -> s.needs("rock", packs))
                .offer(offer);
    }

    private static SeasonPlan planned(PlanningProblem problem) {
        Outcome outcome = new ConstructivePlanner().plan(problem, new Effort(60, 1, 1));
        assertThat(outcome).isInstanceOf(Outcome.Planned.class);
        SeasonPlan plan = ((Outcome.Planned) outcome).plan();
        assertThat(PlanChecker.check(problem, plan.schedule())).isEmpty();
        return plan;
    }

    private static List<Obstacle> obstacles(Problems problem) {
        Outcome outcome = new ConstructivePlanner().plan(problem.build(), new Effort(60, 1, 1));
        assertThat(outcome).isInstanceOf(Outcome.NoPlan.class);
        return ((Outcome.NoPlan) outcome).obstacles();
    }

    @Test
    void whatNobodyMustAttendIsDroppedOnTheLastPossibleDateBeforeTheTrip() {
        SeasonPlan plan = planned(fill(2, ON_WEDNESDAYS.withAttended(false)).build());
        assertThat(plan.finish()).contains(LocalDate.parse("2027-05-08"));
        assertThat(plan.schedule().runs()).singleElement().satisfies(run -> {
            assertThat(run.date()).isEqualTo("2027-05-08");
            assertThat(run.broughtOn()).isEqualTo("2027-05-05");
        });
    }

    @Test
    void whatMustBeAttendedComesOnASiteDayOrNotAtAll() {
        SeasonPlan plan = planned(fill(2, QUARRY).build());
        assertThat(plan.schedule().runs())
                .singleElement()
                .extracting(Run::isDropped)
                .isEqualTo(false);
        assertThat(obstacles(fill(2, ON_WEDNESDAYS)))
                .first()
                .extracting(Obstacle::proven)
                .isEqualTo(true);
    }

    @Test
    void whatGoesOffBetweenTheDropAndTheWorkIsNotDropped() {
        Problems problem = fill(2, ON_WEDNESDAYS.withAttended(false)).pin("fill", "2027-05-09");
        assertThat(planned(problem.build()).finish()).contains(LocalDate.parse("2027-05-09"));
        problem.material("lime", m -> m.grams(1_000_000).millimetres(99_999).shelfLife(3))
                .stage("spread", 4, s -> s.needs("lime", 1))
                .pin("spread", "2027-05-09")
                .offer(new DeliveryOffer("kiln", "Kiln", Set.of("lime"), 9_000_000, STATUS_DATE, Set.of(WEDNESDAY), 0)
                        .withAttended(false));
        assertThat(obstacles(problem)).isNotEmpty();
    }

    @Test
    void whatMustBeKeptDryIsNotDroppedAndThatIsSaid() {
        Problems problem = fill(2, QUARRY)
                .material("lime", m -> m.grams(1_000_000).millimetres(99_999).dry())
                .stage("spread", 4, s -> s.needs("lime", 1))
                .offer(new DeliveryOffer("kiln", "Kiln", Set.of("lime"), 9_000_000, STATUS_DATE, Set.of(WEDNESDAY), 0)
                        .withAttended(false));
        assertThat(obstacles(problem)).singleElement().satisfies(obstacle -> {
            assertThat(obstacle.proven()).isTrue();
            assertThat(obstacle.message()).contains("Lime", "kept dry, so somebody must be there");
        });
    }

    @Test
    void noTruckComesInMonthsInWhichTheTrackIsSoft() {
        assertThat(planned(fill(2, QUARRY.withShutMonths(Set.of(Month.MAY))).build())
                        .finish())
                .contains(LocalDate.parse("2027-06-05"));
        assertThat(obstacles(fill(2, QUARRY.withShutMonths(Set.of(Month.JUNE, Month.MAY)))))
                .singleElement()
                .extracting(Obstacle::message)
                .asString()
                .contains("Rock", "No truck of Quarry may come in May, June.");
    }

    @Test
    void aSmallOrderCostsItsFeeInEveryStyleAndTheLeastMoneyIsProven() {
        for (Style style : Style.values()) {
            SeasonPlan small =
                    planned(fill(2, QUARRY.withSmallOrders(1_001, 70)).build().withStyle(style));
            assertThat(small.totals().deliveryCents()).as("%s", style).isEqualTo(970);
            SeasonPlan large =
                    planned(fill(2, QUARRY.withSmallOrders(1_000, 70)).build().withStyle(style));
            assertThat(large.totals().deliveryCents()).as("%s", style).isEqualTo(900);
        }
        SeasonPlan cheapest =
                planned(fill(2, QUARRY.withSmallOrders(9_000, 70)).build().withStyle(Style.LEAST_MONEY));
        assertThat(cheapest.aim().proven()).isTrue();
    }

    /** A trip is 10000 cents, the delivery 900, four packs are 2000. */
    @Test
    void aMonthThatCannotPayForASmallOrderMayPayForALargeOne() {
        DeliveryOffer offer = QUARRY.withSmallOrders(2_000, 5_000);
        PlanningProblem large = fill(4, offer).spending(12_900, true).build();
        assertThat(planned(large).totals().cents()).isEqualTo(12_900);
        assertThat(obstacles(fill(3, offer).spending(12_900, true))).isNotEmpty();
    }
}
