package org.firmset.homestead.store;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import java.util.ArrayList;
import java.util.List;
import org.firmset.homestead.Takeoff;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "takeoff")
class TakeoffRow extends KeyedRow<Takeoff> {
    private String name;
    private String kind;

    @ManyToOne(fetch = FetchType.LAZY)
    private @Nullable StageRow stage;

    @ElementCollection
    @CollectionTable(name = "takeoff_given", joinColumns = @JoinColumn(name = "takeoff_id"))
    @OrderColumn(name = "position")
    private List<GivenColumns> given = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "takeoff_supply", joinColumns = @JoinColumn(name = "takeoff_id"))
    @OrderColumn(name = "position")
    private List<SupplyColumns> supplies = new ArrayList<>();

    protected TakeoffRow() {}

    TakeoffRow(Slot slot, Takeoff record, Named named) {
        super(slot);
        become(record, named);
    }

    @Override
    void become(Takeoff record, Named named) {
        name = record.name();
        kind = record.kind();
        stage = record.stage() == null ? null : named.stage(record.stage());
        refill(
                given,
                record.given().stream()
                        .map(g -> new GivenColumns(g.input(), g.value()))
                        .toList());
        refill(
                supplies,
                record.supplies().stream()
                        .map(s -> new SupplyColumns(s.line(), named.material(s.material())))
                        .toList());
    }

    @Override
    Takeoff toRecord() {
        return new Takeoff(
                key(),
                name,
                kind,
                stage == null ? null : stage.key(),
                given.stream().map(GivenColumns::toRecord).toList(),
                supplies.stream().map(SupplyColumns::toRecord).toList());
    }
}
