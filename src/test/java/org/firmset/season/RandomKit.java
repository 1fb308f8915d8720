package org.firmset.season;

import java.math.BigDecimal;
import java.time.Month;
import java.util.List;
import java.util.stream.IntStream;
import org.firmset.homestead.BetweenTrips;
import org.firmset.homestead.Generator;
import org.firmset.homestead.MonthNormal;
import org.firmset.homestead.Place;
import org.firmset.homestead.PowerKit;
import org.firmset.homestead.SpendingLimit;
import org.firmset.homestead.Tool;
import org.firmset.homestead.Trailer;
import org.firmset.homestead.Travel;
import org.firmset.homestead.Vehicle;
import org.firmset.measure.Cash;
import org.firmset.measure.Energy;
import org.firmset.measure.Hours;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Measured;
import org.firmset.measure.Power;
import org.firmset.measure.Temperature;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

/** Place, drive, vehicles, tools and power made by chance. */
record RandomKit(
        Place place,
        Travel travel,
        List<Tool> tools,
        List<Vehicle> vehicles,
        List<Trailer> trailers,
        @Nullable PowerKit power,
        @Nullable SpendingLimit spendingLimit) {
    static RandomKit of(Dice dice, Size size) {
        Vehicle vehicle = vehicle(dice);
        boolean tows = vehicle.towRating() != null && dice.chance(50);
        List<Trailer> trailers = tows ? List.of(trailer(dice)) : List.of();
        List<Tool> tools = List.of(
                new Tool(
                        "mixer",
                        "Mixer",
                        dice.between(1, 3),
                        dice.chance(70) ? Power.ofWatts(550) : null,
                        dice.chance(40),
                        100,
                        null,
                        null),
                new Tool("level", "Level", 1, null, dice.chance(30), 100, null, null));
        return new RandomKit(
                place(dice),
                travel(dice, size, vehicle, trailers),
                tools,
                List.of(RandomMeasures.added(vehicle, tows)),
                trailers.stream().map(RandomMeasures::added).toList(),
                dice.chance(70) ? power(dice) : null,
                dice.chance(20) ? limit(dice, size) : null);
    }

    /** About what a month costs: a few drives, and where there are materials some packs and deliveries. */
    private static SpendingLimit limit(Dice dice, Size size) {
        int cents = size == Size.TINY ? dice.between(0, 80_000) : dice.between(20_000, 600_000);
        return new SpendingLimit(Cash.ofCents(cents, RandomHomestead.CURRENCY), dice.chance(50));
    }

    private static Place place(Dice dice) {
        List<MonthNormal> climate = dice.chance(85) ? climate(dice) : List.of();
        return new Place(
                BigDecimal.valueOf(dice.between(30, 60)),
                new BigDecimal("-105.25"),
                "America/Denver",
                climate,
                // a truck of 12 t with the heaviest pack of 2.5 t still comes
                dice.chance(40) ? Mass.ofKilograms(dice.between(14_500, 18_000)) : null,
                dice.chance(30) ? dice.some(List.of(Month.values()), 11) : List.of(),
                List.of(),
                List.of());
    }

    private static List<MonthNormal> climate(Dice dice) {
        int mean = dice.between(2, 14);
        int swing = dice.between(6, 14);
        return IntStream.range(0, 12)
                .mapToObj(m -> {
                    double wave = -Math.cos(Math.PI * (m + 0.5) / 6);
                    return new MonthNormal(
                            celsius(mean + swing * wave + 6),
                            celsius(mean + swing * wave - 6),
                            tenths(6 + 2 * wave),
                            tenths(4 + 2.5 * wave),
                            null,
                            null);
                })
                .toList();
    }

    private static Temperature celsius(double value) {
        return new Temperature(tenths(value));
    }

    private static BigDecimal tenths(double value) {
        return Measured.normal(BigDecimal.valueOf(Math.round(value * 10), 1));
    }

    private static Travel travel(Dice dice, Size size, Vehicle vehicle, List<Trailer> trailers) {
        return new Travel(
                Length.ofMetres(dice.between(1, 300) * 1000.0),
                new Hours(dice.between(0, size == Size.TINY ? 1 : 6)),
                new Hours(dice.between(0, size == Size.TINY ? 1 : 4)),
                Cash.ofCents(dice.between(0, 20_000), RandomHomestead.CURRENCY),
                Cash.ofCents(dice.between(0, 5_000), RandomHomestead.CURRENCY),
                vehicle.key(),
                trailers.isEmpty() ? null : trailers.getFirst().key(),
                dice.between(0, 2),
                new Hours(dice.between(0, 16)),
                Cash.ofCents(dice.between(0, 4_000), RandomHomestead.CURRENCY));
    }

    private static Vehicle vehicle(Dice dice) {
        return new Vehicle(
                "pickup",
                "Pickup",
                Mass.ofKilograms(dice.between(2800, 3500)),
                Mass.ofKilograms(dice.between(1900, 2300)),
                Mass.ofKilograms(dice.between(0, 150)),
                Volume.ofCubicMetres(dice.between(8, 30) / 10.0),
                Length.ofMetres(dice.between(18, 45) / 10.0),
                dice.chance(70) ? Mass.ofKilograms(dice.between(900, 3000)) : null,
                null,
                null,
                null,
                null);
    }

    private static Trailer trailer(Dice dice) {
        return new Trailer(
                "trailer",
                "Trailer",
                Mass.ofKilograms(dice.between(750, 2500)),
                Mass.ofKilograms(dice.between(200, 600)),
                dice.between(0, 15),
                Volume.ofCubicMetres(dice.between(10, 50) / 10.0),
                Length.ofMetres(dice.between(20, 62) / 10.0),
                null);
    }

    private static PowerKit power(Dice dice) {
        return new PowerKit(
                Energy.ofWattHours(dice.between(800, 6000)),
                dice.between(0, 50),
                Power.ofWatts(dice.between(0, 1500)),
                dice.between(40, 95),
                dice.chance(40) ? generator(dice) : null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                BetweenTrips.CHARGED_AT_HOME,
                null,
                null,
                null);
    }

    private static Generator generator(Dice dice) {
        return new Generator(
                Power.ofWatts(dice.between(300, 3000)),
                new Hours(dice.between(0, 24)),
                Cash.ofCents(dice.between(0, 200), RandomHomestead.CURRENCY),
                null,
                8);
    }
}
