package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.MapsId;
import jakarta.persistence.OneToOne;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.util.UUID;
import org.firmset.homestead.Travel;
import org.firmset.measure.Hours;
import org.firmset.measure.Length;
import org.jspecify.annotations.Nullable;

/** The one drive of a homestead; its id is the homestead's. */
@Entity
@Table(name = "travel")
class TravelRow {
    @Id
    private @Nullable UUID id;

    @MapsId
    @OneToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "homestead_id")
    private HomesteadRow homestead;

    @Column(name = "distance_m")
    private Length distance;

    @Column(name = "lost_arriving_quarter_hours")
    private Hours lostArriving;

    @Column(name = "lost_leaving_quarter_hours")
    private Hours lostLeaving;

    private BigDecimal costPerTrip;
    private BigDecimal costPerDay;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    private VehicleRow vehicle;

    @ManyToOne(fetch = FetchType.LAZY)
    private @Nullable TrailerRow trailer;

    private int mostExtraRuns;

    @Column(name = "extra_run_quarter_hours")
    private Hours extraRunTime;

    private BigDecimal extraRunCost;

    protected TravelRow() {}

    TravelRow(HomesteadRow homestead, Travel record, Named named) {
        this.homestead = homestead;
        become(record, named);
    }

    @Initializer
    void become(Travel record, Named named) {
        distance = record.distance();
        lostArriving = record.lostArriving();
        lostLeaving = record.lostLeaving();
        costPerTrip = homestead.amount(record.costPerTrip());
        costPerDay = homestead.amount(record.costPerDay());
        vehicle = named.vehicle(record.vehicle());
        trailer = record.trailer() == null ? null : named.trailer(record.trailer());
        mostExtraRuns = record.mostExtraRuns();
        extraRunTime = record.extraRunTime();
        extraRunCost = homestead.amount(record.extraRunCost());
    }

    Travel toRecord() {
        return new Travel(
                distance,
                lostArriving,
                lostLeaving,
                homestead.money(costPerTrip),
                homestead.money(costPerDay),
                vehicle.key(),
                trailer == null ? null : trailer.key(),
                mostExtraRuns,
                extraRunTime,
                homestead.money(extraRunCost));
    }
}
