package org.firmset.homestead.file;

import java.util.ArrayList;
import java.util.List;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Inverter;
import org.firmset.homestead.PowerKit;
import org.firmset.homestead.WaterStore;
import org.jspecify.annotations.Nullable;

/** Battery, inverter and tanks hold and give what their own figures allow. */
final class PowerRules {
    private PowerRules() {}

    static List<Fault> faults(Homestead homestead) {
        List<Fault> faults = new ArrayList<>();
        @Nullable PowerKit power = homestead.power();
        if (power != null) {
            checkBattery(power, faults);
        }
        @Nullable WaterStore water = homestead.water();
        if (water != null && water.now().value().compareTo(water.tank().value()) > 0) {
            faults.add(new Fault(
                    "/water/now",
                    water.now().toString(),
                    "is more than the tanks hold, " + water.tank(),
                    "Write at most what they hold"));
        }
        return faults;
    }

    private static void checkBattery(PowerKit power, List<Fault> faults) {
        if (power.floorPercent() > 99) {
            faults.add(new Fault(
                    "/power/floorPercent",
                    power.floorPercent() + " %",
                    "leaves nothing of the battery to use",
                    "Write at most 99"));
        }
        if (power.kind() != null && power.capacity().value().signum() == 0) {
            faults.add(new Fault(
                    "/power/capacity",
                    power.capacity().toString(),
                    "leaves nothing to use, yet the kind of the battery is told",
                    "Write what the battery holds, or leave out its kind"));
        }
        @Nullable Inverter inverter = power.inverter();
        if (inverter != null
                && inverter.surge().value().compareTo(inverter.continuous().value()) < 0) {
            faults.add(new Fault(
                    "/power/inverter/surge",
                    inverter.surge().toString(),
                    "is under what it gives all the time, " + inverter.continuous(),
                    "Read its plate again: the surge rating is the greater one"));
        }
    }
}
