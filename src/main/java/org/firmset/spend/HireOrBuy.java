package org.firmset.spend;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;

/**
 * Whether to hire a tool or to buy it and sell it again, over all uses that are planned.
 *
 * @param price to buy it
 * @param resale what it will bring when it is sold; nothing when that is not sure
 * @param keep upkeep of one's own for each use: oil, blade, fuel that hire would include
 * @param hireADay hire of a day
 * @param fetch what each hire costs besides: a drive to fetch and return, cleaning
 * @param uses each time it would be hired, at least one
 */
public record HireOrBuy(Money price, Money resale, Money keep, Money hireADay, Money fetch, List<Use> uses) {
    private static final BigDecimal BEYOND_COUNTING = BigDecimal.valueOf(1_000_000_000);

    public HireOrBuy {
        uses = List.copyOf(uses);
        if (uses.isEmpty()) {
            throw new IllegalArgumentException("uses [] must not be empty: without a use there is nothing to decide");
        }
    }

    /**
     * @param share who uses it; its weight does not count, the days do
     * @param days it would be hired for, 1 or more
     */
    public record Use(Share share, int days) {
        public Use {
            if (days < 1) {
                throw new IllegalArgumentException("days [" + days + "] of a use must be 1 or more");
            }
        }
    }

    /** Price less resale, and upkeep of each use. */
    public Money buying() {
        return price.subtract(resale).add(keep.multiply(uses.size()));
    }

    /** Every day's hire, and fetching it each time. */
    public Money hiring() {
        return hireADay.multiply(days()).add(fetch.multiply(uses.size()));
    }

    public int days() {
        return uses.stream().mapToInt(Use::days).sum();
    }

    /** Buying costs less over all planned uses; hire wins a tie, as it takes no storing. */
    public boolean buy() {
        return buying().isLessThan(hiring());
    }

    /** What the better of the two saves. */
    public Money saved() {
        return buying().subtract(hiring()).abs();
    }

    /** Uses of the same average length from which buying is cheaper; empty when upkeep costs more than hire or as good as. */
    public Optional<Integer> buyFromUses() {
        BigDecimal count = BigDecimal.valueOf(uses.size());
        BigDecimal savedEach =
                Cash.amountOf(hiring()).divide(count, 9, RoundingMode.HALF_EVEN).subtract(Cash.amountOf(keep));
        if (savedEach.signum() <= 0) {
            return Optional.empty();
        }
        BigDecimal net = Cash.amountOf(price.subtract(resale)).max(BigDecimal.ZERO);
        BigDecimal before = net.divide(savedEach, 0, RoundingMode.FLOOR);
        return before.compareTo(BEYOND_COUNTING) < 0 ? Optional.of(before.intValueExact() + 1) : Optional.empty();
    }

    /** What each use bears of the better of the two, by its days. */
    public List<Money> shared() {
        return Allocation.split(
                buy() ? buying() : hiring(),
                uses.stream().map(u -> BigDecimal.valueOf(u.days())).toList());
    }
}
