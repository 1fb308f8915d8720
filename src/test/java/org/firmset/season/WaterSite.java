package org.firmset.season;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.time.LocalDate;
import java.util.Collections;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.HomesteadFile;
import org.firmset.homestead.file.Reading;

/**
 * A homestead with 60 mm of rain in every month, 2 mm a day in June, whose one stage takes 160 L on one day: 8 cans of 20 L, 21
 * kg each. Two weekends are open, 5 and 12 June; the four days from 1 June to the first bring 64 L from 10 m2 of roof at 80 %.
 */
public final class WaterSite {
    public static final LocalDate TUESDAY = LocalDate.of(2027, 6, 1);
    public static final String STORE = """
            "water": {"tank": "1000 L", "now": "100 L", "catchPercent": 80, "can": "20 L", "canMass": "1 kg"}""";
    public static final String WITH_ROOF = STORE.replace("\"catch", "\"roof\": \"10 m2\", \"catch");
    private static final String MONTH =
            "{\"meanHigh\": \"20 degC\", \"meanLow\": \"6 degC\", \"wetDays\": 8, \"sunHours\": 5, \"rain\": \"60 mm\"}";
    private static final String FILE = """
            {
              "format": "firmset-homestead", "version": 1,
              "name": "Bench", "units": "metric", "currency": "USD",
              "place": {"latitude": 45, "longitude": -120, "timeZone": "America/Los_Angeles", "climate": [%s]},
              "travel": {"distance": "100 km", "lostArriving": "1 h", "lostLeaving": "1 h",
                "costPerTrip": "60 USD", "costPerDay": "15 USD", "vehicle": "pickup",
                "mostExtraRuns": 1, "extraRunTime": "1 h", "extraRunCost": "25 USD"},
              "openDates": {"rules": [{"key": "weekends", "weekdays": ["saturday", "sunday"], "from": "2027-06-05",
                  "to": "2027-06-13", "siteHours": "8 h", "people": ["ann", "bo"]}]},
              "people": [{"key": "ann", "name": "Ann", "mass": "70 kg", "workShare": 100},
                {"key": "bo", "name": "Bo", "mass": "80 kg", "workShare": 100}],
              "subprojects": [{"key": "shop", "name": "Shop", "budget": "9000 USD", "priority": 1}],
              "stages": [
                {"key": "fill", "name": "Fill wall", "subproject": "shop", "labour": "8 h", "crew": 2,
                  "layout": "in-one-go", "water": "160 L"}],
              "vehicles": [{"key": "pickup", "name": "Pickup", "grossRating": "3200 kg", "emptyMass": "2300 kg",
                "standingKit": "50 kg", "bayVolume": "1.5 m3", "longestPiece": "2.4 m"}],
              "storage": {"dryVolume": "0 m3"} %s
            }
            """;

    private WaterSite() {}

    /** @param water the store as it is written, or nothing */
    public static Homestead with(String water) {
        return read(file(water));
    }

    public static String file(String water) {
        String months = String.join(",", Collections.nCopies(12, MONTH));
        return FILE.formatted(months, water.isEmpty() ? "" : ", " + water);
    }

    public static Homestead read(String file) {
        return switch (HomesteadFile.read(file.getBytes(UTF_8))) {
            case Reading.Accepted accepted -> accepted.homestead();
            case Reading.Refused refused -> throw new AssertionError(refused.faults());
        };
    }
}
