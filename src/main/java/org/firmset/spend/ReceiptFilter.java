package org.firmset.spend;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Which receipts, and which parts of them, somebody asks for. Null lets everything through.
 *
 * @param subproject key, or {@link #NOBODY} for what nobody bears yet
 * @param stage key, or {@link #NOBODY} for what belongs to a subproject as a whole
 * @param material key, or {@link #NOBODY} for what is none of the homestead's materials
 * @param supplier as written on the receipt; capitals do not count
 * @param month in which it was bought or ordered, for what was paid then and is on order; of what was paid later, in
 *     which its rest was
 * @param finished keys of the stages that are finished, to ask only for what these cost
 */
public record ReceiptFilter(
        @Nullable String subproject,
        @Nullable String stage,
        @Nullable String material,
        @Nullable String supplier,
        @Nullable LineKind kind,
        @Nullable ReceiptState state,
        @Nullable YearMonth month,
        @Nullable Set<String> finished) {
    public static final String NOBODY = "-";
    public static final ReceiptFilter ALL = new ReceiptFilter(null, null, null, null, null, null, null, null);

    public ReceiptFilter {
        finished = finished == null ? null : Set.copyOf(finished);
    }

    /** Of any material and state, finished or not. */
    public ReceiptFilter(
            @Nullable String subproject,
            @Nullable String stage,
            @Nullable String supplier,
            @Nullable LineKind kind,
            @Nullable YearMonth month) {
        this(subproject, stage, null, supplier, kind, null, month, null);
    }

    public static ReceiptFilter ofSubproject(String subproject) {
        return ALL.withSubproject(subproject);
    }

    public static ReceiptFilter ofStage(String subproject, String stage) {
        return ofSubproject(subproject).withStage(stage);
    }

    /** What asks for just this key, or for what has none. */
    public static String orNobody(@Nullable String key) {
        return key == null ? NOBODY : key;
    }

    /** @param stages keys of all that are finished */
    public static ReceiptFilter ofFinished(Set<String> stages) {
        return ALL.withFinished(stages);
    }

    /** The same of another subproject, whose stages are others. */
    public ReceiptFilter withSubproject(@Nullable String other) {
        return new ReceiptFilter(other, null, material, supplier, kind, state, month, finished);
    }

    public ReceiptFilter withStage(@Nullable String other) {
        return new ReceiptFilter(subproject, other, material, supplier, kind, state, month, finished);
    }

    public ReceiptFilter withMaterial(@Nullable String other) {
        return new ReceiptFilter(subproject, stage, other, supplier, kind, state, month, finished);
    }

    public ReceiptFilter withSupplier(@Nullable String other) {
        return new ReceiptFilter(subproject, stage, material, other, kind, state, month, finished);
    }

    public ReceiptFilter withKind(@Nullable LineKind other) {
        return new ReceiptFilter(subproject, stage, material, supplier, other, state, month, finished);
    }

    public ReceiptFilter withState(@Nullable ReceiptState other) {
        return new ReceiptFilter(subproject, stage, material, supplier, kind, other, month, finished);
    }

    public ReceiptFilter withMonth(@Nullable YearMonth other) {
        return new ReceiptFilter(subproject, stage, material, supplier, kind, state, other, finished);
    }

    public ReceiptFilter withFinished(@Nullable Set<String> other) {
        return new ReceiptFilter(subproject, stage, material, supplier, kind, state, month, other);
    }

    boolean takes(Receipt receipt) {
        return (supplier == null || supplier.equalsIgnoreCase(receipt.supplier()))
                && (state == null || state == receipt.state());
    }

    /** @param day on which money was paid */
    boolean takes(LocalDate day) {
        return month == null || month.equals(YearMonth.from(day));
    }

    boolean takes(ReceiptCosts.Cost cost) {
        return (kind == null || kind == cost.kind())
                && takes(subproject, cost.subproject())
                && takes(stage, cost.stage())
                && takes(material, cost.material())
                && (finished == null || (cost.stage() != null && finished.contains(cost.stage())));
    }

    private static boolean takes(@Nullable String wanted, @Nullable String key) {
        return wanted == null || wanted.equals(orNobody(key));
    }
}
