package org.firmset.season.day;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.firmset.homestead.Cautions;
import org.firmset.homestead.Conditions;
import org.firmset.homestead.Hazard;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.PowerKit;
import org.firmset.homestead.Stage;
import org.firmset.season.day.DayOutlook.Asked;
import org.firmset.season.day.DayOutlook.Placed;
import org.firmset.season.day.DayOutlook.StageDay;
import org.firmset.season.day.DayOutlook.Work;
import org.jspecify.annotations.Nullable;

/** Works out what dates of a homestead can hold. Ask one writer for many dates. */
public final class DayOutlookWriter {
    /** Where the homestead names no other poor day: one in five has less sun. */
    private static final int USUAL_POOR_PERCENT = 20;

    private static final int DAY_MINUTES = 24 * 60;

    private final Homestead homestead;
    private final SiteSky sky;
    private final StageEnergy energy;
    private final Optional<DayPowerWriter> power;

    public DayOutlookWriter(Homestead homestead) {
        this.homestead = homestead;
        sky = SiteSky.of(homestead);
        energy = StageEnergy.of(homestead);
        power = SitePower.of(homestead).map(p -> new DayPowerWriter(homestead, p, sky, energy));
    }

    public SiteSky sky() {
        return sky;
    }

    /** The people that the open dates name for a date, or all when it is not open; at least one. */
    public int people(LocalDate date) {
        return OpenCalendar.trips(homestead, date).stream()
                .flatMap(List::stream)
                .filter(d -> d.date().equals(date))
                .map(d -> d.people().size())
                .findFirst()
                .map(n -> Math.max(1, n))
                .orElse(Math.max(1, homestead.people().size()));
    }

    /**
     * What the last of some days can hold.
     *
     * @param days one or more, each the day after the one before; the battery is full at the first midnight
     */
    public DayOutlook of(List<Asked> days) {
        Asked asked = days.getLast();
        LocalDate date = asked.date();
        List<Placed> work = placed(asked);
        int poor = sky.poorDayPercent().orElse(USUAL_POOR_PERCENT);
        return new DayOutlook(
                date,
                sky.sun(date),
                sky.civil(date),
                sky.usable(date),
                sky.weather(date).orElse(null),
                sky.meanSunHours(date),
                sky.poorSunHours(date, poor),
                poor,
                odds(date),
                work,
                power.map(p -> p.of(days, days.stream().map(this::placed).toList()))
                        .orElse(null),
                cautions(date));
    }

    private List<StageDay> odds(LocalDate date) {
        List<StageDay> odds = new ArrayList<>();
        for (Stage stage : homestead.stages()) {
            boolean left = stage.progress() == null || stage.progress().finishedOn() == null;
            @Nullable Conditions conditions = stage.conditions();
            if (left && conditions != null) {
                StageOdds.on(stage, sky, date)
                        .ifPresent(o -> odds.add(new StageDay(stage.name(), o, conditions.leastOdds())));
            }
        }
        return odds;
    }

    /** One after another from the start of work, after the drive, the thirstiest first, so that the sun can fill the battery again. */
    private List<Placed> placed(Asked asked) {
        UsableLight light = sky.usable(asked.date());
        int end = minute(light.from()) + (int) light.clock().toMinutes();
        int from = Math.min(minute(light.from()) + arriving(asked.date()), DAY_MINUTES - 1);
        List<Placed> placed = new ArrayList<>();
        List<Work> thirstiestFirst = asked.work().stream()
                .sorted(Comparator.comparingDouble((Work w) -> -energy.toolsWattHours(w.stage())))
                .toList();
        for (Work work : thirstiestFirst) {
            Stage stage = energy.known(work.stage());
            int wanted = (int) Math.ceil(work.labour().quarters() * 15.0 / asked.people());
            int minutes = Math.min(wanted, DAY_MINUTES - 1 - from);
            placed.add(new Placed(
                    stage.key(),
                    stage.name(),
                    work.labour(),
                    LocalTime.ofSecondOfDay(from * 60L),
                    Duration.ofMinutes(minutes),
                    energy.toolsWattHours(stage.key()) * asked.people(),
                    from + wanted > end && !stage.headLamp()));
            from += minutes;
        }
        return placed;
    }

    /** Minutes that the drive takes of the first morning of a trip. */
    private int arriving(LocalDate date) {
        boolean first = OpenCalendar.trips(homestead, LocalDate.MIN).stream()
                .anyMatch(days -> days.getFirst().date().equals(date));
        return first ? homestead.travel().lostArriving().quarters() * 15 : 0;
    }

    private static int minute(LocalTime time) {
        return time.toSecondOfDay() / 60;
    }

    private List<String> cautions(LocalDate date) {
        @Nullable PowerKit kit = homestead.power();
        if (kit == null) {
            return List.of();
        }
        List<Hazard> hazards = new ArrayList<>();
        if (kit.generator() != null) {
            hazards.add(Hazard.GENERATOR);
        }
        hazards.add(Hazard.BATTERY);
        hazards.add(Hazard.TEMPORARY_POWER);
        List<String> cautions = new ArrayList<>(Cautions.of(hazards));
        boolean charges = SitePower.of(homestead)
                .map(p -> p.system().battery().charges(sky.airCelsius(date)))
                .orElse(true);
        if (!charges) {
            cautions.addFirst(
                    "The battery is colder than it may be charged at in the mean of this day, so neither sun nor"
                            + " generator charges it. Bring it where it is warm first.");
        }
        return cautions;
    }
}
