package org.firmset.season.money;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.firmset.spend.Ahead;
import org.firmset.spend.LineKind;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * What one stage will still cost of one thing on one day.
 *
 * @param what key of the material, or of the tool, or what it is
 * @param quantity packs or drives; 0 for what is not counted
 * @param on when it is to be paid; of goods that are ordered ahead when they come
 */
public record Coming(
        @Nullable String subproject,
        @Nullable String stage,
        Purpose purpose,
        LineKind kind,
        String what,
        BigDecimal quantity,
        Money expected,
        Money low,
        Money high,
        LocalDate on)
        implements Ahead {

    /** Something whose price is not in doubt. */
    static Coming certain(
            Bearer bearer,
            Purpose purpose,
            LineKind kind,
            String what,
            BigDecimal quantity,
            Money amount,
            LocalDate on) {
        return new Coming(
                bearer.subproject(), bearer.stage(), purpose, kind, what, quantity, amount, amount, amount, on);
    }
}
