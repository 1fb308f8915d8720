package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import org.firmset.homestead.WaterStore;
import org.firmset.measure.Area;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

@Embeddable
record WaterColumns(
        @Column(name = "water_tank_m3") Volume tank,
        @Column(name = "water_now_m3") Volume now,
        @Column(name = "water_roof_m2") @Nullable Area roof,
        @Column(name = "water_catch_percent") int catchPercent,
        @Column(name = "water_can_m3") Volume can,
        @Column(name = "water_can_kg") Mass canMass) {

    static @Nullable WaterColumns of(@Nullable WaterStore water) {
        return water == null
                ? null
                : new WaterColumns(
                        water.tank(), water.now(), water.roof(), water.catchPercent(), water.can(), water.canMass());
    }

    WaterStore toRecord() {
        return new WaterStore(tank, now, roof, catchPercent, can, canMass);
    }
}
