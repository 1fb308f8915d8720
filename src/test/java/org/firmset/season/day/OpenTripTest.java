package org.firmset.season.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.firmset.homestead.OpenDates;
import org.firmset.homestead.OpenTrip;
import org.firmset.season.RandomHomestead;
import org.firmset.season.TwoWeekendsFile;
import org.junit.jupiter.api.Test;

/** What is said of trips that are past agrees with the calendar that plans are made from. */
class OpenTripTest {
    private static final long SEED = Long.getLong("firmset.seed", 2027);
    private static final LocalDate FROM = LocalDate.of(2026, 1, 1);

    @Test
    void the_days_and_trips_of_random_homesteads_are_those_of_their_calendars() {
        int compared = 0;
        for (RandomHomestead made : RandomHomestead.many(40, SEED)) {
            OpenDates dates = made.homestead().openDates();
            List<List<OpenDay>> trips = OpenCalendar.trips(made.homestead(), FROM);
            Set<LocalDate> open =
                    trips.stream().flatMap(List::stream).map(OpenDay::date).collect(Collectors.toSet());
            String seed = "seed " + made.seed();
            assertThat(FROM.datesUntil(FROM.plusYears(3)).filter(dates::isOpen).collect(Collectors.toSet()))
                    .as(seed)
                    .isEqualTo(open);
            for (List<OpenDay> trip : trips) {
                OpenTrip days =
                        new OpenTrip(trip.getFirst().date(), trip.getLast().date());
                assertThat(OpenTrip.around(dates, trip.getLast().date()))
                        .as(seed)
                        .contains(days);
                assertThat(OpenTrip.latest(dates, trip.getFirst().date()))
                        .as(seed)
                        .contains(days);
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(100);
    }

    @Test
    void a_day_that_is_not_free_belongs_to_no_trip_and_the_latest_is_the_one_before() {
        OpenDates dates = TwoWeekendsFile.read().openDates();
        LocalDate saturday = LocalDate.of(2027, 5, 8);
        OpenTrip weekend = new OpenTrip(saturday, saturday.plusDays(1));
        assertThat(OpenTrip.around(dates, saturday.plusDays(2))).isEmpty();
        assertThat(OpenTrip.latest(dates, saturday.plusDays(9))).contains(weekend);
        assertThat(OpenTrip.latest(dates, saturday.minusDays(1))).isEmpty();
        assertThat(weekend.holds(saturday.plusDays(1))).isTrue();
        assertThat(weekend.holds(saturday.plusDays(2))).isFalse();
    }
}
