package org.firmset.season.load;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.firmset.measure.Cash;
import org.firmset.measure.Hours;
import org.firmset.measure.Mass;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Material;
import org.firmset.plan.Need;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Run;
import org.firmset.plan.StockLot;
import org.firmset.plan.Trip;
import org.firmset.season.result.PlannedSeason;
import org.firmset.season.words.Dates;
import org.firmset.trade.haul.Payload;
import org.firmset.trade.haul.Rig;
import org.javamoney.moneta.Money;

/**
 * Whether to have the goods of a supplier brought or to fetch them: what either takes at least, by mass, for all that is
 * still needed and not on site; and what the plan does.
 *
 * @param goods what it brings, of which packs are still to be bought
 * @param planned the dates for which the plan takes a delivery
 */
public record HaulOrBring(
        String supplier,
        String name,
        List<Goods> goods,
        Brought brought,
        Fetched fetched,
        List<LocalDate> planned,
        String sentence) {

    public HaulOrBring {
        goods = List.copyOf(goods);
        planned = List.copyOf(planned);
    }

    /** @param fits whether a pack goes into a vehicle of one's own on some trip */
    public record Goods(String material, String name, long packs, Mass mass, boolean fits) {}

    /**
     * All of it by truck.
     *
     * @param deliveries no fewer are enough, by mass
     * @param fees those for small orders included, of which there are no fewer either
     */
    public record Brought(long deliveries, Money fees) {}

    /**
     * What fits, by extra runs; where trips make none, by trips.
     *
     * @param runs no fewer are enough, by mass
     * @param labour what the runs take from the work
     */
    public record Fetched(long runs, Money cost, Hours labour) {}

    /** One for each supplier who brings something that is still needed. */
    public static List<HaulOrBring> of(PlannedSeason season) {
        return season.problem().offers().stream()
                .flatMap(offer -> new Weighing(season, offer).weigh().stream())
                .toList();
    }

    private static final class Weighing {
        private final PlanningProblem problem;
        private final List<Run> runs;
        private final DeliveryOffer offer;
        private final String currency;

        Weighing(PlannedSeason season, DeliveryOffer offer) {
            problem = season.problem();
            runs = season.plan().schedule().runs();
            currency = season.report().costs().total().getCurrency().getCurrencyCode();
            this.offer = offer;
        }

        Optional<HaulOrBring> weigh() {
            List<Material> wanted = problem.materials().stream()
                    .filter(m -> offer.materials().contains(m.id()) && toBuy(m) > 0)
                    .toList();
            if (wanted.isEmpty() || problem.trips().isEmpty() || offer.grams() == 0) {
                return Optional.empty();
            }
            List<Goods> goods = wanted.stream().map(this::goods).toList();
            Brought brought = brought(wanted);
            Fetched fetched = fetched(
                    wanted.stream().filter(this::fits).mapToLong(this::grams).sum());
            List<LocalDate> planned = runs.stream()
                    .filter(r -> r.offer().equals(offer.id()))
                    .map(Run::date)
                    .toList();
            return Optional.of(new HaulOrBring(
                    offer.id(),
                    offer.name(),
                    goods,
                    brought,
                    fetched,
                    planned,
                    sentence(goods, brought, fetched, planned)));
        }

        private long toBuy(Material material) {
            long needed = problem.stages().stream()
                    .filter(s -> !s.finished())
                    .flatMap(s -> s.needs().stream())
                    .filter(n -> n.material().equals(material.id()))
                    .mapToLong(Need::packs)
                    .sum();
            return Math.max(0, needed - onSite(material));
        }

        /** Without what has gone off by the next possible trip. */
        private long onSite(Material material) {
            LocalDate next = problem.trips().isEmpty()
                    ? problem.statusDate()
                    : problem.trips().getFirst().firstDate();
            return problem.site().stock().stream()
                    .filter(l -> l.material().equals(material.id()) && material.goodOn(next, l.arrivedOn()))
                    .mapToLong(StockLot::packs)
                    .sum();
        }

        private long grams(Material material) {
            return material.grams() * toBuy(material);
        }

        private Goods goods(Material material) {
            Mass mass = new Mass(BigDecimal.valueOf(grams(material), 3));
            return new Goods(material.id(), material.name(), toBuy(material), mass, fits(material));
        }

        private boolean fits(Material material) {
            return problem.trips().stream().map(Trip::rig).anyMatch(rig -> fits(material, rig));
        }

        private static boolean fits(Material material, Rig rig) {
            return rig.bays().stream()
                    .anyMatch(bay -> material.longestMillimetres() <= bay.longestMillimetres()
                            && material.millilitres() <= bay.millilitres()
                            && rig.limits().stream()
                                    .allMatch(l -> material.grams() * l.shareOf(bay.id()) <= l.grams() * 1000));
        }

        private Brought brought(List<Material> wanted) {
            long grams = wanted.stream().mapToLong(this::grams).sum();
            long worth = wanted.stream().mapToLong(m -> m.cents() * toBuy(m)).sum();
            long deliveries = Math.max(1, Math.ceilDiv(grams, offer.grams()));
            long large = offer.leastOrderCents() == 0 ? deliveries : worth / offer.leastOrderCents();
            long small = Math.max(0, deliveries - large);
            return new Brought(deliveries, money(deliveries * offer.cents() + small * offer.smallOrderCents()));
        }

        private Fetched fetched(long grams) {
            long payload = problem.trips().stream()
                    .mapToLong(t -> Payload.mostGrams(t.rig()))
                    .max()
                    .orElse(0);
            long count = grams == 0 ? 0 : Math.ceilDiv(grams, Math.max(1, payload));
            Optional<Trip> withRuns = problem.trips().stream()
                    .filter(t -> t.mostExtraRuns() > 0)
                    .min(Comparator.comparingLong(Trip::extraRunCents));
            long each = withRuns.map(Trip::extraRunCents)
                    .orElseGet(() -> problem.trips().stream()
                            .mapToLong(Trip::cents)
                            .min()
                            .orElse(0));
            long quarters = count * withRuns.map(Trip::extraRunQuarters).orElse(0);
            return new Fetched(count, money(count * each), new Hours((int) Math.min(Integer.MAX_VALUE, quarters)));
        }

        private Money money(long cents) {
            return Cash.ofCents(cents, currency);
        }

        private String sentence(List<Goods> goods, Brought brought, Fetched fetched, List<LocalDate> planned) {
            List<String> parts = new ArrayList<>();
            parts.add("%s would bring all that is still needed in at least %s for %s"
                    .formatted(
                            offer.name(), count(brought.deliveries(), "delivery", "deliveries"), show(brought.fees())));
            if (!offer.shutMonths().isEmpty()) {
                parts.add("no truck comes in " + Dates.months(offer.shutMonths()));
            }
            parts.add(fetching(goods, fetched));
            parts.add(
                    planned.isEmpty()
                            ? "the plan takes none of its deliveries"
                            : "the plan takes %s, for %s"
                                    .formatted(
                                            count(planned.size(), "delivery", "deliveries"),
                                            planned.stream().map(Dates::day).collect(Collectors.joining(", "))));
            return String.join("; ", parts) + ".";
        }

        private String fetching(List<Goods> goods, Fetched fetched) {
            String tooLarge =
                    goods.stream().filter(g -> !g.fits()).map(Goods::name).collect(Collectors.joining(", "));
            String runs = "%s, %s and %s of labour"
                    .formatted(
                            count(fetched.runs(), "run of your own", "runs of your own"),
                            show(fetched.cost()),
                            fetched.labour());
            if (tooLarge.isEmpty()) {
                return "to fetch it takes at least " + runs;
            }
            return "no vehicle of yours takes " + tooLarge
                    + (fetched.runs() == 0 ? "" : ", the rest takes at least " + runs);
        }

        private static String show(Money money) {
            return Cash.show(Cash.cents(money), money.getCurrency().getCurrencyCode());
        }

        private static String count(long count, String one, String more) {
            return count + " " + (count == 1 ? one : more);
        }
    }
}
