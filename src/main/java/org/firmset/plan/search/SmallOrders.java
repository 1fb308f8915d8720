package org.firmset.plan.search;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.firmset.plan.DeliveryOffer;

/**
 * What deliveries take beyond their fee, as {@link RelaxedLoads} sees them: the fee for a small order, or what is missing
 * to the least order where that is less. Nobody can do with less: a plan may fill an order up with packs it does not need,
 * but then it pays for them.
 */
final class SmallOrders {
    private static final long MILLI = 1000;

    /**
     * What a delivery brings of a group of materials.
     *
     * @param units of mass
     * @param milliCents what one unit is worth, in thousandths of a cent: the most, or when written carefully the least
     */
    record Goods(IntVar units, long milliCents) {}

    private final CpModel cp;
    private final boolean careful;
    private final Map<Integer, IntVar> extra = new LinkedHashMap<>();

    SmallOrders(CpModel cp, boolean careful) {
        this.cp = cp;
        this.careful = careful;
    }

    /** @param goods all that the delivery can bring; what part of a unit is lost by rounding is allowed for */
    void add(int key, DeliveryOffer offer, BoolVar comes, List<Goods> goods) {
        long least = offer.leastOrderCents();
        if (least == 0 || offer.smallOrderCents() == 0) {
            return;
        }
        IntVar cents = cp.newIntVar(0, offer.smallOrderCents(), "");
        BoolVar large = cp.newBoolVar("");
        LinearExprBuilder worth = LinearExpr.newBuilder();
        worth.addTerm(cents, MILLI);
        for (Goods part : goods) {
            worth.addTerm(part.units(), part.milliCents());
            worth.add(careful ? 0 : part.milliCents());
        }
        cp.addGreaterOrEqual(cents, offer.smallOrderCents()).onlyEnforceIf(new Literal[] {comes, large.not()});
        cp.addGreaterOrEqual(worth, MILLI * least).onlyEnforceIf(new Literal[] {comes, large});
        extra.put(key, cents);
    }

    /** Hands over each delivery with the variable of its cents. */
    void forEach(BiConsumer<Integer, IntVar> each) {
        extra.forEach(each);
    }
}
