package org.firmset.season.day;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.homestead.AddedDate;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.OpenRule;
import org.firmset.homestead.Person;
import org.firmset.measure.Hours;

/** Works out from rules, added and removed dates when trips are possible. */
public final class OpenCalendar {
    private final Map<String, Person> people;
    private final TreeMap<LocalDate, OpenDay> days = new TreeMap<>();

    private OpenCalendar(Homestead homestead) {
        people = homestead.people().stream().collect(Collectors.toMap(Person::key, Function.identity()));
        homestead.openDates().rules().forEach(this::apply);
        homestead.openDates().removed().forEach(days::remove);
        homestead.openDates().added().forEach(this::apply);
    }

    /** The open days from a date on, in possible trips: days that follow each other belong together. */
    public static List<List<OpenDay>> trips(Homestead homestead, LocalDate from) {
        List<List<OpenDay>> trips = new ArrayList<>();
        for (OpenDay day : new OpenCalendar(homestead).days.tailMap(from).values()) {
            boolean follows = !trips.isEmpty()
                    && trips.getLast().getLast().date().plusDays(1).equals(day.date());
            if (!follows) {
                trips.add(new ArrayList<>());
            }
            trips.getLast().add(day);
        }
        return trips;
    }

    /**
     * The open days of a trip of a plan.
     *
     * @throws IllegalArgumentException when it is not open any more
     */
    public static List<OpenDay> tripOf(Homestead homestead, LocalDate from, LocalDate firstDate) {
        return trips(homestead, from).stream()
                .filter(days -> days.getFirst().date().equals(firstDate))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("trip [" + firstDate + "] is not open any more"));
    }

    private void apply(OpenRule rule) {
        rule.from()
                .datesUntil(rule.to().plusDays(1))
                .filter(date -> rule.weekdays().contains(date.getDayOfWeek()))
                .forEach(date -> put(date, rule.siteHours(), rule.people()));
    }

    private void apply(AddedDate added) {
        put(added.date(), added.siteHours(), added.people());
    }

    private void put(LocalDate date, Hours siteHours, List<String> keys) {
        days.put(
                date,
                new OpenDay(date, siteHours, keys.stream().map(people::get).toList()));
    }
}
