package org.firmset.trade.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import java.util.stream.Stream;
import org.firmset.trade.trace.Kind;
import org.firmset.trade.trace.Known;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class WaterKindsTest {
    static List<Kind<?>> kinds() {
        return WaterKinds.ALL;
    }

    @Test
    void have_keys_that_stay() {
        assertThat(WaterKinds.ALL)
                .extracting(Kind::key)
                .containsExactly("tank", "water-line", "pump-fill", "pressure-test", "disinfection");
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void work_from_what_is_usual(Kind<?> kind) {
        Worksheet sheet = Given.of(kind).work();
        assertThat(sheet.lines()).isNotEmpty();
        assertThat(sheet.lines(Line.Role.ANSWER)).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void every_line_has_a_formula_or_a_source(Kind<?> kind) {
        assertThat(Given.of(kind).work().lines())
                .filteredOn(line -> line.formula().isEmpty() && line.source().equals(Source.ARITHMETIC))
                .extracting(Line::key)
                .allMatch(key -> key.endsWith("pipe"));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void every_source_of_a_seen_formula_is_named(Kind<?> kind) {
        assertThat(Given.of(kind).work().lines())
                .filteredOn(line ->
                        line.source().known() == Known.SEEN || line.source().known() == Known.MEMORY)
                .allMatch(line -> !line.source().text().isEmpty());
    }

    static Stream<Kind<?>> texts() {
        return WaterKinds.ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("texts")
    void every_finding_and_caution_is_whole_sentences(Kind<?> kind) {
        Worksheet sheet = Given.of(kind).work();
        assertThat(sheet.findings()).allMatch(f -> f.text().endsWith("."));
        assertThat(sheet.lines())
                .filteredOn(line -> line.caution() != null)
                .allMatch(line -> String.valueOf(line.caution()).endsWith("."));
    }

    @ParameterizedTest(name = "{0} {1} {2}")
    @CsvSource(textBlock = """
            tank,          height,           20 m
            tank,          wind,             300 mph
            water-line,    waterTemperature, 80 degC
            water-line,    mainLength,       2000 m
            water-line,    mainBore,         1 mm
            pump-fill,     lift,             900 m
            pump-fill,     efficiencyPercent, 100
            pressure-test, workingPressure,  900 psi
            pressure-test, airPercent,       20
            disinfection,  strengthPercent,  90
            disinfection,  doseMgPerLitre,   1000
            """)
    void what_is_absurd_is_refused(String key, String component, String value) {
        Kind<?> kind = WaterKinds.ALL.stream()
                .filter(k -> k.key().equals(key))
                .findFirst()
                .orElseThrow();
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> Given.of(kind).with(component, value).work())
                .withMessageStartingWith(component + " [");
    }
}
