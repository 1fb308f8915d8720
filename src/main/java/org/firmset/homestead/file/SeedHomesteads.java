package org.firmset.homestead.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.OpenDates;
import org.firmset.homestead.OpenRule;
import org.firmset.homestead.Person;
import org.firmset.homestead.Place;
import org.firmset.homestead.Storage;
import org.firmset.homestead.Travel;
import org.firmset.homestead.Vehicle;
import org.firmset.measure.Cash;
import org.firmset.measure.Hours;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Volume;

/** Homesteads to begin with. */
public final class SeedHomesteads {
    private static final String DEMO = "/seed-data/juniper-bench.json";
    private static final String FIRST_PERSON = "first";
    private static final String FIRST_VEHICLE = "vehicle";

    private SeedHomesteads() {}

    /** The demo, dated to the season that begins on or after {@code today}. */
    public static Homestead demo(LocalDate today) {
        return Redating.toSeasonAfter(asWritten(), today);
    }

    /** By how many weeks the dates of that demo lie behind those of its file. */
    public static int weeksMoved(LocalDate today) {
        return Redating.weeks(asWritten(), today);
    }

    private static Homestead asWritten() {
        try (InputStream in = Objects.requireNonNull(SeedHomesteads.class.getResourceAsStream(DEMO))) {
            return switch (HomesteadFile.read(in)) {
                case Reading.Accepted accepted -> accepted.homestead();
                case Reading.Refused refused ->
                    throw new IllegalStateException("The demo is not accepted: "
                            + refused.faults().getFirst().line());
            };
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** As little as a homestead can have: one person, one vehicle of usual size, weekends for half a year. */
    public static Homestead empty(String name, UnitSystem units, LocalDate today) {
        String currency = units == UnitSystem.US ? "USD" : "EUR";
        var nothing = Cash.ofCents(0, currency);
        return new Homestead(
                name,
                units,
                currency,
                new Place(BigDecimal.ZERO, BigDecimal.ZERO, "UTC", List.of(), null, List.of(), List.of(), List.of()),
                new Travel(
                        Length.ofMetres(100_000),
                        Hours.ofWhole(2),
                        Hours.ofWhole(2),
                        nothing,
                        nothing,
                        FIRST_VEHICLE,
                        null,
                        1,
                        Hours.ofWhole(2),
                        nothing),
                new OpenDates(
                        List.of(new OpenRule(
                                "weekends",
                                List.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY),
                                today,
                                today.plusMonths(6),
                                Hours.ofWhole(8),
                                List.of(FIRST_PERSON))),
                        List.of(),
                        List.of(),
                        null),
                List.of(new Person(FIRST_PERSON, "First builder", Mass.ofKilograms(90), 100)),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(new Vehicle(
                        FIRST_VEHICLE,
                        "Vehicle",
                        Mass.ofKilograms(3000),
                        Mass.ofKilograms(2200),
                        Mass.ofKilograms(50),
                        Volume.ofCubicMetres(1.5),
                        Length.ofMetres(2.4),
                        null,
                        null,
                        null,
                        null,
                        null)),
                List.of(),
                null,
                null,
                null,
                new Storage(Volume.ofCubicMetres(1)),
                List.of(),
                List.of(),
                List.of(),
                null);
    }
}
