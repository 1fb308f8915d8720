package org.firmset.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.MassLimit;
import org.firmset.trade.haul.Rig;

/** A trip for a test, plain until told otherwise. All its days are alike but for their sun. */
public final class TripDraft {
    /** A pickup with one bed of 1000 l and 2400 mm, and 500 kg of payload. */
    public static final Rig PICKUP = new Rig(
            "pickup",
            "Pickup",
            List.of(new Bay("bed", "Bed", 1_000_000, 2_400)),
            List.of(new MassLimit("Payload", 500_000, Map.of("bed", 1000))));

    private final String id;
    private final LocalDate firstDate;
    private final int days;
    private int quarters = 32;
    private int people = 2;
    private long[] harvest = {};
    private Rig rig = PICKUP;
    private int mostExtraRuns = 0;
    private int extraRunQuarters = 0;
    private int light = Integer.MAX_VALUE;
    private long start = Trip.FULL;
    private UnaryOperator<DayPower> power = p -> p;

    TripDraft(String id, LocalDate firstDate, int days) {
        this.id = id;
        this.firstDate = firstDate;
        this.days = days;
    }

    /** Usable labour of each day. */
    public TripDraft quarters(int each) {
        quarters = each;
        return this;
    }

    public TripDraft people(int each) {
        people = each;
        return this;
    }

    /** Sun of the first day, the second, ..., all in the hour from 7:00, when work begins; none on the days that are not named. */
    public TripDraft sun(long... wattHours) {
        harvest = wattHours.clone();
        return this;
    }

    /** What sun and battery of every day are changed to. */
    public TripDraft power(UnaryOperator<DayPower> of) {
        power = of;
        return this;
    }

    /** How much of the labour of each day lies in daylight. */
    public TripDraft light(int quartersEach) {
        light = quartersEach;
        return this;
    }

    /** In the battery when it begins. */
    public TripDraft startsWith(long wattHours) {
        start = wattHours;
        return this;
    }

    public TripDraft rig(Rig drives) {
        rig = drives;
        return this;
    }

    public TripDraft extraRuns(int most, int quartersEach) {
        mostExtraRuns = most;
        extraRunQuarters = quartersEach;
        return this;
    }

    Trip trip() {
        List<SiteDay> siteDays = IntStream.range(0, days).mapToObj(this::day).toList();
        return new Trip(id, siteDays, rig, 10_000, mostExtraRuns, extraRunQuarters, 2_000, start);
    }

    private SiteDay day(int index) {
        List<Long> sun = new ArrayList<>(DayPower.DARK.sunWatts());
        sun.set(DayPower.DARK.workFromHour(), index < harvest.length ? harvest[index] : 0);
        DayPower dark = new DayPower(sun, 0, 0, true, DayPower.DARK.workFromHour());
        return new SiteDay(firstDate.plusDays(index), quarters, Math.min(light, quarters), people, power.apply(dark));
    }
}
