package org.firmset.trade.trace;

import static org.assertj.core.api.Assertions.assertThat;

import org.firmset.measure.Area;
import org.firmset.measure.Density;
import org.firmset.measure.Energy;
import org.firmset.measure.Flow;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Measured;
import org.firmset.measure.Power;
import org.firmset.measure.Pressure;
import org.firmset.measure.Speed;
import org.firmset.measure.Temperature;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Volume;
import org.junit.jupiter.api.Test;

class WorksheetTest {
    @Test
    void what_an_engineer_should_see_comes_first_and_notes_come_last() {
        Worksheet sheet = new Sheet()
                .add(Finding.note("one"))
                .add(Finding.engineer("two."))
                .add(Finding.warning("three"))
                .add(Finding.note("four"))
                .done();
        assertThat(sheet.weightiestFirst())
                .extracting(Finding::text)
                .containsExactly("two. Ask a licensed engineer.", "three", "one", "four");
    }

    @Test
    void each_caution_is_told_once_in_order() {
        Worksheet sheet = new Sheet()
                .add(Line.step("a", "A", Amount.hours(1)).heed("look up"))
                .add(Line.step("b", "B", Amount.hours(1)))
                .add(Line.step("c", "C", Amount.hours(1)).heed("look down"))
                .add(Line.step("d", "D", Amount.hours(1)).heed("look up"))
                .done();
        assertThat(sheet.cautions()).containsExactly("look up", "look down");
    }

    @Test
    void rates_have_the_unit_of_the_reader() {
        both(Amount.massPerLength(0.994), "0.668 lb/ft", "0.994 kg/m");
        both(Amount.massPerArea(100), "20.5 lb/ft2", "100 kg/m2");
        both(Amount.perArea(12.11), "1.125 a ft2", "12.11 a m2");
        both(Amount.evaporation(0.976), "0.2 lb/ft2/h", "0.98 kg/m2/h");
    }

    @Test
    void limits_of_inputs_are_told_as_people_enter_them() {
        entered(Length.ofMetres(0.04), "1.575 in", "40 mm");
        entered(Length.ofMetres(0.1), "3 15/16 in", "0.1 m");
        entered(Length.ofMetres(99), "324 ft 9 5/8 in", "99 m");
        entered(Length.ofMetres(100), "328.1 ft", "100 m");
        entered(Mass.ofKilograms(2), "4.409 lb", "2 kg");
        entered(Volume.ofCubicMetres(1), "35.31 ft3", "1 m3");
        entered(Area.ofSquareMetres(1), "10.76 ft2", "1 m2");
        entered(Energy.ofWattHours(5), "5 Wh", "5 Wh");
        entered(Power.ofWatts(5), "5 W", "5 W");
        entered(Temperature.ofCelsius(20), "68 °F", "20 °C");
        entered(Pressure.ofPascals(100_000), "14.5 psi", "100 kPa");
        entered(Flow.ofLitresPerMinute(10), "2.642 gpm", "10 L/min");
        entered(Speed.ofMetresPerSecond(10), "22.37 mph", "36 km/h");
        entered(Density.ofKilogramsPerCubicMetre(1000), "62.43 lb/ft3", "1,000 kg/m3");
    }

    private static void both(Amount amount, String us, String metric) {
        assertThat(Show.amount(amount, UnitSystem.US)).isEqualTo(us);
        assertThat(Show.amount(amount, UnitSystem.METRIC)).isEqualTo(metric);
    }

    private static void entered(Measured quantity, String us, String metric) {
        assertThat(Show.measured(quantity, UnitSystem.US)).isEqualTo(us);
        assertThat(Show.measured(quantity, UnitSystem.METRIC)).isEqualTo(metric);
    }
}
