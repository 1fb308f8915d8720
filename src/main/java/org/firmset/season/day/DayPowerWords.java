package org.firmset.season.day;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.firmset.homestead.Material;
import org.firmset.measure.Hours;
import org.firmset.season.day.DayOutlook.DayPower;
import org.firmset.season.day.DayOutlook.Placed;
import org.firmset.season.words.PackWords;
import org.firmset.season.words.WordTable;
import org.firmset.trade.power.ChargeCurve;
import org.firmset.trade.power.Overload;
import org.firmset.trade.power.Remedy;
import org.firmset.trade.power.SunCurve;
import org.jspecify.annotations.Nullable;

/** Says in plain words how the battery goes through a day. */
public final class DayPowerWords {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private DayPowerWords() {}

    /** The work in its time; no rows when there is none. */
    public static WordTable work(DayOutlook day) {
        return new WordTable(
                "Work, the thirstiest first",
                List.of("Stage", "From", "To", "Labour", "Draw in mean"),
                day.work().stream()
                        .map(w -> List.of(
                                w.name(),
                                TIME.format(w.from()),
                                TIME.format(w.from().plus(w.clock())),
                                w.labour().toString(),
                                watts(w.watts())))
                        .toList());
    }

    /** The charge at the end of each hour. */
    public static WordTable hours(DayOutlook day, DayPower power) {
        List<List<String>> rows = new ArrayList<>();
        for (int hour = 0; hour < 24; hour++) {
            rows.add(hour(day, power, hour));
        }
        return new WordTable(
                "The battery by the hour, in figures",
                List.of("Hour", "Charge at its end", "Of capacity", "Above the limit", "Sun", "Work"),
                rows);
    }

    private static List<String> hour(DayOutlook day, DayPower power, int hour) {
        ChargeCurve.Point end = at(power, day.date(), hour + 1);
        double capacity = power.system().battery().capacityWattHours();
        return List.of(
                "%02d to %02d".formatted(hour, hour + 1),
                wattHours(end.wattHours()),
                capacity == 0 ? "-" : Math.round(end.wattHours() / capacity * 100) + " %",
                wattHours(end.leftWattHours()),
                watts(sunWatts(power, hour)),
                workAt(day, hour));
    }

    private static ChargeCurve.Point at(DayPower power, LocalDate date, int hour) {
        LocalDateTime when = date.atStartOfDay().plusHours(hour);
        return power.curve().points().stream()
                .filter(p -> !p.at().isAfter(when))
                .reduce((a, b) -> b)
                .orElseThrow();
    }

    /** What the panels give in mean over an hour. */
    public static double sunWatts(DayPower power, int hour) {
        SunCurve sun = power.day().sun();
        int steps = 60 / sun.stepMinutes();
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            sum += sun.wattsPerWatt(hour * steps + i);
        }
        return sum / steps * power.system().panelWatts();
    }

    private static String workAt(DayOutlook day, int hour) {
        int from = hour * 60;
        String work = day.work().stream()
                .filter(w -> minute(w.from()) < from + 60
                        && minute(w.from()) + w.clock().toMinutes() > from)
                .map(Placed::name)
                .collect(Collectors.joining(", "));
        return work.isEmpty() ? "-" : work;
    }

    private static int minute(LocalTime time) {
        return time.toSecondOfDay() / 60;
    }

    /** What to know of the battery and the work, the heaviest first. */
    public static List<String> sentences(DayOutlook day) {
        List<String> sentences = new ArrayList<>();
        day.work().stream()
                .filter(Placed::inTheDark)
                .forEach(w -> sentences.add(
                        "'%s' would last beyond the last light. Begin less, or say at the stage that it may go on by"
                                        .formatted(w.name())
                                + " head-lamp."));
        day.power().ifPresent(p -> sentences.addAll(of(p)));
        return sentences;
    }

    private static List<String> of(DayPower power) {
        List<String> sentences = new ArrayList<>();
        ChargeCurve.Point lowest = power.curve().lowest();
        Optional<LocalDateTime> broken = power.curve().broken();
        sentences.add(broken.map(
                        at -> "The battery does not last: it falls under its limit at %s.".formatted(TIME.format(at)))
                .orElseGet(() -> "The battery lasts: the least it has above its limit is %s, at %s."
                        .formatted(wattHours(lowest.leftWattHours()), TIME.format(lowest.at()))));
        power.split().ifPresent(s -> sentences.add(split(s)));
        if (broken.isPresent()) {
            sentences.add(remedies(power.remedies()));
        }
        ChargeCurve.EnergyFlow energy = power.curve().energy();
        if (energy.generator() >= 0.5) {
            sentences.add("The generator gives %s.".formatted(wattHours(energy.generator())));
        }
        if (energy.sunWasted() >= 0.5) {
            sentences.add("%s of sun find no room in the battery.".formatted(wattHours(energy.sunWasted())));
        }
        power.overloads().forEach(o -> sentences.add(overload(o)));
        return sentences;
    }

    private static String split(DayOutlook.Split split) {
        int today = split.split().units().getFirst();
        int tomorrow = split.split().units().getLast();
        int left = split.split().left();
        Material material = split.material();
        String does = "Of '%s' the battery allows ".formatted(split.stage());
        String rest = left == 0 ? "." : "; %s stay over.".formatted(amount(left, material));
        String oneGo = split.inOneGo() ? " It has to be done in one go, so this only shows what is missing." : "";
        return does + amount(today, material) + " today and " + amount(tomorrow, material) + " tomorrow" + rest + oneGo;
    }

    private static String amount(int units, @Nullable Material material) {
        return material == null
                ? new Hours(units) + " of labour"
                : PackWords.of(units, material.pack(), material.name());
    }

    private static String remedies(List<Remedy> remedies) {
        if (remedies.isEmpty()) {
            return "More battery, panels or generator within reason would not help alone.";
        }
        return "Any one of these would do: "
                + remedies.stream().map(DayPowerWords::remedy).collect(Collectors.joining("; ")) + ".";
    }

    private static String remedy(Remedy remedy) {
        return switch (remedy.kind()) {
            case EXTRA_BATTERY_WATT_HOURS -> wattHours(remedy.amount()) + " more battery";
            case EXTRA_PANEL_WATTS -> watts(remedy.amount()) + " more panels";
            case GENERATOR_MINUTES_A_DAY -> "the generator for %d min".formatted(remedy.amount());
        };
    }

    private static String overload(DayOutlook.StageOverload stage) {
        Overload overload = stage.overload();
        return "Too much for the inverter if all tools of '%s' run at once: %s of %s%s. Run them one after the other."
                .formatted(
                        stage.stage(),
                        watts(overload.watts()),
                        watts(overload.ratedWatts()),
                        overload.starting() ? " while the hardest starts" : "");
    }

    private static String wattHours(double wattHours) {
        return "%,d Wh".formatted(Math.round(wattHours));
    }

    private static String watts(double watts) {
        return "%,d W".formatted(Math.round(watts));
    }
}
