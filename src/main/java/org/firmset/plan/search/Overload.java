package org.firmset.plan.search;

/**
 * Whether stages that must begin on or after some day and end by another take more than the days between hold: in hours, in
 * hours with people enough, or in energy. Then no plan keeps these windows.
 */
final class Overload {
    private static final long QUARTERS = 4;

    private final Model model;
    private final CrewHours hours;

    /** What comes in before each day. */
    private final long[] energy;

    Overload(Model model) {
        this.model = model;
        hours = new CrewHours(model);
        energy = new long[model.dayCount() + 1];
        for (int d = 0; d < model.dayCount(); d++) {
            energy[d + 1] = energy[d] + model.broughtWattHours[d];
        }
    }

    /**
     * @param tight windows, none of which is empty
     * @param counts stages that are looked at
     */
    boolean in(Windows tight, boolean[] counts) {
        for (int c = 0; c < hours.sizes(); c++) {
            if (inHours(tight, counts, c)) {
                return true;
            }
        }
        return inEnergy(tight, counts);
    }

    private int first(Windows tight, int s) {
        return model.dayFrom(tight.earliestEpoch(s));
    }

    private boolean inHours(Windows tight, boolean[] counts, int crew) {
        long[][] work = new long[model.dayCount()][];
        for (int s = 0; s < model.stageCount; s++) {
            if (counts[s] && !model.stage(s).finished() && model.stage(s).crew() >= hours.crew(crew)) {
                add(
                        work,
                        first(tight, s),
                        tight.latestFinishDay(s),
                        model.stage(s).labourQuarters());
            }
        }
        return exceeds(work, (from, to) -> hours.before(crew, to + 1) - hours.before(crew, from));
    }

    private boolean inEnergy(Windows tight, boolean[] counts) {
        long[][] work = new long[model.dayCount()][];
        boolean any = false;
        for (int s = 0; s < model.stageCount; s++) {
            long each = model.stage(s).wattHoursPerHour();
            if (counts[s] && !model.stage(s).finished() && each > 0) {
                add(
                        work,
                        first(tight, s),
                        tight.latestFinishDay(s),
                        each * model.stage(s).labourQuarters());
                any = true;
            }
        }
        long full = model.usableWattHours;
        return any
                && exceeds(
                        work,
                        (from, to) -> QUARTERS
                                * (energy[to + 1]
                                        - energy[from]
                                        + full * (model.tripOfDay[to] - model.tripOfDay[from] + 1)));
    }

    private void add(long[][] work, int first, int last, long amount) {
        if (work[first] == null) {
            work[first] = new long[model.dayCount()];
        }
        work[first][last] += amount;
    }

    private interface Room {
        long between(int from, int to);
    }

    /** Whether what must begin on or after some day and end by another is more than the days between hold. */
    private boolean exceeds(long[][] work, Room room) {
        long[] byEnd = new long[model.dayCount()];
        for (int from = work.length - 1; from >= 0; from--) {
            if (work[from] == null) {
                continue;
            }
            for (int d = from; d < byEnd.length; d++) {
                byEnd[d] += work[from][d];
            }
            long sum = 0;
            for (int to = from; to < byEnd.length; to++) {
                sum += byEnd[to];
                if (byEnd[to] > 0 && sum > room.between(from, to)) {
                    return true;
                }
            }
        }
        return false;
    }
}
