package org.firmset.spend;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.firmset.measure.Cash;
import org.firmset.measure.Length;
import org.firmset.measure.UnitSystem;
import org.firmset.spend.TripCost.Drive;
import org.firmset.spend.TripCost.Part;
import org.firmset.spend.TripCost.Rule;
import org.javamoney.moneta.Money;
import org.junit.jupiter.api.Test;

/** Whatever a trip cost and served, its receipt is sound and no cent of it is lost. Others by -Dfirmset.seed=... */
class TripReceiptPropertiesTest {
    private static final int TRIPS = 5_000;
    private static final ReceiptRules RULES = new ReceiptRules(RandomReceipts.KEYS, "USD");
    private final SplittableRandom random = new SplittableRandom(RandomReceipts.SEED);

    @Test
    void receipts_of_trips_have_no_faults_and_their_shares_make_the_cost_to_the_cent() {
        int shared = 0;
        for (int i = 0; i < TRIPS; i++) {
            TripReceipt trip = trip();
            String seed = "seed %d, trip %d: %s".formatted(RandomReceipts.SEED, i, trip);
            Receipt receipt = trip.receipt();
            assertThat(receipt.sum()).as(seed).isEqualTo(trip.cost().sum());
            if (!receipt.lines().isEmpty()) {
                assertThat(RULES.faults(receipt, "")).as(seed).isEmpty();
            }
            shared += isSharedByItsRule(trip, seed) ? 1 : 0;
        }
        assertThat(shared).isGreaterThan(TRIPS / 2);
    }

    /** Each part is within a cent a line of its exact share, and all of them are the whole. */
    private static boolean isSharedByItsRule(TripReceipt trip, String seed) {
        List<TripCost.Borne> borne = trip.borne();
        if (borne.isEmpty()) {
            assertThat(trip.receipt().lines()).as(seed).allMatch(l -> l.shares().isEmpty());
            return false;
        }
        long all = Cash.cents(trip.cost().sum());
        assertThat(borne.stream().mapToLong(b -> Cash.cents(b.amount())).sum())
                .as(seed)
                .isEqualTo(all);
        double weights = trip.parts().stream().mapToDouble(p -> weight(trip, p)).sum();
        for (TripCost.Borne one : borne) {
            double exact = all * weight(trip, one.part()) / weights;
            assertThat(Cash.cents(one.amount()))
                    .as(seed)
                    .isBetween((long) Math.floor(exact) - 3, (long) Math.ceil(exact) + 3);
        }
        return true;
    }

    /** Worked out apart from the program's own weights. */
    private static double weight(TripReceipt trip, Part part) {
        boolean hours = trip.rule() == Rule.BY_HOURS;
        boolean written = trip.parts().stream().anyMatch(p -> (hours ? p.quarters() : p.grams()) > 0);
        return !written ? 1 : hours ? part.quarters() : part.grams();
    }

    @Test
    void what_was_typed_is_read_back_whatever_it_was() {
        for (int i = 0; i < TRIPS; i++) {
            DriveWords words = words();
            Length distance = new Length(decimal(4_000_000, 3));
            BigDecimal rate = decimal(20_000, 3);
            BigDecimal use = decimal(100_000, 3).add(BigDecimal.ONE);
            TripReceipt byRate = trip(words.byRate(distance, rate), words);
            TripReceipt byFuel = trip(words.byFuel(distance, use, rate), words);
            String seed = "seed %d, trip %d: %s, %s".formatted(RandomReceipts.SEED, i, byRate, byFuel);
            if (!byRate.cost().drive().cost().isZero()) {
                DriveWords.Typed typed = TripReceipt.typed(byRate.receipt(), words);
                assertThat(typed.way()).as(seed).isEqualTo(DriveWay.RATE);
                assertThat(new BigDecimal(typed.rate())).as(seed).isEqualByComparingTo(rate);
            }
            if (!byFuel.cost().drive().cost().isZero()) {
                DriveWords.Typed typed = TripReceipt.typed(byFuel.receipt(), words);
                assertThat(typed.way()).as(seed).isEqualTo(DriveWay.FUEL);
                assertThat(new BigDecimal(typed.use())).as(seed).isEqualByComparingTo(use);
                assertThat(new BigDecimal(typed.price())).as(seed).isEqualByComparingTo(rate);
            }
        }
    }

    private TripReceipt trip() {
        DriveWords words = words();
        Length distance = new Length(decimal(20_000_000, 0));
        BigDecimal rate = decimal(10_000, 3);
        Drive drive = switch (random.nextInt(4)) {
            case 0 -> words.sum(usd(random.nextLong(500_000)));
            case 1 -> words.byRate(distance, rate);
            case 2 -> words.byFuel(distance, decimal(1_000_000, 3).add(BigDecimal.ONE), rate);
            default -> new TripCost.OnReceipts("USD");
        };
        return trip(drive, words);
    }

    private TripReceipt trip(Drive drive, DriveWords words) {
        LocalDate first = LocalDate.of(2026, 1, 1).plusDays(random.nextInt(700));
        Money tolls = usd(random.nextBoolean() ? 0 : random.nextLong(5_000));
        Money food = usd(random.nextBoolean() ? 0 : random.nextLong(50_000));
        Rule rule = random.nextBoolean() ? Rule.BY_HOURS : Rule.BY_MASS;
        return new TripReceipt(
                first, first.plusDays(random.nextInt(9)), new TripCost(drive, tolls, food), rule, parts(), words);
    }

    private DriveWords words() {
        return new DriveWords(random.nextBoolean() ? UnitSystem.US : UnitSystem.METRIC, "USD");
    }

    private List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        boolean nothing = random.nextInt(4) == 0;
        int count = random.nextInt(6);
        for (int i = 0; i < count; i++) {
            List<String> stages =
                    RandomReceipts.KEYS.stages().keySet().stream().sorted().toList();
            String stage = stages.get(random.nextInt(stages.size()));
            String subproject = stage.substring(0, stage.indexOf('-'));
            boolean whole = random.nextInt(3) == 0;
            parts.add(new Part(
                    subproject,
                    whole ? null : stage,
                    nothing ? 0 : random.nextInt(8_000),
                    nothing ? 0 : random.nextLong(100_000_000)));
        }
        return parts;
    }

    private BigDecimal decimal(int below, int scale) {
        return BigDecimal.valueOf(random.nextInt(below), scale);
    }

    private static Money usd(long cents) {
        return Cash.ofCents(cents, "USD");
    }
}
