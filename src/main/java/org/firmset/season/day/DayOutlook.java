package org.firmset.season.day;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.firmset.homestead.Material;
import org.firmset.measure.Hours;
import org.firmset.trade.climate.Light;
import org.firmset.trade.climate.SiteDayOdds;
import org.firmset.trade.climate.WeatherDay;
import org.firmset.trade.power.ChargeCurve;
import org.firmset.trade.power.Overload;
import org.firmset.trade.power.PowerDay;
import org.firmset.trade.power.PowerSystem;
import org.firmset.trade.power.Remedy;
import org.firmset.trade.power.WorkSplit;
import org.jspecify.annotations.Nullable;

/**
 * What one date can hold: its light, its weather, and how the battery goes with some work.
 *
 * @param weatherOrNull null when nothing is known of the climate
 * @param meanSunHours hours of full sun in mean
 * @param poorSunHours hours that only so many days in a hundred fall short of
 * @param poorPercent how many
 * @param odds of stages that are left and ask something of the weather
 * @param work in the order it is done, the thirstiest first
 * @param powerOrNull null when there is no power on site
 */
public record DayOutlook(
        LocalDate date,
        Light sun,
        Light civil,
        UsableLight usable,
        @Nullable WeatherDay weatherOrNull,
        double meanSunHours,
        double poorSunHours,
        int poorPercent,
        List<StageDay> odds,
        List<Placed> work,
        @Nullable DayPower powerOrNull,
        List<String> cautions) {
    public DayOutlook {
        odds = List.copyOf(odds);
        work = List.copyOf(work);
        cautions = List.copyOf(cautions);
    }

    public Optional<WeatherDay> weather() {
        return Optional.ofNullable(weatherOrNull);
    }

    public Optional<DayPower> power() {
        return Optional.ofNullable(powerOrNull);
    }

    /** Labour to be done on a day. @param stage its key */
    public record Work(String stage, Hours labour) {}

    /**
     * A day's work as it is asked for.
     *
     * @param people who share the labour, 1 to 1000
     */
    public record Asked(LocalDate date, List<Work> work, int people, int generatorMinutes) {
        public Asked {
            work = List.copyOf(work);
            if (people < 1 || people > 1000) {
                throw new IllegalArgumentException("people [" + people + "] must be from 1 to 1000");
            }
        }
    }

    /** @param leastPercent odds the stage demands; null for any */
    public record StageDay(
            String stage, SiteDayOdds odds, @Nullable Integer leastPercent) {
        /** Whether the stage may be planned on the day. */
        public boolean suffices() {
            return leastPercent == null || odds.odds() * 100 >= leastPercent;
        }
    }

    /**
     * Work in its time.
     *
     * @param watts that its tools take in mean while it goes on
     * @param inTheDark whether it lasts beyond the last light though it needs light
     */
    public record Placed(
            String stage, String name, Hours labour, LocalTime from, Duration clock, double watts, boolean inTheDark) {}

    /**
     * How the battery goes.
     *
     * @param day as the battery sees it
     * @param curve of this day alone
     * @param remedies what alone would make it last; empty when it lasts or nothing helps
     * @param splitOrNull how much of the thirstiest work fits; null when all of it does
     */
    public record DayPower(
            PowerSystem system,
            PowerDay day,
            ChargeCurve curve,
            List<Remedy> remedies,
            @Nullable Split splitOrNull,
            List<StageOverload> overloads) {
        public DayPower {
            remedies = List.copyOf(remedies);
            overloads = List.copyOf(overloads);
        }

        public Optional<Split> split() {
            return Optional.ofNullable(splitOrNull);
        }
    }

    /**
     * How the thirstiest work would have to be split over this day and the next.
     *
     * @param stage its name
     * @param inOneGo whether the stage may not be split at all, so that this only shows what is missing
     * @param material whose packs are counted; null when quarter-hours of labour are
     */
    public record Split(
            String stage, boolean inOneGo, @Nullable Material material, WorkSplit split) {}

    /** @param stage its name */
    public record StageOverload(String stage, Overload overload) {}
}
