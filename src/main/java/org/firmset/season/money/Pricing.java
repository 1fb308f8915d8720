package org.firmset.season.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.firmset.homestead.Supplier;
import org.firmset.measure.Cash;
import org.firmset.spend.Outstanding;
import org.firmset.spend.PriceBook;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * What a pack will cost: today's latest price of the cheapest of the homestead's suppliers, or of the one that brings it.
 * Low and high are the least and the most that anybody asked within a year, receipts included.
 */
final class Pricing {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final PriceBook book;
    private final PriceBook ofSuppliers;
    private final LocalDate today;
    private final BigDecimal factor;
    private final Map<String, Optional<Pack>> known = new HashMap<>();

    Pricing(Books books, PriceBook book) {
        this.book = book;
        today = books.today();
        Set<String> suppliers =
                books.homestead().suppliers().stream().map(Supplier::key).collect(Collectors.toSet());
        ofSuppliers = new PriceBook(book.quotes().stream()
                .filter(q -> suppliers.contains(q.supplier()))
                .toList());
        factor = books.homestead().budgetingOrPlain().taxPercent().add(HUNDRED).movePointLeft(2);
    }

    /** Prices of one pack before tax. */
    record Pack(String supplier, Money now, Money low, Money high) {}

    /** @param brings key of the supplier who brings it; null when it is fetched */
    Optional<Pack> of(String material, @Nullable String brings) {
        return known.computeIfAbsent(material + "/" + brings, k -> reckoned(material, brings));
    }

    private Optional<Pack> reckoned(String material, @Nullable String brings) {
        Optional<Pack> known = reckoned(material, brings, today);
        // a price that is dated later is still better than none
        return known.isPresent() ? known : reckoned(material, brings, LocalDate.MAX);
    }

    private Optional<Pack> reckoned(String material, @Nullable String brings, LocalDate by) {
        Optional<PriceBook.Range> all = book.range(material, by, Outstanding.DAYS_OF_PRICES);
        Optional<PriceBook.Quote> now = brings == null
                ? ofSuppliers.range(material, by, Outstanding.DAYS_OF_PRICES).map(PriceBook.Range::now)
                : book.latest(material, brings, by);
        return now.or(() -> all.map(PriceBook.Range::now))
                .map(q -> new Pack(
                        q.supplier(),
                        q.amount(),
                        all.map(PriceBook.Range::low).orElse(q.amount()),
                        all.map(PriceBook.Range::high).orElse(q.amount())));
    }

    /** With tax, to the cent. */
    Money taxed(Money price, int packs) {
        BigDecimal sum =
                Cash.amountOf(price).multiply(BigDecimal.valueOf(packs)).multiply(factor);
        return Cash.of(
                sum.setScale(2, RoundingMode.HALF_EVEN), price.getCurrency().getCurrencyCode());
    }
}
