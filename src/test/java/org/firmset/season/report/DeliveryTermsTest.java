package org.firmset.season.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.firmset.homestead.DeliveryTerms;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Supplier;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.homestead.part.Part;
import org.firmset.measure.Cash;
import org.firmset.measure.Hours;
import org.firmset.measure.Mass;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Effort;
import org.firmset.plan.Load;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.firmset.season.ask.Answers;
import org.firmset.season.ask.Question;
import org.firmset.season.load.HaulOrBring;
import org.firmset.season.problem.ProblemWriter;
import org.firmset.season.result.PlannedSeason;
import org.firmset.season.result.SeasonReport;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** From what a homestead says of its deliveries to the planning problem, the report and what owners ask. */
class DeliveryTermsTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Homestead DEMO = SeedHomesteads.demo(TODAY);
    private static final String ROCK = "masonry-yard";

    private static <R extends Record> R with(R record, String changed, @Nullable Object value) {
        @SuppressWarnings("unchecked")
        Class<R> type = (Class<R>) record.getClass();
        return Part.record(
                type,
                Part.of(type).stream()
                        .<@Nullable Object>map(p -> p.name().equals(changed) ? value : p.valueIn(record))
                        .toList());
    }

    private static Homestead withTerms(Homestead homestead, String changed, @Nullable Object value) {
        List<Supplier> suppliers = homestead.suppliers().stream()
                .map(s -> s.key().equals(ROCK) ? with(s, "delivery", with(terms(homestead), changed, value)) : s)
                .toList();
        return with(homestead, "suppliers", suppliers);
    }

    private static DeliveryTerms terms(Homestead homestead) {
        return homestead.suppliers().stream()
                .filter(s -> s.key().equals(ROCK))
                .map(s -> Optional.ofNullable(s.delivery()).orElseThrow())
                .findFirst()
                .orElseThrow();
    }

    private static Homestead withPlace(Homestead homestead, String changed, Object value) {
        return with(homestead, "place", with(homestead.place(), changed, value));
    }

    private static DeliveryOffer offer(Homestead homestead) {
        return ProblemWriter.write(homestead, TODAY, Style.SOONEST).offers().stream()
                .filter(o -> o.id().equals(ROCK))
                .findFirst()
                .orElseThrow();
    }

    private static PlannedSeason season(Homestead homestead) {
        return ((SeasonPlanner.Result.Planned)
                        new SeasonPlanner().plan(homestead, TODAY, Style.SOONEST, new Effort(120, 1)))
                .season();
    }

    @Test
    void a_truck_brings_no_more_than_the_track_bears_besides_the_truck() {
        Homestead known = withTerms(DEMO, "truckEmptyMass", Mass.ofKilograms(9_000.0005));
        assertThat(offer(withPlace(known, "trackLimit", Mass.ofKilograms(12_000)))
                        .grams())
                .isEqualTo(2_999_999);
        assertThat(offer(withPlace(known, "trackLimit", Mass.ofKilograms(60_000)))
                        .grams())
                .isEqualTo(9_071_848);
        assertThat(offer(withPlace(withTerms(DEMO, "truckEmptyMass", null), "trackLimit", Mass.ofKilograms(12_000)))
                        .grams())
                .isEqualTo(9_071_848);
    }

    @Test
    void small_orders_soft_months_and_drops_are_carried_over() {
        Homestead homestead = withPlace(
                withTerms(
                        withTerms(
                                withTerms(DEMO, "leastOrder", Cash.ofCents(45_050, "USD")),
                                "smallOrderFee",
                                Cash.ofCents(6_001, "USD")),
                        "attended",
                        false),
                "softMonths",
                List.of(Month.APRIL, Month.APRIL));
        DeliveryOffer offer = offer(homestead);
        assertThat(offer.leastOrderCents()).isEqualTo(45_050);
        assertThat(offer.smallOrderCents()).isEqualTo(6_001);
        assertThat(offer.shutMonths()).isEqualTo(Set.of(Month.APRIL));
        assertThat(offer.attended()).isFalse();
    }

    @Test
    void the_report_says_what_to_know_of_a_delivery_and_what_it_costs() {
        Homestead homestead = withPlace(
                withTerms(
                        withTerms(
                                withTerms(DEMO, "leastOrder", Cash.ofCents(900_000, "USD")),
                                "smallOrderFee",
                                Cash.ofCents(6_000, "USD")),
                        "truckEmptyMass",
                        Mass.ofKilograms(9_000)),
                "trackLimit",
                Mass.ofKilograms(19_000));
        PlannedSeason season = season(homestead);
        List<SeasonReport.RunPart> runs = season.report().trips().stream()
                .flatMap(t -> t.runs().stream())
                .filter(r -> r.kind() == RunKind.DELIVERY && r.carrier().startsWith("Masonry"))
                .toList();
        assertThat(runs).isNotEmpty().allSatisfy(run -> {
            assertThat(run.notes()).hasSize(2);
            assertThat(run.notes().getFirst())
                    .startsWith("Its goods are worth $")
                    .endsWith("under the least order of $9,000.00: that takes $60.00 on top of the fee.");
            assertThat(run.notes().getLast()).contains("the track is down for 41,888 lb");
        });
        long costs = season.report().trips().stream()
                .mapToLong(t -> Cash.cents(t.cost()))
                .sum();
        assertThat(costs)
                .isEqualTo(season.plan().totals().tripCents()
                        + season.plan().totals().extraRunCents()
                        + season.plan().totals().deliveryCents());
    }

    @Test
    void ready_mix_and_drops_bring_their_cautions() {
        Homestead homestead = withTerms(withTerms(DEMO, "placeWithin", new Hours(6)), "attended", false);
        Run run = new Run(
                "2027-06-12",
                LocalDate.of(2027, 6, 12),
                RunKind.DELIVERY,
                ROCK,
                List.of(new Load("rock-yd3", Load.TRUCK, 1)),
                LocalDate.of(2027, 6, 9));
        List<String> notes = new DeliveryNotes(homestead).of(run, offer(homestead), 4_750, Mass.ofKilograms(1_270));
        assertThat(notes).hasSize(3);
        assertThat(notes.getFirst()).startsWith("Order it for Wed 9 Jun: it is dropped with nobody there.");
        assertThat(notes.getLast())
                .startsWith("Ready-mix: all of it placed within 1.5 h of the first mixing, the drive included.")
                .contains("ASTM C94", "90 minutes", "local code come first");
    }

    /** By the sums of docs/demo.md 10 yd3 of rock are needed, and both vehicles full carry 3,230 lb. */
    @Test
    void haul_or_bring_reckons_both_ways_and_tells_what_the_plan_does() {
        PlannedSeason season = season(DEMO);
        HaulOrBring rock = HaulOrBring.of(season).stream()
                .filter(h -> h.supplier().equals(ROCK))
                .findFirst()
                .orElseThrow();
        long grams = 0;
        long own = 0;
        for (HaulOrBring.Goods goods : rock.goods()) {
            long ofThis = ProblemWriter.thousandths(goods.mass());
            grams += ofThis;
            own += goods.fits() ? ofThis : 0;
        }
        assertThat(rock.goods())
                .filteredOn(g -> g.material().equals("rock-yd3"))
                .singleElement()
                .satisfies(g -> {
                    assertThat(g.packs()).isEqualTo(10);
                    assertThat(g.fits()).isFalse();
                });
        assertThat(rock.brought().deliveries())
                .isEqualTo(Math.ceilDiv(grams, offer(DEMO).grams()));
        assertThat(rock.brought().fees())
                .isEqualTo(Cash.ofCents(28_500 * rock.brought().deliveries(), "USD"));
        // both full: 3230 lb, without the helper
        assertThat(rock.fetched().runs()).isEqualTo(Math.ceilDiv(own, 1_465_103L));
        assertThat(rock.fetched().cost())
                .isEqualTo(Cash.ofCents(5_800 * rock.fetched().runs(), "USD"));
        assertThat(rock.fetched().labour())
                .isEqualTo(new Hours((int) (16 * rock.fetched().runs())));
        assertThat(rock.planned())
                .isEqualTo(season.plan().schedule().runs().stream()
                        .filter(r -> r.offer().equals(ROCK))
                        .map(Run::date)
                        .toList());
        assertThat(rock.sentence())
                .startsWith("Masonry and rock supplier would bring all that is still needed in at least ")
                .contains(
                        "no vehicle of yours takes Crushed rock, 3/4 in minus, the rest takes at least ",
                        "the plan takes ");
    }

    @Test
    void what_would_be_without_deliveries_is_found_by_planning_again() {
        PlannedSeason season = season(DEMO);
        List<String> answer = Answers.to(new Question.Deliveries(ROCK), season, Optional.empty(), new Stop());
        assertThat(answer).hasSize(2);
        assertThat(answer.getFirst()).startsWith("Masonry and rock supplier would bring");
        assertThat(answer.getLast())
                .isEqualTo(
                        "Without its deliveries there is no plan that finishes everything by the last open date; that is"
                                + " proven.");
    }
}
