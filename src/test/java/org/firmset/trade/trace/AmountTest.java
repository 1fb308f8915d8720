package org.firmset.trade.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.firmset.measure.Length;
import org.firmset.measure.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class AmountTest {
    private static Arguments shown(String what, DoubleFunction<Amount> maker, double value, String us, String metric) {
        return Arguments.of(what, maker.apply(value), us, metric);
    }

    static Stream<Arguments> kinds() {
        return Stream.of(
                shown("length", Amount::length, 3.81, "12 ft 6 in", "3.81 m"),
                shown("head", Amount::head, 3.048, "10 ft", "3.048 m"),
                shown("thin", Amount::thin, 0.0127, "0.5 in", "12.7 mm"),
                shown("area", Amount::area, 9.290304, "100 ft2", "9.29 m2"),
                shown("section", Amount::section, 0.00064516, "1 in2", "6.452 cm2"),
                shown("volume", Amount::volume, 0.028316846592, "1 ft3", "28.32 L"),
                shown("volume under 100 L", Amount::volume, 0.0999, "3.528 ft3", "99.9 L"),
                shown("volume of 100 L", Amount::volume, 0.1, "3.531 ft3", "0.1 m3"),
                shown("bulk", Amount::bulk, 0.764554857984, "1 yd3", "0.7646 m3"),
                shown("liquid", Amount::liquid, 0.003785411784, "1 gal", "3.785 L"),
                shown("mass", Amount::mass, 36.2873896, "80 lb", "36.29 kg"),
                shown("tonnes", Amount::tonnes, 907.18474, "1 ton", "0.9072 t"),
                shown("pressure", Amount::pressure, 344_737.8646584, "50 psi", "344.7 kPa"),
                shown("bearing", Amount::bearing, 71_820.388469, "1,500 lb/ft2", "71.82 kPa"),
                shown("strength", Amount::strength, 20_684_271.8795, "3,000 psi", "20.68 MPa"),
                shown("temperature", Amount::temperature, 20, "68 °F", "20 °C"),
                shown("flow", Amount::flow, 3.785411784, "1 gpm", "3.785 L/min"),
                shown("speed", Amount::speed, 44.704, "100 mph", "160.9 km/h"),
                shown("velocity", Amount::velocity, 1.524, "5 ft/s", "1.524 m/s"),
                shown("density", Amount::density, 2242.584875654, "140 lb/ft3", "2,243 kg/m3"),
                shown("energy", Amount::energy, 2400, "2,400 Wh", "2,400 Wh"),
                shown("power", Amount::power, 900, "900 W", "900 W"),
                shown("ratio", Amount::ratio, 0.77949, "0.779", "0.779"),
                shown("percent", Amount::percent, 0.125, "12.5 %", "12.5 %"),
                shown("hours", Amount::hours, 9.75, "9.75 h", "9.75 h"),
                shown("minutes", Amount::minutes, 12.4, "12 min", "12 min"),
                shown("days", Amount::days, 4.756, "4.76 d", "4.76 d"));
    }

    @ParameterizedTest(name = "{0}: {2}, {3}")
    @MethodSource("kinds")
    void each_kind_is_shown_in_its_units(String what, Amount amount, String us, String metric) {
        assertThat(Show.amount(amount, UnitSystem.US)).isEqualTo(us);
        assertThat(Show.amount(amount, UnitSystem.METRIC)).isEqualTo(metric);
    }

    @Test
    void a_volume_is_shown_in_litres_until_it_is_a_tenth_of_a_cubic_metre() {
        assertThat(Show.amount(Amount.volume(0.0999), UnitSystem.METRIC)).isEqualTo("99.9 L");
        assertThat(Show.amount(Amount.volume(0.1), UnitSystem.METRIC)).isEqualTo("0.1 m3");
        assertThat(Show.amount(Amount.volume(0.1), UnitSystem.US)).isEqualTo("3.531 ft3");
    }

    @Test
    void a_length_may_be_given_as_it_was_written() {
        assertThat(Amount.length(Length.ofMetres(1.5))).isEqualTo(Amount.length(1.5));
    }

    @Test
    void things_words_dates_and_numbers() {
        assertThat(Amount.count(3, "lifts")).isEqualTo(new Amount.Count(3, "lifts"));
        assertThat(Amount.word("yes")).isEqualTo(new Amount.Word("yes"));
        LocalDate day = LocalDate.of(2027, 7, 3);
        assertThat(Amount.on(day)).isEqualTo(new Amount.On(day));
        assertThat(Amount.number(1.5, 2, "m/h")).isEqualTo(new Amount.Number(1.5, 2, "m/h"));
    }

    @Test
    void packs_are_whole() {
        assertThat(new Amount.Packs(42.1, "bags").whole()).isEqualTo(43);
        assertThat(((Amount.Packs) Amount.packs(42, "bags")).whole()).isEqualTo(42);
    }
}
