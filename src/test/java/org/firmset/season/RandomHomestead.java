package org.firmset.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Person;
import org.firmset.homestead.Storage;
import org.firmset.homestead.Subproject;
import org.firmset.homestead.file.HomesteadRules;
import org.firmset.measure.Cash;
import org.firmset.measure.Mass;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Volume;

/**
 * A homestead made by chance, sound in itself, that uses everything a homestead can hold. The same seed always gives the
 * same homestead.
 *
 * @param statusDate the date to plan on
 */
public record RandomHomestead(long seed, Homestead homestead, LocalDate statusDate) {
    static final String CURRENCY = "USD";
    private static final LocalDate EARLIEST_SEASON = LocalDate.of(2027, 3, 1);

    public static RandomHomestead of(long seed) {
        Dice dice = new Dice(seed);
        Size size = Size.by(dice);
        LocalDate seasonStart = dice.date(EARLIEST_SEASON, 0, 120);
        LocalDate statusDate = dice.chance(75) ? seasonStart.minusDays(dice.between(0, 20)) : seasonStart.plusDays(9);
        Homestead homestead = RandomWater.added(homestead(dice, size, seasonStart, statusDate), seed);
        assertThat(HomesteadRules.faults(homestead))
                .as("faults of the homestead made from seed %d", seed)
                .isEmpty();
        return new RandomHomestead(seed, homestead, statusDate);
    }

    /** As many as asked for, their seeds drawn from one. */
    public static List<RandomHomestead> many(int count, long baseSeed) {
        return IntStream.range(0, count)
                .mapToObj(i -> of(baseSeed * 1_000_003 + i))
                .toList();
    }

    private static Homestead homestead(Dice dice, Size size, LocalDate seasonStart, LocalDate statusDate) {
        List<Person> people = people(dice, size);
        RandomCalendar calendar = RandomCalendar.of(dice, size, seasonStart, people);
        RandomKit kit = RandomKit.of(dice, size);
        RandomSupplies supplies = RandomSupplies.of(dice, size, statusDate).fitting(kit);
        List<Subproject> subprojects = subprojects(dice, size, seasonStart);
        RandomWork work = new RandomWork(dice, size, calendar, supplies, kit, people.size(), subprojects, statusDate);
        return new Homestead(
                dice.one(List.of("North Fork", "Höhenhof – am Wald", "Casa \"El Alto\"")),
                dice.any(UnitSystem.class),
                CURRENCY,
                kit.place(),
                kit.travel(),
                calendar.openDates(),
                people,
                subprojects,
                work.stages(),
                work.waits(),
                supplies.materials(),
                supplies.suppliers(),
                kit.tools(),
                kit.vehicles(),
                kit.trailers(),
                kit.power(),
                kit.spendingLimit(),
                null,
                new Storage(Volume.ofCubicMetres(dice.between(0, 12) / 2.0)),
                supplies.stock(),
                work.pins(),
                List.of(),
                null);
    }

    private static List<Person> people(Dice dice, Size size) {
        return IntStream.rangeClosed(1, dice.between(1, size.mostPeople()))
                .mapToObj(i -> new Person(
                        "person-" + i,
                        "Person " + i,
                        Mass.ofKilograms(dice.between(40, 120)),
                        dice.chance(10) ? dice.between(10, 150) : dice.between(60, 110)))
                .toList();
    }

    private static List<Subproject> subprojects(Dice dice, Size size, LocalDate seasonStart) {
        return IntStream.rangeClosed(1, dice.between(1, size.mostSubprojects()))
                .mapToObj(i -> new Subproject(
                        "subproject-" + i,
                        "Subproject " + i,
                        Cash.ofCents(dice.between(0, 5_000_000), CURRENCY),
                        dice.between(1, dice.chance(50) ? 10 : 1000),
                        dice.chance(50) ? dice.date(seasonStart, 0, 200) : null))
                .toList();
    }
}
