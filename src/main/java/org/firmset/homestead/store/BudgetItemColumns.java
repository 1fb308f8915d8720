package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.firmset.homestead.BudgetItem;
import org.firmset.homestead.BudgetKind;
import org.jspecify.annotations.Nullable;

/** Names subproject and stage by their keys: the homestead's own row is written before there are rows to refer to. */
@Embeddable
record BudgetItemColumns(
        String name,

        @Enumerated(EnumType.STRING) BudgetKind kind,
        @Column(name = "subproject_key") String subproject,
        @Column(name = "stage_key") @Nullable String stage,
        BigDecimal amount,
        @Column(name = "due_on") @Nullable LocalDate on) {

    static BudgetItemColumns of(BudgetItem item, HomesteadRow homestead) {
        return new BudgetItemColumns(
                item.name(), item.kind(), item.subproject(), item.stage(), homestead.amount(item.amount()), item.on());
    }

    BudgetItem toRecord(HomesteadRow homestead) {
        return new BudgetItem(name, kind, subproject, stage, homestead.money(amount), on);
    }
}
