package org.firmset.spend;

import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * Packs that are planned and not yet bought or on order, at today's price before tax.
 *
 * @param stage null for what belongs to the subproject as a whole
 * @param packs 0 or more
 */
public record ToBuy(String subproject, @Nullable String stage, String material, int packs, PriceBook.Range price)
        implements Ahead {
    public ToBuy {
        if (packs < 0) {
            throw new IllegalArgumentException(
                    "packs [" + packs + "] to buy of [" + material + "] must not be negative");
        }
    }

    @Override
    public LineKind kind() {
        return LineKind.MATERIAL;
    }

    @Override
    public String what() {
        return material;
    }

    @Override
    public Money expected() {
        return price.now().amount().multiply(packs);
    }

    @Override
    public Money low() {
        return price.low().multiply(packs);
    }

    @Override
    public Money high() {
        return price.high().multiply(packs);
    }
}
