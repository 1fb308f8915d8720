package org.firmset.season.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.measure.Cash;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.firmset.plan.Effort;
import org.firmset.plan.Load;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.plan.Style;
import org.firmset.season.TwoWeekendsFile;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.season.result.PlannedSeason;
import org.javamoney.moneta.Money;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class SuppliesWriterTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

    private static PlannedSeason season(Homestead homestead) {
        SeasonPlanner.Result result = new SeasonPlanner().plan(homestead, TODAY, Style.SOONEST, new Effort(300, 1));
        return ((SeasonPlanner.Result.Planned) result).season();
    }

    private static SeasonSupplies.StockStory stock(SeasonSupplies supplies, String material) {
        return supplies.stock().stream()
                .filter(s -> s.material().equals(material))
                .findFirst()
                .orElseThrow();
    }

    /** The loads, sums and nights in the dry that docs/two-weekends.md works out by hand. */
    @Nested
    class TwoWeekends {
        private static final LocalDate ARRIVAL = LocalDate.of(2027, 5, 8);
        private static final SeasonSupplies SUPPLIES = supplies();

        private static SeasonSupplies supplies() {
            Homestead place = TwoWeekendsFile.read();
            return SuppliesWriter.write(place, season(place));
        }

        private static Money euros(long cents) {
            return Cash.ofCents(cents, "EUR");
        }

        @Test
        void each_run_has_its_shopping_list_with_mass_cost_and_the_last_date_to_order() {
            SeasonSupplies.Stop first = SUPPLIES.runs().getFirst().stops().getFirst();
            assertThat(first)
                    .isEqualTo(new SeasonSupplies.Stop(
                            "yard",
                            "Building yard",
                            ARRIVAL,
                            List.of(
                                    line("gravel-25", 24, 600, 24 * 450),
                                    line("post-concrete-25", 9, 225, 9 * 620),
                                    line("post", 4, 40, 4 * 1750)),
                            Mass.ofKilograms(865),
                            euros(23_380)));
            SeasonSupplies.Stop second = SUPPLIES.runs().getLast().stops().getFirst();
            assertThat(second.mass()).isEqualTo(Mass.ofKilograms(151));
            assertThat(second.cost()).isEqualTo(euros(59_180 - 23_380));
        }

        private static SeasonSupplies.Line line(String material, int packs, double kilograms, long cents) {
            return new SeasonSupplies.Line(material, packs, Mass.ofKilograms(kilograms), euros(cents));
        }

        @Test
        void nine_bags_lie_in_the_dry_for_a_night() {
            assertThat(stock(SUPPLIES, "post-concrete-25"))
                    .isEqualTo(new SeasonSupplies.StockStory(
                            "post-concrete-25",
                            List.of(
                                    new SeasonSupplies.StockDay(ARRIVAL, 9, 0, 0, 9),
                                    new SeasonSupplies.StockDay(ARRIVAL.plusDays(1), 0, 9, 0, 0)),
                            0,
                            0));
            Volume room = Volume.ofCubicMetres(0.2);
            assertThat(SUPPLIES.dryRoom())
                    .containsExactly(
                            new SeasonSupplies.DryRoom(ARRIVAL, Volume.ofCubicMetres(0.135), room),
                            new SeasonSupplies.DryRoom(ARRIVAL.plusDays(1), Volume.ofCubicMetres(0), room));
        }

        @Test
        void nothing_is_left_over() {
            assertThat(SUPPLIES.stock()).allMatch(s -> s.left() == 0 && s.goneOff() == 0);
        }
    }

    @Nested
    class Demo {
        private static final Homestead PLACE = SeedHomesteads.demo(TODAY);
        private static final PlannedSeason SEASON = season(PLACE);
        private static final SeasonSupplies SUPPLIES = SuppliesWriter.write(PLACE, SEASON);

        @Test
        void the_lists_hold_what_the_runs_carry() {
            Map<String, Integer> carried = SEASON.plan().schedule().runs().stream()
                    .flatMap(r -> r.loads().stream())
                    .collect(Collectors.toMap(Load::material, Load::packs, Integer::sum));
            Map<String, Integer> listed = SUPPLIES.runs().stream()
                    .flatMap(r -> r.stops().stream())
                    .flatMap(s -> s.lines().stream())
                    .collect(Collectors.toMap(SeasonSupplies.Line::material, SeasonSupplies.Line::packs, Integer::sum));
            assertThat(listed).isEqualTo(carried);
        }

        @Test
        void runs_of_ones_own_cost_what_the_planner_counts() {
            Map<String, Long> cents =
                    SEASON.problem().materials().stream().collect(Collectors.toMap(m -> m.id(), m -> m.cents()));
            long counted = SEASON.plan().schedule().runs().stream()
                    .filter(r -> r.kind() != RunKind.DELIVERY)
                    .flatMap(r -> r.loads().stream())
                    .mapToLong(l -> l.packs() * cents.getOrDefault(l.material(), -1L))
                    .sum();
            long listed = SUPPLIES.runs().stream()
                    .filter(r -> r.kind() != RunKind.DELIVERY)
                    .flatMap(r -> r.stops().stream())
                    .mapToLong(s -> Cash.cents(s.cost()))
                    .sum();
            assertThat(listed).isEqualTo(counted);
        }

        @Test
        void blocks_come_from_where_they_are_cheapest_and_are_ordered_its_lead_days_before() {
            // from the file: 2.48 USD and two days at the masonry supplier, 2.95 USD at the yard in town
            assertThat(SUPPLIES.runs())
                    .filteredOn(r -> r.kind() != RunKind.DELIVERY)
                    .flatExtracting(r -> r.stops().stream()
                            .filter(s -> s.lines().stream()
                                    .anyMatch(l -> l.material().equals("block-8")))
                            .map(s -> s.supplier() + " " + r.date().minusDays(2).equals(s.orderBy()))
                            .toList())
                    .isNotEmpty()
                    .containsOnly("masonry-yard true");
        }

        @Test
        void what_came_is_used_gone_off_or_left() {
            for (SeasonSupplies.StockStory story : SUPPLIES.stock()) {
                int came = story.days().stream()
                        .mapToInt(SeasonSupplies.StockDay::arrived)
                        .sum();
                int used = story.days().stream()
                        .mapToInt(SeasonSupplies.StockDay::used)
                        .sum();
                assertThat(used + story.goneOff() + story.left())
                        .as(story.material())
                        .isEqualTo(came);
            }
        }

        @Test
        void the_dry_room_is_never_over_its_limit_when_something_comes() {
            List<LocalDate> arrivals =
                    SEASON.plan().schedule().runs().stream().map(Run::date).toList();
            assertThat(SUPPLIES.dryRoom())
                    .filteredOn(d -> arrivals.contains(d.date()))
                    .isNotEmpty()
                    .allMatch(d -> d.used().value().compareTo(d.limit().value()) <= 0);
        }
    }
}
