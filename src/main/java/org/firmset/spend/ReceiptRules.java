package org.firmset.spend;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.firmset.homestead.file.Fault;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** What must hold for a receipt before anything is added up from it. Thread-safe. */
public final class ReceiptRules {
    private static final BigDecimal MOST = BigDecimal.valueOf(999_999_999);
    /** Characters; tables bring no longer ones back. */
    private static final int LONGEST_TEXT = 500;

    private final Keys keys;
    private final String currency;
    private final @Nullable LocalDate today;

    /**
     * What holds on every day.
     *
     * @param currency ISO 4217 code of the homestead's one currency
     */
    public ReceiptRules(Keys keys, String currency) {
        this(keys, currency, null);
    }

    /** @param today nothing is bought, ordered or paid after it; null to take what is dated later, too */
    public ReceiptRules(Keys keys, String currency, @Nullable LocalDate today) {
        this.keys = keys;
        this.currency = currency;
        this.today = today;
    }

    /** @param place where the receipt stands, the start of the place of each fault */
    public List<Fault> faults(Receipt receipt, String place) {
        List<Fault> faults = new ArrayList<>();
        if (!sameCurrency(receipt, place, faults)) {
            return faults;
        }
        new DayRules(receipt, today, place, faults).check();
        checkText(receipt.key(), place + "/key", faults);
        checkText(receipt.supplier(), place + "/supplier", faults);
        if (receipt.supplier().isEmpty()) {
            faults.add(new Fault(place + "/supplier", "", "names nobody", "Write who sold it, or 'unknown'"));
        }
        if (receipt.lines().isEmpty()) {
            faults.add(new Fault(place + "/lines", "", "holds no line", "Write at least one line with its amount"));
            return faults;
        }
        for (int i = 0; i < receipt.lines().size(); i++) {
            new LineRules(keys, receipt.state(), place + "/lines/" + i, faults)
                    .check(receipt.lines().get(i));
        }
        checkSigns(receipt, place, faults);
        checkSize(receipt, place, faults);
        checkTotal(receipt, place, faults);
        checkDeposit(receipt, place, faults);
        return faults;
    }

    static void checkText(String text, String place, List<Fault> faults) {
        if (text.length() > LONGEST_TEXT) {
            faults.add(new Fault(place, text, "is longer than " + LONGEST_TEXT + " characters", "Shorten it"));
        }
        if (text.indexOf('\0') >= 0) {
            faults.add(new Fault(place, text, "holds a sign that is no text", "Type it anew"));
        }
    }

    private boolean sameCurrency(Receipt receipt, String place, List<Fault> faults) {
        Stream<Money> lines = receipt.lines().stream().flatMap(l -> Stream.of(l.amount(), l.unitPrice()));
        Stream.concat(Stream.of(receipt.tax(), receipt.discount(), receipt.deposit(), receipt.total()), lines)
                .filter(Objects::nonNull)
                .filter(m -> !m.getCurrency().getCurrencyCode().equals(currency))
                .findFirst()
                .ifPresent(m -> faults.add(new Fault(
                        place,
                        Cash.text(m),
                        "is not in the homestead's currency",
                        "Write what it cost in " + currency + ", at the rate you paid")));
        return faults.isEmpty();
    }

    private static void checkSigns(Receipt receipt, String place, List<Fault> faults) {
        checkSign(receipt, receipt.tax(), place + "/tax", faults);
        checkSign(receipt, receipt.discount(), place + "/discount", faults);
        long lines =
                receipt.lines().stream().mapToLong(l -> Cash.cents(l.amount())).sum();
        if (Math.abs(Cash.cents(receipt.discount())) > Math.abs(lines)) {
            faults.add(new Fault(
                    place + "/discount",
                    Cash.text(receipt.discount()),
                    "is more than the lines, " + Cash.show(lines, receipt.currency()),
                    "Write what was taken off, not what was left"));
        }
    }

    private static void checkSize(Receipt receipt, String place, List<Fault> faults) {
        Stream.of(receipt.sum(), receipt.tax(), receipt.discount())
                .filter(m -> Cash.amountOf(m).abs().compareTo(MOST) > 0)
                .findFirst()
                .ifPresent(m -> faults.add(new Fault(
                        place, Cash.text(m), "is more than " + MOST, "Look for a number that was run together")));
    }

    private static void checkSign(Receipt receipt, Money amount, String place, List<Fault> faults) {
        if (receipt.state() == ReceiptState.RETURNED ? amount.isPositive() : amount.isNegative()) {
            faults.add(new Fault(
                    place,
                    Cash.text(amount),
                    receipt.state() == ReceiptState.RETURNED ? "is not negative in a return" : "is negative",
                    "Turn its sign, or write a return as a receipt of its own"));
        }
    }

    private static void checkTotal(Receipt receipt, String place, List<Fault> faults) {
        Money total = receipt.total();
        if (total != null && !total.isEqualTo(receipt.sum())) {
            Money gap = total.subtract(receipt.sum());
            faults.add(new Fault(
                    place + "/total",
                    Cash.text(total),
                    "is not what lines, discount and tax come to: " + Cash.text(receipt.sum()),
                    "Look for what makes the difference of " + Cash.text(gap) + ", such as a line left out or a tax"));
        }
    }

    private static void checkDeposit(Receipt receipt, String place, List<Fault> faults) {
        Money deposit = receipt.deposit();
        boolean mayBe =
                receipt.state() == ReceiptState.ORDERED || (receipt.state().isPaid() && receipt.restOn() != null);
        if (!mayBe && !deposit.isZero()) {
            faults.add(new Fault(
                    place + "/deposit",
                    Cash.text(deposit),
                    "is paid down on something that is not on order and names no day on which the rest was paid",
                    receipt.state().isPaid()
                            ? "Write that day, 'ordered' as its state, or leave the deposit out"
                            : "Leave it out: what was paid down and came back is in the amounts"));
        } else if (mayBe && (deposit.isNegative() || deposit.isGreaterThan(receipt.sum()))) {
            faults.add(new Fault(
                    place + "/deposit",
                    Cash.text(deposit),
                    "is not between nothing and the whole order, " + Cash.text(receipt.sum()),
                    "Write what was paid down"));
        }
    }

    /** Whether quantity times price is the amount, to the cent in either direction: tills round in several ways. */
    static boolean agree(BigDecimal quantity, Money unitPrice, Money amount) {
        BigDecimal product = quantity.multiply(Cash.amountOf(unitPrice));
        BigDecimal cent = BigDecimal.ONE.movePointLeft(2);
        return product.subtract(Cash.amountOf(amount)).abs().compareTo(cent) < 0;
    }

    static Money product(BigDecimal quantity, Money unitPrice) {
        return Cash.of(
                quantity.multiply(Cash.amountOf(unitPrice)).setScale(2, RoundingMode.HALF_EVEN),
                unitPrice.getCurrency().getCurrencyCode());
    }
}
