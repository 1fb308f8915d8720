package org.firmset.trade.cure;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Stream;
import org.firmset.measure.Described;
import org.firmset.measure.Dimension;
import org.firmset.measure.Units;
import org.firmset.trade.climate.MonthlyTemperatures;
import org.firmset.trade.trace.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CureKindsTest {
    static Stream<RecordComponent> inputs() {
        return CureKinds.ALL.stream()
                .flatMap(kind -> Arrays.stream(kind.inputs().getRecordComponents()));
    }

    @Test
    void keys_stay_for_good() {
        assertThat(CureKinds.ALL).extracting(Kind::key).containsExactly("cure", "pour-weather");
    }

    @ParameterizedTest
    @MethodSource("inputs")
    void every_input_is_described_in_one_sentence(RecordComponent input) {
        Described described = input.getAnnotation(Described.class);
        assertThat(described).isNotNull();
        assertThat(described.value()).endsWith(".").doesNotContain("\n");
        assertThat(described.value().indexOf(". ")).isNegative();
    }

    @ParameterizedTest
    @MethodSource("inputs")
    void limits_and_usual_values_are_of_the_type_of_their_input(RecordComponent input) {
        Described described = input.getAnnotation(Described.class);
        Stream.of(described.least(), described.most(), described.usual())
                .filter(text -> !text.isEmpty())
                .forEach(text -> assertThat(read(input.getType(), text)).isNotNull());
    }

    private static Object read(Class<?> type, String text) {
        if (type.isEnum()) {
            return Arrays.stream(type.getEnumConstants())
                    .filter(c -> c.toString()
                            .toLowerCase(Locale.ROOT)
                            .replace('_', '-')
                            .equals(text))
                    .findFirst()
                    .orElseThrow();
        }
        return switch (type.getSimpleName()) {
            case "BigDecimal", "Integer", "int" -> new BigDecimal(text);
            case "boolean" -> Boolean.valueOf(text);
            case "MonthlyTemperatures" -> MonthlyTemperatures.parse(text);
            default ->
                Arrays.stream(Dimension.values())
                        .filter(d -> d.word().equalsIgnoreCase(type.getSimpleName()))
                        .map(d -> Units.parse(d, text))
                        .findFirst()
                        .orElseThrow();
        };
    }
}
