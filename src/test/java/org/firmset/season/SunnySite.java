package org.firmset.season;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Collections;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.HomesteadFile;
import org.firmset.homestead.file.Reading;

/**
 * A homestead at 45° north where all months are alike: 20 °C by day, 6 °C by night, no rain, 5 hours of full sun, 4 m/s of
 * wind. Its slab takes 20 bags in 8 hours: 10 minutes of the mixer (600 W, half of the time) a bag, and for each hour of labour 15
 * minutes of the vibrator (400 W) and 40 Wh besides.
 */
public final class SunnySite {
    private static final String MONTH =
            "{\"meanHigh\": \"20 degC\", \"meanLow\": \"6 degC\", \"wetDays\": 0, \"sunHours\": 5, \"wind\": \"4 m/s\"}";
    private static final String FILE = """
            {
              "format": "firmset-homestead", "version": 1,
              "name": "Bench", "units": "metric", "currency": "USD",
              "place": {"latitude": 45, "longitude": -120, "timeZone": "America/Los_Angeles", "climate": [%s] %s},
              "travel": {"distance": "100 km", "lostArriving": "0 h", "lostLeaving": "1 h",
                "costPerTrip": "60 USD", "costPerDay": "15 USD", "vehicle": "pickup",
                "mostExtraRuns": 1, "extraRunTime": "2 h", "extraRunCost": "25 USD"},
              "openDates": {"rules": [{"key": "weekends", "weekdays": ["saturday", "sunday"], "from": "2027-05-01",
                  "to": "2027-09-30", "siteHours": "8 h", "people": ["ann", "bo"]}],
                "routine": {"earliestHour": 7, "meals": "1.5 h"}},
              "people": [{"key": "ann", "name": "Ann", "mass": "70 kg", "workShare": 100},
                {"key": "bo", "name": "Bo", "mass": "80 kg", "workShare": 100}],
              "subprojects": [{"key": "shop", "name": "Shop", "budget": "9000 USD", "priority": 1}],
              "stages": [
                {"key": "slab", "name": "Pour slab", "subproject": "shop", "labour": "8 h", "crew": 2,
                  "layout": "splittable", "energyPerHour": "40 Wh", "tools": ["vibrator", "shovel"],
                  "toolTimes": [{"tool": "mixer", "minutes": 10, "material": "mix"},
                    {"tool": "vibrator", "minutes": 15}],
                  "conditions": {"coldestNight": "2 degC", "coldestDay": "16 degC", "mostWind": "8 m/s",
                    "dryDay": true, "leastOdds": 67},
                  "needs": [{"material": "mix", "packs": 20}]},
                {"key": "frame", "name": "Raise frame", "subproject": "shop", "labour": "20 h", "crew": 2,
                  "layout": "splittable"}],
              "materials": [{"key": "mix", "name": "Concrete mix", "pack": "bag", "mass": "36 kg", "volume": "0.017 m3",
                "dry": true}],
              "tools": [{"key": "mixer", "name": "Mixer", "count": 1, "draw": "600 W", "dutyPercent": 50,
                  "surgeFactor": 3},
                {"key": "vibrator", "name": "Vibrator", "count": 1, "draw": "400 W"},
                {"key": "shovel", "name": "Shovel", "count": 2}],
              "vehicles": [{"key": "pickup", "name": "Pickup", "grossRating": "3200 kg", "emptyMass": "2300 kg",
                "standingKit": "50 kg", "bayVolume": "1.5 m3", "longestPiece": "2.4 m"}],
              "power": %s,
              "storage": {"dryVolume": "2 m3"}
            }
            """;
    private static final String POWER = """
            {"capacity": "2 kWh", "floorPercent": 20, "panels": "%d W", "yieldPercent": 75%s}""";

    private SunnySite() {}

    public static Homestead make() {
        return with("", "");
    }

    /** @param power more of the power kit, and {@code place} more of the place, each beginning with a comma */
    public static Homestead with(String power, String place) {
        return with(power, place, 400);
    }

    /** The same with other panels. */
    public static Homestead with(String power, String place, int panelWatts) {
        String months = String.join(",", Collections.nCopies(12, MONTH));
        String file = FILE.formatted(months, place, POWER.formatted(panelWatts, power));
        return switch (HomesteadFile.read(file.getBytes(UTF_8))) {
            case Reading.Accepted accepted -> accepted.homestead();
            case Reading.Refused refused -> throw new AssertionError(refused.faults());
        };
    }
}
