package org.firmset.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.firmset.plan.DayPower;
import org.firmset.plan.Layout;
import org.firmset.plan.LeastWait;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.PowerSupply;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Shut;
import org.firmset.plan.Site;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Stage;
import org.firmset.plan.Style;
import org.firmset.plan.Subproject;
import org.firmset.plan.Tool;
import org.firmset.plan.ToolUse;
import org.firmset.plan.Trip;
import org.firmset.plan.Wait;
import org.firmset.plan.WaitKind;
import org.firmset.trade.haul.Rig;

/**
 * Reads open scheduling instances as planning problems: a job is a stage of unbroken days on a calendar in which every
 * date is a site day, a renewable resource is a counted tool, a time lag is a wait. A job that lets
 * another start before its end is cut into its first day and the rest, so that waits can be counted from its start.
 *
 * <p>Formats: single-mode {@code .sm} of PSPLIB (Kolisch and Sprecher 1997) and {@code .SCH} of ProGen/max (Kolisch,
 * Schwindt and Sprecher 1998).
 */
final class OpenProjects {
    private static final LocalDate START = LocalDate.of(2027, 1, 1);
    private static final String ALL = "all";
    private static final String MARKS = "marks";
    /** So that no mark weighs as much as a day of the jobs. */
    private static final int FIRST = 1000;

    private static final long NO_PATH = Long.MIN_VALUE / 4;

    /** A job, its successors with the least days from start to start (or the most, when negative). */
    private record Job(int days, int[] uses, Map<Integer, Integer> lags) {}

    /** Days from the start of one job to that of another. */
    private record Lag(int from, int to, int least, int most) {}

    private final List<Job> jobs;
    private final int[] there;
    private final int horizon;
    private final long[][] path;
    private final List<Stage> stages = new ArrayList<>();
    private final List<Wait> waits = new ArrayList<>();

    private OpenProjects(List<Job> jobs, int[] there) {
        this.jobs = jobs;
        this.there = there;
        horizon = 2 + jobs.stream().mapToInt(OpenProjects::longest).sum() + longestMark(jobs);
        path = paths();
    }

    private static int longestMark(List<Job> jobs) {
        return -jobs.stream()
                .flatMap(j -> j.lags().values().stream())
                .mapToInt(Integer::intValue)
                .min()
                .orElse(0);
    }

    private static int longest(Job job) {
        return Math.max(
                job.days(),
                job.lags().values().stream().mapToInt(Integer::intValue).max().orElse(0));
    }

    /** @throws IllegalArgumentException for text that is not of this format, with what was looked for */
    static PlanningProblem sm(String text) {
        int count = number(after(text, "jobs \\(incl\\. supersource/sink \\):"));
        String[] precedence = lines(after(text, "#successors\\s+successors"), count);
        String[] requests = lines(after(text, "-{10,}"), count);
        int[] there = numbers(lines(after(text, "RESOURCEAVAILABILITIES:"), 2)[1]);
        List<Job> jobs = new ArrayList<>();
        for (int j = 0; j < count; j++) {
            int[] request = numbers(requests[j]);
            Map<Integer, Integer> lags = new TreeMap<>();
            Arrays.stream(numbers(precedence[j])).skip(3).forEach(next -> lags.put(next - 1, request[2]));
            jobs.add(new Job(request[2], Arrays.copyOfRange(request, 3, request.length), lags));
        }
        return new OpenProjects(jobs, there).problem();
    }

    /** @throws IllegalArgumentException for text that is not of this format, with what was looked for */
    static PlanningProblem sch(String text) {
        String[] all = text.lines().map(String::strip).filter(l -> !l.isEmpty()).toArray(String[]::new);
        int count = numbers(all[0])[0] + 2;
        if (all.length < 2 * count + 2) {
            throw new IllegalArgumentException("a .SCH file of " + count + " jobs must have " + (2 * count + 2)
                    + " lines, but this one has " + all.length);
        }
        List<Job> jobs = new ArrayList<>();
        for (int j = 0; j < count; j++) {
            int[] next = numbers(all[1 + j]);
            int[] request = numbers(all[1 + count + j]);
            Map<Integer, Integer> lags = new TreeMap<>();
            for (int k = 0; k < next[2]; k++) {
                lags.put(next[3 + k], next[3 + next[2] + k]);
            }
            jobs.add(new Job(request[2], Arrays.copyOfRange(request, 3, request.length), lags));
        }
        return new OpenProjects(jobs, numbers(all[2 * count + 1])).problem();
    }

