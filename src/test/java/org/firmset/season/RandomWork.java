package org.firmset.season;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import org.firmset.homestead.Conditions;
import org.firmset.homestead.Hazard;
import org.firmset.homestead.Material;
import org.firmset.homestead.Need;
import org.firmset.homestead.Pin;
import org.firmset.homestead.Progress;
import org.firmset.homestead.SeasonWindow;
import org.firmset.homestead.Stage;
import org.firmset.homestead.StageLayout;
import org.firmset.homestead.Subproject;
import org.firmset.homestead.Tool;
import org.firmset.homestead.Wait;
import org.firmset.measure.Energy;
import org.firmset.measure.Hours;
import org.firmset.measure.Temperature;
import org.jspecify.annotations.Nullable;

/** Stages, the waits between them and pins, made by chance. */
final class RandomWork {
    private final Dice dice;
    private final Size size;
    private final RandomCalendar calendar;
    private final RandomSupplies supplies;
    private final RandomKit kit;
    private final int people;
    private final LocalDate statusDate;
    private final List<Stage> stages = new ArrayList<>();
    private final List<Wait> waits;
    private final List<Pin> pins = new ArrayList<>();

    RandomWork(
            Dice dice,
            Size size,
            RandomCalendar calendar,
            RandomSupplies supplies,
            RandomKit kit,
            int people,
            List<Subproject> subprojects,
            LocalDate statusDate) {
        this.dice = dice;
        this.size = size;
        this.calendar = calendar;
        this.supplies = supplies;
        this.kit = kit;
        this.people = people;
        this.statusDate = statusDate;
        int count = dice.between(1, size.mostStages());
        for (int i = 1; i <= count; i++) {
            stages.add(stage(i, dice.one(subprojects).key()));
        }
        waits = new RandomWaits(dice, stages, !kit.place().climate().isEmpty()).waits();
        stages.stream().filter(s -> dice.chance(5)).forEach(this::pin);
    }

    List<Stage> stages() {
        return stages;
    }

    List<Wait> waits() {
        return waits;
    }

    List<Pin> pins() {
        return pins;
    }

    private Stage stage(int number, String subproject) {
        StageLayout layout = dice.one(List.of(
                StageLayout.SPLITTABLE, StageLayout.SPLITTABLE, StageLayout.IN_ONE_GO, StageLayout.UNBROKEN_DAYS));
        Hours labour = labour(layout);
        @Nullable Hours least = dice.chance(25) ? new Hours(dice.between(0, labour.quarters() / 2)) : null;
        @Nullable LocalDate notBefore = dice.chance(6) ? dice.date(calendar.first(), -10, 20) : null;
        return new Stage(
                "stage-" + number,
                "Stage " + number,
                subproject,
                labour,
                crew(),
                layout,
                least,
                mostPerDay(layout, labour, least),
                energy(),
                dice.chance(40)
                        ? dice.some(kit.tools(), 2).stream().map(Tool::key).toList()
                        : List.of(),
                dice.chance(6) ? season() : null,
                notBefore,
                dice.chance(5) ? notAfter(notBefore) : null,
                dice.chance(10) ? conditions() : null,
                needs(),
                dice.chance(20) ? dice.some(List.of(Hazard.values()), 3) : List.of(),
                dice.chance(number <= 2 ? 30 : 5) ? progress(labour) : null,
                dice.chance(10) ? "Mind the cable,\n\tsay \"clear\" — grüß Gott." : null,
                List.of(),
                false,
                null);
    }

    private Hours labour(StageLayout layout) {
        boolean great = dice.chance(4);
        return new Hours(dice.between(
                1,
                switch (layout) {
                    case IN_ONE_GO -> size == Size.TINY ? 6 : great ? 40 : 14;
                    case UNBROKEN_DAYS -> size == Size.TINY ? 8 : great ? 80 : 24;
                    case SPLITTABLE -> size == Size.TINY ? 10 : great ? 200 : 60;
                }));
    }

    private int crew() {
        int crew = dice.chance(4) ? 3 : dice.chance(20) ? 2 : 1;
        return dice.chance(95) ? Math.min(crew, people) : crew;
    }

    private @Nullable Hours mostPerDay(StageLayout layout, Hours labour, @Nullable Hours least) {
        if (!dice.chance(25)) {
            return null;
        }
        int from = layout == StageLayout.IN_ONE_GO
                ? labour.quarters()
                : Math.max(Math.ceilDiv(labour.quarters(), 3), least == null ? 1 : least.quarters());
        return new Hours(dice.between(Math.max(1, from), Math.max(1, from) + 20));
    }

    private @Nullable Energy energy() {
        boolean powered = dice.chance(kit.power() == null ? 1 : 35);
        return powered ? Energy.ofWattHours(dice.between(0, size == Size.TINY ? 1200 : 400)) : null;
    }

    private LocalDate notAfter(@Nullable LocalDate notBefore) {
        LocalDate date = dice.date(calendar.last(), -8, 10);
        return notBefore != null && notBefore.isAfter(date) ? notBefore : date;
    }

    private SeasonWindow season() {
        MonthDay from = MonthDay.from(dice.date(calendar.first(), -60, 10));
        return new SeasonWindow(from, MonthDay.from(dice.date(calendar.last(), -15, 60)));
    }

    private Conditions conditions() {
        return new Conditions(
                dice.chance(70) ? Temperature.ofCelsius(dice.between(-8, 5)) : null,
                dice.chance(50) ? Temperature.ofCelsius(dice.between(26, 40)) : null,
                dice.chance(50),
                null,
                null,
                false,
                null);
    }

    private List<Need> needs() {
        List<Material> materials = supplies.materials();
        return materials.isEmpty() || dice.chance(45)
                ? List.of()
                : dice.some(materials, 3).stream()
                        .map(m -> new Need(
                                m.key(), dice.between(1, m.mass().value().intValue() > 200 ? 2 : 25)))
                        .toList();
    }

    private Progress progress(Hours labour) {
        LocalDate started = statusDate.minusDays(dice.between(1, 60));
        boolean finished = dice.chance(60);
        return finished
                ? new Progress(started, Hours.NONE, started.plusDays(dice.between(0, 1)))
                : new Progress(started, new Hours(dice.between(1, labour.quarters())), null);
    }

    private void pin(Stage stage) {
        LocalDate from = dice.one(calendar.dates());
        List<LocalDate> dates = dice.chance(4)
                ? List.of(from.plusDays(1))
                : calendar.dates().stream()
                        .filter(d -> !d.isBefore(from))
                        .limit(dice.between(2, 8))
                        .toList();
        pins.add(new Pin(stage.key(), dates, "Helpers come then"));
    }
}
