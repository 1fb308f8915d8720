package org.firmset.plan.search;

import java.util.Arrays;
import java.util.List;

/**
 * What must come before a stage, or after it, takes hours of its own: all of it that cannot begin before some day has to fit
 * between that day and the stage. Sharper than waits alone where many small stages follow each other. Holds for every plan.
 */
final class SharedHours {
    private final Model model;
    private final CrewHours hours;
    private final int[][] before;
    private final int[][] after;
    private final long[] onDay;

    /** @param order stages, each after all stages before it */
    SharedHours(Model model, List<Integer> order) {
        this.model = model;
        hours = new CrewHours(model);
        before = kin(order, false);
        after = kin(order.reversed(), true);
        onDay = new long[model.dayCount()];
    }

    /** For each stage the open ones that must all be finished before it starts, or start after it is finished. */
    private int[][] kin(List<Integer> order, boolean behind) {
        boolean[][] reached = new boolean[model.stageCount][];
        int[][] result = new int[model.stageCount][];
        for (int s : order) {
            boolean[] mine = new boolean[model.stageCount];
            for (Link link : behind ? model.after.get(s) : model.before.get(s)) {
                int next = behind ? link.to : link.from;
                if (!model.stage(next).finished() && reached[next] != null) {
                    mine[next] = true;
                    for (int k = 0; k < mine.length; k++) {
                        mine[k] |= reached[next][k];
                    }
                }
            }
            reached[s] = mine;
            int[] list = new int[mine.length];
            int count = 0;
            for (int k = 0; k < mine.length; k++) {
                if (mine[k]) {
                    list[count++] = k;
                }
            }
            result[s] = Arrays.copyOf(list, count);
        }
        return result;
    }

    /**
     * The first site day by whose end all before a stage can be done, and {@code own} quarters of the stage itself.
     *
     * @param firstDay for each stage before it a day before which it cannot start
     * @return {@link Model#dayCount()} when there is none
     */
    int earliest(int s, int[] firstDay, int own) {
        int latest = 0;
        for (int crew = 0; crew < hours.sizes() && latest < onDay.length; crew++) {
            boolean ownCounts = own > 0 && model.stage(s).crew() >= hours.crew(crew);
            latest = Math.max(latest, earliest(before[s], firstDay, ownCounts ? own : 0, crew));
        }
        return latest;
    }

    private int earliest(int[] kin, int[] firstDay, int own, int crew) {
        int least = onDay.length;
        int most = -1;
        for (int k : kin) {
            if (model.stage(k).crew() >= hours.crew(crew)) {
                onDay[firstDay[k]] += model.stage(k).labourQuarters();
                least = Math.min(least, firstDay[k]);
                most = Math.max(most, firstDay[k]);
            }
        }
        long sum = own;
        int latest = 0;
        for (int from = most; from >= least; from--) {
            if (onDay[from] > 0) {
                sum += onDay[from];
                onDay[from] = 0;
                latest = Math.max(latest, firstThatHolds(crew, from, sum, latest));
            }
        }
        return latest;
    }

    /** The first day, not before {@code known}, so that the days since {@code from} hold {@code sum}. */
    private int firstThatHolds(int crew, int from, long sum, int known) {
        long wanted = hours.before(crew, from) + sum;
        int day = Math.max(known, from);
        while (day < onDay.length && hours.before(crew, day + 1) < wanted) {
            day++;
        }
        return day;
    }

    /**
     * The last site day from whose beginning all after a stage can be done, and {@code own} quarters of the stage itself.
     *
     * @param lastDay for each stage after it a day after which it cannot finish, 0 or more
     * @return -1 when there is none
     */
    int latest(int s, int[] lastDay, int own) {
        int earliest = onDay.length - 1;
        for (int crew = 0; crew < hours.sizes() && earliest >= 0; crew++) {
            boolean ownCounts = own > 0 && model.stage(s).crew() >= hours.crew(crew);
            earliest = Math.min(earliest, latest(after[s], lastDay, ownCounts ? own : 0, crew));
        }
        return earliest;
    }

    private int latest(int[] kin, int[] lastDay, int own, int crew) {
        int least = onDay.length;
        int most = -1;
        for (int k : kin) {
            if (model.stage(k).crew() >= hours.crew(crew)) {
                int day = Math.max(0, lastDay[k]);
                onDay[day] += model.stage(k).labourQuarters();
                least = Math.min(least, day);
                most = Math.max(most, day);
            }
        }
        long sum = own;
        int earliest = onDay.length - 1;
        for (int until = least; until <= most; until++) {
            if (onDay[until] > 0) {
                sum += onDay[until];
                onDay[until] = 0;
                earliest = Math.min(earliest, lastThatHolds(crew, until, sum, earliest));
            }
        }
        return earliest;
    }

    private int lastThatHolds(int crew, int until, long sum, int known) {
        long wanted = hours.before(crew, until + 1) - sum;
        int day = Math.min(known, until);
        while (day >= 0 && hours.before(crew, day) > wanted) {
            day--;
        }
        return day;
    }
}
