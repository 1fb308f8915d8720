package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.time.LocalDate;
import org.firmset.homestead.StockLot;

@Entity
@Table(name = "stock_lot")
class StockLotRow extends Row<StockLot> {
    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    private MaterialRow material;

    private int packs;

    @Column(name = "bought_on")
    private LocalDate since;

    protected StockLotRow() {}

    StockLotRow(Slot slot, StockLot record, Named named) {
        super(slot);
        become(record, named);
    }

    @Override
    void become(StockLot record, Named named) {
        material = named.material(record.material());
        packs = record.packs();
        since = record.since();
    }

    @Override
    StockLot toRecord() {
        return new StockLot(material.key(), packs, since);
    }
}
