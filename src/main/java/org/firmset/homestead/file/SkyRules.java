package org.firmset.homestead.file;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.firmset.homestead.ForecastDay;
import org.firmset.homestead.HorizonSector;
import org.firmset.homestead.Place;

/** What hides the sun has a width, and a forecast is whole. */
final class SkyRules {
    private final List<Fault> faults = new ArrayList<>();

    private SkyRules() {}

    static List<Fault> faults(Place place) {
        SkyRules rules = new SkyRules();
        for (int i = 0; i < place.horizon().size(); i++) {
            rules.check(place.horizon().get(i), "/place/horizon/" + i);
        }
        rules.checkForecast(place.forecast());
        return rules.faults;
    }

    private void check(HorizonSector sector, String pointer) {
        if (sector.fromDegrees().compareTo(sector.toDegrees()) == 0) {
            faults.add(new Fault(
                    pointer + "/toDegrees",
                    sector.toDegrees().toPlainString(),
                    "is where the sector begins as well",
                    "Write where it ends; 0 to 360 is all around"));
        }
    }

    private void checkForecast(List<ForecastDay> days) {
        Set<LocalDate> dates = new HashSet<>();
        for (int i = 0; i < days.size(); i++) {
            ForecastDay day = days.get(i);
            String pointer = "/place/forecast/" + i;
            if (!dates.add(day.date())) {
                refuseDate(pointer, day.date(), "has a forecast already", "Keep one line for each date");
            }
            if (day.low().value().compareTo(day.high().value()) > 0) {
                faults.add(new Fault(
                        pointer + "/low",
                        day.low().toString(),
                        "is over the high " + day.high(),
                        "Write the lower of the two here"));
            }
        }
        checkGaps(days, dates);
    }

    private void checkGaps(List<ForecastDay> days, Set<LocalDate> dates) {
        LocalDate first = dates.stream().min(LocalDate::compareTo).orElse(LocalDate.MIN);
        for (int i = 0; i < days.size(); i++) {
            LocalDate date = days.get(i).date();
            if (date.isAfter(first) && !dates.contains(date.minusDays(1))) {
                refuseDate(
                        "/place/forecast/" + i,
                        date,
                        "comes after a gap in the forecast",
                        "Add " + date.minusDays(1) + ", or leave out the days behind the gap");
            }
        }
    }

    private void refuseDate(String pointer, LocalDate date, String problem, String remedy) {
        faults.add(new Fault(pointer + "/date", date.toString(), problem, remedy));
    }
}
