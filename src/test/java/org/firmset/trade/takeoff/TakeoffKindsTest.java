package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Objects;
import java.util.stream.Stream;
import org.firmset.measure.Described;
import org.firmset.trade.trace.Kind;
import org.junit.jupiter.api.Test;

class TakeoffKindsTest {
    @Test
    void keys_are_kept_for_good() {
        assertThat(TakeoffKinds.ALL)
                .extracting(Kind::key)
                .containsExactly(
                        "block-wall",
                        "wall-fill",
                        "bond-beam",
                        "slab",
                        "footing",
                        "pads",
                        "forms",
                        "batches",
                        "bags-or-truck",
                        "bar",
                        "bent-bar",
                        "bar-mat",
                        "bar-run",
                        "cut-list",
                        "base-fill",
                        "dig",
                        "lumber",
                        "panels",
                        "lengths",
                        "fasteners",
                        "coating",
                        "counted");
    }

    @Test
    void every_calculator_says_what_it_works_out_and_what_it_needs() {
        for (Kind<?> kind : TakeoffKinds.ALL) {
            assertThat(kind.name()).isNotBlank();
            assertThat(kind.purpose()).as(kind.key()).endsWith(".");
            assertThat(components(kind.inputs()))
                    .as(kind.key())
                    .allSatisfy(c -> assertThat(Objects.requireNonNull(c.getAnnotation(Described.class), c::toString)
                                    .value())
                            .endsWith("."));
        }
    }

    private static Stream<RecordComponent> components(Class<?> type) {
        return Arrays.stream(type.getRecordComponents())
                .flatMap(c -> c.getType().isRecord() && c.getType().isAnnotationPresent(Described.class)
                        ? Stream.concat(Stream.of(c), components(c.getType()))
                        : Stream.of(c));
    }
}
