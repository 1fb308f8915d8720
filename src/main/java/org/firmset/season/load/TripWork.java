package org.firmset.season.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.measure.Hours;
import org.firmset.plan.Layout;
import org.firmset.plan.Need;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Schedule;
import org.firmset.plan.Stage;
import org.firmset.plan.Trip;
import org.firmset.plan.Wait;
import org.firmset.plan.WorkBlock;

/** The work blocks of a plan in the order in which they are done, and how far those of a trip get with what is on site. */
public final class TripWork {
    private final PlanningProblem problem;
    private final Map<String, Stage> stages;
    private final Map<String, List<String>> before;
    private final List<WorkBlock> blocks;

    public TripWork(PlanningProblem problem, Schedule schedule) {
        this.problem = problem;
        stages = problem.stages().stream().collect(Collectors.toMap(Stage::id, Function.identity()));
        before = problem.waits().stream()
                .collect(Collectors.groupingBy(Wait::to, Collectors.mapping(Wait::from, Collectors.toList())));
        Map<String, Integer> depths = depths();
        blocks = schedule.blocks().stream()
                .sorted(Comparator.comparing(WorkBlock::date).thenComparing(b -> depths.getOrDefault(b.stage(), 0)))
                .toList();
    }

    /** Stages on one day are done in the order of the links between them. */
    private Map<String, Integer> depths() {
        Map<String, Integer> depths = new HashMap<>();
        boolean deeper = true;
        for (int i = 0; deeper && i < problem.stages().size(); i++) {
            deeper = false;
            for (Wait wait : problem.waits()) {
                int least = depths.getOrDefault(wait.from(), 0) + 1;
                if (depths.getOrDefault(wait.to(), 0) < least) {
                    depths.put(wait.to(), least);
                    deeper = true;
                }
            }
        }
        return depths;
    }

    /** What a work block uses of a material. */
    public record Use(WorkBlock block, String material, int packs) {}

    /** Every use of the plan in the order of the work. */
    public List<Use> uses() {
        Map<String, Integer> done = new HashMap<>();
        List<Use> uses = new ArrayList<>();
        for (WorkBlock block : blocks) {
            Stage stage = stage(block);
            int from = done.getOrDefault(stage.id(), 0);
            done.put(stage.id(), from + block.quarters());
            for (Need need : stage.needs()) {
                int packs = used(stage, need, from, block.quarters());
                if (packs > 0) {
                    uses.add(new Use(block, need.material(), packs));
                }
            }
        }
        return uses;
    }

    static boolean isIn(Trip trip, LocalDate date) {
        return !date.isBefore(trip.firstDate()) && !date.isAfter(trip.lastDate());
    }

    private Stage stage(WorkBlock block) {
        Stage stage = stages.get(block.stage());
        if (stage == null) {
            throw new IllegalArgumentException("stage [" + block.stage() + "] of a work block is not in the problem");
        }
        return stage;
    }

    private static int used(Stage stage, Need need, int from, int quarters) {
        return need.usedWhen(from + quarters, stage.labourQuarters()) - need.usedWhen(from, stage.labourQuarters());
    }

    /**
     * How far the blocks of a trip get.
     *
     * @param piles as they are when the trip begins
     * @param arrivals puts on the piles what comes on a date of the trip; told of each date once, in order
     */
    List<ChangedTrip.Reach> reached(Trip trip, Piles piles, Consumer<LocalDate> arrivals) {
        Reaching reaching = new Reaching(trip, piles);
        List<ChangedTrip.Reach> result = new ArrayList<>();
        LocalDate told = null;
        for (WorkBlock block : blocks) {
            if (isIn(trip, block.date())) {
                for (LocalDate d = told == null ? trip.firstDate() : told.plusDays(1);
                        !d.isAfter(block.date());
                        d = d.plusDays(1)) {
                    arrivals.accept(d);
                    told = d;
                }
                result.add(reaching.reach(block));
            }
        }
        return result;
    }

    private final class Reaching {
        private final Piles piles;
        private final Map<String, Integer> done = new HashMap<>();
        private final Map<String, Integer> lastQuarters = new HashMap<>();
        private final Set<String> stopped = new HashSet<>();

        Reaching(Trip trip, Piles piles) {
            this.piles = piles;
            for (WorkBlock block : blocks) {
                if (block.date().isBefore(trip.firstDate())) {
                    done.merge(block.stage(), block.quarters(), Integer::sum);
                } else if (isIn(trip, block.date())) {
                    lastQuarters.merge(block.stage(), block.quarters(), Integer::sum);
                }
            }
        }

        ChangedTrip.Reach reach(WorkBlock block) {
            Stage stage = stage(block);
            String waitsFor = before.getOrDefault(stage.id(), List.of()).stream()
                    .filter(stopped::contains)
                    .findFirst()
                    .orElse(null);
            int from = done.getOrDefault(stage.id(), 0);
            int whole = wanted(stage, block);
            int enough = enoughFor(stage, block, from, Math.max(whole, block.quarters()));
            int possible = waitsFor == null && !isBroken(stage) && mayStart(stage, block, enough, whole)
                    ? Math.min(enough, block.quarters())
                    : 0;
            List<ChangedTrip.Lack> lacks = waitsFor == null && possible < block.quarters()
                    ? lacks(stage, block, from, Math.max(whole, block.quarters()))
                    : List.of();
            for (Need need : stage.needs()) {
                piles.of(need.material()).use(block.date(), used(stage, need, from, possible));
            }
            done.put(stage.id(), from + possible);
            if (possible < block.quarters()) {
                stopped.add(stage.id());
            }
            return new ChangedTrip.Reach(
                    stage.id(),
                    block.date(),
                    new Hours(block.quarters()),
                    new Hours(Math.min(enough, block.quarters())),
                    new Hours(possible),
                    lacks,
                    waitsFor);
        }

        /** Days without a gap: once one is not full, the next would come too late. */
        private boolean isBroken(Stage stage) {
            return stage.layout() == Layout.UNBROKEN_DAYS && stopped.contains(stage.id());
        }

        /** The labour that has to be possible before the block may start: of days without a gap all in this trip. */
        private int wanted(Stage stage, WorkBlock block) {
            int left = lastQuarters.merge(stage.id(), -block.quarters(), Integer::sum) + block.quarters();
            return switch (stage.layout()) {
                case IN_ONE_GO -> block.quarters();
                case UNBROKEN_DAYS -> left;
                case SPLITTABLE -> 0;
            };
        }

        private boolean mayStart(Stage stage, WorkBlock block, int enough, int whole) {
            return enough >= whole && (enough >= block.quarters() || enough >= stage.effectiveLeastBlock());
        }

        private int enoughFor(Stage stage, WorkBlock block, int from, int most) {
            int quarters = most;
            for (Need need : stage.needs()) {
                int there = piles.good(need.material(), block.date());
                while (quarters > 0 && used(stage, need, from, quarters) > there) {
                    quarters--;
                }
            }
            return quarters;
        }

        private List<ChangedTrip.Lack> lacks(Stage stage, WorkBlock block, int from, int quarters) {
            return stage.needs().stream()
                    .map(need -> new ChangedTrip.Lack(
                            need.material(),
                            piles.good(need.material(), block.date()),
                            used(stage, need, from, quarters)))
                    .filter(lack -> lack.packs() < lack.needed())
                    .sorted(Comparator.comparingDouble(lack -> (double) lack.packs() / lack.needed()))
                    .toList();
        }
    }
}
