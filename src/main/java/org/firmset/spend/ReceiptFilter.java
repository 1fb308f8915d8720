package org.firmset.spend;

import java.time.YearMonth;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Which receipts, and which parts of them, somebody asks for. Null lets everything through.
 *
 * @param subproject key, or {@link #NOBODY} for what nobody bears yet
 * @param stage key, or {@link #NOBODY} for what belongs to a subproject as a whole
 * @param supplier as written on the receipt; capitals do not count
 */
public record ReceiptFilter(
        @Nullable String subproject,
        @Nullable String stage,
        @Nullable String supplier,
        @Nullable LineKind kind,
        @Nullable YearMonth month) {
    public static final String NOBODY = "-";
    public static final ReceiptFilter ALL = new ReceiptFilter(null, null, null, null, null);

    public static ReceiptFilter ofSubproject(String subproject) {
        return new ReceiptFilter(subproject, null, null, null, null);
    }

    public static ReceiptFilter ofStage(String subproject, String stage) {
        return new ReceiptFilter(subproject, stage, null, null, null);
    }

    boolean takes(Receipt receipt) {
        return (supplier == null || supplier.equalsIgnoreCase(receipt.supplier()))
                && (month == null || month.equals(YearMonth.from(receipt.date())));
    }

    boolean takes(ReceiptCosts.Cost cost) {
        return (kind == null || kind == cost.kind())
                && takes(subproject, cost.subproject())
                && takes(stage, cost.stage());
    }

    private static boolean takes(@Nullable String wanted, @Nullable String key) {
        return wanted == null || wanted.equals(Optional.ofNullable(key).orElse(NOBODY));
    }
}
