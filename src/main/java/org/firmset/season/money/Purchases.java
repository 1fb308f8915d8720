package org.firmset.season.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.firmset.homestead.OpenTrip;
import org.firmset.measure.Cash;
import org.firmset.spend.Forecast;
import org.firmset.spend.LineKind;
import org.firmset.spend.PriceBook;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptCosts;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptState;
import org.firmset.spend.SpentSums;
import org.firmset.spend.TripReceipt;
import org.javamoney.moneta.Money;

/**
 * What receipts tell the reckoning of money. Each receipt is taken apart once, added to all sums and let go of, so that
 * thousands are quick and take little memory. Only open orders stay whole. Made by a {@link Writer}.
 *
 * @param spent what was spent and is committed, nothing still to buy
 * @param paid what left the purse on each day, refundable deposits left out
 * @param items of today's budget, their stage's finish left out; what differs in nothing but quantity and amount is one
 * @param packs what came and what went back of each material, by date
 * @param quotes prices of packs, each said once
 * @param orders in the order of the receipts
 * @param trips days of trips that were written down as such, each once
 */
public record Purchases(
        Forecast spent,
        Map<LocalDate, Money> paid,
        List<PurchasedItem> items,
        List<Packs> packs,
        List<PriceBook.Quote> quotes,
        List<Receipt> orders,
        Set<LocalDate> trips) {
    /** @param packs whole ones, never 0; negative when they went back, and so is their cost */
    public record Packs(String material, LocalDate date, int packs, Money cost) {}

    /** @param receipts without faults */
    public static Purchases of(String currency, List<Receipt> receipts) {
        Writer writer = new Writer(currency);
        receipts.forEach(writer::add);
        return writer.done();
    }

    /** Takes receipts one by one. Not thread-safe. */
    public static final class Writer {
        private final String currency;
        private final SpentSums spent;
        private final Map<LocalDate, Long> paid = new TreeMap<>();
        private final PurchasedItem.Sums items = new PurchasedItem.Sums();
        private final List<Packs> packs = new ArrayList<>();
        private final Set<PriceBook.Quote> quotes = new LinkedHashSet<>();
        private final List<Receipt> orders = new ArrayList<>();
        private final Set<LocalDate> trips = new TreeSet<>();

        public Writer(String currency) {
            this.currency = currency;
            spent = new SpentSums(currency);
        }

        /** @param receipt without faults */
        public void add(Receipt receipt) {
            ReceiptCosts.Apart apart = ReceiptCosts.apart(receipt);
            spent.add(apart);
            addPaid(apart);
            items.add(apart);
            quotes.addAll(PriceBook.quotes(receipt));
            if (TripReceipt.is(receipt) && receipt.state() != ReceiptState.RETURNED) {
                OpenTrip days = TripReceipt.daysOf(receipt);
                days.first().datesUntil(days.last().plusDays(1)).forEach(trips::add);
            }
            if (receipt.state().isToCome()) {
                orders.add(receipt);
            } else {
                addPacks(apart);
            }
        }

        /** What was paid down counts on the day of the order, its rest on the day it was paid. */
        private void addPaid(ReceiptCosts.Apart apart) {
            Receipt receipt = apart.receipt();
            long atOnce = sum(apart, apart.atOnce());
            paid.merge(receipt.date(), atOnce, Long::sum);
            receipt.restPaidOn().ifPresent(day -> paid.merge(day, sum(apart, apart.paid()) - atOnce, Long::sum));
        }

        /** Of these amounts, one for each cost, without refundable deposits. */
        private static long sum(ReceiptCosts.Apart apart, List<Money> amounts) {
            long sum = 0;
            for (int i = 0; i < amounts.size(); i++) {
                sum += apart.costs().get(i).kind() == LineKind.DEPOSIT ? 0 : Cash.cents(amounts.get(i));
            }
            return sum;
        }

        private void addPacks(ReceiptCosts.Apart apart) {
            Receipt receipt = apart.receipt();
            for (int i = 0; i < receipt.lines().size(); i++) {
                ReceiptLine line = receipt.lines().get(i);
                int whole = line.isPacks() ? whole(line.quantity()) : 0;
                if (line.material() != null && whole != 0) {
                    packs.add(new Packs(
                            line.material(),
                            receipt.date(),
                            whole,
                            apart.ofLines().get(i)));
                }
            }
        }

        private static int whole(BigDecimal quantity) {
            return quantity.setScale(0, RoundingMode.DOWN).intValueExact();
        }

        public Purchases done() {
            Map<LocalDate, Money> days = new TreeMap<>();
            paid.forEach((day, cents) -> days.put(day, Cash.ofCents(cents, currency)));
            return new Purchases(
                    spent.forecast(),
                    days,
                    items.all(currency),
                    packs.stream().sorted(Comparator.comparing(Packs::date)).toList(),
                    List.copyOf(quotes),
                    List.copyOf(orders),
                    Set.copyOf(trips));
        }
    }
}
