package org.firmset.homestead.store;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.firmset.homestead.Budgeting;
import org.firmset.homestead.DayRoutine;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Place;
import org.firmset.homestead.PowerKit;
import org.firmset.homestead.SpendingLimit;
import org.firmset.homestead.Storage;
import org.firmset.homestead.WaterStore;
import org.firmset.measure.Cash;
import org.firmset.measure.Mass;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Volume;
import org.hibernate.annotations.ListIndexBase;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** What a homestead has only one of, and the dates and months that nothing else refers to. */
@Entity
@Table(name = "homestead")
class HomesteadRow {
    @Id
    private UUID id;

    /** Counted by hand: a change of any part is a change of the whole, also when this row stays as it is. */
    private long version;

    private Instant changedAt;
    private Instant openedAt;
    private String name;

    @Enumerated(EnumType.STRING)
    private UnitSystem units;

    private String currency;

    @Column(name = "latitude_deg")
    private BigDecimal latitude;

    @Column(name = "longitude_deg")
    private BigDecimal longitude;

    private String timeZone;

    @ElementCollection
    @CollectionTable(name = "month_normal", joinColumns = @JoinColumn(name = "homestead_id"))
    @OrderColumn(name = "month_number")
    @ListIndexBase(1)
    private List<MonthColumns> climate = new ArrayList<>();

    @Column(name = "track_limit_kg")
    private @Nullable Mass trackLimit;

    @ElementCollection
    @CollectionTable(name = "soft_month", joinColumns = @JoinColumn(name = "homestead_id"))
    @OrderColumn(name = "position")
    @Column(name = "month_name")
    @Enumerated(EnumType.STRING)
    private List<Month> softMonths = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "horizon_sector", joinColumns = @JoinColumn(name = "homestead_id"))
    @OrderColumn(name = "position")
    private List<HorizonColumns> horizon = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "forecast_day", joinColumns = @JoinColumn(name = "homestead_id"))
    @OrderColumn(name = "position")
    private List<ForecastColumns> forecast = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "removed_date", joinColumns = @JoinColumn(name = "homestead_id"))
    @OrderColumn(name = "position")
    @Column(name = "removed_on")
    private List<LocalDate> removedDates = new ArrayList<>();

    @Column(name = "dry_volume_m3")
    private Volume dryVolume;

    private @Nullable PowerColumns power;

    private @Nullable SpendingColumns spendingLimit;

    private @Nullable RoutineColumns routine;

    private @Nullable WaterColumns water;

    private @Nullable BudgetingColumns budgeting;

    @ElementCollection
    @CollectionTable(name = "budget_item", joinColumns = @JoinColumn(name = "homestead_id"))
    @OrderColumn(name = "position")
    private List<BudgetItemColumns> budgetItems = new ArrayList<>();

    protected HomesteadRow() {}

    HomesteadRow(UUID id, Homestead record, Instant now) {
        this.id = id;
        openedAt = now;
        become(record, now);
    }

    void open(Instant now) {
        openedAt = now;
    }

    @Initializer
    void become(Homestead record, Instant now) {
        version++;
        changedAt = now;
        name = record.name();
        units = record.units();
        currency = record.currency();
        dryVolume = record.storage().dryVolume();
        power = PowerColumns.of(record.power(), this);
        spendingLimit = SpendingColumns.of(record.spendingLimit(), this);
        Budgeting reckoned = record.budgeting();
        budgeting = BudgetingColumns.of(reckoned);
        Row.refill(
                budgetItems,
                reckoned == null
                        ? List.of()
                        : reckoned.items().stream()
                                .map(i -> BudgetItemColumns.of(i, this))
                                .toList());
        Row.refill(removedDates, record.openDates().removed());
        routine = RoutineColumns.of(record.openDates().routine());
        water = WaterColumns.of(record.water());
        lieAt(record.place());
    }

    @Initializer
    private void lieAt(Place place) {
        latitude = place.latitude();
        longitude = place.longitude();
        timeZone = place.timeZone();
        Row.refill(climate, place.climate().stream().map(MonthColumns::of).toList());
        trackLimit = place.trackLimit();
        Row.refill(softMonths, place.softMonths());
        Row.refill(horizon, place.horizon().stream().map(HorizonColumns::of).toList());
        Row.refill(forecast, place.forecast().stream().map(ForecastColumns::of).toList());
    }

    UUID id() {
        return id;
    }

    long version() {
        return version;
    }

    Instant changedAt() {
        return changedAt;
    }

    String name() {
        return name;
    }

    UnitSystem units() {
        return units;
    }

    String currency() {
        return currency;
    }

    Place place() {
        return new Place(
                latitude,
                longitude,
                timeZone,
                climate.stream().map(MonthColumns::toRecord).toList(),
                trackLimit,
                softMonths,
                horizon.stream().map(HorizonColumns::toRecord).toList(),
                forecast.stream().map(ForecastColumns::toRecord).toList());
    }

    List<LocalDate> removedDates() {
        return List.copyOf(removedDates);
    }

    Storage storage() {
        return new Storage(dryVolume);
    }

    @Nullable
    PowerKit power() {
        return power == null ? null : power.toRecord(this);
    }

    @Nullable
    SpendingLimit spendingLimit() {
        return spendingLimit == null ? null : spendingLimit.toRecord(this);
    }

    @Nullable
    DayRoutine routine() {
        return routine == null ? null : routine.toRecord();
    }

    @Nullable
    WaterStore water() {
        return water == null ? null : water.toRecord();
    }

    @Nullable
    Budgeting budgeting() {
        return budgeting == null
                ? null
                : budgeting.toRecord(
                        budgetItems.stream().map(i -> i.toRecord(this)).toList());
    }

    /** The amount without its currency, which the homestead keeps once for all. */
    BigDecimal amount(Money money) {
        if (!money.getCurrency().getCurrencyCode().equals(currency)) {
            throw new IllegalArgumentException("currency of amount [%s] in homestead [%s] must be its one currency [%s]"
                    .formatted(Cash.text(money), name, currency));
        }
        return Cash.amountOf(money);
    }

    Money money(BigDecimal amount) {
        return Cash.of(amount, currency);
    }

    @Nullable
    BigDecimal amountOrNull(@Nullable Money money) {
        return money == null ? null : amount(money);
    }

    @Nullable
    Money moneyOrNull(@Nullable BigDecimal amount) {
        return amount == null ? null : money(amount);
    }
}
