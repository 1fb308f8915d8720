package org.firmset.season.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.ToolTime;
import org.firmset.measure.Hours;
import org.firmset.plan.GeneratorUse;
import org.firmset.plan.Need;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.RunKind;
import org.firmset.plan.Schedule;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Stage;
import org.firmset.plan.Trip;
import org.firmset.plan.WorkBlock;
import org.firmset.plan.check.Charging;
import org.firmset.season.words.Dates;

/**
 * Says where power is what ends a stage's work for the day: there are hours left, but with the least that could be done
 * besides, and all that a generator gives, the battery would not hold its floor. Found by asking the checker of the plan, not the planner.
 */
final class PowerNotes {
    private final Homestead homestead;
    private final PlanningProblem problem;
    private final Schedule schedule;

    /** @param homestead with the needs of its takeoffs */
    PowerNotes(Homestead homestead, PlanningProblem problem, Schedule schedule) {
        this.homestead = homestead;
        this.problem = problem;
        this.schedule = schedule;
    }

    /** A sentence, where power ends the block and more of its stage comes later. */
    Optional<String> note(WorkBlock block) {
        Optional<WorkBlock> next = schedule.blocks().stream()
                .filter(b -> b.stage().equals(block.stage()) && b.date().isAfter(block.date()))
                .min(Comparator.comparing(WorkBlock::date));
        Stage stage = stage(block);
        return next.filter(n -> stage.wattHoursPerHour() > 0
                        && stage.mostBlockQuarters() > block.quarters()
                        && hasHoursFor(stage, block, more(stage, n))
                        && breaksWith(block, n, more(stage, n)))
                .map(n -> sentence(stage, block, n));
    }

    private Stage stage(WorkBlock block) {
        return problem.stages().stream()
                .filter(s -> s.id().equals(block.stage()))
                .findFirst()
                .orElseThrow();
    }

    /** The least that could be done besides: a quarter of an hour, or all that is left when less would not be worth a start. */
    private static int more(Stage stage, WorkBlock next) {
        return next.quarters() - 1 < stage.effectiveLeastBlock() ? next.quarters() : 1;
    }

    private boolean hasHoursFor(Stage stage, WorkBlock block, int more) {
        SiteDay day = trip(block).days().stream()
                .filter(d -> d.date().equals(block.date()))
                .findFirst()
                .orElseThrow();
        List<WorkBlock> onDay = schedule.blocks().stream()
                .filter(b -> b.date().equals(block.date()))
                .toList();
        int inLight = onDay.stream()
                .filter(b -> stage(b).needsLight())
                .mapToInt(WorkBlock::quarters)
                .sum();
        int taken = onDay.stream().mapToInt(WorkBlock::quarters).sum() + ofExtraRuns(block);
        return taken + more <= day.labourQuarters() && (!stage.needsLight() || inLight + more <= day.lightQuarters());
    }

    private int ofExtraRuns(WorkBlock block) {
        long runs = schedule.runs().stream()
                .filter(r -> r.kind() == RunKind.EXTRA && r.date().equals(block.date()))
                .count();
        return Math.toIntExact(runs) * trip(block).extraRunQuarters();
    }

    private Trip trip(WorkBlock block) {
        return problem.trips().stream()
                .filter(t -> t.days().stream().anyMatch(d -> d.date().equals(block.date())))
                .findFirst()
                .orElseThrow();
    }

    /** So much of the next block is done today instead. */
    private boolean breaksWith(WorkBlock block, WorkBlock next, int more) {
        List<WorkBlock> blocks = new ArrayList<>(schedule.blocks());
        blocks.remove(block);
        blocks.remove(next);
        blocks.add(new WorkBlock(block.stage(), block.date(), block.quarters() + more));
        if (next.quarters() > more) {
            blocks.add(new WorkBlock(next.stage(), next.date(), next.quarters() - more));
        }
        Trip trip = trip(block);
        long most = problem.site().generatorWattHoursPerDay();
        List<GeneratorUse> all =
                trip.days().stream().map(d -> new GeneratorUse(d.date(), most)).toList();
        return new Charging(problem, new Schedule(blocks, schedule.runs(), all))
                .on(trip)
                .broken()
                .isPresent();
    }

    private String sentence(Stage stage, WorkBlock block, WorkBlock next) {
        int before = schedule.blocks().stream()
                .filter(b -> b.stage().equals(block.stage()) && b.date().isBefore(block.date()))
                .mapToInt(WorkBlock::quarters)
                .sum();
        String amounts = counted(stage)
                .map(need -> packs(need, stage, before, block, next))
                .orElseGet(() -> "%s today, %s on %s"
                        .formatted(new Hours(block.quarters()), new Hours(next.quarters()), Dates.day(next.date())));
        return "Power is what ends it, not hours: with more the battery would go under its floor. " + amounts + ".";
    }

    /** 'Core fill grout, 80 lb: 39 of 43 today, 4 on Sun 30 May'. */
    private String packs(Need need, Stage stage, int before, WorkBlock block, WorkBlock next) {
        int whole = stage.labourQuarters();
        int until = need.usedWhen(before + block.quarters(), whole);
        String name = homestead.materials().stream()
                .filter(m -> m.key().equals(need.material()))
                .map(m -> m.name())
                .findFirst()
                .orElse(need.material());
        return "%s: %d of %d today, %d on %s"
                .formatted(
                        name,
                        until - need.usedWhen(before, whole),
                        need.packs(),
                        need.usedWhen(before + block.quarters() + next.quarters(), whole) - until,
                        Dates.day(next.date()));
    }

    /** What the tools of a stage run for, pack by pack. */
    private Optional<Need> counted(Stage stage) {
        return homestead.stages().stream()
                .filter(s -> s.key().equals(stage.id()))
                .flatMap(s -> s.toolTimes().stream())
                .map(ToolTime::material)
                .flatMap(Stream::ofNullable)
                .findFirst()
                .flatMap(m -> stage.needs().stream()
                        .filter(n -> n.material().equals(m))
                        .findFirst());
    }
}
