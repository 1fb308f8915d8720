package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.SplittableRandom;
import org.firmset.measure.Described;
import org.firmset.measure.Dimension;
import org.firmset.measure.Measured;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Kind;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Show;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** Whatever is entered within its limits gives a worksheet in numbers, or a refusal that names one of the inputs. */
class AnyInputsTest {
    private static final long SEED = Long.getLong("firmset.seed", 2027);
    private static final int TRIALS = 200;

    static final List<Kind<?>> ALL = TakeoffKinds.ALL;

    private final SplittableRandom random = new SplittableRandom(SEED);

    @ParameterizedTest
    @FieldSource("ALL")
    void gives_numbers_or_a_refusal(Kind<?> kind) {
        int worked = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            String[] given = given(kind.inputs());
            String what = "seed " + SEED + ": " + kind.key() + " " + Arrays.toString(given);
            try {
                check(Inputs.work(kind.inputs(), given), what);
                worked++;
            } catch (Refusal refusal) {
                assertThat(names(kind.inputs())).as(what).contains(refusal.input());
                assertThat(refusal.problem()).as(what).doesNotEndWith(".");
                assertThat(refusal.remedy()).as(what).startsWith("Enter ").doesNotEndWith(".");
            } catch (RuntimeException e) {
                throw new AssertionError(what, e);
            }
        }
        assertThat(worked).as("seed " + SEED + ": worksheets of " + kind.key()).isGreaterThan(TRIALS / 50);
    }

    private static void check(Worksheet sheet, String what) {
        for (Line line : sheet.lines()) {
            assertThat(line.key()).as(what).matches("[a-z][a-z0-9-]*");
            check(line.amount(), what + " line " + line.key());
            line.terms().forEach(t -> check(t.amount(), what + " line " + line.key() + " term " + t.symbol()));
        }
        sheet.tables().forEach(t -> t.rows().forEach(r -> r.forEach(a -> check(a, what + " table"))));
        assertThat(sheet.findings())
                .as(what)
                .allSatisfy(f -> assertThat(f.text()).endsWith("."));
    }

    private static void check(Amount amount, String what) {
        boolean sound = switch (amount) {
            case Amount.Quantity quantity -> quantity.measured().value().signum() >= 0;
            case Amount.Count count -> count.number() >= 0;
            case Amount.Packs packs -> packs.exact() >= 0 && Double.isFinite(packs.exact());
            case Amount.Number number -> number.value() >= 0 && Double.isFinite(number.value());
            case Amount.Both both ->
                both.metric().value() >= 0 && Double.isFinite(both.us().value());
            case Amount.On on -> on.date().getYear() > 2000;
            case Amount.Word word -> !word.text().isBlank();
        };
        assertThat(sound).as(what + ": " + amount).isTrue();
        assertThat(Show.amount(amount, UnitSystem.US)).as(what).isNotBlank();
        assertThat(Show.amount(amount, UnitSystem.METRIC)).as(what).isNotBlank();
    }

    private static List<String> names(Class<?> type) {
        List<String> names = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
            if (isGroup(component.getType())) {
                names.addAll(names(component.getType()));
            } else {
                names.add(component.getName());
            }
        }
        return names;
    }

    private static boolean isGroup(Class<?> type) {
        return type.isRecord() && type.isAnnotationPresent(Described.class);
    }

    private String[] given(Class<?> type) {
        List<String> given = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
            if (isGroup(component.getType())) {
                given.addAll(List.of(given(component.getType())));
                continue;
            }
            Described described = Objects.requireNonNull(component.getAnnotation(Described.class));
            boolean usual = !described.usual().isEmpty() && random.nextInt(3) > 0;
            given.add(component.getName());
            given.add(usual ? described.usual() : any(component.getType(), described));
        }
        return given.toArray(String[]::new);
    }

    private String any(Class<?> type, Described described) {
        if (type == PlanShape.class) {
            return shape();
        }
        if (type == Pieces.class) {
            return random.nextInt(1, 5) + " x " + metres(0.01, 7) + (random.nextBoolean() ? ", " + metres(0.1, 6) : "");
        }
        if (type == LocalTime.class) {
            return LocalTime.of(random.nextInt(24), random.nextInt(60)).toString();
        }
        if (type == boolean.class) {
            return Boolean.toString(random.nextBoolean());
        }
        if (type == String.class) {
            return "x".repeat(random.nextInt(1, 60));
        }
        if (type.isEnum()) {
            Object[] constants = type.getEnumConstants();
            return constants[random.nextInt(constants.length)]
                    .toString()
                    .toLowerCase(Locale.ROOT)
                    .replace('_', '-');
        }
        return within(type, described);
    }

    private String metres(double least, double most) {
        return String.format(Locale.ROOT, "%.4f m", random.nextDouble(least, most));
    }

    private String shape() {
        return switch (random.nextInt(4)) {
            case 0 -> metres(0.01, 20) + " x " + metres(0.01, 20);
            case 1 -> "round " + metres(0.01, 20);
            case 2 -> "ring " + metres(5, 20) + ", " + metres(0.01, 4.9);
            default -> "corners 0 m, 0 m; " + metres(1, 9) + ", 0 m; " + metres(1, 9) + ", " + metres(1, 9);
        };
    }

    /** At one of the limits, or between them, near the least more often than near the most. */
    private String within(Class<?> type, Described described) {
        double part = switch (random.nextInt(6)) {
            case 0 -> 0;
            case 1 -> 1;
            default -> Math.pow(random.nextDouble(), 3);
        };
        if (type == int.class) {
            int least = Integer.parseInt(described.least());
            return Integer.toString(least + (int) Math.round(part * (Integer.parseInt(described.most()) - least)));
        }
        if (type == BigDecimal.class) {
            return between(new BigDecimal(described.least()), new BigDecimal(described.most()), part)
                    .toPlainString();
        }
        for (Dimension dimension : Dimension.values()) {
            if (type.isInstance(dimension.of(BigDecimal.ONE))) {
                Measured least = Units.parse(dimension, described.least());
                Measured most = Units.parse(dimension, described.most());
                return dimension.of(between(least.value(), most.value(), part)).toString();
            }
        }
        throw new IllegalArgumentException("type [" + type + "] must have a writer");
    }

    private static BigDecimal between(BigDecimal least, BigDecimal most, double part) {
        return least.add(most.subtract(least).multiply(BigDecimal.valueOf(part)));
    }
}
