package org.firmset.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.money.CurrencyUnit;
import javax.money.Monetary;
import javax.money.MonetaryAmount;
import javax.money.UnknownCurrencyException;
import org.javamoney.moneta.Money;

/** Amounts of money as text and as whole cents; the amounts themselves are {@link Money}, exact to the cent. */
public final class Cash {
    private static final Pattern TEXT = Pattern.compile("\\s*(-?\\d{1,12}(?:\\.\\d{1,2})?)\\s*([A-Z]{3})\\s*");

    /** The library asks all its providers each time, which thousands of amounts of one currency feel. */
    private static final Map<String, CurrencyUnit> CURRENCIES = new ConcurrentHashMap<>();

    private Cash() {}

    public static Money of(BigDecimal amount, String currency) {
        return Money.of(amount.setScale(2, RoundingMode.UNNECESSARY), unit(currency));
    }

    public static Money ofCents(long cents, String currency) {
        return Money.of(BigDecimal.valueOf(cents, 2), unit(currency));
    }

    private static CurrencyUnit unit(String currency) {
        return CURRENCIES.computeIfAbsent(currency, code -> Monetary.getCurrency(code));
    }

    /**
     * Reads "12.40 USD".
     *
     * @throws UnitsFault when the text is no amount of money
     */
    public static Money parse(String text) {
        Matcher matcher = TEXT.matcher(text);
        if (text.length() > 40 || !matcher.matches()) {
            String shown = text.length() > 40 ? text.substring(0, 40) + "..." : text;
            throw new UnitsFault("'" + shown + "' is not an amount of money; write it such as '12.40 USD'");
        }
        try {
            return of(new BigDecimal(matcher.group(1)), matcher.group(2));
        } catch (UnknownCurrencyException e) {
            throw new UnitsFault("'" + matcher.group(2) + "' is not a currency; write its ISO 4217 code such as 'USD'");
        }
    }

    /** The text that {@link #parse} reads back: "12.40 USD". */
    public static String text(MonetaryAmount amount) {
        return amountOf(amount).toPlainString() + " " + amount.getCurrency().getCurrencyCode();
    }

    /** As people read it: "$1,240.00"; the currency's code where it has no sign in English. */
    public static String show(long cents, String currency) {
        String sign = Currency.getInstance(currency).getSymbol(Locale.US);
        String number = String.format(Locale.ROOT, "%,.2f", BigDecimal.valueOf(Math.abs(cents), 2));
        String minus = cents < 0 ? "-" : "";
        return sign.length() == 1 ? minus + sign + number : minus + number + " " + currency;
    }

    public static BigDecimal amountOf(MonetaryAmount amount) {
        return amount.getNumber().numberValueExact(BigDecimal.class).setScale(2, RoundingMode.UNNECESSARY);
    }

    public static long cents(MonetaryAmount amount) {
        return amountOf(amount).unscaledValue().longValueExact();
    }
}
