package org.firmset.spend;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * Packs that are planned and not yet bought or on order, at today's price before tax.
 *
 * @param stage null for what belongs to the subproject as a whole
 * @param packs 0 or more
 */
public record ToBuy(String subproject, @Nullable String stage, String material, int packs, PriceBook.Range price) {
    public ToBuy {
        if (packs < 0) {
            throw new IllegalArgumentException(
                    "packs [" + packs + "] to buy of [" + material + "] must not be negative");
        }
    }

    public Money expected() {
        return price.now().amount().multiply(packs);
    }

    public Money low() {
        return price.low().multiply(packs);
    }

    public Money high() {
        return price.high().multiply(packs);
    }

    /**
     * What a rise of prices adds to what is still to buy.
     *
     * @param percent the rise of each material that rises; negative for a fall
     */
    Money rise(Map<String, BigDecimal> percent) {
        BigDecimal rise = percent.getOrDefault(material, BigDecimal.ZERO);
        return Cash.of(
                Cash.amountOf(expected()).multiply(rise).movePointLeft(2).setScale(2, RoundingMode.HALF_EVEN),
                expected().getCurrency().getCurrencyCode());
    }
}
