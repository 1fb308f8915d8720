package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import org.firmset.homestead.PowerKit;
import org.firmset.measure.Energy;
import org.firmset.measure.Power;
import org.jspecify.annotations.Nullable;

@Embeddable
record PowerColumns(
        @Column(name = "battery_capacity_wh") Energy capacity,
        @Column(name = "battery_floor_percent") int floorPercent,
        @Column(name = "panels_w") Power panels,
        @Column(name = "panels_yield_percent") int yieldPercent,
        @Nullable GeneratorColumns generator) {

    static @Nullable PowerColumns of(@Nullable PowerKit kit, HomesteadRow homestead) {
        return kit == null
                ? null
                : new PowerColumns(
                        kit.capacity(),
                        kit.floorPercent(),
                        kit.panels(),
                        kit.yieldPercent(),
                        GeneratorColumns.of(kit.generator(), homestead));
    }

    PowerKit toRecord(HomesteadRow homestead) {
        return new PowerKit(
                capacity, floorPercent, panels, yieldPercent, generator == null ? null : generator.toRecord(homestead));
    }
}