    private static String after(String text, String heading) {
        String[] parts = Pattern.compile(heading).split(text, 2);
        if (parts.length < 2) {
            throw new IllegalArgumentException("a .sm file must hold the heading " + heading);
        }
        return parts[1];
    }

    private static int number(String text) {
        return numbers(text.lines().findFirst().orElse(""))[0];
    }

    private static String[] lines(String text, int count) {
        return text.lines()
                .map(String::strip)
                .filter(l -> !l.isEmpty() && !l.startsWith("*"))
                .limit(count)
                .toArray(String[]::new);
    }

    private static int[] numbers(String line) {
        return Arrays.stream(line.replaceAll("[^\\d-]+", " ").strip().split(" "))
                .filter(n -> n.matches("-?\\d+"))
                .mapToInt(Integer::parseInt)
                .toArray();
    }

    /** Longest lags from start to start, over any number of jobs between. */
    private long[][] paths() {
        int n = jobs.size();
        long[][] longest = new long[n][n];
        for (int i = 0; i < n; i++) {
            Arrays.fill(longest[i], NO_PATH);
            longest[i][i] = 0;
            for (Map.Entry<Integer, Integer> lag : jobs.get(i).lags().entrySet()) {
                longest[i][lag.getKey()] = Math.max(longest[i][lag.getKey()], lag.getValue());
            }
        }
        for (int k = 0; k < n; k++) {
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n && longest[i][k] > NO_PATH; j++) {
                    long through = longest[k][j] > NO_PATH ? longest[i][k] + longest[k][j] : NO_PATH;
                    longest[i][j] = Math.max(longest[i][j], Math.min(through, Integer.MAX_VALUE / 4));
                }
            }
        }
        return longest;
    }

    private int source() {
        return 0;
    }

    private PlanningProblem problem() {
        List<Lag> lags = new ArrayList<>();
        for (int i = 1; i < jobs.size(); i++) {
            for (int j = 1; j < jobs.size(); j++) {
                if (i != j) {
                    lag(i, j).ifPresent(lags::add);
                }
            }
        }
        boolean[] cut = new boolean[jobs.size()];
        lags.forEach(lag -> cut[lag.from()] |= lag.least() < days(lag.from()) - 1);
        List<Lag> marked = marked();
        for (Lag lag : marked) {
            cut[lag.from()] |= lag.least() < days(lag.from()) - 1;
            cut[lag.to()] |= days(lag.to()) > 1;
        }
        for (int j = 1; j < jobs.size(); j++) {
            if (cut[j]) {
                stages.add(stage(first(j), j, 1));
                stages.add(stage(rest(j), j, days(j) - 1));
                waits.add(wait(first(j), rest(j), 1, 1));
            } else {
                stages.add(stage(first(j), j, days(j)));
            }
        }
        for (Lag lag : lags) {
            int before = cut[lag.from()] ? 0 : days(lag.from()) - 1;
            int most = lag.most() == Wait.NO_LIMIT ? Wait.NO_LIMIT : Math.max(0, lag.most() - before);
            waits.add(wait(first(lag.from()), first(lag.to()), lag.least() - before, most));
        }
        marked.forEach(lag -> mark(lag, cut));
        return new PlanningProblem(
                START,
                Style.SOONEST,
                List.of(calendar()),
                List.of(new Subproject(ALL, "All jobs", FIRST, null), new Subproject(MARKS, "Marks", 1, null)),
                stages,
                waits,
                List.of(),
                List.of(),
                new Site(0, PowerSupply.NONE, List.of()),
                List.of(),
                IntStream.range(0, there.length)
                        .mapToObj(r -> new Tool("r" + r, "Resource " + (r + 1), there[r]))
                        .toList(),
                null,
                List.of());
    }

    private int days(int job) {
        return Math.max(1, jobs.get(job).days());
    }

    private static String first(int job) {
        return "j" + job;
    }

    private static String rest(int job) {
        return "j" + job + "-rest";
    }

    private Stage stage(String id, int job, int days) {
        int[] uses = jobs.get(job).uses();
        List<ToolUse> tools = IntStream.range(0, uses.length)
                .filter(r -> uses[r] > 0)
                .mapToObj(r -> new ToolUse("r" + r, uses[r]))
                .toList();
        return new Stage(
                id,
                "Job " + job,
                ALL,
                days,
                1,
                Layout.UNBROKEN_DAYS,
                1,
                1,
                0,
                false,
                id.equals(first(job)) ? shut(job) : List.of(),
                List.of(),
                tools,
                null,
                null);
    }

    /** Lags from the first job set dates, and so do those that lead back to it. */
    private List<Shut> shut(int job) {
        List<Shut> shut = new ArrayList<>();
        Integer release = jobs.get(source()).lags().get(job);
        if (release != null && release > 0) {
            shut.add(new Shut(START, START.plusDays(release - 1L), "it is not released"));
        }
        Integer due = jobs.get(job).lags().get(source());
        if (due != null) {
            shut.add(new Shut(START.plusDays(1L - due), START.plusDays(horizon), "it is due"));
        }
        return shut;
    }

    /** A lag that leads back is a longest wait where the order is known. */
    private Optional<Lag> lag(int i, int j) {
        int least = jobs.get(i).lags().getOrDefault(j, -1);
        int back = jobs.get(j).lags().getOrDefault(i, 0);
        boolean ordered = path[i][j] >= 0;
        if (least < 0 && (back >= 0 || !ordered)) {
            return Optional.empty();
        }
        long from = Math.max(least, Math.min(path[i][j], horizon));
        return Optional.of(new Lag(i, j, (int) Math.min(from, horizon), back < 0 ? -back : Wait.NO_LIMIT));
    }

    /** Where the order is open, a mark stands so many days after the start of one job, and the other starts by it. */
    private List<Lag> marked() {
        List<Lag> result = new ArrayList<>();
        for (int i = 1; i < jobs.size(); i++) {
            for (int j = 1; j < jobs.size(); j++) {
                int back = jobs.get(j).lags().getOrDefault(i, 0);
                if (i != j && back < 0 && path[i][j] < 0) {
                    result.add(new Lag(i, j, -back, -back));
                }
            }
        }
        return result;
    }

    private void mark(Lag lag, boolean[] cut) {
        String id = "mark-" + lag.from() + "-" + lag.to();
        stages.add(new Stage(
                id,
                "Mark",
                MARKS,
                1,
                1,
                Layout.UNBROKEN_DAYS,
                1,
                1,
                0,
                false,
                List.of(),
                List.of(),
                List.of(),
                null,
                null));
        int days = lag.least() - (cut[lag.from()] ? 0 : days(lag.from()) - 1);
        waits.add(wait(first(lag.from()), id, days, days));
        waits.add(wait(first(lag.to()), id, 0, Wait.NO_LIMIT));
    }

    private static Wait wait(String from, String to, int least, int most) {
        return new Wait(from + "-" + to, "Lag", WaitKind.FOLLOWS, from, to, new LeastWait.Days(least), most);
    }

    private Trip calendar() {
        List<SiteDay> days = IntStream.range(0, horizon)
                .mapToObj(d -> new SiteDay(START.plusDays(d), jobs.size(), 1, DayPower.DARK))
                .toList();
        return new Trip("t", days, new Rig("none", "None", List.of(), List.of()), 0, 0, 0, 0);
    }

    /** The days that all jobs take; the last one, of no length, stands for a day. */
    static long makespan(SeasonPlan plan) {
        return plan.finishes().getOrDefault(ALL, START).toEpochDay() - START.toEpochDay();
    }
}
