package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import org.firmset.homestead.Generator;
import org.firmset.measure.Hours;
import org.firmset.measure.Power;
import org.jspecify.annotations.Nullable;

@Embeddable
record GeneratorColumns(
        @Column(name = "generator_w") Power power,
        @Column(name = "generator_quarter_hours_per_day") Hours hoursPerDay,
        @Column(name = "generator_cost_per_kwh") BigDecimal costPerKilowattHour,

        @Column(name = "generator_litres_per_kwh") @Nullable BigDecimal litresPerKilowattHour,

        @Column(name = "generator_from_hour") int fromHour) {

    static @Nullable GeneratorColumns of(@Nullable Generator generator, HomesteadRow homestead) {
        return generator == null
                ? null
                : new GeneratorColumns(
                        generator.power(),
                        generator.hoursPerDay(),
                        homestead.amount(generator.costPerKilowattHour()),
                        generator.litresPerKilowattHour(),
                        generator.fromHour());
    }

    Generator toRecord(HomesteadRow homestead) {
        return new Generator(power, hoursPerDay, homestead.money(costPerKilowattHour), litresPerKilowattHour, fromHour);
    }
}
