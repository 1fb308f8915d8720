package org.firmset.trade.power;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.firmset.trade.climate.Coordinates;
import org.firmset.trade.climate.Horizon;

/** A small camp for tests: 2000 Wh with a floor of 20 %, no losses, so that sums are easy by hand. */
final class Camp {
    static final LocalDate DAY = LocalDate.of(2027, 5, 1);
    static final Coordinates PLACE = new Coordinates(39.7, -105.2, ZoneId.of("America/Denver"));
    static final Panels PANELS = new Panels(400, 30, 180, 25, 0, 45, Panels.SunKnown.ON_PANELS);
    static final Battery BATTERY = new Battery(2000, 20, 100, 100, ColdShare.ALWAYS_ALL, 0);
    static final Inverter INVERTER = new Inverter(2000, 4000, 100);
    static final Tool MIXER = new Tool("mixer", 600, 50, 3);

    private Camp() {}

    static PowerSystem system() {
        return new PowerSystem(BATTERY, 0, INVERTER, Generator.NONE);
    }

    static PowerSystem withGenerator(double watts, LocalTime from, int mostMinutes) {
        return new PowerSystem(BATTERY, 0, INVERTER, new Generator(watts, 0.6, 2, from, mostMinutes));
    }

    static SunCurve sun(LocalDate date, double hours) {
        return SunCurve.of(new SunCurve.Site(PLACE, Horizon.FLAT, PANELS), new SunCurve.Day(date, hours, 15), 15);
    }

    static PowerDay dark(int day, PowerBlock... blocks) {
        return new PowerDay(DAY.plusDays(day), SunCurve.dark(15), 20, 0, List.of(blocks), 0);
    }

    static PowerBlock mixing(int hour, int minutes) {
        return new PowerBlock(MIXER, LocalTime.of(hour, 0), minutes);
    }

    static List<PowerDay> sunny(int days, double hours, PowerBlock... blocks) {
        List<PowerDay> made = new ArrayList<>();
        for (int i = 0; i < days; i++) {
            LocalDate date = DAY.plusDays(i);
            made.add(new PowerDay(date, sun(date, hours), 20, 0, List.of(blocks), 0));
        }
        return made;
    }
}
