package org.firmset.plan.check;

import java.math.BigInteger;
import java.util.Collection;
import java.util.function.Function;
import org.firmset.plan.Load;
import org.firmset.plan.Material;

/** A load together with the material it is of. Sums are exact whatever the numbers, so that none wraps round to fit. */
record Cargo(Load load, Material material) {

    BigInteger grams() {
        return ofAllPacks(material.grams());
    }

    BigInteger millilitres() {
        return ofAllPacks(material.millilitres());
    }

    BigInteger cents() {
        return ofAllPacks(material.cents());
    }

    private BigInteger ofAllPacks(long amountOfOne) {
        return BigInteger.valueOf(amountOfOne).multiply(BigInteger.valueOf(load.packs()));
    }

    static BigInteger sum(Collection<Cargo> all, Function<Cargo, BigInteger> amount) {
        return all.stream().map(amount).reduce(BigInteger.ZERO, BigInteger::add);
    }
}
