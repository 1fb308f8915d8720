package org.firmset.homestead.store;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import java.math.BigDecimal;
import java.time.MonthDay;
import java.util.function.Function;
import org.firmset.measure.Area;
import org.firmset.measure.Energy;
import org.firmset.measure.Hours;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Measured;
import org.firmset.measure.Power;
import org.firmset.measure.Speed;
import org.firmset.measure.Temperature;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

/** How quantities, hours and days of the year lie in their columns, wherever an entity has one. */
final class Converters {
    private Converters() {}

    /** The bare number; the unit is that of the dimension and part of the column's name. */
    abstract static class OfMeasured<M extends Measured> implements AttributeConverter<M, BigDecimal> {
        private final Function<BigDecimal, M> maker;

        OfMeasured(Function<BigDecimal, M> maker) {
            this.maker = maker;
        }

        @Override
        public @Nullable BigDecimal convertToDatabaseColumn(@Nullable M quantity) {
            return quantity == null ? null : quantity.value();
        }

        @Override
        public @Nullable M convertToEntityAttribute(@Nullable BigDecimal value) {
            return value == null ? null : maker.apply(value);
        }
    }

    @Converter(autoApply = true)
    static final class OfMass extends OfMeasured<Mass> {
        OfMass() {
            super(Mass::new);
        }
    }

    @Converter(autoApply = true)
    static final class OfVolume extends OfMeasured<Volume> {
        OfVolume() {
            super(Volume::new);
        }
    }

    @Converter(autoApply = true)
    static final class OfLength extends OfMeasured<Length> {
        OfLength() {
            super(Length::new);
        }
    }

    @Converter(autoApply = true)
    static final class OfEnergy extends OfMeasured<Energy> {
        OfEnergy() {
            super(Energy::new);
        }
    }

    @Converter(autoApply = true)
    static final class OfPower extends OfMeasured<Power> {
        OfPower() {
            super(Power::new);
        }
    }

    @Converter(autoApply = true)
    static final class OfTemperature extends OfMeasured<Temperature> {
        OfTemperature() {
            super(Temperature::new);
        }
    }

    @Converter(autoApply = true)
    static final class OfArea extends OfMeasured<Area> {
        OfArea() {
            super(Area::new);
        }
    }

    @Converter(autoApply = true)
    static final class OfSpeed extends OfMeasured<Speed> {
        OfSpeed() {
            super(Speed::new);
        }
    }

    /** As whole quarter-hours. */
    @Converter(autoApply = true)
    static final class OfHours implements AttributeConverter<Hours, Integer> {
        @Override
        public @Nullable Integer convertToDatabaseColumn(@Nullable Hours hours) {
            return hours == null ? null : hours.quarters();
        }

        @Override
        public @Nullable Hours convertToEntityAttribute(@Nullable Integer quarters) {
            return quarters == null ? null : new Hours(quarters);
        }
    }

    /** As "--03-15", the form of ISO 8601. */
    @Converter(autoApply = true)
    static final class OfMonthDay implements AttributeConverter<MonthDay, String> {
        @Override
        public @Nullable String convertToDatabaseColumn(@Nullable MonthDay day) {
            return day == null ? null : day.toString();
        }

        @Override
        public @Nullable MonthDay convertToEntityAttribute(@Nullable String text) {
            return text == null ? null : MonthDay.parse(text);
        }
    }
}
