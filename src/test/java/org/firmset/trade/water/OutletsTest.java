package org.firmset.trade.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.firmset.measure.Flow;
import org.firmset.measure.Length;
import org.firmset.measure.Pressure;
import org.firmset.measure.UnitsFault;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OutletsTest {
    private static final long SEED = Long.getLong("firmset.seed", 2027);
    private static final String TEXT = "cabin sink = 120 ft, 12 ft; shop tap = 60 ft, 2 ft, 5 gpm at 30 psi";

    @Test
    void name_branch_drop_and_what_it_lets_through_are_read() {
        Outlets outlets = Outlets.parse(" cabin sink=120 ft,12 ft 6 in ;\n shop tap = 20 m , -3 m, 9 L/min at 2 bar; ");
        assertThat(outlets.all()).hasSize(2);
        Outlet sink = outlets.all().getFirst();
        assertThat(sink.name()).isEqualTo("cabin sink");
        assertThat(sink.branch()).isEqualTo(Length.ofMetres(36.576));
        assertThat(sink.drop()).isEqualTo(Length.ofMetres(3.81));
        assertThat(sink.rating()).isNull();
        Outlet tap = outlets.all().getLast();
        assertThat(tap.drop()).isEqualTo(Length.ofMetres(-3));
        assertThat(tap.rating()).isEqualTo(new Rating(Flow.ofLitresPerMinute(9), Pressure.ofPascals(200_000)));
    }

    @Test
    void the_text_is_as_people_write_it() {
        assertThat(Outlets.parse(TEXT)).hasToString(TEXT);
    }

    @Test
    void the_text_reads_back_to_the_same() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 50; i++) {
            List<Outlet> all = new ArrayList<>();
            for (int n = random.nextInt(1, 17); n > 0; n--) {
                Rating rating = random.nextBoolean()
                        ? null
                        : new Rating(
                                new Flow(decimal(random, 0.000000001, 400)),
                                new Pressure(decimal(random, 0.000000001, 1.4e6)));
                all.add(new Outlet(
                        "an outlet with its name whole" + (char) ('A' + n),
                        new Length(decimal(random, 0, 600)),
                        new Length(decimal(random, -30, 150)),
                        rating));
            }
            Outlets outlets = new Outlets(all);
            assertThat(Outlets.parse(outlets.toString()))
                    .as("seed %d, %s", SEED, outlets)
                    .isEqualTo(outlets);
        }
    }

    private static BigDecimal decimal(SplittableRandom random, double least, double most) {
        return BigDecimal.valueOf(random.nextDouble(least, most));
    }

    @Test
    void flow_goes_with_the_root_of_the_pressure() {
        Rating rating = Rating.parse("10 L/min at 400 kPa");
        assertThat(rating.litresPerMinuteAt(100_000)).isCloseTo(5, within(1e-12));
        assertThat(rating.litresPerMinuteAt(0)).isZero();
    }

    @Test
    void fixtures_let_through_what_the_act_of_1992_allows() {
        assertThat(Objects.requireNonNull(Fixture.SHOWER.rating())).hasToString("2.5 gpm at 80 psi");
        assertThat(Objects.requireNonNull(Fixture.SINK.rating())).hasToString("2.2 gpm at 60 psi");
        assertThat(Fixture.OPEN_END.rating()).isNull();
        assertThat(Fixture.LITRES_PER_FLUSH).isCloseTo(6.0567, within(1e-4));
    }

    @ParameterizedTest
    @ValueSource(strings = {"600 m, 150 m", "0 m, -30 m", "1 m, 1 m, 400 L/min at 1400 kPa"})
    void the_limits_themselves_are_allowed(String places) {
        assertThat(Outlets.parse("x = " + places).all()).hasSize(1);
    }

    @Nested
    class Refusals {
        private void refused(String text, String message) {
            assertThatExceptionOfType(UnitsFault.class)
                    .isThrownBy(() -> Outlets.parse(text))
                    .withMessageContaining(message);
        }

        @ParameterizedTest
        @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                sink                        | 'sink' is not an outlet with its branch and drop; write it such as
                sink = 120 ft               | 'sink = 120 ft' is not an outlet
                sink = 1 ft, 1 ft, 1, 1     | is not an outlet
                a = 1 ft = 2, 1 ft          | is not an outlet
                sink = 120, 12 ft           | '120' is not a number with its unit
                sink = 120 kg, 12 ft        | no unit of length
                sink = 601 m, 1 m           | is not a branch of 0 to 600 m of pipe; write it such as '120 ft'
                sink = -1 m, 1 m            | is not a branch of 0 to 600 m
                sink = 1 m, -30.1 m         | is not a drop from -30 m (above the tank) to 150 m
                sink = 1 m, 150.1 m         | is not a drop
                sink = 1 m, 1 m, 2 gpm      | '2 gpm' is not a flow at a pressure; write it such as '2.5 gpm at 80 psi'
                sink = 1 m, 1 m, 2 at 3     | is not a number with its unit
                x = 1 m, 1 m, 401 L/min at 1 bar   | is not a flow of up to 100 gpm at a pressure of up to 200 psi
                x = 1 m, 1 m, 0 L/min at 1 bar     | is not a flow of up to 100 gpm
                x = 1 m, 1 m, 1 L/min at 0 bar     | is not a flow of up to 100 gpm
                x = 1 m, 1 m, 1 L/min at 14.01 bar | is not a flow of up to 100 gpm
                ;                           | '0 outlets' is not a list of 1 to 16 outlets
                x = 1 m, 1 m; x = 2 m, 2 m  | 'x' is not the name of one outlet only
                <b> = 1 m, 1 m              | '<b>' is not a name of an outlet of up to 30 letters and digits
                """)
        void what_is_no_list_of_outlets(String text, String message) {
            refused(text, message);
        }

        @Test
        void a_name_of_more_than_30_letters() {
            refused("a".repeat(31) + " = 1 m, 1 m", "is not a name of an outlet");
            assertThat(Outlets.parse("a".repeat(30) + " = 1 m, 1 m").all()).hasSize(1);
        }

        @Test
        void more_than_16_outlets() {
            StringBuilder text = new StringBuilder();
            for (int i = 1; i <= 16; i++) {
                text.append("o").append(i).append(" = 1 m, 1 m;");
            }
            assertThat(Outlets.parse(text.toString()).all()).hasSize(16);
            refused(text + "o17 = 1 m, 1 m", "'17 outlets' is not a list of 1 to 16 outlets");
        }

        @Test
        void a_long_text_which_is_shown_shortened() {
            String entry = "x = 1 m, 1 m";
            assertThat(Outlets.parse(entry + " ".repeat(2000 - entry.length())).all())
                    .hasSize(1);
            refused(entry + " ".repeat(2001 - entry.length()), "...' is not a list of at most 2000 characters");
            refused("b".repeat(60), "'" + "b".repeat(60) + "' is not an outlet");
            refused("b".repeat(61), "'" + "b".repeat(60) + "...' is not an outlet");
        }
    }
}
