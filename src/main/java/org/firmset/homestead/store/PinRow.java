package org.firmset.homestead.store;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.firmset.homestead.Pin;

@Entity
@Table(name = "pin")
class PinRow extends Row<Pin> {
    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    private StageRow stage;

    @ElementCollection
    @CollectionTable(name = "pin_date", joinColumns = @JoinColumn(name = "pin_id"))
    @OrderColumn(name = "position")
    @Column(name = "works_on")
    private List<LocalDate> dates = new ArrayList<>();

    private String why;

    protected PinRow() {}

    PinRow(Slot slot, Pin record, Named named) {
        super(slot);
        become(record, named);
    }

    @Override
    void become(Pin record, Named named) {
        stage = named.stage(record.stage());
        refill(dates, record.dates());
        why = record.why();
    }

    @Override
    Pin toRecord() {
        return new Pin(stage.key(), dates, why);
    }
}
