package org.firmset.season.money;

import org.firmset.spend.Baseline;
import org.firmset.spend.LineKind;
import org.firmset.spend.ReceiptCosts;
import org.firmset.spend.ReceiptFilter;
import org.jspecify.annotations.Nullable;

/**
 * What is the same in two budgets, on receipts and in the plan.
 *
 * @param stage null for a subproject as a whole
 * @param material null for anything but a material
 */
public record Thing(
        @Nullable String subproject,
        @Nullable String stage,
        LineKind kind,
        @Nullable String material) {

    static Thing of(Baseline.Item item) {
        return new Thing(item.subproject(), item.stage(), item.kind(), item.material());
    }

    /** A tool or a fee that names a material is no pack of it. */
    static Thing of(ReceiptCosts.Cost cost) {
        return new Thing(
                cost.subproject(),
                cost.stage(),
                cost.kind(),
                cost.kind() == LineKind.MATERIAL ? cost.material() : null);
    }

    static Thing of(Coming coming) {
        return new Thing(
                coming.subproject(),
                coming.stage(),
                coming.kind(),
                coming.purpose() == Purpose.PACKS ? coming.what() : null);
    }

    /** Just the receipts of it. */
    public ReceiptFilter receipts() {
        return ReceiptFilter.ALL
                .withSubproject(ReceiptFilter.orNobody(subproject))
                .withStage(ReceiptFilter.orNobody(stage))
                .withKind(kind)
                .withMaterial(kind == LineKind.MATERIAL ? ReceiptFilter.orNobody(material) : null);
    }
}
