package org.firmset.season.day;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Stage;
import org.firmset.homestead.StageLayout;
import org.firmset.homestead.ToolTime;
import org.firmset.season.day.DayOutlook.Asked;
import org.firmset.season.day.DayOutlook.DayPower;
import org.firmset.season.day.DayOutlook.Placed;
import org.firmset.season.day.DayOutlook.Split;
import org.firmset.season.day.DayOutlook.StageOverload;
import org.firmset.trade.power.ChargeCurve;
import org.firmset.trade.power.PowerBlock;
import org.firmset.trade.power.PowerDay;
import org.firmset.trade.power.PowerSystem;
import org.firmset.trade.power.Remedy;
import org.firmset.trade.power.Tool;
import org.firmset.trade.power.WorkSplit;
import org.jspecify.annotations.Nullable;

/** Follows the battery through days of work. */
final class DayPowerWriter {
    private static final int STEP_MINUTES = 15;
    private static final int FULL = 100;
    private static final double QUARTER_MINUTES = 15;
    private static final double LEAST_MINUTES = 0.01;
    private static final double DAY_MINUTES = 24 * 60;

    /** What draws more is as much too much for any battery on site. */
    private static final double MOST_WATTS = 1e5;

    private final Homestead homestead;
    private final SitePower power;
    private final SiteSky sky;
    private final StageEnergy energy;

    DayPowerWriter(Homestead homestead, SitePower power, SiteSky sky, StageEnergy energy) {
        this.homestead = homestead;
        this.power = power;
        this.sky = sky;
        this.energy = energy;
    }

    /** @param placed the work of each day */
    DayPower of(List<Asked> asked, List<List<Placed>> placed) {
        PowerSystem system = power.system();
        List<PowerDay> days = new ArrayList<>();
        for (int i = 0; i < asked.size(); i++) {
            days.add(day(asked.get(i).date(), placed.get(i), asked.get(i).generatorMinutes()));
        }
        double startPercent = startPercent(days);
        PowerDay today = days.getLast();
        ChargeCurve curve = ChargeCurve.of(system, List.of(today), startPercent);
        boolean broken = curve.broken().isPresent();
        List<Placed> work = placed.getLast();
        return new DayPower(
                system,
                today,
                curve,
                broken ? Remedy.of(system, List.of(today), startPercent) : List.of(),
                broken ? split(work, asked.getLast(), startPercent).orElse(null) : null,
                work.stream()
                        .flatMap(w -> energy.overloads(w.stage()).stream().map(o -> new StageOverload(w.name(), o)))
                        .toList());
    }

    private PowerDay day(LocalDate date, List<Placed> work, int generatorMinutes) {
        return new PowerDay(
                date,
                sky.curve(date, STEP_MINUTES),
                sky.airCelsius(date),
                power.baseWatts(),
                work.stream().map(DayPowerWriter::block).toList(),
                Math.min(generatorMinutes, power.system().generator().mostMinutes()));
    }

    private static PowerBlock block(Placed work) {
        return new PowerBlock(tool(work), work.from(), (int) work.clock().toMinutes());
    }

    /** All tools of a stage together, in mean. */
    private static Tool tool(Placed work) {
        return new Tool(work.name(), Math.min(work.watts(), MOST_WATTS), FULL, 1);
    }

    /** Charge at the last midnight. */
    private double startPercent(List<PowerDay> days) {
        double capacity = power.system().battery().capacityWattHours();
        if (days.size() == 1 || capacity == 0) {
            return FULL;
        }
        LocalDateTime midnight = days.getLast().date().atStartOfDay();
        ChargeCurve before = ChargeCurve.of(power.system(), days.subList(0, days.size() - 1), FULL);
        return before.points().stream()
                .filter(p -> !p.at().isAfter(midnight))
                .reduce((a, b) -> b)
                .map(p -> Math.clamp(p.wattHours() / capacity * 100, 0, 100))
                .orElse((double) FULL);
    }

    /** The other work of the day stays where it is. */
    private Optional<Split> split(List<Placed> work, Asked asked, double startPercent) {
        if (work.isEmpty()
                || work.getFirst().watts() == 0
                || work.getFirst().clock().isZero()) {
            return Optional.empty();
        }
        Placed thirstiest = work.getFirst();
        LocalDate date = asked.date();
        List<PowerDay> days = List.of(
                day(date, work.subList(1, work.size()), asked.generatorMinutes()), day(date.plusDays(1), List.of(), 0));
        Stage stage = energy.known(thirstiest.stage());
        @Nullable String material = material(stage);
        double labourMinutes = thirstiest.labour().quarters() * QUARTER_MINUTES / asked.people();
        int packs = material == null
                ? 0
                : (int) Math.ceil((double) StageEnergy.packs(stage, material)
                        * thirstiest.labour().quarters()
                        / stage.labour().quarters());
        // a nail takes no time, and a pack that takes more than a day cannot be counted by the day
        boolean byPack = packs > 0 && labourMinutes / packs >= LEAST_MINUTES && labourMinutes / packs <= DAY_MINUTES;
        int units = byPack ? packs : thirstiest.labour().quarters();
        WorkSplit.Work pieces = new WorkSplit.Work(tool(thirstiest), labourMinutes / units, thirstiest.from(), (int)
                sky.usable(date).clock().toMinutes());
        return Optional.of(new Split(
                stage.name(),
                stage.layout() == StageLayout.IN_ONE_GO,
                homestead.materials().stream()
                        .filter(m -> byPack && m.key().equals(material))
                        .findFirst()
                        .orElse(null),
                WorkSplit.of(power.system(), days, startPercent, pieces, units)));
    }

    /** What the stage is counted by: that whose packs make its tools run longest. */
    private static @Nullable String material(Stage stage) {
        return stage.toolTimes().stream()
                .filter(t -> t.material() != null && StageEnergy.packs(stage, t.material()) > 0)
                .max(Comparator.comparing(ToolTime::minutes))
                .map(ToolTime::material)
                .orElse(null);
    }
}
