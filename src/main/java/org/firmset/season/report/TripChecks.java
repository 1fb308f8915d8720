package org.firmset.season.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.homestead.Conditions;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Stage;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.words.Dates;

/** Go or no-go for a trip, as far as the plan knows: what is settled, and what somebody must still look at. */
public final class TripChecks {
    private static final int TIGHT_PERCENT = 90;
    private static final int LOW_BATTERY_PERCENT = 15;

    private final Homestead homestead;
    private final SeasonReport.TripPart trip;
    private final List<TripCheck> checks = new ArrayList<>();

    private TripChecks(Homestead homestead, SeasonReport.TripPart trip) {
        this.homestead = homestead;
        this.trip = trip;
    }

    /** What must be looked at first, then what is settled. */
    public static List<TripCheck> of(Homestead homestead, SeasonReport.TripPart trip) {
        TripChecks checks = new TripChecks(homestead, trip);
        checks.weather();
        checks.loads();
        checks.power();
        checks.hours();
        return checks.checks.stream()
                .sorted(Comparator.comparing(TripCheck::settled))
                .toList();
    }

    private void weather() {
        Map<String, Stage> stages =
                homestead.stages().stream().collect(Collectors.toMap(Stage::key, Function.identity()));
        for (SeasonReport.DayPart day : trip.days()) {
            for (SeasonReport.WorkPart work : day.work()) {
                Conditions conditions =
                        Objects.requireNonNull(stages.get(work.stage())).conditions();
                if (conditions != null) {
                    weather(day, work, conditions);
                }
            }
        }
    }

    private void weather(SeasonReport.DayPart day, SeasonReport.WorkPart work, Conditions conditions) {
        UnitSystem units = homestead.units();
        List<String> needs = new ArrayList<>();
        if (conditions.dryDay()) {
            needs.add("a dry day");
        }
        if (conditions.coldestNight() != null) {
            needs.add("no night under " + Units.show(conditions.coldestNight(), units));
        }
        if (conditions.hottestDay() != null) {
            needs.add("no more than " + Units.show(conditions.hottestDay(), units));
        }
        if (!needs.isEmpty()) {
            checks.add(new TripCheck(
                    false,
                    "%s on %s needs %s: look at the forecast the evening before and at dawn."
                            .formatted(work.name(), Dates.day(day.date()), String.join(", ", needs))));
        }
    }

    private void loads() {
        for (SeasonReport.RunPart run : trip.runs()) {
            boolean tight = run.usedPercent() >= TIGHT_PERCENT;
            checks.add(new TripCheck(
                    !tight,
                    "%s carries %s; %s is used to %d %%%s"
                            .formatted(
                                    run.carrier(),
                                    Units.show(run.mass(), homestead.units()),
                                    run.nearestLimit(),
                                    run.usedPercent(),
                                    tight ? ": weigh it, and leave out what was not counted." : ".")));
            run.notes().forEach(note -> checks.add(new TripCheck(false, run.carrier() + ": " + note)));
        }
    }

    private void power() {
        Integer low = trip.batteryLowPercent();
        if (low != null) {
            boolean tight = low < LOW_BATTERY_PERCENT;
            checks.add(new TripCheck(
                    !tight,
                    "The battery goes down to %d %% of what may be used%s"
                            .formatted(
                                    low, tight ? ": leave with it full, and stop early if the sun stays away." : ".")));
        }
    }

    private void hours() {
        for (SeasonReport.DayPart day : trip.days()) {
            if (day.used().quarters() > 0) {
                boolean tight = day.used().quarters() * 100 >= day.usable().quarters() * TIGHT_PERCENT;
                checks.add(new TripCheck(
                        !tight,
                        "%s: %s of %s labour is planned%s"
                                .formatted(
                                        Dates.day(day.date()),
                                        day.used(),
                                        day.usable(),
                                        tight ? ": nothing to spare, so begin with what cannot stop half-way." : ".")));
            }
        }
    }
}
