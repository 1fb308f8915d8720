package org.firmset.homestead.store;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import org.firmset.homestead.DeliveryTerms;
import org.firmset.homestead.Price;
import org.firmset.homestead.Supplier;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "supplier")
class SupplierRow extends KeyedRow<Supplier> {
    private String name;
    private int leadDays;

    @ElementCollection
    @CollectionTable(name = "price", joinColumns = @JoinColumn(name = "supplier_id"))
    @OrderColumn(name = "position")
    private List<PriceColumns> prices = new ArrayList<>();

    private @Nullable DeliveryColumns delivery;

    @ElementCollection
    @CollectionTable(name = "supplier_delivery_weekday", joinColumns = @JoinColumn(name = "supplier_id"))
    @OrderColumn(name = "position")
    @Column(name = "weekday")
    @Enumerated(EnumType.STRING)
    private List<DayOfWeek> deliveryWeekdays = new ArrayList<>();

    protected SupplierRow() {}

    SupplierRow(Slot slot, Supplier record, Named named) {
        super(slot);
        become(record, named);
    }

    @Override
    void become(Supplier record, Named named) {
        name = record.name();
        leadDays = record.leadDays();
        refill(
                prices,
                record.prices().stream().map(price -> columns(price, named)).toList());
        DeliveryTerms terms = record.delivery();
        delivery = DeliveryColumns.of(terms, homestead());
        refill(deliveryWeekdays, terms == null ? List.of() : terms.weekdays());
    }

    private PriceColumns columns(Price price, Named named) {
        return new PriceColumns(named.material(price.material()), homestead().amount(price.amount()), price.on());
    }

    @Override
    Supplier toRecord() {
        return new Supplier(
                key(),
                name,
                leadDays,
                prices.stream().map(price -> price.toRecord(homestead())).toList(),
                delivery == null ? null : delivery.toRecord(homestead(), deliveryWeekdays));
    }
}
