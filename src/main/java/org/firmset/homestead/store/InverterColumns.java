package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import org.firmset.homestead.Inverter;
import org.firmset.measure.Power;
import org.jspecify.annotations.Nullable;

@Embeddable
record InverterColumns(
        @Column(name = "inverter_continuous_w") Power continuous,
        @Column(name = "inverter_surge_w") Power surge,
        @Column(name = "inverter_efficiency_percent") int efficiencyPercent) {

    static @Nullable InverterColumns of(@Nullable Inverter inverter) {
        return inverter == null
                ? null
                : new InverterColumns(inverter.continuous(), inverter.surge(), inverter.efficiencyPercent());
    }

    Inverter toRecord() {
        return new Inverter(continuous, surge, efficiencyPercent);
    }
}
