package org.firmset.plan.search;

/** Hours of labour between site days, counted for each size of crew on the days that have people enough for it. */
final class CrewHours {
    private final int[] crews;
    private final long[][] until;

    CrewHours(Model model) {
        crews = model.problem.stages().stream()
                .mapToInt(s -> s.crew())
                .distinct()
                .sorted()
                .toArray();
        until = new long[crews.length][model.dayCount() + 1];
        for (int c = 0; c < crews.length; c++) {
            for (int d = 0; d < model.dayCount(); d++) {
                var day = model.days.get(d);
                until[c][d + 1] = until[c][d] + (day.people() >= crews[c] ? day.labourQuarters() : 0);
            }
        }
    }

    /** How many sizes of crew there are. */
    int sizes() {
        return crews.length;
    }

    /** The smallest first. */
    int crew(int size) {
        return crews[size];
    }

    /** Quarter-hours before a site day. */
    long before(int size, int day) {
        return until[size][day];
    }
}
