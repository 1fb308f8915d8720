package org.firmset.homestead.store;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import org.firmset.homestead.Wait;
import org.firmset.homestead.WaitKind;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "stage_wait")
class WaitRow extends KeyedRow<Wait> {
    private String name;

    @Enumerated(EnumType.STRING)
    private WaitKind kind;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "from_stage_id")
    private StageRow from;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "to_stage_id")
    private StageRow to;

    private int leastDays;
    private @Nullable CureColumns cure;
    private @Nullable Integer mostDays;

    protected WaitRow() {}

    WaitRow(Slot slot, Wait record, Named named) {
        super(slot);
        become(record, named);
    }

    @Override
    void become(Wait record, Named named) {
        name = record.name();
        kind = record.kind();
        from = named.stage(record.from());
        to = named.stage(record.to());
        leastDays = record.leastDays();
        cure = CureColumns.of(record.cure());
        mostDays = record.mostDays();
    }

    @Override
    Wait toRecord() {
        return new Wait(
                key(), name, kind, from.key(), to.key(), leastDays, cure == null ? null : cure.toRecord(), mostDays);
    }
}
