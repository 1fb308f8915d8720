package org.firmset.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Builds small schedules for tests. Dates are ISO texts. */
public final class Schedules {
    private final List<WorkBlock> blocks = new ArrayList<>();
    private final List<Run> runs = new ArrayList<>();
    private final List<GeneratorUse> generator = new ArrayList<>();

    private Schedules() {}

    public static Schedules schedule() {
        return new Schedules();
    }

    public static Load load(String material, String bay, int packs) {
        return new Load(material, bay, packs);
    }

    public Schedules block(String stage, String date, int quarters) {
        blocks.add(new WorkBlock(stage, LocalDate.parse(date), quarters));
        return this;
    }

    public Schedules arrival(String trip, String date, Load... loads) {
        return run(new Run(trip, LocalDate.parse(date), RunKind.ARRIVAL, "", List.of(loads)));
    }

    public Schedules extra(String trip, String date, Load... loads) {
        return run(new Run(trip, LocalDate.parse(date), RunKind.EXTRA, "", List.of(loads)));
    }

    /** A delivery; its loads lie in the bay {@link Load#TRUCK}. */
    public Schedules delivery(String trip, String date, String offer, Load... loads) {
        return run(new Run(trip, LocalDate.parse(date), RunKind.DELIVERY, offer, List.of(loads)));
    }

    /** A delivery for a date that is dropped on another. */
    public Schedules dropped(String trip, String date, String broughtOn, String offer, Load... loads) {
        return run(new Run(
                trip, LocalDate.parse(date), RunKind.DELIVERY, offer, List.of(loads), LocalDate.parse(broughtOn)));
    }

    public Schedules run(Run run) {
        runs.add(run);
        return this;
    }

    public Schedules generator(String date, long wattHours) {
        generator.add(new GeneratorUse(LocalDate.parse(date), wattHours));
        return this;
    }

    public Schedule build() {
        return new Schedule(blocks, runs, generator);
    }
}
