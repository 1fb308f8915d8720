package org.firmset.spend;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.homestead.Homestead;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;

/** What suppliers asked for a pack, and when. */
public record PriceBook(List<Quote> quotes) {
    private static final BigDecimal YEAR = new BigDecimal("365.25");

    public PriceBook {
        quotes = quotes.stream()
                .sorted(Comparator.comparing(Quote::on)
                        .thenComparing(Quote::supplier)
                        .thenComparing(Quote::material)
                        .thenComparing(q -> Cash.amountOf(q.amount())))
                .toList();
    }

    /**
     * @param material key of the material
     * @param amount price of one pack, before tax
     */
    public record Quote(String supplier, String material, Money amount, LocalDate on) {}

    /**
     * What a pack costs today.
     *
     * @param now the cheapest supplier's latest price
     * @param low the lowest price any supplier asked within the time looked at
     * @param high the highest
     */
    public record Range(Quote now, Money low, Money high) {}

    /**
     * How one supplier's price moved between its first and its last quote.
     *
     * @param changePercent from the first to the last
     * @param percentAYear the same change spread evenly over a year of 365.25 days
     */
    public record Trend(Quote first, Quote last, BigDecimal changePercent, BigDecimal percentAYear) {}

    public static PriceBook of(Homestead homestead) {
        return new PriceBook(homestead.suppliers().stream()
                .flatMap(s -> s.prices().stream().map(p -> new Quote(s.key(), p.material(), p.amount(), p.on())))
                .toList());
    }

    /**
     * Prices of the homestead's suppliers and of receipts.
     *
     * @param ofReceipts what {@link #quotes(Receipt)} tells; those that name a supplier as the homestead does are its own
     */
    public static PriceBook withQuotes(Homestead homestead, List<Quote> ofReceipts) {
        Map<String, String> keys = new HashMap<>();
        homestead.suppliers().forEach(s -> keys.put(s.name().toLowerCase(Locale.ROOT), s.key()));
        List<Quote> all = new ArrayList<>(of(homestead).quotes());
        ofReceipts.forEach(q -> all.add(new Quote(
                keys.getOrDefault(q.supplier().toLowerCase(Locale.ROOT), q.supplier()),
                q.material(),
                q.amount(),
                q.on())));
        return new PriceBook(all);
    }

    /** The unit prices that a receipt tells; a return none, it says what a pack cost long ago. */
    public static List<Quote> quotes(Receipt receipt) {
        List<Quote> told = new ArrayList<>();
        if (receipt.state() != ReceiptState.RETURNED) {
            for (ReceiptLine line : receipt.lines()) {
                if (line.isPacks() && line.material() != null && line.unitPrice() != null) {
                    told.add(new Quote(receipt.supplier(), line.material(), line.unitPrice(), receipt.date()));
                }
            }
        }
        return told;
    }

    /** The supplier's latest price by this day. */
    public Optional<Quote> latest(String material, String supplier, LocalDate by) {
        return quotes.stream()
                .filter(q -> q.material().equals(material) && q.supplier().equals(supplier) && !q.on().isAfter(by))
                .reduce((earlier, later) -> later);
    }

    /**
     * The price to reckon with on this day, and how far prices lay apart.
     *
     * @param days how far back low and high look; each supplier's latest price counts however old it is
     */
    public Optional<Range> range(String material, LocalDate by, int days) {
        List<Quote> known = quotes.stream()
                .filter(q -> q.material().equals(material) && !q.on().isAfter(by))
                .toList();
        List<Quote> latest = known.stream()
                .collect(Collectors.toMap(Quote::supplier, Function.identity(), (earlier, later) -> later))
                .values()
                .stream()
                .sorted(byAmount().thenComparing(Quote::supplier))
                .toList();
        if (latest.isEmpty()) {
            return Optional.empty();
        }
        List<Quote> near = new ArrayList<>(latest);
        known.stream().filter(q -> q.on().isAfter(by.minusDays(days))).forEach(near::add);
        near.sort(byAmount());
        return Optional.of(new Range(
                latest.getFirst(), near.getFirst().amount(), near.getLast().amount()));
    }

    private static Comparator<Quote> byAmount() {
        return Comparator.comparing(q -> Cash.amountOf(q.amount()));
    }

    /** Empty with fewer than two quotes on different days, or when the first was for nothing. */
    public Optional<Trend> trend(String material, String supplier) {
        List<Quote> its = quotes.stream()
                .filter(q -> q.material().equals(material) && q.supplier().equals(supplier))
                .toList();
        if (its.size() < 2) {
            return Optional.empty();
        }
        Quote first = its.getFirst();
        Quote last = its.getLast();
        long days = ChronoUnit.DAYS.between(first.on(), last.on());
        if (days == 0 || first.amount().isZero()) {
            return Optional.empty();
        }
        BigDecimal change = Cash.amountOf(last.amount().subtract(first.amount()))
                .movePointRight(2)
                .divide(Cash.amountOf(first.amount()), MathContext.DECIMAL64);
        BigDecimal aYear = change.multiply(YEAR).divide(BigDecimal.valueOf(days), MathContext.DECIMAL64);
        return Optional.of(new Trend(first, last, change, aYear));
    }
}
