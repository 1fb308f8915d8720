package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.math.BigDecimal;
import org.firmset.homestead.BatteryKind;
import org.firmset.homestead.BetweenTrips;
import org.firmset.homestead.PowerKit;
import org.firmset.measure.Energy;
import org.firmset.measure.Power;
import org.firmset.measure.Temperature;
import org.jspecify.annotations.Nullable;

@Embeddable
record PowerColumns(
        @Column(name = "battery_capacity_wh") Energy capacity,
        @Column(name = "battery_floor_percent") int floorPercent,
        @Column(name = "panels_w") Power panels,
        @Column(name = "panels_yield_percent") int yieldPercent,
        @Nullable GeneratorColumns generator,

        @Column(name = "battery_kind") @Enumerated(EnumType.STRING) @Nullable
        BatteryKind kind,

        @Column(name = "battery_charge_percent") @Nullable Integer chargePercent,

        @Column(name = "battery_discharge_percent") @Nullable
        Integer dischargePercent,

        @Column(name = "battery_least_charge_degc") @Nullable
        Temperature leastChargeTemperature,

        @Nullable InverterColumns inverter,
        @Column(name = "base_load_w") @Nullable Power baseLoad,
        @Column(name = "panels_tilt_deg") @Nullable BigDecimal panelTilt,
        @Column(name = "panels_direction_deg") @Nullable BigDecimal panelDirection,

        @Column(name = "between_trips") @Enumerated(EnumType.STRING)
        BetweenTrips between,

        @Column(name = "poor_day_percent") @Nullable Integer poorDayPercent,

        @Column(name = "battery_price_per_kwh") @Nullable BigDecimal batteryPerKilowattHour,

        @Column(name = "panels_price_per_kw") @Nullable BigDecimal panelsPerKilowatt) {

    static @Nullable PowerColumns of(@Nullable PowerKit kit, HomesteadRow homestead) {
        return kit == null
                ? null
                : new PowerColumns(
                        kit.capacity(),
                        kit.floorPercent(),
                        kit.panels(),
                        kit.yieldPercent(),
                        GeneratorColumns.of(kit.generator(), homestead),
                        kit.kind(),
                        kit.chargePercent(),
                        kit.dischargePercent(),
                        kit.leastChargeTemperature(),
                        InverterColumns.of(kit.inverter()),
                        kit.baseLoad(),
                        kit.panelTilt(),
                        kit.panelDirection(),
                        kit.betweenTrips(),
                        kit.poorDayPercent(),
                        homestead.amountOrNull(kit.batteryPerKilowattHour()),
                        homestead.amountOrNull(kit.panelsPerKilowatt()));
    }

    PowerKit toRecord(HomesteadRow homestead) {
        return new PowerKit(
                capacity,
                floorPercent,
                panels,
                yieldPercent,
                generator == null ? null : generator.toRecord(homestead),
                kind,
                chargePercent,
                dischargePercent,
                leastChargeTemperature,
                inverter == null ? null : inverter.toRecord(),
                baseLoad,
                panelTilt,
                panelDirection,
                between,
                poorDayPercent,
                homestead.moneyOrNull(batteryPerKilowattHour),
                homestead.moneyOrNull(panelsPerKilowatt));
    }
}
