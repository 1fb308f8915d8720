package org.firmset.season.problem;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.firmset.homestead.Conditions;
import org.firmset.homestead.Progress;
import org.firmset.homestead.SeasonWindow;
import org.firmset.homestead.Stage;
import org.firmset.measure.Hours;
import org.firmset.measure.Temperature;
import org.firmset.plan.Layout;
import org.firmset.plan.Need;
import org.firmset.plan.Shut;
import org.firmset.plan.ToolUse;
import org.firmset.season.day.Climate;
import org.firmset.season.day.SiteSky;
import org.firmset.season.day.StageEnergy;
import org.firmset.season.day.StageOdds;
import org.jspecify.annotations.Nullable;

/** Writes a stage as far as it is still to do. */
final class StageWriter {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    private final Optional<Climate> climate;
    private final SiteSky sky;
    private final StageEnergy energy;
    private final List<LocalDate> siteDates;
    private final Set<String> allDayTools;
    private final Optional<WaterWriter> water;

    /**
     * @param allDayTools keys of the tools that stay with one stage for a whole day
     * @param water empty when it is not reckoned with
     */
    StageWriter(
            StageEnergy energy,
            Optional<Climate> climate,
            SiteSky sky,
            List<LocalDate> siteDates,
            Set<String> allDayTools,
            Optional<WaterWriter> water) {
        this.sky = sky;
        this.energy = energy;
        this.climate = climate;
        this.siteDates = siteDates;
        this.allDayTools = allDayTools;
        this.water = water;
    }

    org.firmset.plan.Stage write(Stage stage) {
        @Nullable Progress progress = stage.progress();
        int left = progress == null
                ? stage.labour().quarters()
                : progress.labourLeft().quarters();
        int done = stage.labour().quarters() - left;
        return new org.firmset.plan.Stage(
                stage.key(),
                stage.name(),
                stage.subproject(),
                left,
                stage.crew(),
                Layout.valueOf(stage.layout().name()),
                quarters(stage.leastBlock(), 0),
                quarters(stage.mostPerDay(), org.firmset.plan.Stage.NO_LIMIT),
                energy.batteryWattHours(stage.key()),
                !stage.headLamp(),
                shut(stage),
                needsLeft(stage, done),
                stage.tools().stream()
                        .filter(allDayTools::contains)
                        .distinct()
                        .map(t -> new ToolUse(t, 1))
                        .toList(),
                progress == null ? null : progress.startedOn(),
                progress == null ? null : progress.finishedOn());
    }

    private static int quarters(@Nullable Hours hours, int otherwise) {
        return hours == null ? otherwise : hours.quarters();
    }

    private List<Need> needsLeft(Stage stage, int done) {
        List<Need> left = new ArrayList<>();
        for (org.firmset.homestead.Need need : stage.needs()) {
            Need whole = new Need(need.material(), need.packs());
            int packs = need.packs() - whole.usedWhen(done, stage.labour().quarters());
            if (packs > 0) {
                left.add(new Need(need.material(), packs));
            }
        }
        water.flatMap(w -> w.need(stage, stage.labour().quarters() - done)).ifPresent(left::add);
        return left;
    }

    /** Dates on which the stage may not be done, those that follow each other for the same reason taken together. */
    private List<Shut> shut(Stage stage) {
        List<Shut> result = new ArrayList<>();
        for (LocalDate date : siteDates) {
            String why = whyShut(stage, date);
            boolean goesOn = !result.isEmpty()
                    && result.getLast().why().equals(why)
                    && noneBetween(result.getLast().to(), date);
            if (goesOn) {
                result.set(result.size() - 1, new Shut(result.getLast().from(), date, why));
            } else if (!why.isEmpty()) {
                result.add(new Shut(date, date, why));
            }
        }
        return result;
    }

    private boolean noneBetween(LocalDate from, LocalDate to) {
        return siteDates.indexOf(to) == siteDates.indexOf(from) + 1;
    }

    private String whyShut(Stage stage, LocalDate date) {
        if (stage.notBefore() != null && date.isBefore(stage.notBefore())) {
            return "it may not be done before " + DATE.format(stage.notBefore());
        }
        if (stage.notAfter() != null && date.isAfter(stage.notAfter())) {
            return "it may not be done after " + DATE.format(stage.notAfter());
        }
        @Nullable SeasonWindow season = stage.season();
        if (season != null && !season.holds(MonthDay.from(date))) {
            return "its season is from " + DAY.format(season.from().atYear(2000)) + " to "
                    + DAY.format(season.to().atYear(2000));
        }
        @Nullable Conditions conditions = stage.conditions();
        if (conditions == null) {
            return "";
        }
        String why = climate.map(c -> whyTooColdOrHot(conditions, c, date)).orElse("");
        return why.isEmpty() && !StageOdds.suffice(stage, sky, date)
                ? "the odds of weather fit for it are under " + conditions.leastOdds() + " % then"
                : why;
    }

    private static String whyTooColdOrHot(Conditions conditions, Climate climate, LocalDate date) {
        String day = climate.isForecast(date) ? "the forecast day" : "the usual day";
        String night = climate.isForecast(date) ? "the forecast night" : "the usual night";
        if (conditions.coldestNight() != null && climate.lowOn(date) < celsius(conditions.coldestNight())) {
            return night + " is colder than " + text(conditions.coldestNight()) + " then";
        }
        if (conditions.hottestDay() != null && climate.highOn(date) > celsius(conditions.hottestDay())) {
            return day + " is hotter than " + text(conditions.hottestDay()) + " then";
        }
        if (conditions.coldestDay() != null && climate.highOn(date) < celsius(conditions.coldestDay())) {
            return day + " is colder than " + text(conditions.coldestDay()) + " then";
        }
        // ground freezes and thaws later than the air: a mean under freezing is taken for frozen ground (common
        // practice)
        return conditions.unfrozenGround() && climate.meanOn(date) < 0 ? "the ground is mostly frozen then" : "";
    }

    private static double celsius(Temperature temperature) {
        return temperature.value().doubleValue();
    }

    private static String text(Temperature temperature) {
        return temperature.value().toPlainString() + " °C";
    }
}
