package org.firmset.season;

import static java.time.DayOfWeek.FRIDAY;
import static java.time.DayOfWeek.SATURDAY;
import static java.time.DayOfWeek.SUNDAY;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.firmset.homestead.AddedDate;
import org.firmset.homestead.OpenDates;
import org.firmset.homestead.OpenRule;
import org.firmset.homestead.Person;
import org.firmset.measure.Hours;

/**
 * Open dates made by chance.
 *
 * @param dates dates that rules allow, before any are added or removed
 */
record RandomCalendar(OpenDates openDates, LocalDate first, LocalDate last, List<LocalDate> dates) {
    static RandomCalendar of(Dice dice, Size size, LocalDate first, List<Person> people) {
        int weeks = size == Size.TINY ? dice.between(2, 3) : dice.between(size == Size.LARGE ? 8 : 3, size.mostTrips());
        LocalDate last = first.plusWeeks(weeks).minusDays(1);
        List<OpenRule> rules = rules(dice, size, first, last, people);
        List<LocalDate> dates = first.datesUntil(last.plusDays(1))
                .filter(d -> rules.stream().anyMatch(r -> r.weekdays().contains(d.getDayOfWeek())))
                .toList();
        List<AddedDate> added = new ArrayList<>();
        List<LocalDate> removed = new ArrayList<>();
        if (size != Size.TINY) {
            if (dice.chance(30)) {
                added.add(new AddedDate(dice.date(first, 0, weeks * 7), hours(dice, size), keys(dice, people)));
            }
            if (dice.chance(30)) {
                removed.addAll(dice.some(dates, 3));
            }
        }
        return new RandomCalendar(new OpenDates(rules, added, removed, null), first, last, dates);
    }

    private static List<OpenRule> rules(Dice dice, Size size, LocalDate first, LocalDate last, List<Person> people) {
        List<DayOfWeek> weekend = dice.one(List.of(
                List.of(SATURDAY, SUNDAY),
                List.of(SATURDAY, SUNDAY),
                List.of(SATURDAY),
                size == Size.TINY ? List.of(SUNDAY) : List.of(FRIDAY, SATURDAY, SUNDAY)));
        List<OpenRule> rules = new ArrayList<>();
        rules.add(new OpenRule("weekends", weekend, first, last, hours(dice, size), keys(dice, people)));
        if (size != Size.TINY && dice.chance(20)) {
            LocalDate from = dice.date(first, 0, 14);
            rules.add(new OpenRule(
                    "holidays",
                    List.of(DayOfWeek.values()),
                    from,
                    from.plusDays(dice.between(0, 8)),
                    hours(dice, size),
                    keys(dice, people)));
        }
        return rules;
    }

    private static Hours hours(Dice dice, Size size) {
        return new Hours(size == Size.TINY ? dice.between(5, 10) : dice.between(22, 40));
    }

    /** Mostly everybody comes. */
    private static List<String> keys(Dice dice, List<Person> people) {
        List<Person> who = dice.chance(70) ? people : dice.some(people, people.size());
        return who.stream().map(Person::key).toList();
    }
}
