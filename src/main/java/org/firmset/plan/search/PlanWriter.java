package org.firmset.plan.search;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.firmset.plan.Aim;
import org.firmset.plan.GeneratorUse;
import org.firmset.plan.Load;
import org.firmset.plan.Reason;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.plan.Schedule;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.StageStory;
import org.firmset.plan.Totals;
import org.firmset.plan.WorkBlock;
import org.jspecify.annotations.Nullable;

/** Writes a whole draft as a season plan, with its reasons, slack and critical paths. */
final class PlanWriter {
    private final Model model;
    private final Windows windows;
    private final Draft draft;
    private final Builder builder;
    private final Genes genes;

    PlanWriter(Windows windows, Draft draft, Builder builder, Genes genes) {
        this.model = draft.model;
        this.windows = windows;
        this.draft = draft;
        this.builder = builder;
        this.genes = genes;
    }

    SeasonPlan write(Aim aim) {
        Schedule schedule = schedule();
        Totals totals = new Costs(model, builder.ledger()).totals(draft);
        WhyNot whyNot = new WhyNot(draft, builder, genes);
        List<StageStory> stories = stories(whyNot);
        int[] slackDays = stories.stream().mapToInt(StageStory::slackDays).toArray();
        return new SeasonPlan(
                model.problem.statusDate(),
                model.problem.style(),
                schedule,
                finishes(),
                totals,
                aim,
                new Bounds(model, windows).bound(),
                stories,
                new PathTeller(draft, whyNot, slackDays).paths());
    }

    private Schedule schedule() {
        List<WorkBlock> blocks = new ArrayList<>();
        for (Placement placement : draft.placed()) {
            String stage = model.stage(placement.stage).id();
            placement.blocks.forEach(
                    b -> blocks.add(new WorkBlock(stage, model.days.get(b.day()).date(), b.quarters())));
        }
        blocks.sort(Comparator.comparing(WorkBlock::date).thenComparing(b -> model.stageIndex.of(b.stage())));
        return new Schedule(inWorkingOrder(blocks), runs(), generator());
    }

    /** On one day, what others wait for comes first. */
    private List<WorkBlock> inWorkingOrder(List<WorkBlock> blocks) {
        Map<String, Integer> place = new HashMap<>();
        windows.order().forEach(s -> place.put(model.stage(s).id(), place.size()));
        return blocks.stream()
                .sorted(Comparator.comparing(WorkBlock::date).thenComparing(b -> place.get(b.stage())))
                .toList();
    }

    private List<Run> runs() {
        Map<Integer, Map<Load, Integer>> bySource = new TreeMap<>();
        for (Placement placement : draft.placed()) {
            for (Reservation reservation : placement.reservations) {
                if (!builder.ledger().supply.isLot(reservation.source())) {
                    bySource.computeIfAbsent(reservation.source(), s -> new LinkedHashMap<>())
                            .merge(place(reservation), reservation.packs(), Integer::sum);
                }
            }
        }
        return bySource.entrySet().stream()
                .map(e -> run(e.getKey(), e.getValue()))
                .sorted(Comparator.comparing(Run::date).thenComparing(Run::kind))
                .toList();
    }

    private Load place(Reservation reservation) {
        Supply supply = builder.ledger().supply;
        int source = reservation.source();
        String bay = supply.isDelivery(source)
                ? Load.TRUCK
                : model.trip(supply.tripOf(source))
                        .rig()
                        .bays()
                        .get(reservation.bay())
                        .id();
        return new Load(model.material(reservation.material()).id(), bay, 0);
    }

    private Run run(int source, Map<Load, Integer> packs) {
        Supply supply = builder.ledger().supply;
        List<Load> loads = packs.entrySet().stream()
                .map(e -> new Load(e.getKey().material(), e.getKey().bay(), e.getValue()))
                .sorted(Comparator.comparing(Load::bay).thenComparing(l -> model.materialIndex.of(l.material())))
                .toList();
        RunKind kind = supply.isDelivery(source)
                ? RunKind.DELIVERY
                : supply.isExtraRun(source) ? RunKind.EXTRA : RunKind.ARRIVAL;
        return new Run(
                model.trip(supply.tripOf(source)).id(),
                model.days.get(supply.dayOf(source)).date(),
                kind,
                supply.isDelivery(source) ? supply.offerOf(source).id() : "",
                loads,
                supply.arrival(source));
    }

    private List<GeneratorUse> generator() {
        long[] use = builder.ledger().generatorUse();
        List<GeneratorUse> result = new ArrayList<>();
        for (int d = 0; d < use.length; d++) {
            if (use[d] > 0) {
                result.add(new GeneratorUse(model.days.get(d).date(), use[d]));
            }
        }
        return result;
    }

    private Map<String, LocalDate> finishes() {
        Map<String, LocalDate> result = new HashMap<>();
        for (int s = 0; s < model.stageCount; s++) {
            result.merge(
                    model.stage(s).subproject(),
                    LocalDate.ofEpochDay(draft.finishEpoch(s)),
                    (a, b) -> a.isAfter(b) ? a : b);
        }
        return result;
    }

    private List<StageStory> stories(WhyNot whyNot) {
        @Nullable Placement[] late = new LateShift(draft, builder, windows, genes).shift();
        List<StageStory> result = new ArrayList<>();
        for (int s = 0; s < model.stageCount; s++) {
            result.add(story(s, late[s], whyNot.sooner(s)));
        }
        return result;
    }

    private StageStory story(int s, @Nullable Placement late, Reason reason) {
        LocalDate begun = model.stage(s).startedOn();
        LocalDate finish = LocalDate.ofEpochDay(draft.finishEpoch(s));
        if (late == null) {
            return new StageStory(model.stage(s).id(), begun == null ? finish : begun, finish, reason, 0, 0);
        }
        Placement planned = draft.placement(s);
        LocalDate start = model.days.get(planned.startDay()).date();
        long days = Math.min(
                ChronoUnit.DAYS.between(start, model.days.get(late.startDay()).date()),
                ChronoUnit.DAYS.between(finish, model.days.get(late.finishDay()).date()));
        int trips = Math.min(
                model.tripOfDay[late.startDay()] - model.tripOfDay[planned.startDay()],
                model.tripOfDay[late.finishDay()] - model.tripOfDay[planned.finishDay()]);
        return new StageStory(model.stage(s).id(), begun == null ? start : begun, finish, reason, (int) days, trips);
    }
}
