package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.firmset.homestead.Subproject;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "subproject")
class SubprojectRow extends KeyedRow<Subproject> {
    private String name;
    private BigDecimal budget;
    private int priority;

    @Column(name = "target_on")
    private @Nullable LocalDate target;

    protected SubprojectRow() {}

    SubprojectRow(Slot slot, Subproject record, Named named) {
        super(slot);
        become(record, named);
    }

    @Override
    void become(Subproject record, Named named) {
        name = record.name();
        budget = homestead().amount(record.budget());
        priority = record.priority();
        target = record.target();
    }

    @Override
    Subproject toRecord() {
        return new Subproject(key(), name, homestead().money(budget), priority, target);
    }
}
